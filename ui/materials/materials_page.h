#pragma once

#include "core/household/household.h"
#include "ui/common/actions.h"
#include "ui/common/theme.h"
#include "ui/forms/typed_form.h"

#include <QWidget>

#include <array>

class QAction;
class QBoxLayout;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QTableView;

namespace tierloam::forms {
class CautionCard;
}
namespace tierloam::ui {
class FieldCombo;
class FieldEdit;
class PageHead;
class Settings;
}

namespace tierloam::materials_page {

class BeddingBench;
class Bench;
class CastingsBench;
class LeachateBench;
class MaterialCard;
class MaterialsFilter;
class MaterialsModel;
class MixBench;
class NameColumn;

/// The materials page: the table with search and favourites, all that is known of the chosen material, own materials, and beside it the sums:
/// mix, bedding, use of castings, use of leachate. Own materials are entries of the journal; favourites are kept on this machine.
class MaterialsPage : public QWidget {
    Q_OBJECT

public:
    enum class Sum { mix, bedding, castings, leachate };

    MaterialsPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent = nullptr);

    void showSum(Sum sum);
    Sum sum() const;
    void choose(const QString& material);
    QString chosen() const;
    void toggleFavourite();
    void newMaterial();
    void editMaterial();
    /// A form that was begun would be lost.
    bool editing() const;
    /// Asked before what was typed into the form of an own material is thrown away; unset: it goes unasked.
    void setMayThrowAway(forms::MayThrowAway ask) { mayThrowAway_ = std::move(ask); }
    void refreshNow();

    QTableView* table() const { return table_; }
    MaterialsModel* model() const { return model_; }
    MaterialCard* card() const { return card_; }
    MixBench* mix();
    BeddingBench* bedding();
    CastingsBench* castings();
    LeachateBench* leachate();
    forms::CautionCard* cautions() const { return cautions_; }

Q_SIGNALS:
    void trayWanted(const QString& stack, const tierloam::journal::Bed& bed);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// Its parts are made when it is first looked at: the window must not wait for them at its start.
    void build();
    void buildTable();
    void buildSums();
    /// That sum, made when it is first asked for: together they take longer than a page switch may.
    Bench* bench(Sum sum);
    void buildActions();
    void refresh();
    void fit();
    void giveNameTheRest();
    void bringSumIntoSight();
    void tellChosen();
    void tellCautions();
    void showForm(forms::TypedForm* form);
    bool makesWay();
    void closeForm();
    QStringList favourites() const;

    household::Household& household_;
    const ui::Theme& theme_;
    ui::Settings& settings_;
    MaterialsModel* model_;
    MaterialsFilter* filter_;
    ui::PageHead* head_;
    forms::CautionCard* cautions_;           ///< above what scrolls: those of the sum shown and of the material chosen, each once
    QScrollArea* scroll_;
    QWidget* body_;
    QBoxLayout* sides_;
    QWidget* left_;
    QWidget* right_;
    ui::FieldEdit* words_ = nullptr;
    ui::FieldCombo* show_ = nullptr;
    QTableView* table_ = nullptr;
    NameColumn* names_ = nullptr;
    MaterialCard* card_ = nullptr;
    QWidget* formBox_ = nullptr;
    forms::TypedForm* form_ = nullptr;
    forms::MayThrowAway mayThrowAway_;
    QStackedWidget* sums_ = nullptr;
    std::vector<QPushButton*> sumButtons_;
    std::array<Bench*, 4> benches_{};        ///< [sum]; nullptr until first asked for
    bool stale_ = true;
};

}
