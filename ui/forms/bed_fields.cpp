#include "ui/forms/bed_fields.h"

#include "core/reckoning/bed_year.h"
#include "ui/common/choice_field.h"
#include "ui/common/formats.h"
#include "ui/common/number_field.h"

#include <QLocale>

#include <cmath>

namespace tierloam::forms {

namespace {

/// No thermometer in a bed tells more.
double inTenths(double celsius) { return std::round(celsius * 10.0) / 10.0; }

}

BedFields::BedFields(FieldGrid& grid, ui::ChoiceField& place) : grid_{grid}, choice_{place}
{
    now_ = grid.add(tr("Bed temperature now"), new ui::TemperatureField);
    now_->setHint(tr("as a thermometer in the bed shows it today; the mean of the year follows from it, and it from the mean"));
    mean_ = grid.add(tr("Usual bed temperature"), new ui::TemperatureField);
    QObject::connect(now_, &ui::Field::edited, &grid, [this] {
        if (!now_->temperature()) return;
        leads_ = Leads::now;
        follow();
    });
    QObject::connect(mean_, &ui::Field::edited, &grid, [this] {
        leads_ = Leads::mean;
        follow();
    });
    QObject::connect(&choice_, &ui::Field::edited, &grid, [this] { follow(); });
}

void BedFields::setRowsShown(bool shown)
{
    grid_.setRowShown(now_, shown);
    grid_.setRowShown(mean_, shown);
}

void BedFields::setDay(Day today, bool southern)
{
    if (today_ == today && southern_ == southern) return;
    today_ = today;
    southern_ = southern;
    if (leads_ == Leads::now) leads_ = Leads::mean; // what was shown yesterday gave a mean; that stays
    follow();
}

void BedFields::show(Temperature mean, journal::Place at, bool proposing)
{
    known_ = {mean, at};
    proposing_ = proposing;
    leads_ = Leads::proposal;
    mean_->setTemperature(mean);
    followMean();
}

void BedFields::setPlace(journal::Place place)
{
    fixed_ = place;
    followMean();
}

journal::Place BedFields::place() const { return fixed_ ? *fixed_ : choice_.chosen<journal::Place>().value_or(journal::Place::indoors); }

void BedFields::follow()
{
    if (leads_ == Leads::now)
        if (const auto bed = now_->temperature()) {
            mean_->propose(inTenths(reckoning::yearMeanFrom(bed->base(), place(), today_, southern_)), ui::knownDigits);
            mean_->check();
            tell();
            return;
        }
    if (leads_ == Leads::proposal && proposing_) {
        if (known_ && known_->second == place()) mean_->setTemperature(known_->first);
        else mean_->propose(reckoning::proposedYearMean(place()));
    }
    followMean();
}

void BedFields::followMean()
{
    const auto mean = mean_->temperature();
    if (mean) now_->propose(inTenths(reckoning::bedOn(mean->base(), place(), today_, southern_)), ui::knownDigits);
    else now_->setTemperature(std::nullopt);
    now_->check();
    tell();
}

void BedFields::tell()
{
    const auto mean = mean_->temperature();
    if (!mean) {
        mean_->setHint(tr("the mean of the whole year; the place makes winter and summer of it"));
        return;
    }
    const reckoning::BedYear year = reckoning::bedYear(mean->base(), place(), southern_);
    const auto month = [](int number) { return QLocale{}.standaloneMonthName(number); };
    QString hint = tr("the mean of the whole year; at this place that is about %1 in %2 and %3 in %4", "temperature, month, temperature, month")
                       .arg(ui::temperatureText(year.coldestC), month(year.coldestMonth), ui::temperatureText(year.warmestC), month(year.warmestMonth));
    if (year.coldestC < reckoning::coldKillsBelow) hint += tr("; below %1 worms die").arg(ui::temperatureText(reckoning::coldKillsBelow));
    if (year.warmestC > reckoning::heatKillsAbove) hint += tr("; above %1 worms die").arg(ui::temperatureText(reckoning::heatKillsAbove));
    mean_->setHint(hint);
}

}
