#include "ui/common/field.h"

#include "ui/common/panels.h"
#include "ui/common/styled.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace tierloam::ui {

Field::Field(QWidget* parent) : QWidget{parent}
{
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    row_ = new QHBoxLayout;
    row_->setSpacing(6);
    column->addLayout(row_);
    hintLabel_ = makeLabel({}, TextRole::smallMuted, this, true);
    hintLabel_->setObjectName(QStringLiteral("hint"));
    problemLabel_ = makeLabel({}, TextRole::small, this, true);
    problemLabel_->setObjectName(QStringLiteral("problem"));
    setTone(problemLabel_, Tone::brick);
    beneath_ = new QHBoxLayout;
    beneath_->setSpacing(6);
    beneath_->addWidget(hintLabel_, 1);
    column->addLayout(beneath_);
    column->addWidget(problemLabel_);
    hintLabel_->hide();
    problemLabel_->hide();
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Minimum};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void Field::setName(const QString& name)
{
    name_ = name;
    nameEditors(name);
}

void Field::setRequired(const QString& whenEmpty)
{
    whenEmpty_ = whenEmpty;
}

QString Field::problem() const
{
    if (isEmpty()) return whenEmpty_;
    return problemOfValue();
}

bool Field::check()
{
    const QString words = problem();
    tell(words);
    return words.isEmpty();
}

void Field::showProblem(const QString& words)
{
    tell(words);
}

QString Field::shownProblem() const
{
    return problemLabel_->isHidden() ? QString{} : problemLabel_->text();
}

void Field::setHint(const QString& hint)
{
    hintLabel_->setText(hint);
    hintLabel_->setHidden(hint.isEmpty());
}

QString Field::hint() const
{
    return hintLabel_->text();
}

void Field::tell(const QString& words)
{
    problemLabel_->setText(words);
    problemLabel_->setHidden(words.isEmpty());
    for (QWidget* editor : std::as_const(editors_)) {
        editor->setAccessibleDescription(words); // read out with the field
        if (editor->property("wrong").toBool() == !words.isEmpty()) continue;
        setStyled(editor, "wrong", !words.isEmpty());
        editor->updateGeometry(); // its frame is thicker now
    }
    updateGeometry();
}

void Field::addEditor(QWidget* editor, int stretch, Row row)
{
    (row == Row::main ? row_ : beneath_)->addWidget(editor, stretch);
    editors_.append(editor);
    if (!focusProxy()) setFocusProxy(editor);
    editor->installEventFilter(this);
}

void Field::noteEdited()
{
    if (!problemLabel_->isHidden()) check();
    Q_EMIT edited();
}

bool Field::eventFilter(QObject* watched, QEvent* event)
{
    // Leaving an empty field is no fault yet: the person may come back to it.
    if (event->type() == QEvent::FocusOut && !isEmpty()) check();
    return QWidget::eventFilter(watched, event);
}

}
