#include "ui/common/choice_field.h"

#include "ui/common/field_edit.h"

#include <QCompleter>

#include <algorithm>

namespace tierloam::ui {

ChoiceField::ChoiceField(QWidget* parent) : Field{parent}
{
    list_ = new FieldCombo{this};
    list_->setObjectName(QStringLiteral("choice"));
    list_->setMaxVisibleItems(16); // all ways of a question are in sight at once
    addEditor(list_, 1);
    connect(list_, &QComboBox::activated, this, &ChoiceField::noteEdited);
}

void ChoiceField::addChoice(const QString& text, const QVariant& value)
{
    list_->addItem(text, value);
}

void ChoiceField::clearChoices()
{
    list_->clear();
}

void ChoiceField::setValue(const QVariant& value)
{
    for (int i = 0; i < list_->count(); ++i) {
        if (list_->itemData(i) == value) {
            list_->setCurrentIndex(i);
            return;
        }
    }
}

QVariant ChoiceField::value() const
{
    return list_->currentData();
}

void ChoiceField::nameEditors(const QString& name)
{
    list_->setAccessibleName(name);
}

TextField::TextField(QWidget* parent) : Field{parent}
{
    edit_ = new FieldEdit{this};
    edit_->setObjectName(QStringLiteral("text"));
    addEditor(edit_, 1);
    connect(edit_, &QLineEdit::textEdited, this, &TextField::noteEdited);
}

void TextField::setText(const QString& text)
{
    edit_->setText(text);
    edit_->setCursorPosition(0);
}

QString TextField::text() const
{
    return edit_->text().trimmed();
}

void TextField::setPlaceholder(const QString& text)
{
    edit_->setPlaceholderText(text);
}

void TextField::suggest(const QStringList& words)
{
    auto* completer = new QCompleter{words, this};
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    edit_->setCompleter(completer);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), this, [this] { noteEdited(); });
}

QString TextField::problemOfValue() const
{
    const QString typed = text();
    const bool control = std::any_of(typed.begin(), typed.end(), [](QChar c) { return c.category() == QChar::Other_Control; });
    return control ? tr("It holds a character that cannot be printed; type it again.") : QString{};
}

void TextField::nameEditors(const QString& name)
{
    edit_->setAccessibleName(name);
}

}
