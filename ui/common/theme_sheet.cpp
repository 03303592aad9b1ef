#include "ui/common/theme.h"

#include <QLocale>

#include <cmath>

namespace tierloam::ui {

namespace {

// Lengths written as 12px grow with the font scale; colours are @names of the palette.
constexpr const char* sheet = R"(
QMainWindow, QDialog, QWidget[page="true"] { background: @ground; color: @ink; }
QDialogButtonBox { dialogbuttonbox-buttons-have-icons: 0; }
QToolTip { background: @panel; color: @ink; border: 1hair solid @line; padding: 4px 6px; }
QLabel { background: transparent; color: @ink; }
QLabel[role="strong"] { font-weight: bold; }
QLabel[role="small"] { font-size: @small; }
QLabel[role="muted"] { color: @mutedInk; }
QLabel[role="smallMuted"] { font-size: @small; color: @mutedInk; }
QLabel[role="section"] { font-weight: bold; }
QLabel[role="title"] { font-size: @title; font-weight: bold; }
QLabel[tone="moss"] { color: @moss; }
QLabel[tone="amber"] { color: @amber; }
QLabel[tone="brick"] { color: @brick; }
QLabel[tone="water"] { color: @water; }

QFrame[card="true"] { background: @panel; border: 1hair solid @line; border-radius: 8px; }
QFrame[card="true"][tone] { border-top-left-radius: 0; border-bottom-left-radius: 0; }
QFrame[card="true"][tone="moss"] { border-left: 5px solid @moss; }
QFrame[card="true"][tone="amber"] { border-left: 5px solid @amber; }
QFrame[card="true"][tone="brick"] { border-left: 5px solid @brick; }
QFrame[card="true"][tone="water"] { border-left: 5px solid @water; }
QFrame[hairline="true"] { background: @line; border: none; max-height: 1hair; min-height: 1hair; }

QPushButton, QToolButton[button="true"] { background: @panel; color: @ink; border: 1hair solid @outlineSoft; border-radius: 7px; padding: 5px 11px; min-height: 18px; }
QPushButton:focus, QTableView::item { outline: none; }
QPushButton:hover, QToolButton[button="true"]:hover { background: @hover; }
QPushButton:pressed, QToolButton[button="true"]:pressed { background: @line; }
QPushButton:focus, QToolButton[button="true"]:focus { border: 2hair solid @ink; padding: 4px 10px; }
QPushButton:disabled, QToolButton[button="true"]:disabled { color: @faint; border-color: @line; }
QPushButton:checked, QToolButton[button="true"]:checked { background: @mossSoft; border: 2hair solid @moss; color: @moss; padding: 4px 10px; }
QPushButton:checked:focus, QToolButton[button="true"]:checked:focus { background: @moss; color: @panel; }
QPushButton[compact="true"] { font-size: @small; padding: 5px 4px; }
QPushButton[compact="true"]:focus { padding: 4px 3px; }
QPushButton[tone="moss"] { background: @mossSoft; color: @moss; border-color: @moss; }
QPushButton[tone="amber"] { background: @amberSoft; color: @amber; border-color: @amber; }
QPushButton[tone="brick"] { background: @brickSoft; color: @brick; border-color: @brick; }
QPushButton[tone="water"] { background: @waterSoft; color: @water; border-color: @water; }
QPushButton[tone="moss"]:hover { background: @mossHover; }
QPushButton[tone="amber"]:hover { background: @amberHover; }
QPushButton[tone="brick"]:hover { background: @brickHover; }
QPushButton[tone="water"]:hover { background: @waterHover; }
QPushButton[tone="moss"]:focus { border: 3hair solid @moss; padding: 3px 9px; }
QPushButton[tone="amber"]:focus { border: 3hair solid @amber; padding: 3px 9px; }
QPushButton[tone="brick"]:focus { border: 3hair solid @brick; padding: 3px 9px; }
QPushButton[tone="water"]:focus { border: 3hair solid @water; padding: 3px 9px; }
QPushButton[tone][compact="true"]:focus { padding: 3px 2px; }
QPushButton[tone]:disabled { background: @panel; color: @faint; border-color: @line; }
QPushButton::menu-indicator, QToolButton[button="true"]::menu-indicator { image: none; width: 0px; }

QLineEdit, QPlainTextEdit, QTextEdit, QComboBox, QAbstractSpinBox {
    background: @panel; color: @ink; border: 1hair solid @outlineSoft; border-radius: 6px; padding: 4px 7px; min-height: 18px;
    selection-background-color: @moss; selection-color: @panel; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QComboBox:focus, QAbstractSpinBox:focus { border: 2hair solid @moss; padding: 3px 6px; }
QLineEdit[wrong="true"], QAbstractSpinBox[wrong="true"], QComboBox[wrong="true"] { border: 2hair solid @brick; padding: 3px 6px; }
QLineEdit:disabled, QComboBox:disabled, QAbstractSpinBox:disabled { color: @faint; background: @ground; }
QToolButton[fieldButton="true"] { background: @panel; color: @ink; border: 1hair solid @outlineSoft; border-radius: 6px; padding: 4px 6px; min-height: 18px; }
QToolButton[fieldButton="true"]:hover { background: @hover; }
QToolButton[fieldButton="true"]:focus { border: 2hair solid @moss; padding: 3px 5px; }
QToolButton[fieldButton="quiet"] { background: transparent; color: @moss; border: 2hair solid transparent; border-radius: 4px; padding: 0px 3px; font-size: @small; }
QToolButton[fieldButton="quiet"]:hover { background: @mossSoft; }
QToolButton[fieldButton="quiet"]:focus { border: 2hair solid @moss; }
QComboBox[field="true"], QComboBox[field="true"]:focus, QComboBox[field="true"][wrong="true"] { padding-right: 24px; }
QComboBox[field="true"]::drop-down { border: none; width: 22px; }
QComboBox QLineEdit { border: none; padding: 0px; min-height: 0px; background: transparent; }
QComboBox QLineEdit:focus { border: none; padding: 0px; }
QCheckBox { color: @ink; spacing: 7px; border: 2hair solid transparent; border-radius: 5px; }
QCheckBox:focus, QSlider:focus { border: 2hair solid @moss; }
QSlider { border: 2hair solid transparent; border-radius: 5px; min-height: 20px; }
QSlider::groove:horizontal { height: 4px; background: @line; border-radius: 2px; }
QSlider::sub-page:horizontal { background: @moss; border-radius: 2px; }
QSlider::handle:horizontal { width: 14px; margin: -6px 0; background: @panel; border: 2hair solid @outline; border-radius: 8px; }
QSlider::handle:horizontal:disabled { border-color: @line; }
QCheckBox::indicator { width: 15px; height: 15px; }
QCheckBox::indicator:unchecked, QListView::indicator:unchecked { border: 1hair solid @outlineSoft; border-radius: 3px; background: @panel; }
QComboBox QAbstractItemView { background: @panel; color: @ink; border: 1hair solid @line; selection-background-color: @mossSoft; selection-color: @ink; }

QMenuBar { background: @rail; color: @ink; }
QMenuBar::item { background: transparent; padding: 4px 9px; }
QMenuBar::item:selected { background: @panel; }
QMenu { background: @panel; color: @ink; border: 1hair solid @line; padding: 4px; }
QMenu::item { padding: 5px 26px 5px 22px; border-radius: 4px; }
QMenu::item:selected { background: @mossSoft; color: @ink; }
QMenu::item:disabled { color: @faint; }
QMenu::separator { height: 1hair; background: @line; margin: 4px 8px; }

QScrollArea, QScrollArea > QWidget > QWidget[page="true"] { border: none; }
QScrollArea[read="true"] { border: 2hair solid transparent; border-radius: 6px; }
QScrollArea[read="true"]:focus { border: 2hair solid @moss; }
QAbstractScrollArea::corner { background: transparent; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: @scroll; border-radius: 4px; margin: 2px; min-height: 28px; min-width: 28px; }
QScrollBar::handle:hover { background: @outline; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }

QTableView { background: @panel; alternate-background-color: @stripe; color: @ink; gridline-color: @line; border: 2hair solid @line; border-radius: 8px; outline: none;
    selection-background-color: @mossSoft; selection-color: @ink; }
QTreeView, QListView { border: 2hair solid @line; border-radius: 8px; outline: none; }
QTableView:focus, QTreeView:focus, QListView:focus, QPrintPreviewWidget QGraphicsView:focus { border: 2hair solid @moss; }
QPrintPreviewWidget QGraphicsView { border: 2hair solid @line; }
QTableView::item { padding: 3px 8px; border: none; }
QTableView::item:selected { background: @mossSoft; color: @ink; }
QTableView::item:focus { background: @mossHover; color: @ink; }
QHeaderView { background: @panel; border: none; }
QHeaderView::section { background: @rail; color: @ink; border: none; border-bottom: 1hair solid @line; padding: 6px 8px 6px 11px; font-weight: bold; }

QListView[pageList="true"] { background: transparent; color: @ink; border: 2hair solid transparent; outline: none; }
QListView[pageList="true"]:focus { border: 2hair solid @moss; }
QListView[pageList="true"]::item { padding: 6px 9px; border-radius: 6px; border-left: 3px solid transparent; }
QListView[pageList="true"]::item:hover { background: @hover; }
QListView[pageList="true"]::item:selected { background: @mossSoft; color: @ink; border-left: 3px solid @moss; }

QFrame[rail="true"] { background: @rail; border: none; }
QFrame[due="true"] { background: @ground2; border: none; border-left: 1hair solid @line; }
QPushButton[railButton="true"] { background: transparent; color: @mutedInk; border: none; border-left: 4px solid transparent; border-radius: 0;
    border-top-right-radius: 7px; border-bottom-right-radius: 7px; padding: 11px 12px; text-align: left; }
QPushButton[railButton="true"][tight="true"], QPushButton[railButton="true"][tight="true"]:checked { padding: 4px 12px; }
QPushButton[railButton="true"][tight="true"]:focus, QPushButton[railButton="true"][tight="true"]:checked:focus { padding: 2px 10px 2px 12px; }
QPushButton[railButton="true"]:hover { color: @ink; background: @ground; }
QPushButton[railButton="true"]:checked { background: @panel; color: @ink; font-weight: bold; border: none; border-left: 4px solid @moss; padding: 11px 12px; }
QPushButton[railButton="true"]:focus, QPushButton[railButton="true"]:checked:focus { background: @panel; color: @ink; border: 2hair solid @moss; border-left: 4px solid @moss; padding: 9px 10px 9px 12px; }
QFrame[done="true"] { background: @panel; border: 1hair solid @line; border-radius: 8px; }
QFrame[notice="true"] { background: @amberSoft; border: 1hair solid @amber; border-radius: 8px; }
QFrame[failure="true"] { background: @brickSoft; border: 1hair solid @brick; border-radius: 8px; }
QSplitter::handle { background: @line; }
)";

QString hex(const QColor& colour)
{
    return colour.name(QColor::HexRgb);
}

/// Lengths in px grow with the scale; "hair" lines do not.
QString grown(const QString& text, double scale)
{
    QString out;
    out.reserve(text.size());
    for (qsizetype i = 0; i < text.size();) {
        if (!text[i].isDigit() || (i > 0 && (text[i - 1].isLetterOrNumber() || text[i - 1] == u'#' || text[i - 1] == u'.'))) {
            out += text[i++];
            continue;
        }
        qsizetype end = i;
        while (end < text.size() && text[end].isDigit()) ++end;
        const int number = QStringView{text}.mid(i, end - i).toInt();
        if (QStringView{text}.mid(end).startsWith(u"hair")) {
            out += QString::number(number) % QLatin1StringView("px");
            end += 4;
        } else if (QStringView{text}.mid(end).startsWith(u"px")) {
            out += QString::number(static_cast<int>(std::lround(number * scale))) % QLatin1StringView("px");
            end += 2;
        } else {
            out += QStringView{text}.mid(i, end - i);
        }
        i = end;
    }
    return out;
}

}

QString styleSheetFor(const drawing::Palette& p, double bodyPoints, double scale)
{
    QString text = grown(QString::fromLatin1(sheet), scale);
    const auto points = [&](TextSize size) -> QString { return QString::number(pointsOf(size, bodyPoints), 'f', 2) % QLatin1StringView("pt"); };
    const auto hover = [&](const QColor& soft, const QColor& full) { return hex(drawing::mixed(soft, full, 0.14)); };
    // Longer names first: "@mossSoft" must not be read as "@moss" and "Soft".
    const std::pair<const char*, QString> names[] = {
        {"@outlineSoft", hex(drawing::mixed(p.line, p.outline, 0.25))},
        {"@outline", hex(p.outline)},
        {"@mossSoft", hex(p.mossSoft)}, {"@amberSoft", hex(p.amberSoft)}, {"@brickSoft", hex(p.brickSoft)}, {"@waterSoft", hex(p.waterSoft)},
        {"@mossHover", hover(p.mossSoft, p.moss)}, {"@amberHover", hover(p.amberSoft, p.amber)},
        {"@brickHover", hover(p.brickSoft, p.brick)}, {"@waterHover", hover(p.waterSoft, p.water)},
        {"@moss", hex(p.moss)}, {"@amber", hex(p.amber)}, {"@brick", hex(p.brick)}, {"@water", hex(p.water)},
        {"@ground2", hex(drawing::mixed(p.ground, p.panel, 0.35))}, {"@ground", hex(p.ground)},
        {"@panel", hex(p.panel)}, {"@rail", hex(p.rail)}, {"@line", hex(p.line)},
        {"@ink", hex(p.ink)}, {"@mutedInk", hex(p.mutedInk)},
        {"@faint", hex(drawing::mixed(p.ink, p.ground, 0.5))},
        {"@hover", hex(drawing::mixed(p.panel, p.rail, 0.6))},
        {"@stripe", hex(drawing::mixed(p.panel, p.ground, 0.4))},
        {"@scroll", hex(drawing::mixed(p.line, p.outline, 0.4))},
        {"@small", points(TextSize::small)}, {"@title", points(TextSize::title)},
    };
    for (const auto& [name, value] : names) text.replace(QLatin1StringView(name), value);
    return text;
}

}
