#include "tests/ui/access_fixture.h"

#include "tests/support/colour_science.h"
#include "ui/drawing/ring.h"
#include "ui/drawing/stack_drawing.h"
#include "ui/drawing/stack_layout.h"

#include <QLabel>
#include <QPainter>

#include <map>

/// Contrast of what is written, measured on the painted window, and states told by shape where all colours are one.
/// Bounds: 4.5 for text (WCAG 2, 1.4.3), what is disabled excepted.
namespace tierloam::window {

namespace {

/// The widest contrast of any pixel with the colour that most pixels have: that of the text with what it stands on.
double contrastOfText(const QImage& picture)
{
    std::map<QRgb, int> count;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) ++count[picture.pixel(x, y)];
    if (count.empty()) return 0;
    const QColor ground{std::ranges::max_element(count, {}, [](const auto& each) { return each.second; })->first};
    double most = 0;
    for (const auto& [colour, times] : count) most = std::max(most, test::contrast(QColor{colour}, ground));
    return most;
}

/// What of a label or button holds its words, without its border.
QRect wordsPlace(const QWidget* root, const QWidget* widget) { return placeIn(root, widget).adjusted(4, 4, -4, -4).intersected(root->rect()); }

/// All coloured roles in one colour: who sees no colours sees no more than this.
drawing::Palette withoutColours(drawing::Palette palette)
{
    palette.moss = palette.amber = palette.brick = palette.water = palette.ink;
    palette.mossSoft = palette.amberSoft = palette.brickSoft = palette.waterSoft = palette.panel;
    return palette;
}

int pixelsThatDiffer(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 64;
    return count;
}

}

TEST_F(AccessTest, WhatIsWrittenStandsOffWhatItStandsOn)
{
    for (const auto mode : {ui::ThemeMode::light, ui::ThemeMode::dark}) {
        theme_->setMode(mode);
        make();
        std::set<QString> kinds;
        everywhere([&](const QString& where, QWidget* root) {
            QImage all;
            for (QWidget* each : root->findChildren<QWidget*>()) {
                const auto* label = qobject_cast<QLabel*>(each);
                const auto* button = qobject_cast<QAbstractButton*>(each);
                const QString words = label ? label->text() : button ? button->text() : QString{};
                if (each->window() != root || !each->isVisible() || !each->isEnabled() || words.trimmed().size() < 3) continue;
                QString kind = QString::fromLatin1(each->metaObject()->className());
                for (const QWidget* up = each; up && up != root; up = up->parentWidget())
                    for (const char* property : {"role", "tone", "railButton", "card", "failure", "notice", "due", "rail", "compact"})
                        if (up->property(property).isValid()) kind += u' ' % QString::fromLatin1(property) % up->property(property).toString();
                if (button && button->isChecked()) kind += QStringLiteral(" checked");
                const QRect place = wordsPlace(root, each);
                if (place.width() < 8 || place.height() < 6 || each->visibleRegion().boundingRect().size() != each->size() || !kinds.insert(kind).second) continue;
                if (all.isNull()) all = root->grab().toImage();
                EXPECT_GE(contrastOfText(all.copy(place)), 4.5) << where.toStdString() << ": " << kind.toStdString() << ", «" << words.left(40).toStdString() << "»";
            }
        });
        EXPECT_GE(kinds.size(), 30u);
    }
}

// What must not pass: faint words.
TEST_F(AccessTest, FaintWordsAreFound)
{
    QLabel label{QStringLiteral("hardly to be read")};
    label.setStyleSheet(QStringLiteral("background: white; color: #8a8a8a;")); // 3.45 on white
    label.resize(label.sizeHint());
    const double faint = contrastOfText(label.grab().toImage());
    EXPECT_LT(faint, 4.5);
    label.setStyleSheet(QStringLiteral("background: white; color: #606060;")); // 6.2
    EXPECT_GE(contrastOfText(label.grab().toImage()), 4.5);
}

TEST(WithoutColours, EachStateOfATrayHasAShapeOfItsOwn)
{
    using reckoning::TrayState;
    const drawing::Type type = drawing::Type::from(QApplication::font());
    for (const bool dark : {false, true}) {
        const drawing::Palette palette = withoutColours(dark ? drawing::Palette::dark() : drawing::Palette::light());
        std::vector<QImage> seen;
        for (const TrayState state : {TrayState::working, TrayState::nearly, TrayState::ready, TrayState::overdue, TrayState::drying}) {
            QImage image{44, 44, QImage::Format_RGB32};
            image.fill(palette.ground);
            QPainter painter{&image};
            painter.setRenderHint(QPainter::Antialiasing);
            drawing::drawRing(painter, QRectF{2, 2, 40, 40}, {0.85, state}, palette, type);
            painter.end();
            for (std::size_t other = 0; other < seen.size(); ++other) EXPECT_GE(pixelsThatDiffer(image, seen[other]), 40) << dark << ": states " << other << " and " << seen.size();
            seen.push_back(image);
        }
    }
}

}
