#pragma once

namespace tierloam::forms {

/// A widget that says less, or scrolls a part of itself, where there is little room.
class HeldToRoom {
public:
    virtual ~HeldToRoom() = default;
    /// Told the most height (px) it can have at `width`; returns the least with which it is whole but for the part that scrolls.
    virtual int holdTo(int height, int width) = 0;
};

}
