#include "core/household/batch_story.h"

#include <algorithm>

namespace tierloam::household {

namespace {

double freshKg(const Amount& amount, const std::string& name, std::string_view otherwise, const materials::Table& materials)
{
    const materials::Material* material = materials.find(name.empty() ? otherwise : std::string_view{name});
    const auto mass = material ? materials::freshMass(amount, *material) : amount.mass();
    return mass ? mass->base() : 0;
}

struct Teller {
    BatchStory& story;
    const materials::Table& materials;
    Day day;

    /// Each returns whether the entry is worth a line of its own.
    bool operator()(const journal::Bed& bed) const
    {
        story.beddingKg += freshKg(bed.bedding, bed.material, {}, materials);
        return true;
    }
    bool operator()(const journal::Feed& feed) const
    {
        ++story.feedings;
        const double kg = freshKg(feed.food, feed.material, journal::defaultFood, materials);
        story.fedKg += kg;
        const auto week = static_cast<std::size_t>(std::max(0, daysBetween(story.bedded, day)) / 7);
        if (story.fedKgByWeek.size() <= week) story.fedKgByWeek.resize(week + 1);
        story.fedKgByWeek[week] += kg;
        return false;
    }
    bool operator()(const journal::Cover& cover) const
    {
        story.coverKg += freshKg(cover.paper.value_or(journal::defaultCoverAmount), cover.material, journal::defaultCover, materials);
        return false;
    }
    bool operator()(const journal::Water&) const { return false; }
    bool operator()(const journal::Check&) const
    {
        ++story.looks;
        story.lastLook = day;
        return true;
    }
    bool operator()(const journal::Rotate&) const
    {
        story.lifted = day;
        return true;
    }
    bool operator()(const journal::Harvest& harvest) const
    {
        if (const auto mass = harvest.taken.mass()) story.takenKg += mass->base();
        else if (const auto volume = harvest.taken.volume()) story.takenL += volume->base();
        return true;
    }
    template <class Other>
    bool operator()(const Other&) const { return true; }
};

std::optional<Day> retirement(const journal::StackHistory& history, const journal::Entries& entries, Day upTo)
{
    for (const journal::Step& step : history.steps)
        if (step.day <= upTo && std::holds_alternative<journal::Retire>(entries[step.entry].action)) return step.day;
    return std::nullopt;
}

BatchStory begun(const journal::Batch& batch, std::optional<Day> retired, Day upTo)
{
    BatchStory story;
    story.batch = batch.number;
    story.tray = batch.tray;
    story.bedded = batch.bedded;
    if (batch.ended && *batch.ended <= upTo) story.ended = batch.ended;
    else story.retired = retired;
    return story;
}

bool counts(const journal::Step& step, Day upTo) { return step.batch && step.day <= upTo && !step.incoming; }

void tell(BatchStory& story, const journal::Step& step, const journal::Entries& entries, const materials::Table& materials)
{
    const journal::Entry& entry = entries[step.entry];
    if (std::visit(Teller{story, materials, step.day}, entry.action) || !entry.note.empty()) story.told.push_back(step.entry);
}

}

BatchStory batchStory(const journal::Batch& batch, const journal::StackHistory& history, const journal::Entries& entries, const materials::Table& materials, Day upTo)
{
    BatchStory story = begun(batch, retirement(history, entries, upTo), upTo);
    for (const journal::Step& step : history.steps)
        if (counts(step, upTo) && *step.batch == batch.number) tell(story, step, entries, materials);
    return story;
}

std::vector<BatchStory> batchStories(const journal::StackHistory& history, const journal::Entries& entries, const materials::Table& materials, Day upTo)
{
    std::vector<BatchStory> stories;
    const std::optional<Day> retired = retirement(history, entries, upTo);
    for (const journal::Batch& batch : history.batches) {
        if (batch.bedded <= upTo) stories.push_back(begun(batch, retired, upTo));
    }
    for (const journal::Step& step : history.steps) {
        if (!counts(step, upTo)) continue;
        const auto found = std::ranges::find(stories, *step.batch, &BatchStory::batch);
        if (found != stories.end()) tell(*found, step, entries, materials);
    }
    return stories;
}

}
