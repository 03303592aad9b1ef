#pragma once

#include "core/exchange/sheet_words.h"

#include <QStringList>
#include <QWidget>

#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace tierloam::exchange_view {

/// What words of a file mean that the program does not know: names of stacks and words for what was done, a list of answers beside each.
/// All of them stand there at once; the lines go on with Tab like any other list.
class WordsBox : public QWidget {
    Q_OBJECT

public:
    /// More words than these of one sort are no words of that sort: it is said that the column may hold something else.
    static constexpr std::size_t mostWords = 40;

    explicit WordsBox(QWidget* parent = nullptr);

    /// `stacks`: those of the household, in their order. Answers stay as long as their word is asked and they can still be given.
    void ask(const exchange::OpenWords& words, const QStringList& stacks);
    /// Fills in what is remembered, where it can be answered so.
    void answer(const exchange::WordAnswers& remembered);

    exchange::WordAnswers answers() const;
    /// Some word has no answer yet.
    bool open() const;
    bool anything() const { return !asked_.empty(); }
    /// The first list without an answer; nullptr: there is none.
    QComboBox* firstOpen() const;

Q_SIGNALS:
    void answered();

private:
    struct Asked {
        exchange::OpenWord word;
        bool isStack = false;
        QComboBox* list = nullptr;
    };
    void addSection(const QString& heading, const std::vector<exchange::OpenWord>& words, bool isStack, const QStringList& stacks);
    void choose(const Asked& asked, const std::optional<std::string>& meaning);
    void leaveOutTheRest();
    void sayMore();

    QWidget* body_ = nullptr;
    QGridLayout* grid_ = nullptr;
    QLabel* newWords_;
    QPushButton* rest_;
    std::vector<Asked> asked_;
    exchange::OpenWords words_;
    QStringList stacks_;
};

}
