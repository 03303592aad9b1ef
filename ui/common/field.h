#pragma once

#include <QString>
#include <QWidget>

#include <optional>

class QHBoxLayout;
class QLabel;

namespace tierloam::ui {

inline constexpr int roundDigits = 2;   ///< of an amount that the program thinks usual, in a unit that it was not thought of in
inline constexpr int knownDigits = 3;   ///< of what stands, where it was written in another unit

/// What a field holds: a value, nothing, or something that is no value, with the reason in words.
template <class T>
struct Typed {
    std::optional<T> value;
    QString problem;                 ///< empty unless what was typed is at fault
    bool sound() const { return problem.isEmpty(); }
};

/// One field of a form: its editors in a row, and beneath them in words what is wrong. The words come when the field is left or the
/// form is recorded, never while the first letters are typed; once there, they follow the typing until it is right.
class Field : public QWidget {
    Q_OBJECT

public:
    explicit Field(QWidget* parent = nullptr);

    /// What a screen reader says on reaching it; the editors derive theirs from it.
    void setName(const QString& name);
    QString name() const { return name_; }
    /// Left empty, it is at fault, in these words.
    void setRequired(const QString& whenEmpty);
    bool isRequired() const { return !whenEmpty_.isEmpty(); }

    /// What is wrong now; empty when nothing is.
    QString problem() const;
    /// Shows what is wrong, or that nothing is; true when nothing is.
    bool check();
    /// Shows words of the form's own (a refusal that is this field's matter); the next change takes them away.
    void showProblem(const QString& words);
    /// The words that stand beside it now.
    QString shownProblem() const;
    /// A quiet line beneath the editors: what the value means, what it is used for.
    void setHint(const QString& hint);
    QString hint() const;
    virtual bool isEmpty() const = 0;

Q_SIGNALS:
    /// The person changed it (not the program).
    void edited();

protected:
    virtual QString problemOfValue() const = 0;
    virtual void nameEditors(const QString& name) = 0;
    enum class Row { main, beneath };
    /// Adds an editor to the row, or beneath it beside the hint; the first one takes the focus for the field. Leaving it shows what is wrong.
    void addEditor(QWidget* editor, int stretch = 0, Row row = Row::main);
    /// To be called after each change by the person.
    void noteEdited();
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void tell(const QString& words);

    QHBoxLayout* row_ = nullptr;
    QHBoxLayout* beneath_ = nullptr;
    QLabel* problemLabel_ = nullptr;
    QLabel* hintLabel_ = nullptr;
    QString name_;
    QString whenEmpty_;
    QList<QWidget*> editors_;
};

}
