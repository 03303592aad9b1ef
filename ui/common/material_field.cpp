#include "ui/common/material_field.h"

#include "ui/common/field_edit.h"
#include "ui/common/material_names.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QSet>

#include <algorithm>

namespace tierloam::ui {

namespace {

/// Names in the order of the list: used lately, then own ones, then the wanted kind, then the rest; each once.
QStringList ordered(const materials::Table& table, materials::Kind wanted, const std::vector<std::string>& lately)
{
    struct Named {
        QString text;
        const materials::Material* row;
    };
    std::vector<Named> all;
    for (const materials::Material& row : table.rows()) all.push_back({materialText(row.name), &row});
    std::ranges::sort(all, [](const Named& a, const Named& b) { return QString::localeAwareCompare(a.text, b.text) < 0; });

    QStringList names;
    QSet<QString> known;
    const auto add = [&](const QString& text) {
        const QString folded = text.toCaseFolded();
        if (known.contains(folded)) return;
        known.insert(folded);
        names.append(text);
    };
    for (const std::string& name : lately) {
        if (const materials::Material* row = table.find(name)) add(materialText(row->name));
    }
    const auto addWhere = [&](auto accept) {
        for (const Named& each : all) {
            if (accept(*each.row)) add(each.text);
        }
    };
    addWhere([](const materials::Material& row) { return row.own; });
    addWhere([wanted](const materials::Material& row) { return row.kind == wanted; });
    addWhere([](const materials::Material&) { return true; });
    return names;
}

}

MaterialField::MaterialField(const materials::Table& table, materials::Kind wanted, const std::vector<std::string>& lately,
                             std::string_view usual, QWidget* parent)
    : Field{parent}, table_{table}, usual_{usual}
{
    list_ = new FieldCombo{this};
    list_->setObjectName(QStringLiteral("material"));
    list_->setEditable(true);
    list_->setInsertPolicy(QComboBox::NoInsert);
    list_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon); // long names must not widen the form
    list_->setMinimumContentsLength(14);
    list_->setMaxVisibleItems(12);
    edit_ = new FieldEdit{list_};
    list_->setLineEdit(edit_);
    const QStringList names = ordered(table, wanted, lately);
    list_->addItems(names);
    list_->view()->setTextElideMode(Qt::ElideRight);
    auto* completer = new QCompleter{names, this};
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    completer->setCompletionMode(QCompleter::PopupCompletion);
    list_->setCompleter(completer);
    list_->setCurrentIndex(-1);
    edit_->setPlaceholderText(materialText(usual_));
    connect(edit_, &QLineEdit::textChanged, list_, &QWidget::setToolTip); // a long name is cut in a narrow form
    setMaterial({});
    addEditor(list_, 1);
    edit_->installEventFilter(this); // the line has the focus, not the list around it
    connect(edit_, &QLineEdit::textEdited, this, &MaterialField::noteEdited);
    connect(list_, &QComboBox::activated, this, &MaterialField::noteEdited);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), this, [this](const QString& name) {
        edit_->setText(name);
        noteEdited();
    });
}

void MaterialField::setMaterial(std::string_view name)
{
    leftOut_ = name.empty();
    const std::string_view text = leftOut_ ? std::string_view{usual_} : name;
    const QString words = materialText(text);
    list_->setCurrentIndex(list_->findText(words)); // else the list would find it when the line is left, and call that a choice
    edit_->setText(words);
    edit_->setCursorPosition(0);
}

Typed<std::string> MaterialField::material() const
{
    const QString typed = edit_->text().trimmed();
    if (typed.isEmpty()) return {};
    if (const materials::Material* row = materialTyped(table_, typed)) {
        if (leftOut_ && row == table_.find(usual_)) return {}; // what was left out stays so while it means the same
        return {row->name, {}};
    }
    QStringList near;
    for (const QString& each : materialsNear(table_, typed)) near.append(QStringLiteral("«") + each + QStringLiteral("»"));
    if (near.isEmpty()) return {std::nullopt, tr("«%1» is not among the materials.").arg(typed)};
    return {std::nullopt, tr("«%1» is not among the materials; the nearest are %2.").arg(typed, near.join(QStringLiteral(", ")))};
}

const materials::Material* MaterialField::row() const
{
    const QString typed = edit_->text().trimmed();
    return typed.isEmpty() ? table_.find(usual_) : materialTyped(table_, typed);
}

bool MaterialField::isEmpty() const
{
    return edit_->text().trimmed().isEmpty();
}

QString MaterialField::problemOfValue() const
{
    return material().problem;
}

void MaterialField::nameEditors(const QString& name)
{
    edit_->setAccessibleName(name);
    list_->setAccessibleName(name);
}

}
