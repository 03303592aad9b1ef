#include "ui/exchange/words_box.h"

#include "core/journal/action.h"
#include "core/journal/names.h"
#include "core/wording/action_words.h"
#include "ui/common/field_edit.h"
#include "ui/common/material_names.h"
#include "ui/common/panels.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace tierloam::exchange_view {

namespace {

// The first letter of an answer's data tells its sort.
const QLatin1Char stands{'='}, isNew{'+'}, leftOut{'-'};

QString text(const std::string& given) { return QString::fromStdString(given); }

}

WordsBox::WordsBox(QWidget* parent) : QWidget{parent}
{
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(6);
    newWords_ = ui::makeLabel({}, ui::TextRole::muted, this, true);
    newWords_->setObjectName(QStringLiteral("newStackWords"));
    rest_ = ui::makeButton(tr("Leave out all that is &not answered"), ui::Tone::plain, this);
    rest_->setObjectName(QStringLiteral("leaveOutRest"));
    rows->addWidget(newWords_);
    rows->addWidget(rest_, 0, Qt::AlignLeading);
    connect(rest_, &QPushButton::clicked, this, &WordsBox::leaveOutTheRest);
    sayMore();
}

void WordsBox::ask(const exchange::OpenWords& words, const QStringList& stacks, const materials::Table& table, const exchange::WordAnswers& remembered)
{
    Answers ofStacks, ofMaterials;
    for (const QString& each : stacks) ofStacks.emplace_back(each, QString{stands % each});
    for (const materials::Material& each : table.rows()) ofMaterials.emplace_back(ui::materialText(each.name), QString{stands % text(each.name)});
    std::ranges::sort(ofMaterials, [](const auto& a, const auto& b) { return QString::localeAwareCompare(a.first, b.first) < 0; });
    if (words == words_ && ofStacks == stacks_ && ofMaterials == materials_) return; // nobody loses the list that he is in
    const exchange::WordAnswers before = answers();
    const QWidget* focused = window()->focusWidget();
    const QString held = focused && body_ && body_->isAncestorOf(focused) ? focused->objectName() : QString{};
    std::set<std::pair<Sort, std::string>> askedBefore; // what was taken back there is not filled in again
    for (const Asked& each : asked_) askedBefore.emplace(each.sort, each.word.key);
    words_ = words;
    stacks_ = std::move(ofStacks);
    materials_ = std::move(ofMaterials);
    asked_.clear();
    delete body_;
    body_ = nullptr;
    if (!words.stacks.empty() || !words.actions.empty() || !words.materials.empty()) {
        body_ = new QWidget{this};
        grid_ = new QGridLayout{body_};
        grid_->setContentsMargins(0, 0, 0, 0);
        grid_->setHorizontalSpacing(12);
        grid_->setVerticalSpacing(4);
        grid_->setColumnStretch(2, 1);
        addSection(Sort::stack, words.stacks, stacks_);
        Answers actions;
        for (std::size_t i = 0; i < std::size(journal::actionNames); ++i) {
            const std::string_view each = journal::actionNames[i];
            // These need details that a word does not bring.
            if (each == "setup" || each == "material" || each == "routine" || each == "lid" || each == "move") continue;
            actions.emplace_back(wording::actionWord(i), QString{stands % QString::fromLatin1(each.data(), static_cast<qsizetype>(each.size()))});
        }
        addSection(Sort::action, words.actions, actions);
        addSection(Sort::material, words.materials, materials_);
        for (const Asked& asked : asked_) {
            if (askedBefore.contains({asked.sort, asked.word.key})) continue;
            if (const auto* named = asked.sort == Sort::material ? ui::materialTyped(table, text(asked.word.word)) : nullptr) choose(asked, std::string{named->name});
            const auto& meant = asked.sort == Sort::stack ? remembered.stacks : asked.sort == Sort::action ? remembered.actions : remembered.materials;
            if (const auto found = meant.find(asked.word.key); found != meant.end()) choose(asked, found->second);
        }
        static_cast<QVBoxLayout*>(layout())->insertWidget(0, body_);
        answer(before);
        // A word more or less does not take the focus from the list that was answered.
        if (auto* again = held.isEmpty() ? nullptr : body_->findChild<QWidget*>(held)) again->setFocus(Qt::OtherFocusReason);
    }
    sayMore();
}

