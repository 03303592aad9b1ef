#include "ui/common/panels.h"

#include "ui/common/flow_layout.h"
#include "ui/common/styled.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::ui {

namespace {

constexpr int lowPageLines = 21; ///< a page of fewer lines of text has none for the words under its title

QString nameOf(Tone tone)
{
    switch (tone) {
    case Tone::plain: break;
    case Tone::moss: return QStringLiteral("moss");
    case Tone::amber: return QStringLiteral("amber");
    case Tone::brick: return QStringLiteral("brick");
    case Tone::water: return QStringLiteral("water");
    }
    return {};
}

QString nameOf(TextRole role)
{
    switch (role) {
    case TextRole::body: break;
    case TextRole::strong: return QStringLiteral("strong");
    case TextRole::small: return QStringLiteral("small");
    case TextRole::muted: return QStringLiteral("muted");
    case TextRole::smallMuted: return QStringLiteral("smallMuted");
    case TextRole::section: return QStringLiteral("section");
    case TextRole::title: return QStringLiteral("title");
    }
    return {};
}

class WheelKeeper final : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() != QEvent::Wheel) return false;
        const auto* widget = qobject_cast<QWidget*>(watched);
        if (!widget || widget->hasFocus()) return false;
        event->ignore(); // so that it goes on to the page, which scrolls
        return true;
    }
};

/// The title with the buttons at the end of its line; where both have no room there, the buttons go on from the title in as many lines as
/// they need. The line of words under them has the whole width.
class HeadLayout final : public QLayout {
public:
    HeadLayout(QWidget* parent, QLabel* title, QWidget* buttons, QLabel* line) : QLayout{parent}, title_{title}, buttons_{buttons}, line_{line}
    {
        setContentsMargins(0, 0, 0, 0);
        for (QWidget* each : {static_cast<QWidget*>(title), buttons, static_cast<QWidget*>(line)}) addWidget(each);
    }
    ~HeadLayout() override { qDeleteAll(items_); }
    void addItem(QLayoutItem* item) override { items_.append(item); }
    QLayoutItem* itemAt(int index) const override { return items_.value(index); }
    QLayoutItem* takeAt(int index) override { return index >= 0 && index < items_.size() ? items_.takeAt(index) : nullptr; }
    int count() const override { return static_cast<int>(items_.size()); }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return lay(QRect{0, 0, width, 0}, false); }
    QSize minimumSize() const override { return {buttons_->layout()->minimumSize().width(), title_->fontMetrics().height()}; }
    QSize sizeHint() const override
    {
        const int width = title_->fontMetrics().horizontalAdvance(title_->text()) + gap + buttons_->layout()->sizeHint().width();
        return {width, heightForWidth(width)};
    }
    void setGeometry(const QRect& rect) override
    {
        QLayout::setGeometry(rect);
        lay(rect, true);
    }

