#pragma once

#include "ui/common/field.h"

#include <QVariant>

namespace tierloam::ui {

class FieldCombo;
class FieldEdit;

/// One of a few, from a list; "not noted" among them where the journal lets it be left out.
class ChoiceField : public Field {
    Q_OBJECT

public:
    explicit ChoiceField(QWidget* parent = nullptr);

    /// `value` empty (not valid): left out of the entry.
    void addChoice(const QString& text, const QVariant& value = {});
    void clearChoices();
    void setValue(const QVariant& value);
    QVariant value() const;
    /// The value as an enumeration; nullopt for the choice that leaves it out.
    template <class E>
    std::optional<E> chosen() const
    {
        const QVariant v = value();
        return v.isValid() ? std::optional{static_cast<E>(v.toInt())} : std::nullopt;
    }
    template <class E>
    void choose(const std::optional<E>& e)
    {
        setValue(e ? QVariant{static_cast<int>(*e)} : QVariant{});
    }
    bool isEmpty() const override { return !value().isValid(); }

    FieldCombo* list() const { return list_; }

protected:
    QString problemOfValue() const override { return {}; }
    void nameEditors(const QString& name) override;

private:
    FieldCombo* list_ = nullptr;
};

/// A line of text, with words suggested when there are any. Control characters are at fault: the journal's file cannot hold them.
class TextField : public Field {
    Q_OBJECT

public:
    explicit TextField(QWidget* parent = nullptr);

    void setText(const QString& text);
    QString text() const;            ///< blanks around it taken off
    void setPlaceholder(const QString& text);
    void suggest(const QStringList& words);
    bool isEmpty() const override { return text().isEmpty(); }

    FieldEdit* edit() const { return edit_; }

protected:
    QString problemOfValue() const override;
    void nameEditors(const QString& name) override;

private:
    FieldEdit* edit_ = nullptr;
};

}
