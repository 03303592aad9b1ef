#include "ui/common/fact_list.h"

#include "ui/common/panels.h"

#include <QGridLayout>
#include <QLabel>

namespace tierloam::ui {

FactList::FactList(QWidget* parent) : QWidget{parent}, grid_{new QGridLayout{this}}
{
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(12);
    grid_->setVerticalSpacing(3);
    grid_->setColumnStretch(1, 1);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FactList::setFacts(const Facts& facts)
{
    Facts told;
    for (const auto& fact : facts) {
        if (!fact.second.isEmpty()) told.append(fact);
    }
    if (told == facts_) return;
    facts_ = told;
    while (labels_.size() < told.size()) {
        auto* name = makeLabel({}, TextRole::smallMuted, this, true);
        auto* value = makeLabel({}, TextRole::body, this, true);
        const int row = static_cast<int>(labels_.size());
        grid_->addWidget(name, row, 0, Qt::AlignTop);
        grid_->addWidget(value, row, 1, Qt::AlignTop);
        labels_.append(std::pair{name, value});
    }
    for (qsizetype i = 0; i < labels_.size(); ++i) {
        const auto& [name, value] = labels_[i];
        const bool shown = i < told.size();
        name->setVisible(shown);
        value->setVisible(shown);
        if (!shown) continue;
        name->setText(told[i].first);
        value->setText(told[i].second);
        value->setAccessibleName(tr("%1: %2").arg(told[i].first, told[i].second));
    }
    updateGeometry();
}

QString FactList::value(const QString& name) const
{
    for (const auto& fact : facts_) {
        if (fact.first == name) return fact.second;
    }
    return {};
}

}
