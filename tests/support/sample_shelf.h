#pragma once

#include "tests/support/sample_reckoning.h"
#include "ui/shelf/shelf_model.h"

/// The sample household as the shelf shows it.
namespace tierloam::tests {

inline std::shared_ptr<const household::JournalView> viewOf(journal::Entries entries)
{
    auto view = std::make_shared<household::JournalView>();
    view->replay = journal::replay(entries);
    view->entries = std::move(entries);
    return view;
}

inline advice::Advice adviceOf(const std::string& stack, advice::Code code, advice::Severity severity, std::string text, std::string because)
{
    advice::Advice made;
    made.stack = stack;
    made.code = code;
    made.severity = severity;
    made.on = sampleToday();
    made.text = std::move(text);
    made.because = std::move(because);
    return made;
}

inline std::vector<advice::Advice> sampleAdvice(const reckoning::StackReckoning& stack)
{
    using advice::Code;
    using advice::Severity;
    if (stack.name.starts_with("Scullery"))
        return {adviceOf(stack.name, Code::harvestReady, Severity::due, "Lift the bottom tray to the top.", "Feed-to-cast 0.07, ready 93 %.")};
    if (stack.name.starts_with("Lean-to"))
        return {adviceOf(stack.name, Code::sumpFull, Severity::concern, "Drain the sump today.", "3.2 L of 4, full on Sunday (Sat–Tue).")};
    return {};
}

inline household::Usual sampleUsual(const std::string& stack)
{
    household::Usual usual;
    usual.feed = Amount{stack.starts_with("Scullery") ? 450.0 : stack.starts_with("Lean-to") ? 250.0 : 300.0, Unit::g};
    usual.coverWithFeed = Amount{30, Unit::g};
    usual.drain = Amount{1.3, Unit::L};
    usual.feedKnown = usual.waterKnown = usual.drainKnown = true;
    return usual;
}

inline shelf::ShelfInputs sampleInputs(int stacks = 3)
{
    shelf::ShelfInputs inputs;
    inputs.household = QStringLiteral("Millrace Cottage");
    inputs.today = inputs.shown = sampleToday();
    inputs.journal = viewOf(sampleJournal(stacks));
    inputs.reckoning = sampleReckoning(stacks);
    inputs.usual = sampleUsual;
    inputs.advice = sampleAdvice;
    return inputs;
}

}
