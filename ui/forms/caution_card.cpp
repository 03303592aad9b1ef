#include "ui/forms/caution_card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::forms {

namespace {

QStringList texts(const QList<Caution>& list)
{
    QStringList words;
    for (const Caution& each : list) words.append(each.text);
    return words;
}

bool saysMore(const Caution& caution)
{
    return caution.normal || !caution.brief.isEmpty();
}

QVBoxLayout* makeRows(QWidget* host)
{
    auto* rows = new QVBoxLayout{host};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(3);
    return rows;
}

}

CautionCard::CautionCard(QWidget* parent) : ui::Card{parent, ui::Tone::amber}
{
    setObjectName(QStringLiteral("cautions"));
    column()->setSpacing(0);
    hide();
}

void CautionCard::setCautions(const QList<Caution>& cautions)
{
    if (texts(cautions) == texts(cautions_)) return; // while someone types, nothing flickers
    cautions_ = cautions;
    asked_ = false;
    delete whole_;
    delete few_;
    few_ = nullptr;
    less_ = nullptr;
    whole_ = new QWidget{this};
    QVBoxLayout* rows = makeRows(whole_);
    const auto addLabel = [this](QWidget* host, QVBoxLayout* row, const Caution& each, const QString& told) {
        // A word, not only the colour of the bar, tells a caution from what is normal.
        auto* label = ui::makeLabel(each.normal ? told : tr("Caution: %1").arg(told), each.normal ? ui::TextRole::smallMuted : ui::TextRole::small, host, true);
        const QString source = tr("Source: %1").arg(each.source);
        label->setToolTip(told == each.text ? source : each.text + QLatin1Char('\n') + source);
        label->setAccessibleDescription(told == each.text ? QString{} : each.text);
        label->setProperty("topic", static_cast<int>(each.topic));
        label->ensurePolished(); // its height is asked for before it is shown
        row->addWidget(label);
    };
    for (const Caution& each : cautions) addLabel(whole_, rows, each, each.text);
    column()->addWidget(whole_);
    const bool pressing = std::any_of(cautions.begin(), cautions.end(), [](const Caution& each) { return !each.normal; });
    if (pressing && std::any_of(cautions.begin(), cautions.end(), saysMore)) {
        few_ = new QWidget{this};
        auto* across = new QHBoxLayout{few_};
        across->setContentsMargins(0, 0, 0, 0);
        auto* lines = new QVBoxLayout;
        lines->setSpacing(3);
        across->addLayout(lines, 1);
        for (const Caution& each : cautions)
            if (!each.normal) addLabel(few_, lines, each, each.brief.isEmpty() ? each.text : each.brief);
        const auto addButton = [this](const QString& words, QWidget* host, const char* name, bool whole) {
            auto* button = ui::makeButton(words, ui::Tone::plain, host);
            button->setObjectName(QLatin1StringView{name});
            ui::setAccess(button, words, tr("Cautions"));
            connect(button, &QPushButton::clicked, this, [this, whole] {
                asked_ = whole;
                say(!whole);
                if (auto* other = findChild<QPushButton*>(whole ? QStringLiteral("lessCautions") : QStringLiteral("moreCautions"))) other->setFocus(Qt::OtherFocusReason);
            });
            return button;
        };
        across->addWidget(addButton(tr("More", "the whole text of cautions"), few_, "moreCautions", true), 0, Qt::AlignBottom);
        less_ = addButton(tr("Less", "the cautions in few words"), whole_, "lessCautions", false);
        rows->addWidget(less_, 0, Qt::AlignTrailing);
        column()->addWidget(few_);
    }
    setHidden(cautions.isEmpty());
    say(brief_ && few_);
    ui::setAccess(this, tr("Cautions"), texts(cautions).join(QLatin1Char(' ')));
}

void CautionCard::holdTo(int height, int width)
{
    if (!few_ || asked_) return;
    const QMargins around = column()->contentsMargins();
    const int within = std::max(1, width - around.left() - around.right());
    const int button = less_->isHidden() ? 0 : less_->sizeHint().height() + 3; // only stands there when people asked
    say(whole_->layout()->totalHeightForWidth(within) - button + around.top() + around.bottom() > height);
}

void CautionCard::say(bool brief)
{
    brief_ = brief;
    whole_->setHidden(brief);
    if (few_) few_->setHidden(!brief);
    if (less_) less_->setVisible(asked_ && !brief);
}

}
