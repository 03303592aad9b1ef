#include "ui/forms/form_shell.h"

#include "ui/common/enter_key.h"
#include "ui/common/panels.h"
#include "ui/forms/caution_card.h"
#include "ui/forms/fit_area.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::forms {

namespace {

/// Tells those around it how high the whole is with all fields, however they are held at the time (layouts ask a widget's layout, not the widget).
class ShellLayout final : public QVBoxLayout {
public:
    using QVBoxLayout::QVBoxLayout;
    void setFields(const FitArea* area) { area_ = area; }
    int heightForWidth(int width) const override
    {
        const int wanted = area_->heightForWidth(width);
        return QVBoxLayout::heightForWidth(width) - std::clamp(wanted, area_->minimumHeight(), area_->maximumHeight()) + wanted;
    }

private:
    const FitArea* area_ = nullptr;
};

}

FormShell::FormShell(QWidget* parent) : QWidget{parent}
{
    auto* column = new ShellLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    title_ = ui::makeLabel({}, ui::TextRole::section, this, true);
    line_ = ui::makeLabel({}, ui::TextRole::smallMuted, this, true);
    line_->hide();
    cautionCard_ = new CautionCard{this};
    area_ = new FitArea{this};
    column->setFields(area_);
    effect_ = ui::makeLabel({}, ui::TextRole::smallMuted, this, true);
    effect_->setObjectName(QStringLiteral("effect"));
    effect_->hide();
    doubt_ = ui::makeLabel({}, ui::TextRole::strong, this, true);
    doubt_->setObjectName(QStringLiteral("formDoubt"));
    ui::setTone(doubt_, ui::Tone::amber);
    doubt_->hide();
    problem_ = ui::makeLabel({}, ui::TextRole::body, this, true);
    problem_->setObjectName(QStringLiteral("formProblem"));
    ui::setTone(problem_, ui::Tone::brick);
    problem_->hide();
    buttons_ = new QHBoxLayout;
    buttons_->setSpacing(8);
    instead_ = ui::makeButton({}, ui::Tone::amber, this);
    instead_->setObjectName(QStringLiteral("formInstead"));
    instead_->hide();
    buttons_->addWidget(instead_);
    buttons_->addStretch(1);
    cancel_ = ui::makeButton(tr("Cancel"), ui::Tone::plain, this);
    cancel_->setObjectName(QStringLiteral("cancel"));
    accept_ = ui::makeButton({}, ui::Tone::moss, this);
    accept_->setObjectName(QStringLiteral("accept"));
    setAcceptText(tr("Record"));
    buttons_->addWidget(cancel_);
    buttons_->addWidget(accept_);
    column->addWidget(title_);
    column->addWidget(line_);
    column->addWidget(cautionCard_);
    column->addWidget(area_, 1);
    column->addWidget(effect_);
    column->addWidget(doubt_);
    column->addWidget(problem_);
    column->addLayout(buttons_);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(accept_, &QPushButton::clicked, this, &FormShell::accepted);
    connect(cancel_, &QPushButton::clicked, this, &FormShell::cancelled);
    connect(instead_, &QPushButton::clicked, this, &FormShell::insteadWanted);
}

void FormShell::setTitle(const QString& title)
{
    title_->setText(title);
    setAccessibleName(title);
}

QString FormShell::title() const
{
    return title_->text();
}

void FormShell::setLine(const QString& line)
{
    line_->setText(line);
    line_->setHidden(line.isEmpty());
}

void FormShell::setContent(QWidget* content)
{
    area_->setWidget(content);
    content->setAutoFillBackground(false); // setWidget turns it on; the form shows what it lies on
}

void FormShell::setCautions(const QList<Caution>& cautions)
{
    cautionCard_->setCautions(cautions);
    updateGeometry();
}

QList<Caution> FormShell::cautions() const
{
    return cautionCard_->cautions();
}

void FormShell::setEffect(const QString& words)
{
    effect_->setText(words);
    effect_->setHidden(words.isEmpty());
}

void FormShell::setEffectProminent()
{
    ui::setRole(effect_, ui::TextRole::body);
    ui::setTone(effect_, ui::Tone::moss);
}

QString FormShell::effect() const
{
    return effect_->text();
}

void FormShell::setDoubt(const QString& words, const QString& instead)
{
    instead_->setText(instead);
    instead_->setHidden(words.isEmpty() || instead.isEmpty());
    instead_->setAccessibleDescription(words);
    doubt_->setText(words.isEmpty() ? QString{} : tr("Look again: %1").arg(words));
    doubt_->setHidden(words.isEmpty());
    if (problem().isEmpty()) accept_->setAccessibleDescription(doubt_->text());
}

QString FormShell::doubt() const
{
    return doubt_->text();
}

void FormShell::setProblem(const QString& words)
{
    problem_->setText(words);
    problem_->setHidden(words.isEmpty());
    accept_->setAccessibleDescription(words.isEmpty() ? doubt() : words);
}

QString FormShell::problem() const
{
    return problem_->text();
}

void FormShell::setBusy(const QString& words)
{
    busy_ = !words.isEmpty();
    area_->setDisabled(busy_);
    cancel_->setDisabled(busy_);
    accept_->setDisabled(busy_);
    accept_->setText(busy_ ? words : acceptText_);
}

void FormShell::setAcceptText(const QString& text)
{
    acceptText_ = text;
    accept_->setText(text);
}

void FormShell::setCancelText(const QString& text)
{
    cancel_->setText(text);
}

void FormShell::setAcceptEnabled(bool enabled)
{
    accept_->setEnabled(enabled);
}

void FormShell::addButton(QPushButton* button)
{
    buttons_->insertWidget(0, button);
}

bool FormShell::isCautionsShown() const
{
    return !cautionCard_->isHidden();
}

int FormShell::heightForWidth(int width) const
{
    return layout()->totalHeightForWidth(width);
}

/// Everything but the fields.
int FormShell::restHeight(int width) const
{
    return layout()->totalHeightForWidth(width) - area_->heightForWidth(width);
}

int FormShell::holdTo(int height, int width)
{
    told_ = height;
    return hold(height, width);
}

int FormShell::hold(int height, int width)
{
    const int least = area_->minimumSizeHint().height();
    const int card = cautionCard_->isHidden() ? 0 : cautionCard_->heightForWidth(width);
    cautionCard_->holdTo(height - least - (restHeight(width) - card), width);
    return restHeight(width) + least;
}

/// A box layout would squeeze the words along with the fields; only the fields give way.
void FormShell::holdFields()
{
    hold(told_.value_or(height()), width());
    const int most = std::max(height() - restHeight(width()), area_->minimumSizeHint().height());
    if (most != area_->maximumHeight()) area_->setMaximumHeight(most);
}

bool FormShell::event(QEvent* event)
{
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize) holdFields();
    return done;
}

void FormShell::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        if (cancel_->isEnabled()) Q_EMIT cancelled();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        const bool pressed = ui::pressFocused(this, *event); // Enter on Cancel cancels
        if (!pressed && accept_->isEnabled()) Q_EMIT accepted();
        return;
    }
    QWidget::keyPressEvent(event);
}

}
