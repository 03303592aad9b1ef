#include "ui/forms/body.h"

namespace tierloam::forms {

namespace {

class PlainBody final : public Body {
public:
    PlainBody(journal::Action action, FieldGrid& grid, const FormContext& context) : Body{grid, context}, action_{std::move(action)} {}
    void fill(const journal::Action& action) override { action_ = action; }
    journal::Action action() const override { return action_; }

private:
    journal::Action action_;
};

}

std::unique_ptr<Body> makePlain(FormKind kind, FieldGrid& grid, const FormContext& context)
{
    journal::Action action = journal::Note{};
    if (kind == FormKind::rotate) action = journal::Rotate{};
    else if (kind == FormKind::loosen) action = journal::Loosen{};
    else if (kind == FormKind::retire) action = journal::Retire{};
    return std::make_unique<PlainBody>(std::move(action), grid, context);
}

std::unique_ptr<Body> makeBody(FormKind kind, FieldGrid& grid, const FormContext& context)
{
    switch (kind) {
    case FormKind::feed: return makeFeed(grid, context);
    case FormKind::cover: return makeCover(grid, context);
    case FormKind::water: return makeWater(grid, context);
    case FormKind::routine: return makeRoutine(grid, context);
    case FormKind::drain: return makeDrain(grid, context);
    case FormKind::flush: return makeFlush(grid, context);
    case FormKind::reading: return makeReading(grid, context);
    case FormKind::check: return makeCheck(grid, context);
    case FormKind::weigh: return makeWeigh(grid, context);
    case FormKind::count: return makeCount(grid, context);
    case FormKind::trayWeight: return makeTrayWeight(grid, context);
    case FormKind::lid: return makeLid(grid, context);
    case FormKind::harvest: return makeHarvest(grid, context);
    case FormKind::addTray:
    case FormKind::bedding: return makeBed(grid, context);
    case FormKind::stock: return makeStock(grid, context);
    case FormKind::remove: return makeRemove(grid, context);
    case FormKind::move: return makeMove(grid, context);
    case FormKind::event: return makeEvent(grid, context);
    case FormKind::setup: return makeSetup(grid, context);
    case FormKind::material: return makeOwnMaterial(grid, context);
    case FormKind::rotate:
    case FormKind::loosen:
    case FormKind::note:
    case FormKind::retire: break;
    }
    return makePlain(kind, grid, context);
}

}
