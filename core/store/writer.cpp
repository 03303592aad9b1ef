#include "core/store/writer.h"

#include "core/store/text.h"

#include <algorithm>
#include <atomic>
#include <future>

namespace tierloam::store {

namespace {

std::variant<Contents, WriteFailure> contentsOf(const HouseholdFile& file)
{
    auto entries = file.entries();
    if (auto* failure = std::get_if<WriteFailure>(&entries)) return std::move(*failure);
    auto ends = file.endsOfDays();
    if (auto* failure = std::get_if<WriteFailure>(&ends)) return std::move(*failure);
    auto settings = file.settings();
    if (auto* failure = std::get_if<WriteFailure>(&settings)) return std::move(*failure);
    auto logged = file.loggedDays();
    if (auto* failure = std::get_if<WriteFailure>(&logged)) return std::move(*failure);
    Contents contents;
    contents.logged = std::move(std::get<LoggedDays>(logged));
    contents.entries = std::move(std::get<journal::Entries>(entries));
    contents.ends = std::move(std::get<std::map<Day, std::int64_t>>(ends));
    contents.settings = std::move(std::get<std::map<QString, QString>>(settings));
    return contents;
}

WriteFailure afterAFailure()
{
    WriteFailure failure;
    failure.why = StoreText::tr("The step before this one could not be written, so this one was not tried. Nothing of it was written.");
    return failure;
}

}

struct Writer::Copying {
    std::atomic<bool> done{false};
    std::jthread thread;                         ///< stopped and waited for when this goes
};

std::variant<std::unique_ptr<Writer>, OpenFailure> Writer::open(const QString& path, HouseholdFile::Mode mode, std::chrono::milliseconds busyTimeout,
                                                                Contents& contents, Tell tell)
{
    std::unique_ptr<Writer> writer{new Writer};
    writer->tell_ = tell ? std::move(tell) : [](const QString&) {};
    // Shared: the thread is still inside set_value when this function has its answer and leaves.
    const auto opened = std::make_shared<std::promise<std::variant<Contents, OpenFailure>>>();
    auto answer = opened->get_future();
    // The file is opened, used and closed in the thread: a Qt Sql connection belongs to the thread that made it.
    writer->thread_ = std::jthread{[opened, self = writer.get(), path, mode, busyTimeout] {
        auto tried = HouseholdFile::open(path, mode, busyTimeout, HouseholdFile::Check::beside);
        if (auto* failure = std::get_if<OpenFailure>(&tried)) {
            opened->set_value(std::move(*failure));
            return;
        }
        const auto file = std::move(std::get<std::unique_ptr<HouseholdFile>>(tried));
        self->path_ = file->path();
        self->readOnly_ = file->readOnly();
        self->newerSchema_ = file->newerSchema();
        self->schema_ = file->schema();
        self->versionSeen_ = file->dataVersion();
        auto held = contentsOf(*file);
        if (auto damage = file->whyNotWhole()) {
            opened->set_value(std::move(*damage));
            return;
        }
        if (auto* failure = std::get_if<WriteFailure>(&held)) {
            opened->set_value(OpenFailure{failure->inUse ? OpenProblem::inUse : OpenProblem::damaged, failure->why});
            return;
        }
        self->tellOf(*file);
        opened->set_value(std::move(std::get<Contents>(held)));
        self->run(*file);
    }};
    auto result = answer.get();
    if (auto* failure = std::get_if<OpenFailure>(&result)) return std::move(*failure);
    contents = std::move(std::get<Contents>(result));
    return writer;
}

Writer::~Writer()
{
    {
        const std::lock_guard lock{mutex_};
        closing_ = true;
    }
    wake_.notify_one();
}

void Writer::post(Task task)
{
    {
        const std::lock_guard lock{mutex_};
        tasks_.push_back(std::move(task));
    }
    wake_.notify_one();
}

void Writer::run(HouseholdFile& file)
{
    for (;;) {
        Task task;
        {
            std::unique_lock lock{mutex_};
            wake_.wait(lock, [this] { return closing_ || !tasks_.empty(); });
            if (tasks_.empty()) return;
            task = std::move(tasks_.front());
            tasks_.pop_front();
        }
        task(file);
    }
}

void Writer::write(WriteJob job, std::function<void(WriteAnswer)> answer)
{
    post([this, job = std::move(job), answer = std::move(answer)](HouseholdFile& file) {
        WriteAnswer done = perform(file, job);
        tellOf(file);
        const bool written = !done.failure;
        if (!written) failedSeries_ = std::max(job.series, failedSeries_.value_or(0));
        answer(std::move(done));
        // Only now: whoever clicked has the answer, and does not wait for a copy of ten years.
        if (!written) return;
        if (const auto trouble = file.backUpIfDue()) tell_(*trouble);
    });
}

void Writer::listLogged(const std::string& stack, Day from, Day to, std::function<void(std::variant<LoggedBefore, WriteFailure>)> answer)
{
    post([stack, from, to, answer = std::move(answer)](HouseholdFile& file) { answer(file.loggedBetween(stack, from, to)); });
}

void Writer::listPhotos(journal::EntryId entry, std::function<void(std::variant<std::vector<Photo>, WriteFailure>)> answer)
{
    post([entry, answer = std::move(answer)](HouseholdFile& file) { answer(file.photosOf(entry)); });
}

void Writer::listDeleted(std::function<void(std::variant<std::vector<DeletedEntry>, WriteFailure>)> answer)
{
    post([answer = std::move(answer)](HouseholdFile& file) { answer(file.deletedEntries()); });
}

void Writer::saveCopy(const QString& target, const CopyControl& control, std::function<void(std::optional<QString>)> answer)
{
    post([this, target, control, answer = std::move(answer)](HouseholdFile& file) {
        if (file.mayBeCopiedBeside()) copyBeside(target, control, answer);
        else answer(file.saveCopy(target, control));
    });
}

void Writer::copyBeside(const QString& target, const CopyControl& control, std::function<void(std::optional<QString>)> answer)
{
    std::erase_if(copies_, [](const auto& each) { return each->done.load(); });
    Copying& copying = *copies_.emplace_back(std::make_unique<Copying>());
    copying.thread = std::jthread{[&copying, path = path_, target, control, answer = std::move(answer)](const std::stop_token& ending) {
        // Called off by whoever asked for it, or at the end.
        std::stop_source stop;
        const std::stop_callback byAsker{control.stop, [&stop] { stop.request_stop(); }};
        const std::stop_callback atTheEnd{ending, [&stop] { stop.request_stop(); }};
        CopyControl own;
        own.progress = control.progress;
        own.stop = stop.get_token();
        answer(HouseholdFile::saveCopyBeside(path, target, own));
        copying.done = true;
    }};
}

WriteAnswer Writer::perform(HouseholdFile& file, const WriteJob& job)
{
    WriteAnswer answer;
    if (failedSeries_ && job.series <= *failedSeries_) {
        answer.failure = afterAFailure();
        return answer;
    }
    const bool edits = !job.edit.added.empty() || !job.edit.replaced.empty() || !job.edit.deleted.empty() || job.logged;
    if (job.setting && !edits) {
        answer.failure = file.setSetting(job.setting->first, job.setting->second, job.settingStanding);
        return answer;
    }
    if (job.photo) {
        const auto changed = file.changePhoto(*job.photo);
        if (const auto* failure = std::get_if<WriteFailure>(&changed)) answer.failure = *failure;
        else answer.photo = std::get<qint64>(changed);
        return answer;
    }
    if (!job.importName.isEmpty())
        if (const auto trouble = file.backUpBeforeImport()) tell_(*trouble);
    Written written;
    if (job.logged) {
        auto both = file.applyWithReadings(job.edit, *job.logged, job.importName, job.guard);
        written = std::move(both.written);
        answer.series = std::move(both.series);
    } else {
        const auto setting = job.setting ? std::optional{SettingChange{job.setting->first, job.setting->second, job.settingStanding}} : std::nullopt;
        written = file.apply(job.edit, job.importName, job.guard, setting);
    }
    if (auto* failure = std::get_if<WriteFailure>(&written)) {
        answer.failure = std::move(*failure);
        return answer;
    }
    answer.ids = std::move(std::get<std::vector<journal::EntryId>>(written));
    const bool returns = std::ranges::any_of(job.edit.added, [](const journal::Entry& entry) { return static_cast<qint64>(entry.id) > 0; });
    if (job.logged || returns || !job.edit.deleted.empty()) { // readings go and come back with the entries of their import
        auto logged = file.loggedDays();
        if (auto* days = std::get_if<LoggedDays>(&logged)) answer.logged = std::move(*days);
        else versionSeen_ = -1;
    }
    // The write stands whether or not it can be read back; a reader that misses rows learns of them by the next look.
    auto stored = file.entriesWith(answer.ids);
    if (auto* entries = std::get_if<journal::Entries>(&stored)) answer.stored = std::move(*entries);
    else versionSeen_ = -1;
    return answer;
}

void Writer::look(std::function<void(Look)> answer)
{
    post([this, answer = std::move(answer)](HouseholdFile& file) { answer(lookNow(file)); });
}

void Writer::tellOf(HouseholdFile& file)
{
    if (const QString told = file.toldWhenOpened(); !told.isEmpty()) tell_(told);
}

Look Writer::lookNow(HouseholdFile& file)
{
    Look look;
    look.movedAway = file.movedAway();
    const qint64 version = file.dataVersion();
    tellOf(file);
    if (version == versionSeen_) return look;
    auto held = contentsOf(file);
    if (auto* failure = std::get_if<WriteFailure>(&held)) {
        look.failure = std::move(*failure);
        return look;
    }
    versionSeen_ = version;
    look.foreign = std::move(std::get<Contents>(held));
    return look;
}

void Writer::finish()
{
    const auto done = std::make_shared<std::promise<void>>();
    auto reached = done->get_future();
    post([done](HouseholdFile&) { done->set_value(); });
    reached.wait();
}

}
