#include "ui/window/shortcuts_view.h"

#include "core/materials/table.h"
#include "ui/common/actions.h"
#include "ui/common/panels.h"
#include "ui/common/source_words.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QFile>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

namespace tierloam::window {

namespace {

/// A dialog that scrolls one column of text and has a Close button.
QVBoxLayout* layOut(QDialog* dialog, const QString& title)
{
    dialog->setWindowTitle(title);
    auto* rows = new QVBoxLayout{dialog};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(10);
    rows->addWidget(ui::makeLabel(title, ui::TextRole::title, dialog));
    auto* body = new QWidget;
    body->setProperty("page", true);
    auto* column = new QVBoxLayout{body};
    column->setContentsMargins(0, 0, 12, 0);
    column->setSpacing(10);
    auto* scroll = new QScrollArea{dialog};
    scroll->setWidget(body);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff); // all of it wraps
    scroll->setProperty("read", true); // the arrow keys scroll it, so it shows that it has the focus
    ui::setAccess(scroll, title);
    rows->addWidget(scroll, 1);
    auto* buttons = new QDialogButtonBox{dialog};
    auto* close = buttons->addButton(QDialogButtonBox::Close);
    close->setText(QObject::tr("Close"));
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
    rows->addWidget(buttons);
    close->setFocus();
    return column;
}

/// So many lines of text wide and high, as far as the screen has room.
QSize sizeInText(const QWidget* widget, int wide, int high)
{
    const int line = QFontMetrics{QApplication::font()}.height();
    const QSize room = widget->screen() ? widget->screen()->availableSize() * 0.9 : QSize{1000, 700};
    return QSize{wide * line, high * line}.boundedTo(room);
}

}

ShortcutsView::ShortcutsView(QWidget* parent) : ui::View{parent}
{
    setObjectName(QStringLiteral("shortcutsView"));
    setAttribute(Qt::WA_DeleteOnClose);
    QVBoxLayout* column = layOut(this, tr("Keys and shortcuts"));
    for (const ui::Where where : {ui::Where::window, ui::Where::due, ui::Where::shelf, ui::Where::trends, ui::Where::journal, ui::Where::materials, ui::Where::handbook, ui::Where::rotation, ui::Where::form}) {
        auto* card = new ui::Card{this};
        card->column()->addWidget(ui::makeLabel(ui::whereText(where), ui::TextRole::section, card));
        auto* grid = new QGridLayout;
        grid->setHorizontalSpacing(24);
        grid->setVerticalSpacing(4);
        int row = 0;
        for (const ui::ActionRow& action : ui::actionTable()) {
            if (action.where != where) continue;
            QString keys;
            for (const QKeySequence& each : ui::actionKeys(action.id)) {
                const QString key = each.toString(QKeySequence::NativeText);
                keys = keys.isEmpty() ? key : tr("%1 or %2", "two keys that do the same").arg(keys, key);
            }
            auto* name = ui::makeLabel(ui::actionName(action.id), ui::TextRole::body, card, true);
            auto* key = ui::makeLabel(keys, ui::TextRole::strong, card, true);
            ui::setAccess(key, tr("%1: %2").arg(ui::actionName(action.id), key->text()));
            grid->addWidget(name, row, 0);
            grid->addWidget(key, row, 1);
            ++row;
        }
        grid->setColumnStretch(0, 3);
        grid->setColumnStretch(1, 2);
        card->column()->addLayout(grid);
        column->addWidget(card);
    }
    auto* more = new ui::Card{this};
    more->column()->addWidget(ui::makeLabel(tr("Walking"), ui::TextRole::section, more));
    more->column()->addWidget(ui::makeLabel(
        tr("Tab and Shift+Tab go from one thing to the next. On the shelf the arrow keys walk from stack to stack and from tray to tray, and Enter opens what "
           "has the focus. On a chart Left and Right walk by a day, with Ctrl by a week. Esc leaves a form."),
        ui::TextRole::body, more, true));
    column->addWidget(more);
    column->addStretch(1);
    resize(sizeInText(this, 42, 40));
}

AboutView::AboutView(const QString& version, QWidget* parent) : ui::View{parent}
{
    setObjectName(QStringLiteral("aboutView"));
    setAttribute(Qt::WA_DeleteOnClose);
    QVBoxLayout* column = layOut(this, tr("Tierloam %1").arg(version));
    const auto say = [&](const QString& heading, const QString& text, QWidget* below = nullptr) {
        auto* card = new ui::Card{this};
        card->column()->addWidget(ui::makeLabel(heading, ui::TextRole::section, card));
        auto* label = ui::makeLabel(text, ui::TextRole::body, card, true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        card->column()->addWidget(label);
        if (below) card->column()->addWidget(below, 0, Qt::AlignLeft);
        column->addWidget(card);
    };
    say(tr("What it does"), tr("It keeps the journal of stacked-tray worm bins and estimates what goes on inside them, each figure with its range. Estimates are "
                               "no measurements: a look into the tray decides. Local codes and licensed practice come first."));
    auto* licence = ui::makeButton(tr("&Read the licence"), ui::Tone::plain, this);
    licence->setObjectName(QStringLiteral("readLicence"));
    licence->setAutoDefault(false);
    connect(licence, &QPushButton::clicked, this, [this] { (new LicenceView{this})->show(); });
    say(tr("Licence"), tr("Copyright of its authors. Free software under the GNU General Public License, version 3 or later; it comes with no warranty."), licence);
    say(tr("Made with"), tr("Qt 6 (LGPL-3) with Qt Charts (GPL-3), SQLite (public domain), the C++ standard library (GPL-3 with its runtime exception), and on paper the DejaVu fonts "
                            "(their own free licence). Drawings and icon are the program's own. Nothing is sent over a network."));
    say(tr("Sources of numbers"), tr("Each figure of the handbook and each parameter of the model names what it rests on: the handbook lists them. What the trade says without a "
                                     "source, and what rests on memory or judgement, is marked so."));
    QStringList sources;
    for (const materials::Material& material : materials::Table::builtIn().rows()) {
        const QString source = ui::sourceWords(std::string_view{material.source});
        if (!source.isEmpty() && !sources.contains(source)) sources << source;
    }
    say(tr("Sources of the materials table"), sources.join(QStringLiteral("\n")));
    column->addStretch(1);
    resize(sizeInText(this, 36, 34));
}

LicenceView::LicenceView(QWidget* parent) : ui::View{parent}
{
    setObjectName(QStringLiteral("licenceView"));
    setAttribute(Qt::WA_DeleteOnClose);
    QVBoxLayout* column = layOut(this, tr("GNU General Public License, version 3"));
    QFile file{QStringLiteral(":/licence/LICENSE")};
    const QString text = file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
    auto* label = ui::makeLabel(text, ui::TextRole::small, this, true);
    label->setObjectName(QStringLiteral("licenceText"));
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    label->setLayoutDirection(Qt::LeftToRight); // the text of the law is English in every language
    column->addWidget(label);
    resize(sizeInText(this, 40, 40));
}

}