void WordsBox::addSection(Sort sort, const std::vector<exchange::OpenWord>& words, const Answers& answers)
{
    if (words.empty()) return;
    const auto of = [sort](const QString& stack, const QString& action, const QString& material) { return sort == Sort::stack ? stack : sort == Sort::action ? action : material; };
    const auto addWide = [this](const QString& said, ui::TextRole role) { grid_->addWidget(ui::makeLabel(said, role, body_, true), grid_->rowCount(), 0, 1, 3); };
    addWide(of(tr("These names are none of the stacks here. Which stacks are they?"), tr("What was done is not clear from these words. What do they mean?"),
               tr("These are none of the materials here. Which come nearest?")), ui::TextRole::strong);
    if (words.size() > mostWords) {
        addWide(of(tr("There are %1 of them. Does another column hold the stack?"), tr("There are %1 of them. Does another column hold what was done?"), tr("There are %1 of them. Does another column hold the material?"))
                        .arg(words.size()) % QLatin1Char{' '} % tr("Only the first %1 are asked here; the rows of the others are at fault.").arg(mostWords),
                ui::TextRole::body);
    }
    for (std::size_t at = 0; at < std::min(words.size(), mostWords); ++at) {
        const exchange::OpenWord& word = words[at];
        const QString name = tr("«%1»").arg(text(word.word).left(60).simplified());
        const QString where = word.rows == 1 ? tr("line %1").arg(word.line) : tr("%n row(s), the first in line %1", nullptr, static_cast<int>(word.rows)).arg(word.line);
        auto* list = new ui::FieldCombo{body_};
        list->setObjectName(of(QStringLiteral("askStackWord%1"), QStringLiteral("askActionWord%1"), QStringLiteral("askMaterialWord%1")).arg(at));
        list->addItem(tr("Please choose"));
        for (const auto& [said, means] : answers) list->addItem(said, means); // nothing before it, so that its first letters find it
        if (sort == Sort::stack && journal::isStackName(word.word)) list->addItem(tr("a new stack"), QString{isNew % text(word.word)});
        list->addItem(tr("leave out"), QString{leftOut});
        auto* label = ui::makeLabel(name, ui::TextRole::body, body_, true);
        label->setBuddy(list);
        ui::setAccess(list, of(tr("Stack that %1 means"), tr("What %1 means"), tr("Material that %1 means")).arg(name), where);
        const int row = grid_->rowCount();
        grid_->addWidget(label, row, 0);
        grid_->addWidget(list, row, 1);
        grid_->addWidget(ui::makeLabel(where, ui::TextRole::smallMuted, body_), row, 2);
        connect(list, &QComboBox::currentIndexChanged, this, [this] {
            sayMore();
            Q_EMIT answered();
        });
        asked_.push_back({word, sort, list});
    }
}

void WordsBox::choose(const Asked& asked, const std::optional<std::string>& meaning)
{
    int at = asked.list->findData(meaning ? QString{stands % text(*meaning)} : QString{leftOut});
    if (at < 0 && meaning) at = asked.list->findData(QString{isNew % text(*meaning)}); // a stack that has gone since
    const QSignalBlocker quiet{asked.list};
    if (at >= 0) asked.list->setCurrentIndex(at);
}

void WordsBox::answer(const exchange::WordAnswers& given)
{
    for (const Asked& asked : asked_) {
        const auto& meant = asked.sort == Sort::stack ? given.stacks : asked.sort == Sort::action ? given.actions : given.materials;
        if (const auto found = meant.find(asked.word.key); found != meant.end()) choose(asked, found->second);
    }
    sayMore();
}

exchange::WordAnswers WordsBox::answers() const
{
    exchange::WordAnswers made;
    for (const Asked& asked : asked_) {
        const QString said = asked.list->currentData().toString();
        if (said.isEmpty()) continue;
        auto& meant = asked.sort == Sort::stack ? made.stacks : asked.sort == Sort::action ? made.actions : made.materials;
        const std::string name = said.mid(1).toStdString();
        meant[asked.word.key] = said.front() == leftOut ? std::nullopt : std::optional{name};
        if (said.front() == isNew) made.newStacks.insert(name);
    }
    return made;
}

QComboBox* WordsBox::firstOpen() const
{
    const auto found = std::ranges::find_if(asked_, [](const Asked& asked) { return !asked.list->currentData().isValid(); });
    return found == asked_.end() ? nullptr : found->list;
}

bool WordsBox::open() const { return firstOpen() != nullptr; }

void WordsBox::leaveOutTheRest()
{
    for (const Asked& asked : asked_)
        if (!asked.list->currentData().isValid()) choose(asked, std::nullopt);
    if (!asked_.empty()) asked_.back().list->setFocus(Qt::OtherFocusReason); // the button goes
    sayMore();
    Q_EMIT answered();
}

/// What an answer brings with it, and the way to leave out what nobody wants to go through.
void WordsBox::sayMore()
{
    const auto open = std::ranges::count_if(asked_, [](const Asked& asked) { return !asked.list->currentData().isValid(); });
    rest_->setVisible(open > 1);
    const bool any = !answers().newStacks.empty();
    newWords_->setText(any ? tr("A new stack is set up with the usual sizes on the day of its first row, with the usual bedding where no row lays any. Look at those entries afterwards; worms that no row puts in have to be recorded too.") : QString{});
    newWords_->setVisible(any);
}

}
