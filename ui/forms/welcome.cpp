#include "ui/forms/welcome.h"

#include "ui/common/file_name.h"
#include "ui/common/panels.h"
#include "ui/forms/cautions.h"
#include "ui/forms/fit_area.h"

#include <QDir>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::forms {

namespace {

constexpr int mostRecent = 5;
constexpr int widest = 760; // px at 100 %: longer lines are hard to read

/// One way in: a button and, under it, what happens then.
QPushButton* addWay(QVBoxLayout* column, const QString& text, const QString& words, ui::Tone tone, const char* name)
{
    auto* button = ui::makeButton(text, tone);
    button->setObjectName(QLatin1StringView{name});
    button->setAccessibleDescription(words);
    column->addWidget(button);
    column->addWidget(ui::makeLabel(words, ui::TextRole::smallMuted, nullptr, true));
    return button;
}

}

Welcome::Welcome(QWidget* parent) : QWidget{parent}
{
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(0, 0, 0, 0);
    auto* area = new FitArea{this};
    outer->addWidget(area);
    auto* page = new QWidget;
    page->setProperty("page", true);
    auto* across = new QHBoxLayout{page};
    across->setContentsMargins(28, 24, 28, 24);
    auto* middle = new QWidget{page};
    middle->setMaximumWidth(widest * fontMetrics().height() / 16);
    across->addStretch(1);
    across->addWidget(middle, 20);
    across->addStretch(1);
    auto* column = new QVBoxLayout{middle};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    column->addWidget(ui::makeLabel(tr("A journal for your worm bins"), ui::TextRole::title, middle, true));
    column->addWidget(ui::makeLabel(tr("Write down what goes in and what runs out. The program reckons, with its uncertainty, how the worms fare, "
                                       "when each bottom tray is ready and what is due this week. Nothing leaves this machine."),
                                    ui::TextRole::muted, middle, true));

    auto* ways = new ui::Card{middle};
    column->addWidget(ways);
    auto* start = addWay(ways->column(), tr("Start my first stack…"), tr("Answer a few questions; you are told how much bedding and water to put in. The record is kept among your documents."),
                         ui::Tone::moss, "startFirstStack");
    auto* demo = addWay(ways->column(), tr("Look at the demo"), tr("A household of our own invention with three stacks and two years of record, in a copy that is yours to play with."), ui::Tone::plain,
                        "openDemo");
    auto* open = addWay(ways->column(), tr("Open a household…"), tr("A file that was kept before."), ui::Tone::plain, "openFile");
    auto* import = addWay(ways->column(), tr("Import a table…"), tr("A journal or a list of your own as CSV, into a new household. You see what becomes of each row first."), ui::Tone::plain, "importJournal");
    connect(start, &QPushButton::clicked, this, &Welcome::startFirstStack);
    connect(demo, &QPushButton::clicked, this, &Welcome::openDemo);
    connect(open, &QPushButton::clicked, this, &Welcome::openFile);
    connect(import, &QPushButton::clicked, this, &Welcome::importJournal);

    auto* care = new ui::Card{middle, ui::Tone::amber};
    care->setObjectName(QStringLiteral("cautions"));
    care->column()->addWidget(ui::makeLabel(tr("Before you begin"), ui::TextRole::section, care, true));
    for (const Caution& each : firstRunCautions()) {
        auto* words = ui::makeLabel(each.text, ui::TextRole::small, care, true);
        words->setToolTip(tr("Source: %1").arg(each.source));
        care->column()->addWidget(words);
    }
    column->addWidget(care);

    recentBox_ = new ui::Card{middle};
    recent_ = static_cast<ui::Card*>(recentBox_)->column();
    recentBox_->hide();
    column->addWidget(recentBox_);
    column->addStretch(1);
    area->setWidget(page);
    setAccessibleName(tr("Welcome"));
    setFocusProxy(start);
}

void Welcome::setRecentFiles(const QStringList& paths)
{
    while (QLayoutItem* item = recent_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    recent_->addWidget(ui::makeLabel(tr("Opened lately"), ui::TextRole::section));
    for (const QString& path : paths.first(std::min<qsizetype>(paths.size(), mostRecent))) {
        // A long folder gives way in its middle: where files of one name lie is told by its beginning and its end.
        QString name = fontMetrics().elidedText(ui::shownFileName(path, paths), Qt::ElideMiddle, widest * fontMetrics().height() / 16 * 2 / 3);
        name.replace(QLatin1Char('&'), QStringLiteral("&&")); // a name is no mnemonic
        auto* button = ui::makeButton(name, ui::Tone::plain);
        button->setToolTip(QDir::toNativeSeparators(path));
        button->setAccessibleDescription(QDir::toNativeSeparators(path));
        connect(button, &QPushButton::clicked, this, [this, path] { Q_EMIT openRecent(path); });
        recent_->addWidget(button);
    }
    recentBox_->setHidden(paths.isEmpty());
}

}
