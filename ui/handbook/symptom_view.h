#pragma once

#include "core/guide/symptoms.h"
#include "core/household/household.h"
#include "ui/common/theme.h"

#include <QScrollArea>

#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tierloam::handbook {

class StackChoice;

/// What may be wrong with a stack: one click on a symptom puts the causes in order, each with its evidence, the look that tells it apart, its remedy
/// with the caution, and the entries to record; the second click opens the form. Something else stands among them by its chance, with what to look
/// at by hand; causes that the record speaks against have their numbers alone.
class SymptomView : public QScrollArea {
    Q_OBJECT

public:
    SymptomView(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);

    void chooseStack(const QString& stack);
    QString stack() const;
    void choose(guide::Symptom symptom);
    /// Scrolls to the symptoms, which lie below the edge of a small window, as soon as their place is known.
    void showChoice();
    std::optional<guide::Symptom> symptom() const { return symptom_; }
    const guide::Ranking& ranking() const { return ranking_; }
    /// Journal or estimates changed.
    void follow();

Q_SIGNALS:
    /// A form is to be opened in the stack, filled in so.
    void entryWanted(const QString& stack, const tierloam::journal::Action& action, std::optional<int> slot);

private:
    void rank();
    void showFirstRemedy();
    void bringIntoSight(const QWidget* part);
    /// What the record says of a cause, a piece each, with its mark.
    static QStringList evidenceLines(const guide::Ranked& ranked);
    QWidget* elsewhereCard(bool first);
    QWidget* causeCard(const guide::Ranked& ranked, const reckoning::StackReckoning& stack, bool first);

    household::Household& household_;
    const ui::Theme& theme_;
    StackChoice* stack_;
    std::vector<QPushButton*> chips_;
    QLabel* line_;
    QPushButton* note_;
    QWidget* results_;
    QVBoxLayout* column_;
    std::optional<guide::Symptom> symptom_;
    guide::Ranking ranking_;
};

}
