#pragma once

#include "core/reckoning/look_kind.h"
#include "ui/common/field.h"
#include "ui/forms/field_grid.h"
#include "ui/forms/form_context.h"
#include "ui/forms/form_kind.h"

#include <memory>
#include <optional>

namespace tierloam::forms {

/// What one kind of form asks beyond stack, slot, date and note: it fills rows of a grid and reads them back as an action.
class Body {
public:
    Body(FieldGrid& grid, const FormContext& context) : grid_{grid}, context_{context} {}
    virtual ~Body() = default;
    Body(const Body&) = delete;
    Body& operator=(const Body&) = delete;

    /// Shows an action that is there already; its alternative is that of the kind.
    virtual void fill(const journal::Action& action) = 0;
    /// The action as typed. Where nothing sound stands yet it is a guess, good for looking ahead; written only after the grid was found sound.
    virtual journal::Action action() const = 0;
    /// What is recorded together with it, in one undo step: the cover of a feeding. Never in an editor.
    virtual std::optional<journal::Action> companion() const { return std::nullopt; }
    /// What is wrong with the form as a whole rather than with one field; empty when nothing is.
    virtual QString wholeProblem() const { return {}; }
    /// Date or slot was chosen: adapt hints and bounds. `standing` nullptr: the stack does not stand on that day.
    virtual void follow(const journal::Standing* standing, std::optional<int> slot) { static_cast<void>(standing), static_cast<void>(slot); }
    /// The material that is fed or bedded, for cautions; nullptr when none or unknown.
    virtual const materials::Material* material() const { return nullptr; }
    /// True when what was typed makes cold the matter.
    virtual bool isAboutCold() const { return false; }
    /// The word of an event as it will be written; empty for other kinds.
    virtual QString eventWord() const { return {}; }
    /// The field of what is to be read; nullptr when the form asks nothing of it.
    virtual ui::Field* fieldFor(reckoning::LookKind look) const { static_cast<void>(look); return nullptr; }
    /// Another amount in the place of the typed one; for kinds whose amount may be doubted.
    virtual void takeAmount(const Amount& amount) { static_cast<void>(amount); }
    /// For an editor: no companion, nothing of the usual filled in.
    virtual void forEditing() {}

protected:
    FieldGrid& grid_;
    const FormContext& context_;
};

/// The fields of that kind, with the usual amounts and the last choices filled in. `context` outlives the body.
std::unique_ptr<Body> makeBody(FormKind kind, FieldGrid& grid, const FormContext& context);

// By theme, each in its own file.
std::unique_ptr<Body> makeFeed(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeCover(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeWater(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeRoutine(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeDrain(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeFlush(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeReading(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeCheck(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeTrayWeight(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeWeigh(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeCount(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeStock(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeRemove(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeMove(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeLid(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeHarvest(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeBed(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeEvent(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeSetup(FieldGrid& grid, const FormContext& context);
std::unique_ptr<Body> makeOwnMaterial(FieldGrid& grid, const FormContext& context);
/// rotate, loosen, note, retire: nothing beyond date and note is asked.
std::unique_ptr<Body> makePlain(FormKind kind, FieldGrid& grid, const FormContext& context);

}
