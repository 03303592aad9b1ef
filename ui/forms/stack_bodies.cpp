#include "ui/common/area_field.h"
#include "ui/common/actions.h"
#include "ui/common/choice_field.h"
#include "ui/common/date_field.h"
#include "ui/common/number_field.h"
#include "ui/forms/bed_fields.h"
#include "ui/forms/body.h"
#include "ui/forms/event_words.h"
#include "ui/forms/setup_choices.h"

#include <QCoreApplication>
#include <QToolButton>

namespace tierloam::forms {

namespace {

using ui::ChoiceField;

class EventBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(EventBody)

public:
    EventBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        what_ = grid.add(tr("What"), new ui::TextField);
        what_->setRequired(tr("What happened, in a word?"));
        QStringList words = suggestedEvents();
        for (auto entry = context.journal->entries.rbegin(); entry != context.journal->entries.rend(); ++entry) {
            const auto* event = std::get_if<journal::Event>(&entry->action);
            if (!event) continue;
            const QString word = eventShown(QString::fromStdString(event->what));
            if (!words.contains(word, Qt::CaseInsensitive)) words.append(word);
        }
        what_->suggest(words);
        what_->setPlaceholder(tr("%1, …").arg(suggestedEvents().first(5).join(QStringLiteral(", "))));
        what_->setHint(tr("%1 puts what may be wrong in order, by what is known of this stack").arg(ui::keysText(ui::ActionId::whatIsWrong)));
        until_ = grid.add(tr("Until"), new ui::DateField{context.today});
        until_->clearMoment();
        until_->timeButton()->hide();
    }

    void fill(const journal::Action& action) override
    {
        const auto& event = std::get<journal::Event>(action);
        what_->setText(eventShown(QString::fromStdString(event.what)));
        if (event.until) until_->setMoment({*event.until, std::nullopt});
        else until_->clearMoment();
        until_->timeButton()->hide();
    }

    journal::Action action() const override
    {
        const auto until = until_->moment().value;
        return journal::Event{eventWord().toStdString(), until ? std::optional{until->day} : std::nullopt};
    }

    QString eventWord() const override { return eventWritten(what_->text()); }
    bool isAboutCold() const override { return eventWord() == QLatin1StringView{"cold"}; }

private:
    ui::TextField* what_ = nullptr;
    ui::DateField* until_ = nullptr;
};

class SetupBody final : public Body {
    Q_DECLARE_TR_FUNCTIONS(SetupBody)

public:
    SetupBody(FieldGrid& grid, const FormContext& context) : Body{grid, context}
    {
        place_ = grid.add(tr("Place"), new ChoiceField);
        addPlaces(*place_);
        bed_.emplace(grid, *place_);
        bed_->setDay(context.today, context.southern);
        temp_ = bed_->mean();
        trays_ = grid.add(tr("Trays owned"), new ui::CountField{1, mostTrays});
        area_ = grid.add(tr("Floor of a tray"), new ui::AreaField);
        height_ = grid.add(tr("Height of a tray"), new ui::LengthField{leastHeightCm, mostHeightCm});
        sump_ = grid.add(tr("Sump holds"), new ui::VolumeField);
        spigot_ = grid.add(tr("Spigot"), new ChoiceField);
        addSpigots(*spigot_);
        stand_ = grid.add(tr("Stands on"), new ChoiceField);
        addStands(*stand_);
        for (ui::Field* field : std::initializer_list<ui::Field*>{temp_, trays_, area_, height_, sump_}) field->setRequired(tr("This cannot be left out."));
    }

    /// A stack as it stands: only what is then changed is recorded.
    void follow(const journal::Standing* standing, std::optional<int>) override
    {
        bed_->setDay(context_.today, context_.southern);
        // An entry that leaves the place out is of the place in force.
        if (standing && editing_ && !grid_.isRowShown(place_)) bed_->setPlace(standing->settings.place);
        if (!standing || editing_ || shown_) return;
        shown_ = true;
        journal::Setup now;
        now.area = standing->settings.area;
        now.height = standing->settings.height;
        now.trays = standing->settings.trays;
        now.sump = standing->settings.sump;
        now.spigot = standing->spigot;
        now.place = standing->settings.place;
        now.temp = standing->settings.temp;
        now.stand = standing->settings.stand;
        show(now);
        // Of another unit to the digits that are known: only what is changed is recorded.
        if (now.area) area_->proposeArea(*now.area, ui::knownDigits);
        if (now.height) height_->propose(now.height->base(), ui::knownDigits);
        if (now.sump) sump_->proposeVolume(*now.sump, ui::knownDigits);
        before_ = read();
    }

