#pragma once

#include "core/materials/table.h"
#include "ui/common/field.h"

namespace tierloam::ui {

class FieldCombo;
class FieldEdit;

/// A material of the household by name: typed with completion over the whole table, own materials included, or chosen from the list,
/// where the kind that is wanted and the materials used lately come first.
class MaterialField : public Field {
    Q_OBJECT

public:
    /// `table` is copied. `usual`: what is meant when the entry names none; empty when it must be given.
    MaterialField(const materials::Table& table, materials::Kind wanted, const std::vector<std::string>& lately, std::string_view usual,
                  QWidget* parent = nullptr);

    /// Empty: the usual one is shown, and is not written unless another was chosen.
    void setMaterial(std::string_view name);
    /// The name as the table writes it; nullopt without a problem when the entry is to name none.
    Typed<std::string> material() const;
    /// The row that is meant, the usual one when it is left empty; nullptr when what was typed is unknown.
    const materials::Material* row() const;
    bool isEmpty() const override;

    FieldCombo* list() const { return list_; }
    FieldEdit* edit() const { return edit_; }

protected:
    QString problemOfValue() const override;
    void nameEditors(const QString& name) override;

private:
    materials::Table table_;
    std::string usual_;
    bool leftOut_ = true;
    FieldCombo* list_ = nullptr;
    FieldEdit* edit_ = nullptr;
};

}
