#pragma once

#include "core/exchange/logger_plan.h"
#include "core/household/household.h"
#include "ui/common/seams.h"
#include "ui/common/view.h"

#include <atomic>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace tierloam::exchange_view {

class Aside;
class LoggerColumns;
class QuestionsBox;

/// Readings of a logger, from any table with a time and temperatures or moisture: what each column holds is said once and remembered for
/// tables with the same header. All readings are kept; the journal gets one entry a day. Reading and writing show how far they are and can
/// be called off; until the end nothing is written. Not modal; Esc closes it.
class ReadingsView : public ui::View {
    Q_OBJECT

public:
    ReadingsView(QString path, household::Household& household, ui::Dialogs& dialogs, QWidget* parent = nullptr);
    ~ReadingsView() override;

    const exchange::LoggerMapping& mapping() const { return mapping_; }
    const exchange::ReadingsPlan* plan() const { return plan_.get(); }

Q_SIGNALS:
    /// They are durable: what to tell.
    void imported(const QString& words);

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    enum class Stage { reading, asking, planning, ready, writing };

    void load();
    void take(std::variant<exchange::Sheet, QString> read);
    void ask();
    void readAll();
    void compare();
    void import();
    void callOff();
    void saveFaults();
    void showProgress(double share, const QString& words);
    void say();

    QString path_;
    household::Household& household_;
    ui::Dialogs& dialogs_;
    std::shared_ptr<const exchange::Sheet> sheet_;
    exchange::LoggerMapping mapping_;
    bool remembered_ = false;        ///< the mapping came from the household
    exchange::LoggerQuestions questions_;
    std::shared_ptr<const exchange::LoggerRead> read_;
    std::shared_ptr<exchange::ReadingsPlan> plan_;
    Stage stage_ = Stage::reading;
    household::Ticket ticket_{};
    std::stop_source stopWriting_;
    QString refusal_;
    quint64 asked_ = 0;              ///< which plan is the newest

    Aside* aside_;
    QLabel* file_;
    QComboBox* stack_;
    LoggerColumns* columns_;
    QuestionsBox* box_;
    QLabel* summary_;
    QProgressBar* progress_;
    QPushButton *import_, *callOff_, *saveFaults_, *close_;
};

}
