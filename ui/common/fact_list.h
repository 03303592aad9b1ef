#pragma once

#include <QList>
#include <QWidget>

#include <utility>

class QGridLayout;
class QLabel;

namespace tierloam::ui {

/// Names and values in two columns; values wrap. What is read aloud is "name: value" of each line.
class FactList : public QWidget {
    Q_OBJECT

public:
    using Facts = QList<std::pair<QString, QString>>;

    explicit FactList(QWidget* parent = nullptr);
    /// A fact without a value is left out.
    void setFacts(const Facts& facts);
    /// The value that stands beside a name; empty when it is not there.
    QString value(const QString& name) const;

private:
    QGridLayout* grid_;
    Facts facts_;
    QList<std::pair<QLabel*, QLabel*>> labels_;
};

}
