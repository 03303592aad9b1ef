#include "tests/ui/access_fixture.h"

#include <QMenu>
#include <QMenuBar>

/// Every page, form and window by Tab, Shift+Tab and F6 alone; every action by its keys.
namespace tierloam::window {

namespace {

void tellFaults(const QString& where, QWidget* root)
{
    for (const QString& each : tabFaults(root)) ADD_FAILURE() << where.toStdString() << ": " << each.toStdString();
}

}

TEST_F(AccessTest, TabReachesEverythingInReadingOrder)
{
    everywhere(tellFaults);
}

TEST_F(AccessTest, TabReachesEverythingFromRightToLeft)
{
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    make();
    openSample();
    walkAll(*window_, tellFaults);
    inPlace(tellFaults);
}

}
