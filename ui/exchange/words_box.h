#pragma once

#include "core/exchange/sheet_words.h"
#include "core/materials/table.h"

#include <QString>
#include <QWidget>

#include <utility>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace tierloam::exchange_view {

/// What words of a file mean that the program does not know: names of stacks, words for what was done and for what was fed, a list of answers
/// beside each. All of them stand there at once; the lines go on with Tab like any other list.
class WordsBox : public QWidget {
    Q_OBJECT

public:
    /// More words than these of one sort are no words of that sort: it is said that the column may hold something else.
    static constexpr std::size_t mostWords = 40;

    explicit WordsBox(QWidget* parent = nullptr);

    /// `stacks`: those of the household, in their order. A material's name in the language of the window is answered by itself, and a word that
    /// was not asked so far as it was `remembered`, where it can be. Answers stay as long as their word is asked and they can still be given.
    void ask(const exchange::OpenWords& words, const QStringList& stacks, const materials::Table& table, const exchange::WordAnswers& remembered);

    exchange::WordAnswers answers() const;
    /// Some word has no answer yet.
    bool open() const;
    bool anything() const { return !asked_.empty(); }
    /// The first list without an answer; nullptr: there is none.
    QComboBox* firstOpen() const;

Q_SIGNALS:
    void answered();

private:
    enum class Sort { stack, action, material };
    struct Asked {
        exchange::OpenWord word;
        Sort sort{};
        QComboBox* list = nullptr;
    };
    using Answers = std::vector<std::pair<QString, QString>>; ///< words and data
    void addSection(Sort sort, const std::vector<exchange::OpenWord>& words, const Answers& answers);
    void answer(const exchange::WordAnswers& given);
    void choose(const Asked& asked, const std::optional<std::string>& meaning);
    void leaveOutTheRest();
    void sayMore();

    QWidget* body_ = nullptr;
    QGridLayout* grid_ = nullptr;
    QLabel* newWords_;
    QPushButton* rest_;
    std::vector<Asked> asked_;
    exchange::OpenWords words_;
    Answers stacks_, materials_;
};

}
