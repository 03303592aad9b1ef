#pragma once

#include "core/household/household.h"
#include "core/advice/advice.h"
#include "ui/common/panels.h"
#include "ui/drawing/stack_picture.h"
#include "ui/drawing/strip.h"

#include <QList>
#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// What the shelf shows, as plain values: made in one go from the journal, the reckoning and the advice, and drawn without asking further.
namespace tierloam::shelf {

/// The shape that stands beside a verdict, so that its colour is not needed.
enum class Sign { ready, soon, danger, drop, light, working, silent, question };

/// What is to be said of a stack in one box.
struct Verdict {
    Sign sign = Sign::working;
    ui::Tone tone = ui::Tone::plain;
    QString state;      ///< "Bottom tray is ready"
    QString reason;     ///< what to do and why, in numbers
    QString normal;     ///< what is normal where people worry; may be empty
};

/// Names and values, as ui::FactList shows them.
using Facts = QList<std::pair<QString, QString>>;

/// One part of a stack as it is told to those who do not see it, and in the panel that opens at a click.
struct Part {
    int slot = 0;       ///< 1 = bottom; 0 = the sump
    QString name;       ///< "Tray in slot 1 of 3, batch 4"
    QString value;      ///< one or two sentences: what the drawing says
    Facts facts;        ///< for the panel and the tool tip, with ranges
    QStringList notes;  ///< what is normal, and what to expect
};

struct StackModel {
    std::string key;                 ///< the stack's name as in the journal
    QString title;
    QString line;                    ///< "colony 1.1 kg (0.9–1.4) · 21 °C"
    QString lastLine;                ///< "fed 450 g today · drained 27 Apr"
    QString flag;                    ///< a word at the end of the title: "saving…", "updating…", "silent 40 d"
    drawing::StackPicture picture;
    Verdict verdict;
    std::vector<Part> parts;         ///< the sump first, then slots from the bottom up
    QString value;                   ///< what the whole drawing says, in a few sentences
    QString feedLabel, coverLabel, waterLabel, drainLabel; ///< on the buttons, with the usual amount
    QString limitLabel, limitTip;    ///< what is borne this week, as due list and feeding plan say it; empty when it is not known
    bool limitBelowUsual = false;    ///< then one click writes down what is borne
    bool usualIsMeant = true;        ///< its button stands out; not where less is borne, or nothing
    QString feedTip, coverTip, waterTip, drainTip; ///< what one click writes down
    bool canFeed = false, canDrain = false;    ///< a tray stands that takes food; the stack stands today and the file can be written
    QString whyNot;                            ///< why a button cannot be pressed
    drawing::Strip processing, colony;
    drawing::Bars drained;
    QString stripsText;              ///< the small charts in words
};

struct ShelfModel {
    QString household;
    QString line;                    ///< "Friday 2 May · usual feeding about 1.0 kg a week"
    Day today{}, shown{};
    Day first{};                     ///< the first day that the slider reaches; == today when nothing stood before
    bool past() const { return shown < today; }
    bool estimating = false;         ///< no estimates at all yet
    bool retiredOnly = false;        ///< stacks were kept once, none stands
    std::vector<StackModel> stacks;
    drawing::TimeAxis axis;
};

/// What the model is made from. `reckoning` may be null and may lag behind the journal.
struct ShelfInputs {
    QString household;
    Day today{}, shown{};            ///< shown ≤ today
    std::shared_ptr<const household::JournalView> journal;
    std::shared_ptr<const reckoning::Reckoning> reckoning;
    household::StackOrder order;                ///< as people put them; empty: as they were set up
    bool readOnly = false;           ///< nothing can be written down
    bool current = true;             ///< the reckoning has seen the whole journal
    std::function<household::Usual(const std::string&)> usual;
    std::function<Amount(const std::string&)> usualCover; ///< of a cover that comes without food; empty: as with a feeding
    std::function<std::vector<advice::Advice>(const reckoning::StackReckoning&)> advice;
};

ShelfModel makeShelf(const ShelfInputs& inputs);

/// Days that the small charts look back.
inline constexpr int stripDays = 180;

}
