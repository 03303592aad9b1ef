#pragma once

#include "ui/drawing/stack_layout.h"

/// A stack on its way from one standing to the next.
namespace tierloam::drawing {

/// A picture and a layout that belong together, for drawStack.
struct StackMoment {
    StackPicture picture;
    StackLayout layout;
};

/// Trays were added, taken or stand elsewhere: something to be seen moving. Batches tell trays apart.
bool standsOtherwise(const StackPicture& from, const StackPicture& to);

/// `share` 0…1 of the way. Trays that stay slide to their place, a new one comes down from above and one that was taken goes up; both fade.
/// At 1 it is `to` with one thing more: trays on their way out follow at the end, with opacity 0.
StackMoment between(const StackMoment& from, const StackMoment& to, double share);

}
