#pragma once

#include "ui/forms/cautions.h"
#include "ui/forms/held_to_room.h"

#include <QWidget>

#include <optional>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace tierloam::forms {

class CautionCard;
class FitArea;

/// What all forms have around their fields: a title, the cautions of the work (always in sight, above what scrolls), the fields, what the
/// entry will do, what stands against it, and the buttons. Enter and Ctrl+Enter accept, Esc gives up.
/// Given less height than it wants, the cautions say it in few words and only the fields scroll.
class FormShell : public QWidget, public HeldToRoom {
    Q_OBJECT

public:
    explicit FormShell(QWidget* parent = nullptr);

    void setTitle(const QString& title);
    QString title() const;
    void setLine(const QString& line);
    /// The widget that scrolls; the shell takes it. Once.
    void setContent(QWidget* content);
    void setCautions(const QList<Caution>& cautions);
    QList<Caution> cautions() const;
    /// What it will do: which tray it falls to, what it moves. Quiet.
    void setEffect(const QString& words);
    /// In the size and ink of the text, where what is said there is what the form is for.
    void setEffectProminent();
    QString effect() const;
    /// What is likely a slip, in words that begin with saying so; it stands in nobody's way.
    /// With `instead` a button of that name stands beside the others, which asks for what is not doubted.
    void setDoubt(const QString& words, const QString& instead = {});
    QString doubt() const;
    /// What stands against it, in words.
    void setProblem(const QString& words);
    QString problem() const;
    /// While a write is under way nothing can be typed and the words say so.
    void setBusy(const QString& words);
    bool isBusy() const { return busy_; }
    void setAcceptText(const QString& text);
    void setCancelText(const QString& text);
    void setAcceptEnabled(bool enabled);
    QPushButton* acceptButton() const { return accept_; }
    QPushButton* cancelButton() const { return cancel_; }
    /// A further button at the leading edge.
    void addButton(QPushButton* button);
    bool isCautionsShown() const;

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    int holdTo(int height, int width) override;

Q_SIGNALS:
    void accepted();
    void cancelled();
    void insteadWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    int restHeight(int width) const;
    int hold(int height, int width);
    void holdFields();

    QLabel* title_ = nullptr;
    QLabel* line_ = nullptr;
    CautionCard* cautionCard_ = nullptr;
    FitArea* area_ = nullptr;
    QLabel* effect_ = nullptr;
    QLabel* doubt_ = nullptr;
    QLabel* problem_ = nullptr;
    QHBoxLayout* buttons_ = nullptr;
    QPushButton* accept_ = nullptr;
    QPushButton* cancel_ = nullptr;
    QPushButton* instead_ = nullptr;
    QString acceptText_;
    bool busy_ = false;
    std::optional<int> told_; ///< the height that its place can give; nothing: it has what it has
};

}