private:
    static constexpr int gap = 12, between = 2;

    const QLayoutItem* firstButton() const
    {
        for (int i = 0; i < buttons_->layout()->count(); ++i)
            if (const QLayoutItem* item = buttons_->layout()->itemAt(i); !item->isEmpty()) return item;
        return nullptr;
    }

    int lay(const QRect& rect, bool place) const
    {
        const auto put = [&](QWidget* widget, QRect box) {
            if (place) widget->setGeometry(QStyle::visualRect(parentWidget()->layoutDirection(), rect, box));
        };
        const int width = rect.width();
        const int buttons = buttons_->layout()->sizeHint().width();
        const bool beside = title_->fontMetrics().horizontalAdvance(title_->text()) + gap + buttons <= width;
        const int wide = title_->fontMetrics().horizontalAdvance(title_->text()) + gap;
        const QLayoutItem* first = firstButton();
        const bool within = !beside && first && wide + first->sizeHint().width() <= width; // the first of them beside the title, the others as lines go on
        auto* flow = static_cast<FlowLayout*>(buttons_->layout());
        flow->setTaken(within ? QSize{wide, title_->fontMetrics().height()} : QSize{0, 0});
        const int forTitle = beside ? width - gap - buttons : width;
        const int buttonsHigh = buttons_->layout()->heightForWidth(beside ? buttons : width);
        const int titleHigh = std::max(title_->heightForWidth(forTitle), title_->fontMetrics().height());
        int y = rect.top();
        if (beside) {
            const int high = std::max(titleHigh, buttonsHigh);
            put(title_, {rect.left(), y, forTitle, high});
            put(buttons_, {rect.left() + width - buttons, y, buttons, buttonsHigh});
            y += high;
        } else if (within) {
            put(buttons_, {rect.left(), y, width, buttonsHigh});
            if (place) flow->setGeometry(buttons_->contentsRect()); // the box may be as large as before
            put(title_, {rect.left(), y, wide, std::max(first->sizeHint().height(), title_->fontMetrics().height())});
            y += buttonsHigh;
        } else {
            put(title_, {rect.left(), y, width, titleHigh});
            y += titleHigh + between;
            put(buttons_, {rect.left(), y, width, buttonsHigh});
            y += buttonsHigh;
        }
        const int lineHigh = line_->isHidden() ? 0 : line_->heightForWidth(width);
        if (lineHigh > 0) y += between;
        put(line_, {rect.left(), y, width, lineHigh});
        return y + lineHigh - rect.top();
    }

    QLabel* title_;
    QWidget* buttons_;
    QLabel* line_;
    QList<QLayoutItem*> items_;
};

}

QLabel* makeLabel(const QString& text, TextRole role, QWidget* parent, bool wraps)
{
    auto* label = new QLabel{parent};
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    label->setWordWrap(wraps);
    setRole(label, role);
    return label;
}

void setRole(QWidget* widget, TextRole role)
{
    setStyled(widget, "role", nameOf(role));
}

QPushButton* makeButton(const QString& text, Tone tone, QWidget* parent)
{
    auto* button = new QPushButton{text, parent};
    button->setAutoDefault(false);
    setTone(button, tone);
    return button;
}

void setTone(QWidget* widget, Tone tone)
{
    const QString name = nameOf(tone);
    setStyled(widget, "tone", name.isEmpty() ? QVariant{} : QVariant{name});
}

Card::Card(QWidget* parent, Tone tone) : QFrame{parent}, column_{new QVBoxLayout{this}}
{
    setProperty("card", true);
    setTone(this, tone);
    column_->setContentsMargins(12, 9, 12, 9);
    column_->setSpacing(6);
}

QFrame* makeHairline(QWidget* parent)
{
    auto* line = new QFrame{parent};
    line->setProperty("hairline", true);
    line->setFixedHeight(1);
    return line;
}

PageHead::PageHead(QWidget* parent) : QWidget{parent}, title_{makeLabel({}, TextRole::title, this, true)}, line_{makeLabel({}, TextRole::muted, this, true)}
{
    title_->setObjectName(QStringLiteral("pageTitle"));
    line_->setObjectName(QStringLiteral("pageLine"));
    auto* box = new QWidget{this};
    buttons_ = new FlowLayout{box, 8};
    new HeadLayout{this, title_, box, line_};
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Minimum};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    if (parent) parent->installEventFilter(this);
    line_->hide();
}

void PageHead::setTitle(const QString& title)
{
    title_->setText(title);
}

void PageHead::setLine(const QString& line)
{
    line_->setText(line);
    showLine();
}

/// In a low window with large letters what the page is for needs its room.
void PageHead::showLine()
{
    const bool low = parentWidget() && parentWidget()->height() < lowPageLines * fontMetrics().height();
    line_->setHidden(line_->text().isEmpty() || low);
}

bool PageHead::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == parentWidget() && event->type() == QEvent::Resize) showLine();
    return QWidget::eventFilter(watched, event);
}

void PageHead::addButton(QWidget* button)
{
    buttons_->addWidget(button);
}

void setAccess(QWidget* widget, const QString& name, const QString& description)
{
    widget->setAccessibleName(name);
    widget->setAccessibleDescription(description);
}

void keepWheelOut(QWidget* field)
{
    field->setFocusPolicy(Qt::StrongFocus);
    field->installEventFilter(new WheelKeeper{field});
}

}
