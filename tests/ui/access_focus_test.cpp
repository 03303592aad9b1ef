#include "tests/ui/access_fixture.h"

#include "tests/support/colour_science.h"
#include "ui/shelf/stack_column.h"

#include <map>

/// That the focus is seen: the picture with it differs from the picture without it by enough pixels that stand off by 3 to 1.
namespace tierloam::window {

namespace {

/// Pixels whose colour with and without the focus keep the contrast that outlines and rings must keep (WCAG 2, 1.4.11).
int pixelsThatStandOff(const QImage& with, const QImage& without)
{
    int count = 0;
    for (int y = 0; y < with.height(); ++y)
        for (int x = 0; x < with.width(); ++x) {
            const QColor a = with.pixelColor(x, y), b = without.pixelColor(x, y);
            if (a != b && test::contrast(a, b) >= 3.0) ++count;
        }
    return count;
}

/// Widgets of one kind look alike: class, tone and what the style sheet looks at.
QString kindOf(const QWidget* widget)
{
    QString kind = QString::fromLatin1(widget->metaObject()->className());
    for (const char* property : {"tone", "compact", "railButton", "field", "fieldButton", "pageList", "button", "wrong"})
        if (const QVariant value = widget->property(property); value.isValid()) kind += u' ' % QString::fromLatin1(property) % u'=' % value.toString();
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    if (button && button->isChecked()) kind += QStringLiteral(" checked");
    return kind;
}

/// Least length of what shows the focus: as many pixels as one line around the whole of it has.
constexpr double aroundOnce = 1.2;

/// Such pixels for each pixel of a line around `place`, a rectangle in the window; `inside` the part that is looked at, with some room around it.
double shareAround(QWidget* window, QWidget* widget, const QRect& place)
{
    const QRect looked = place.adjusted(-5, -5, 5, 5).intersected(window->rect());
    widget->setFocus(Qt::TabFocusReason);
    if (auto* line = qobject_cast<QLineEdit*>(widget)) line->deselect(); // that the text is chosen is not the sign
    const QImage with = window->grab(looked).toImage();
    widget->clearFocus();
    const QImage without = window->grab(looked).toImage();
    return pixelsThatStandOff(with, without) / (2.0 * (place.width() + place.height()));
}

}

TEST_F(AccessTest, FocusIsSeenOnEveryKindOfWidget)
{
    for (const auto mode : {ui::ThemeMode::light, ui::ThemeMode::dark}) {
        theme_->setMode(mode);
        make();
        std::map<QString, double> kinds;
        everywhere([&](const QString& where, QWidget* root) {
            for (QWidget* each : workedIn(root)) {
                const QString kind = kindOf(each);
                if (!each->isVisible() || kinds.contains(kind) || each->inherits("tierloam::shelf::StackCanvas")) continue; // its parts: below
                bringIntoSight(each);
                kinds[kind] = shareAround(root, each, placeIn(root, each));
                EXPECT_GE(kinds[kind], aroundOnce) << kind.toStdString() << ", " << where.toStdString();
            }
        });
        EXPECT_GE(kinds.size(), 25u) << "buttons, fields, lists, charts and the year have all been met";
        for (const auto& [kind, share] : kinds) RecordProperty((mode == ui::ThemeMode::light ? "light " : "dark ") + kind.toStdString(), std::to_string(share));
    }
}

TEST_F(AccessTest, FocusIsSeenOnEveryTrayAndSump)
{
    openSample();
    for (const auto mode : {ui::ThemeMode::light, ui::ThemeMode::dark}) {
        theme_->setMode(mode);
        settle();
        for (shelf::StackColumn* column : desk().shelf()->board()->columns()) {
            shelf::StackCanvas* canvas = column->canvas();
            for (int part = 0; part < canvas->partCount(); ++part) {
                canvas->setCurrentPart(part);
                const QRect place = canvas->partRect(part).translated(canvas->mapTo(window_.get(), QPoint{}));
                EXPECT_GE(shareAround(window_.get(), canvas, place), 1.0) << column->key() << ", part " << part;
            }
        }
    }
}

// What must not pass: a ring that is taken away.
TEST_F(AccessTest, AFocusThatIsNotSeenIsFound)
{
    openSample();
    QPushButton* button = desk().shelf()->board()->columns()[0]->moreButton();
    EXPECT_GE(shareAround(window_.get(), button, placeIn(window_.get(), button)), aroundOnce);
    button->setStyleSheet(QStringLiteral("QPushButton:focus { border: 1px solid %1; padding: 5px 4px; }").arg(theme_->palette().line.name()));
    EXPECT_LT(shareAround(window_.get(), button, placeIn(window_.get(), button)), aroundOnce);
}

}
