#pragma once

namespace tierloam::shelf {

/// Makes StackCanvas speak: the canvas is a grouping named after its stack, whose value says what its drawing says; its children are
/// the sump (index 0) and the trays from the bottom up, each with name, value, place, focus and the action "open". Verdicts are texts and small
/// charts are charts whose value says what they show. Safe to call often.
void installStackAccess();

}
