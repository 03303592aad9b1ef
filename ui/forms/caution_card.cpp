#include "ui/forms/caution_card.h"

#include <QLabel>
#include <QVBoxLayout>

namespace tierloam::forms {

namespace {

QStringList texts(const QList<Caution>& list)
{
    QStringList words;
    for (const Caution& each : list) words.append(each.text);
    return words;
}

}

CautionCard::CautionCard(QWidget* parent) : ui::Card{parent, ui::Tone::amber}
{
    setObjectName(QStringLiteral("cautions"));
    column()->setSpacing(3);
    hide();
}

void CautionCard::setCautions(const QList<Caution>& cautions)
{
    if (texts(cautions) == texts(cautions_)) return; // while someone types, nothing flickers
    cautions_ = cautions;
    while (QLayoutItem* item = column()->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const Caution& each : cautions) {
        // A word, not only the colour of the bar, tells a caution from what is normal.
        const QString words = each.normal ? each.text : tr("Caution: %1").arg(each.text);
        auto* label = ui::makeLabel(words, each.normal ? ui::TextRole::smallMuted : ui::TextRole::small, this, true);
        label->setToolTip(tr("Source: %1").arg(each.source));
        column()->addWidget(label);
    }
    setHidden(cautions.isEmpty());
    ui::setAccess(this, tr("Cautions"), texts(cautions).join(QLatin1Char(' ')));
}

}
