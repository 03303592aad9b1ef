#pragma once

#include <QFrame>
#include <QString>

class QLayout;
class QLabel;
class QPushButton;
class QToolButton;
class QVBoxLayout;

/// Small building blocks that all pages share, so that they look and read alike. Their colours and sizes come from the style sheet of
/// Theme by way of properties; they follow a change of theme or font by themselves.
namespace tierloam::ui {

/// The meaning that a colour carries; always beside a word.
enum class Tone { plain, moss, amber, brick, water };

/// How a line of text stands on the page.
enum class TextRole { body, strong, small, muted, smallMuted, section, title };

/// A label of plain text (what users typed is never read as markup), selectable by no one, wrapping when `wraps`.
QLabel* makeLabel(const QString& text, TextRole role, QWidget* parent = nullptr, bool wraps = false);
void setRole(QWidget* widget, TextRole role);

/// A push button; a tone other than plain marks the act that is meant.
QPushButton* makeButton(const QString& text, Tone tone, QWidget* parent = nullptr);
/// Gives any widget that the style sheet knows (button, card, label) another tone.
void setTone(QWidget* widget, Tone tone);

/// A rounded panel; with a tone it has a bar of that colour at its leading edge.
class Card : public QFrame {
    Q_OBJECT

public:
    explicit Card(QWidget* parent = nullptr, Tone tone = Tone::plain);
    /// Its vertical layout.
    QVBoxLayout* column() const { return column_; }

private:
    QVBoxLayout* column_;
};

/// A hairline between lines of a card.
QFrame* makeHairline(QWidget* parent = nullptr);

/// Heading of a page: title, a muted line under it, and room for buttons at the end.
class PageHead : public QWidget {
    Q_OBJECT

public:
    explicit PageHead(QWidget* parent = nullptr);
    void setTitle(const QString& title);
    void setLine(const QString& line);
    void addButton(QWidget* button);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showLine();

    QLabel* title_;
    QLabel* line_;
    QLayout* buttons_;
};

/// Name and description for people who do not see the widget.
void setAccess(QWidget* widget, const QString& name, const QString& description = {});

/// The wheel scrolls the page and never changes a field that has no focus.
void keepWheelOut(QWidget* field);

}
