#pragma once

#include <QObject>

#include <vector>

class QTableView;

namespace tierloam::journal_page {

class JournalModel;

/// What a column takes at least and what its words need; pixels.
struct ColumnNeed {
    int least = 0;
    int whole = 0;
};

/// Widths of the columns in a room of so many pixels: each as wide as its words need if they all find room; else each has its least and
/// what is left goes to where words are still cut, the same share of what each lacks. Never wider than its words.
std::vector<int> shareOut(const std::vector<ColumnNeed>& needs, int room);

/// Keeps the columns of the journal's table as wide as what they hold, whenever the table gets another width or other entries; the last
/// one shown (the notes, unless people moved or hid them) takes the rest. Once people have drawn a column to a width of their own, all
/// others stay as they are.
class ColumnRoom : public QObject {
    Q_OBJECT

public:
    /// `entries`: all of them, of which the table may show some.
    ColumnRoom(QTableView& table, const JournalModel& entries);
    /// The entries, the letters or the columns shown are others.
    void refit();
    /// People's own widths go, since letters of another size make them useless.
    void forget() { byHand_ = false; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void share();
    ColumnNeed needOf(int column) const;

    QTableView& table_;
    const JournalModel& entries_;
    std::vector<ColumnNeed> needs_; ///< by column; measured once for the same entries
    bool byHand_ = false;
    bool sharing_ = false;
};

}
