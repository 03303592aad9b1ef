#pragma once

#include "ui/forms/field_grid.h"
#include "ui/forms/form_context.h"

#include <QCoreApplication>

namespace tierloam::ui {
class ChoiceField;
class TemperatureField;
}

namespace tierloam::forms {

/// Two fields for one figure: the usual temperature of the bed, which is the mean of the year and is what the set-up holds, and the temperature that a
/// thermometer shows today. Whichever people type, the other follows by place and season (core/reckoning/bed_year.h), and beneath stands what the
/// coldest and the warmest month will be. Until one is typed, the mean follows the place.
class BedFields {
    Q_DECLARE_TR_FUNCTIONS(BedFields)

public:
    /// Adds both rows. `place` is a field of the same grid.
    BedFields(FieldGrid& grid, ui::ChoiceField& place);

    ui::TemperatureField* mean() const { return mean_; }
    void setRowsShown(bool shown);
    /// The day that counts as today, and the half of the earth.
    void setDay(Day today, bool southern);
    /// Shows a mean that is known for that place; chosen elsewhere, another is proposed, and this again when it comes back. `proposing` false: the mean stays
    /// whatever the place.
    void show(Temperature mean, journal::Place at, bool proposing);
    /// Where the field of the place is not shown.
    void setPlace(journal::Place place);

private:
    enum class Leads { proposal, mean, now };
    journal::Place place() const;
    void follow();
    void followMean();
    void tell();

    FieldGrid& grid_;
    ui::ChoiceField& choice_;
    ui::TemperatureField* mean_ = nullptr;
    ui::TemperatureField* now_ = nullptr;
    Day today_{};
    bool southern_ = false;
    bool proposing_ = true;
    Leads leads_ = Leads::proposal;
    std::optional<std::pair<Temperature, journal::Place>> known_;
    std::optional<journal::Place> fixed_;
};

}
