#include "ui/exchange/missing_box.h"

#include "core/quantity/units.h"
#include "ui/common/field_edit.h"
#include "ui/common/formats.h"
#include "ui/common/panels.h"

#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::exchange_view {

namespace {

constexpr int isNewRole = Qt::UserRole + 1; ///< of a stack that is not there yet

void choose(QComboBox* list, const QVariant& value)
{
    const QSignalBlocker quiet{list};
    if (const int at = list->currentData().isValid() ? -1 : list->findData(value); at > 0) list->setCurrentIndex(at);
}

}

MissingBox::MissingBox(QWidget* parent) : QWidget{parent}
{
    auto* form = new QVBoxLayout{this};
    form->setContentsMargins(0, 0, 0, 0);
    form->setSpacing(6);
    const auto question = [&](What what, const QString& text, const char* name) {
        auto* list = new ui::FieldCombo{this};
        list->setObjectName(QString::fromLatin1(name));
        auto* words = ui::makeLabel(text, ui::TextRole::strong, this, true);
        words->setBuddy(list);
        ui::setAccess(list, text);
        form->addWidget(words);
        form->addWidget(list, 0, Qt::AlignLeading);
        list->addItem(tr("Please choose"));
        connect(list, &QComboBox::currentIndexChanged, this, &MissingBox::answered);
        questions_[what] = {words, list, false};
        return list;
    };
    auto* action = question(action_, tr("What was done, where a row does not say it:"), "askAction");
    question(stack_, tr("The stack, where a row names none:"), "askStack");
    auto* unit = question(unit_, tr("The unit of amounts without one:"), "askUnit");
    for (const char* name : {"feed", "water", "drain", "cover", "check", "reading", "weigh", "harvest", "note"}) action->addItem(tr("Each is: %1").arg(QString::fromLatin1(name)), QString::fromLatin1(name));
    for (const Unit each : allUnits)
        if (each != Unit::count) unit->addItem(ui::unitText(each), static_cast<int>(each));
}

void MissingBox::ask(const exchange::SheetQuestions& questions, const QStringList& stacks, const QString& fresh)
{
    auto* list = questions_[stack_].list;
    {
        const QSignalBlocker quiet{list};
        const QString before = list->currentData().toString();
        list->clear();
        list->addItem(tr("Please choose"));
        if (stacks.size() == 1) list->clear(); // no question with one answer
        for (const QString& name : stacks) list->addItem(name, name);
        if (!fresh.isEmpty()) {
            list->addItem(tr("A new stack, «%1»").arg(fresh), fresh);
            list->setItemData(list->count() - 1, true, isNewRole);
        }
        if (const int kept = list->findData(before); kept > 0) list->setCurrentIndex(kept);
    }
    for (const auto& [what, needed] : {std::pair{action_, questions.action}, std::pair{stack_, questions.stack}, std::pair{unit_, questions.unit}}) {
        Question& question = questions_[what];
        question.asked = needed && !questions.noDate; // first the columns: they decide what is missing
        question.words->setVisible(question.asked);
        question.list->setVisible(question.asked);
    }
    setVisible(anything());
}

void MissingBox::answer(std::optional<Unit> unit, const std::string& action)
{
    if (unit) choose(questions_[unit_].list, static_cast<int>(*unit));
    if (!action.empty()) choose(questions_[action_].list, QString::fromStdString(action));
}

std::string MissingBox::action() const { return questions_[action_].list->currentData().toString().toStdString(); }
std::string MissingBox::stack() const { return questions_[stack_].list->currentData().toString().toStdString(); }
bool MissingBox::stackIsNew() const { return questions_[stack_].asked && questions_[stack_].list->currentData(isNewRole).toBool(); }

std::optional<Unit> MissingBox::unit() const
{
    const QVariant chosen = questions_[unit_].list->currentData();
    return chosen.isValid() ? std::optional{static_cast<Unit>(chosen.toInt())} : std::nullopt;
}

bool MissingBox::open() const
{
    return std::ranges::any_of(questions_, [](const Question& question) { return question.asked && !question.list->currentData().isValid(); });
}

bool MissingBox::anything() const { return std::ranges::any_of(questions_, &Question::asked); }

}
