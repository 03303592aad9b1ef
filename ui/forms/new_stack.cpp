#include "ui/forms/new_stack.h"

#include "core/household/seasons.h"
#include "core/journal/names.h"
#include "core/materials/bedding.h"
#include "core/reckoning/crowding.h"
#include "ui/common/amount_field.h"
#include "ui/common/area_field.h"
#include "ui/common/choice_field.h"
#include "ui/common/date_field.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/material_field.h"
#include "ui/common/material_names.h"
#include "ui/common/number_field.h"
#include "ui/common/panels.h"
#include "ui/forms/bed_fields.h"
#include "ui/forms/field_grid.h"
#include "ui/forms/form_context.h"
#include "ui/forms/form_shell.h"
#include "ui/forms/setup_choices.h"

#include <QCoreApplication>
#include <QLabel>
#include <QPushButton>
#include <QShowEvent>
#include <QVBoxLayout>

#include <cmath>

namespace tierloam::forms {

namespace {

constexpr double leastDepthCm = 0.5;

/// Whole tens of grams: no kitchen scale is asked for more.
Amount roundedGrams(Mass mass)
{
    return {std::max(10.0, std::round(mass.base() * 100.0) * 10.0), Unit::g};
}

}

class NewStack::Private {
    Q_DECLARE_TR_FUNCTIONS(NewStack)

public:
    Private(household::Household& door, FormShell& frame) : household{door}, shell{frame}, context{FormContext::of(door, {})} {}

    void build(QWidget* content);
    void proposeBedding() const;
    void sayMix();
    void refreshCautions();
    QString doubt() const;
    QString nameProblem() const;
    journal::Entries entries() const;

