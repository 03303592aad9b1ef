#pragma once

#include "tests/support/calm_stack.h"

/// Three trays, of tests that change one thing of them.
namespace tierloam::tests::three {

inline TrayEstimate tray(int slot, TrayState state, double ready, double ratio)
{
    TrayEstimate made = tests::tray(slot, ratio);
    made.state = state;
    made.readyProbability = ready;
    made.feedToCast = {ratio / 2, ratio, ratio * 2};
    return made;
}

/// Bottom at work, room on top.
inline StackReckoning calm()
{
    StackReckoning stack = tests::calm();
    stack.now.slots = {tray(1, TrayState::working, 0.1, 0.4), tray(2, TrayState::working, 0.0, 0.8), tray(3, TrayState::working, 0.0, 4.0)};
    for (StackEstimate& day : stack.history) day.slots = stack.now.slots;
    return stack;
}

inline StackReckoning readyAndTurn()
{
    StackReckoning stack = calm();
    stack.now.slots[0] = tray(1, TrayState::ready, 0.93, 0.07);
    stack.readySince = in(-3);
    stack.turnSince = in(-2);
    return stack;
}

}
