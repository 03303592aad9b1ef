#include "ui/window/due_notice.h"

#include "core/quantity/day_text.h"
#include "ui/window/due_list.h"

#include <QCryptographicHash>
#include <QStringBuilder>

#include <algorithm>

namespace tierloam::window {

namespace {

const QString wantedKey = QStringLiteral("due/onDesktop");
const QString toldKey = QStringLiteral("due/toldOn/"); ///< a day each, under digits of the file's path: nothing of the household itself
constexpr qsizetype mostLines = 4;

QString toldKeyOf(const household::Household& household)
{
    return toldKey % QString::fromLatin1(QCryptographicHash::hash(household.path().toUtf8(), QCryptographicHash::Sha256).toHex().left(8));
}

}

DueNotice::DueNotice(const DueList& due, const household::Household& household, ui::Settings& settings, DesktopNotes& notes, QObject* parent)
    : QObject{parent}, due_{due}, household_{household}, settings_{settings}, notes_{notes}
{
    connect(&due_, &DueList::counted, this, [this] { look(); });
    look();
}

bool DueNotice::wanted(const ui::Settings& settings) { return settings.value(wantedKey, false).toBool(); }

void DueNotice::setWanted(ui::Settings& settings, bool on) { settings.setValue(wantedKey, on); }

void DueNotice::look()
{
    if (!wanted(settings_) || !household_.reckoningIsCurrent()) return; // estimates of yesterday stand here first
    const Day today = household_.today();
    const QString day = QString::fromStdString(dayText(today));
    const QString told = toldKeyOf(household_);
    if (settings_.value(told).toString() == day) return;
    QStringList lines;
    for (const advice::Advice& each : due_.lines())
        if (each.severity != advice::Severity::hint && each.on <= today) lines << tr("%1: %2", "stack, what to do").arg(QString::fromStdString(each.stack), QString::fromStdString(each.text));
    if (lines.isEmpty()) return;
    settings_.setValue(told, day);
    const int more = static_cast<int>(std::max<qsizetype>(lines.size() - mostLines, 0));
    const QString title = tr("%n thing(s) due today", nullptr, static_cast<int>(lines.size()));
    QString text = lines.mid(0, mostLines).join(u'\n');
    if (more > 0) text += u'\n' + tr("and %n more", nullptr, more);
    notes_.show(title, text);
}

}