    household::Household& household;
    FormShell& shell;
    FormContext context;
    FieldGrid* grid = nullptr;
    ui::TextField* name = nullptr;
    ui::ChoiceField* place = nullptr;
    std::optional<BedFields> bed;
    ui::TemperatureField* temp = nullptr;
    ui::AreaField* area = nullptr;
    ui::LengthField* height = nullptr;
    ui::CountField* trays = nullptr;
    ui::VolumeField* sump = nullptr;
    ui::ChoiceField* spigot = nullptr;
    ui::ChoiceField* stand = nullptr;
    ui::MaterialField* bedding = nullptr;
    ui::LengthField* depth = nullptr;
    ui::AmountField* amount = nullptr;
    ui::AmountField* worms = nullptr;
    ui::ChoiceField* species = nullptr;
    ui::AmountField* feed = nullptr;
    ui::AmountField* water = nullptr;
    ui::DateField* date = nullptr;
    bool amountTyped = false;
    bool touched = false;
    QString doubted; ///< what was said to look at again when it was to be recorded: a second press stands by it
    std::optional<household::Ticket> ticket;
};

void NewStack::Private::build(QWidget* content)
{
    auto* column = new QVBoxLayout{content};
    column->setContentsMargins(0, 0, 2, 0);
    grid = new FieldGrid{content};
    column->addWidget(grid);
    column->addStretch(1);
    const auto section = [this](const QString& text) {
        auto* label = ui::makeLabel(text, ui::TextRole::section, grid);
        label->setContentsMargins(0, grid->fields().isEmpty() ? 0 : 8, 0, 0);
        grid->addWide(label);
    };
    const journal::StackSettings usual;
    const auto required = [](ui::Field* field, const QString& words) { field->setRequired(words); };

    section(tr("The stack"));
    name = grid->add(tr("Name"), new ui::TextField);
    required(name, tr("Give it a name, such as where it stands."));
    name->setPlaceholder(tr("Scullery, Shed, Balcony, …"));
    place = grid->add(tr("Place"), new ui::ChoiceField);
    addPlaces(*place);
    bed.emplace(*grid, *place);
    bed->setDay(context.today, context.southern);
    temp = bed->mean();
    bed->show(usual.temp, journal::Place::indoors, true);
    required(temp, tr("How warm is it there, usually?"));
    area = grid->add(tr("Floor of a tray"), new ui::AreaField);
    area->setSides(centimetres(40), centimetres(40));
    required(area, tr("How large is a tray?"));
    height = grid->add(tr("Height of a tray"), new ui::LengthField{leastHeightCm, mostHeightCm});
    height->propose(usual.height.base());
    required(height, tr("How high is a tray?"));
    trays = grid->add(tr("Trays owned"), new ui::CountField{1, mostTrays});
    trays->setCount(usual.trays);
    required(trays, tr("How many trays are there?"));
    sump = grid->add(tr("Sump holds"), new ui::VolumeField);
    sump->proposeVolume(usual.sump);
    required(sump, tr("How much does the drainage tray hold?"));
    spigot = grid->add(tr("Spigot"), new ui::ChoiceField);
    addSpigots(*spigot);
    stand = grid->add(tr("Stands on"), new ui::ChoiceField);
    addStands(*stand);

    section(tr("The first bedding"));
    bedding = grid->add(tr("Bedding"), new ui::MaterialField{context.journal->materials, materials::Kind::bedding, context.beddingsLately(), {}});
    bedding->setMaterial(materials::usualBedding);
    required(bedding, tr("Which bedding?"));
    depth = grid->add(tr("Depth once laid"), new ui::LengthField{leastDepthCm, mostHeightCm});
    depth->propose(materials::usualBeddingDepthCm);
    required(depth, tr("How deep? %1 to %2 is common.").arg(ui::lengthText(2.5), ui::lengthText(5.0)));
    amount = grid->add(tr("Amount, dry"), new ui::AmountField{ui::massUnits()});
    required(amount, tr("How much bedding, as it comes to hand?"));

    section(tr("The worms"));
    worms = grid->add(tr("Worms put in"), new ui::AmountField{ui::massUnits()});
    worms->setHint(tr("%1 to %2 is common for a first tray; empty if they come later").arg(ui::massText(0.11), ui::massText(0.45)));
    worms->setUnit(ui::measures() == ui::Measures::us ? Unit::oz : Unit::g);
    species = grid->add(tr("Species"), new ui::ChoiceField);
    for (const materials::Species& each : materials::species()) {
        const QString text = QString::fromUtf8(each.name.data(), static_cast<qsizetype>(each.name.size()));
        species->addChoice(text, each.name == journal::defaultSpecies ? QString{} : text);
    }
    feed = grid->add(tr("First feeding"), new ui::AmountField{ui::massAndVolumeUnits()});
    feed->setHint(tr("a handful of kitchen mix at most; empty to wait"));
    water = grid->add(tr("More water"), new ui::AmountField{ui::volumeUnits()});
    water->setHint(tr("beyond what wets the bedding; usually empty"));
    date = grid->add(tr("Started on"), new ui::DateField{context.today});
    required(date, tr("On which day?"));
    date->setDone(true);

    QObject::connect(amount, &ui::Field::edited, grid, [this] { amountTyped = !amount->isEmpty(); });
    QObject::connect(grid, &FieldGrid::edited, grid, [this] {
        touched = true;
        shell.setProblem({});
        proposeBedding();
        sayMix();
        refreshCautions();
        shell.setDoubt(doubt());
    });
    proposeBedding();
    sayMix();
    refreshCautions();
}

/// The amount follows size, depth and material until it was weighed by hand.
void NewStack::Private::proposeBedding() const
{
    const materials::Material* row = bedding->row();
    const auto floor = area->area().value;
    const auto deep = depth->length();
    if (amountTyped || amount->edit()->hasFocus() || !row || !floor || !deep) return;
    amount->proposeRound(roundedGrams(materials::beddingForTray(*floor, *deep, *row).asItComes));
}

void NewStack::Private::sayMix()
{
    const materials::Material* row = bedding->row();
    const auto floor = area->area().value;
    const auto dry = amount->amount().value;
    if (!row || !floor || !dry || dry->value <= 0) {
        shell.setEffect({});
        return;
    }
    const Volume wetting = materials::waterForBedding(*dry->mass(), *row);
    const Length laid = materials::laidDepth(*dry->mass(), *floor, *row);
    shell.setEffect(tr("Put in %1 of «%2» and %3 of water: it makes about %4, as wet as a wrung-out sponge. Let it stand for a day before the worms go in.")
                        .arg(ui::amountText(*dry), ui::materialText(row->name), ui::volumeText(wetting.base()), ui::lengthText(laid.base())));
}

/// Amounts that no tray of this size can hold or feed are mostly a slip of the pen or of the unit.
QString NewStack::Private::doubt() const
{
    const auto floor = area->area().value;
    const auto high = height->length();
    if (!floor) return {};
    QStringList lines;
    const Mass most = reckoning::mostWorms(*floor);
    if (const auto put = worms->amount().value; put && put->mass() && *put->mass() > most)
        lines << tr("%1 of worms is more than a tray of this floor can carry, about %2. Is the amount right, and its unit?").arg(ui::amountText(*put), ui::massText(most.base()));
    const materials::Material* food = context.journal->materials.find(journal::defaultFood);
    if (const auto given = feed->amount().value; given && food && high) {
        const auto mass = materials::freshMass(*given, *food);
        const double room = floor->base() * high->base() / 100.0 * food->bulkKgPerM3;
        if (mass && mass->base() > room) lines << tr("%1 of food is more than the whole tray holds, about %2. Is the amount right, and its unit?").arg(ui::amountText(*given), ui::massText(room));
    }
    const materials::Material* row = bedding->row();
    if (const auto dry = amount->amount().value; dry && dry->mass() && row && high) {
        const Length laid = materials::laidDepth(*dry->mass(), *floor, *row);
        if (laid > *high) lines << tr("%1 of bedding would lie %2 deep in a tray that is %3 high. Is the amount right, and its unit?").arg(ui::amountText(*dry), ui::lengthText(laid.base()), ui::lengthText(high->base()));
    }
    return lines.join(QLatin1Char(' '));
}

void NewStack::Private::refreshCautions()
{
    CautionFacts facts;
    facts.kind = FormKind::setup;
    facts.material = bedding->isEmpty() ? nullptr : bedding->row();
    facts.firstOfMaterial = facts.material && context.neverUsed(facts.material->name);
    facts.cold = place->chosen<journal::Place>() != journal::Place::indoors;
    shell.setCautions(cautionsFor(facts));
}

QString NewStack::Private::nameProblem() const
{
    const std::string typed = name->text().toStdString();
    if (const journal::StackHistory* there = household.journal()->replay.stack(typed)) {
        const bool retired = !there->steps.empty() && there->steps.back().after.retired;
        return retired ? tr("A retired stack bears that name; choose another.") : tr("There is a stack of that name already.");
    }
    return journal::isStackName(typed) ? QString{} : tr("A name cannot hold a semicolon.");
}

journal::Entries NewStack::Private::entries() const
{
    journal::Entries list;
    const auto add = [&](journal::Action action) {
        journal::Entry entry;
        entry.date = *date->moment().value;
        entry.stack = name->text().toStdString();
        entry.action = std::move(action);
        list.push_back(std::move(entry));
    };
    journal::Setup setup;
    setup.area = area->area().value;
    setup.height = height->length();
    setup.trays = trays->count();
    setup.sump = sump->volume();
    setup.spigot = spigot->chosen<journal::Spigot>();
    setup.place = place->chosen<journal::Place>();
    setup.temp = temp->temperature();
    setup.stand = stand->chosen<journal::Stand>();
    add(setup);
    add(journal::Bed{*amount->amount().value, bedding->material().value.value_or(std::string{}), std::nullopt});
    if (const auto poured = water->amount().value) add(journal::Water{*poured});
    if (const auto put = worms->amount().value) add(journal::Stock{*put, species->value().toString().toStdString(), std::nullopt});
    if (const auto food = feed->amount().value) add(journal::Feed{*food, {}, std::nullopt});
    return list;
}

NewStack::NewStack(household::Household& household, QWidget* parent) : TypedForm{parent}
{
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    auto* shell = new FormShell{this};
    column->addWidget(shell);
    d_ = std::make_unique<Private>(household, *shell);
    auto* content = new QWidget;
    d_->build(content);
    shell->setContent(content);
    shell->setTitle(tr("New stack"));
    shell->setLine(tr("What is not known can stay as it is; everything can be changed later."));
    shell->setAcceptText(tr("Start the stack"));
    shell->setEffectProminent();
    setAccessibleName(shell->title());
    if (household.readOnly()) {
        shell->setProblem(tr("This household was opened for reading only; nothing can be recorded."));
        shell->setAcceptEnabled(false);
    }
    connect(shell, &FormShell::accepted, this, &NewStack::record);
    connect(shell, &FormShell::cancelled, this, &NewStack::cancel);
    // Midnight may pass while it is filled in: estimates of a new day come by themselves.
    const auto followDay = [this] {
        d_->date->setToday(d_->household.today());
        d_->bed->setDay(d_->household.today(), household::livesSouth(d_->household));
    };
    connect(&household, &household::Household::changed, this, followDay);
    connect(&household, &household::Household::reckoned, this, followDay);
    connect(&household, &household::Household::recorded, this, [this](household::Ticket ticket) {
        if (d_->ticket != ticket) return;
        d_->ticket.reset();
        Q_EMIT started(d_->name->text());
        Q_EMIT finished();
    });
    connect(&household, &household::Household::failed, this, [this](household::Ticket ticket, const QString& why) {
        if (d_->ticket != ticket) return;
        d_->ticket.reset();
        d_->shell.setBusy({});
        d_->shell.setProblem(tr("Nothing was recorded; what you typed is still here. %1").arg(why));
        d_->shell.acceptButton()->setFocus();
    });
}

NewStack::~NewStack() = default;

bool NewStack::touched() const
{
    return d_->touched;
}

int NewStack::heightForWidth(int width) const
{
    return layout()->heightForWidth(width);
}

void NewStack::record()
{
    if (d_->ticket || d_->household.readOnly()) return;
    const bool sound = d_->grid->check();
    if (const QString words = d_->name->isEmpty() ? QString{} : d_->nameProblem(); !words.isEmpty()) {
        d_->name->showProblem(words);
        d_->name->setFocus();
        d_->grid->bringIntoSight(d_->name);
        return;
    }
    if (!sound) return;
    // Said once more where it cannot be missed; whoever means it presses again.
    if (const QString doubt = d_->doubt(); doubt != d_->doubted) {
        d_->doubted = doubt;
        d_->shell.setDoubt(doubt);
        if (!doubt.isEmpty()) {
            d_->shell.setProblem(tr("Nothing is recorded yet. If it is meant so, press «%1» once more.").arg(d_->shell.acceptButton()->text()));
            return;
        }
    }
    journal::Edit edit;
    edit.added = d_->entries();
    if (const QString refusal = d_->household.refusalOf(edit); !refusal.isEmpty()) {
        d_->shell.setProblem(tr("This cannot be recorded. %1").arg(refusal));
        return;
    }
    d_->shell.setProblem({});
    d_->shell.setBusy(tr("Recording…"));
    d_->ticket = d_->household.recordAll(edit.added, tr("%1: new stack").arg(d_->name->text()));
}

void NewStack::cancel()
{
    if (d_->ticket || !mayGo()) return;
    Q_EMIT finished();
}

void NewStack::showEvent(QShowEvent* event)
{
    TypedForm::showEvent(event);
    if (!event->spontaneous()) d_->grid->focusFirst();
}

}
