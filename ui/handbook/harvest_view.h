#pragma once

#include "core/guide/harvest_watch.h"
#include "core/guide/lifting.h"
#include "core/household/household.h"
#include "ui/common/theme.h"

#include <QScrollArea>

class QLabel;
class QVBoxLayout;

namespace tierloam::forms {
class CautionCard;
}
namespace tierloam::ui {
class LengthField;
class Settings;
}

namespace tierloam::handbook {

class StackChoice;

/// A harvest of one stack, guided: what each tray weighs before it is lifted, the steps, a card for each day of light-drying, and what became of the
/// castings that were taken. It opens the forms that record the steps.
class HarvestView : public QScrollArea {
    Q_OBJECT

public:
    HarvestView(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent = nullptr);

    enum class Stage { nothing, beforeLifting, drying };

    void chooseStack(const QString& stack);
    QString stack() const;
    Stage stage() const { return stage_; }
    void follow();
    forms::CautionCard* cautions() const { return cautions_; }

Q_SIGNALS:
    void entryWanted(const QString& stack, const tierloam::journal::Action& action, std::optional<int> slot);

private:
    void build();
    void beforeLifting(QVBoxLayout* rows, const journal::Standing& standing, const reckoning::StackReckoning& now);
    void drying(QVBoxLayout* rows, const journal::StackHistory& history, const reckoning::StackReckoning& now);
    void keepThem(QVBoxLayout* in, QWidget* card, const guide::HarvestOutcome& outcome);
    void afterwards(QVBoxLayout* rows, const journal::Standing& standing, const journal::StackHistory& history, const reckoning::StackReckoning& now);
    void addButton(QWidget* buttons, const QString& text, bool first, const char* name, const journal::Action& action, std::optional<int> slot = std::nullopt);

    household::Household& household_;
    const ui::Theme& theme_;
    ui::Settings& settings_;
    forms::CautionCard* cautions_;   ///< above everything, so that it is in sight in a small window too
    StackChoice* stack_;
    ui::LengthField* reach_;
    QLabel* reachLabel_;
    QLabel* line_;
    QWidget* cards_;
    QVBoxLayout* column_;
    Stage stage_ = Stage::nothing;
};

}