    /// An entry: what it leaves out stays out unless it is changed from what was in force.
    void fill(const journal::Action& action) override
    {
        written_ = std::get<journal::Setup>(action);
        const journal::StackSettings usual;
        journal::Setup whole = written_;
        if (!whole.area) whole.area = usual.area;
        if (!whole.height) whole.height = usual.height;
        if (!whole.trays) whole.trays = usual.trays;
        if (!whole.sump) whole.sump = usual.sump;
        if (!whole.spigot) whole.spigot = journal::Spigot::open;
        if (!whole.place) whole.place = usual.place;
        if (!whole.temp) whole.temp = usual.temp;
        if (!whole.stand) whole.stand = usual.stand;
        show(whole);
        before_ = read();
        // Only what the entry names is shown: the rest is not its matter, and a later setup must not gain keys.
        grid_.setRowShown(area_, written_.area.has_value() || isWholeSetup());
        grid_.setRowShown(height_, written_.height.has_value() || isWholeSetup());
        grid_.setRowShown(trays_, written_.trays.has_value() || isWholeSetup());
        grid_.setRowShown(sump_, written_.sump.has_value() || isWholeSetup());
        grid_.setRowShown(spigot_, written_.spigot.has_value() || isWholeSetup());
        grid_.setRowShown(place_, written_.place.has_value() || isWholeSetup());
        bed_->setRowsShown(written_.temp.has_value() || isWholeSetup());
        grid_.setRowShown(stand_, written_.stand.has_value() || isWholeSetup());
    }

    journal::Action action() const override
    {
        const journal::Setup now = read();
        journal::Setup changed = written_;
        const auto take = [&](auto journal::Setup::*key) {
            if (now.*key != before_.*key) changed.*key = now.*key;
        };
        take(&journal::Setup::area);
        take(&journal::Setup::height);
        take(&journal::Setup::trays);
        take(&journal::Setup::sump);
        take(&journal::Setup::spigot);
        take(&journal::Setup::place);
        take(&journal::Setup::temp);
        take(&journal::Setup::stand);
        return changed;
    }

    QString wholeProblem() const override
    {
        if (editing_ || read() != before_) return {};
        return tr("Nothing is changed yet.");
    }

    void forEditing() override { editing_ = true; }
    /// A bed that is not as warm as expected: the figure that the set-up holds for it.
    ui::Field* fieldFor(reckoning::LookKind look) const override { return look == reckoning::LookKind::bedTemperature ? temp_ : nullptr; }
    bool isAboutCold() const override { return place_->chosen<journal::Place>() != journal::Place::indoors; }

private:
    /// The first setup of the stack (its name began with it) shows every key.
    bool isWholeSetup() const
    {
        for (const journal::Entry& entry : context_.journal->entries) {
            if (entry.stack != context_.stack) continue;
            const auto* first = std::get_if<journal::Setup>(&entry.action);
            return first && *first == written_;
        }
        return true;
    }

    void show(const journal::Setup& setup)
    {
        area_->setArea(setup.area);
        height_->setLength(setup.height);
        trays_->setCount(setup.trays);
        sump_->setVolume(setup.sump);
        spigot_->choose(setup.spigot);
        place_->choose(setup.place);
        // What an entry says stays what it says, whatever place is chosen for it.
        if (setup.temp && setup.place) bed_->show(*setup.temp, *setup.place, shown_);
        stand_->choose(setup.stand);
    }

    journal::Setup read() const
    {
        journal::Setup setup;
        setup.area = area_->area().value;
        setup.height = height_->length();
        setup.trays = trays_->count();
        setup.sump = sump_->volume();
        setup.spigot = spigot_->chosen<journal::Spigot>();
        setup.place = place_->chosen<journal::Place>();
        setup.temp = temp_->temperature();
        setup.stand = stand_->chosen<journal::Stand>();
        return setup;
    }

    ui::AreaField* area_ = nullptr;
    ui::LengthField* height_ = nullptr;
    ui::CountField* trays_ = nullptr;
    ui::VolumeField* sump_ = nullptr;
    ChoiceField* spigot_ = nullptr;
    ChoiceField* place_ = nullptr;
    std::optional<BedFields> bed_;
    ui::TemperatureField* temp_ = nullptr;
    ChoiceField* stand_ = nullptr;
    journal::Setup written_;
    journal::Setup before_;
    bool editing_ = false;
    bool shown_ = false;
};

}

std::unique_ptr<Body> makeEvent(FieldGrid& grid, const FormContext& context) { return std::make_unique<EventBody>(grid, context); }
std::unique_ptr<Body> makeSetup(FieldGrid& grid, const FormContext& context) { return std::make_unique<SetupBody>(grid, context); }

}
