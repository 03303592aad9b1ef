#pragma once

#include <QCoreApplication>
#include <QString>

namespace tierloam::household {

/// Context of the translations of this room.
class HouseholdText {
    Q_DECLARE_TR_FUNCTIONS(HouseholdText)
};

}
