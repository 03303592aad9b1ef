#include "tests/ui/access_fixture.h"

#include "tests/support/colour_science.h"
#include "tests/support/sample_shelf.h"
#include "ui/drawing/ring.h"
#include "ui/drawing/stack_drawing.h"
#include "ui/drawing/stack_layout.h"
#include "ui/shelf/stack_column.h"
#include "ui/shelf/verdict_box.h"

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
                    for (const char* property : {"role", "tone", "railButton", "card", "failure", "notice", "done", "due", "rail", "compact"})
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

TEST(WithoutColours, EachSignOfAVerdictHasAShapeOfItsOwn)
{
    using shelf::Sign;
    for (const bool dark : {false, true}) {
        const drawing::Palette palette = withoutColours(dark ? drawing::Palette::dark() : drawing::Palette::light());
        std::vector<QImage> seen;
        for (const Sign sign : {Sign::ready, Sign::soon, Sign::danger, Sign::drop, Sign::light, Sign::working, Sign::silent, Sign::question}) {
            QImage image{20, 20, QImage::Format_RGB32};
            image.fill(palette.panel);
            QPainter painter{&image};
            painter.setRenderHint(QPainter::Antialiasing);
            shelf::drawSign(painter, QRectF{2, 2, 16, 16}, sign, palette.ink, palette.panel);
            painter.end();
            for (std::size_t other = 0; other < seen.size(); ++other) EXPECT_GE(pixelsThatDiffer(image, seen[other]), 12) << dark << ": signs " << other << " and " << seen.size();
            seen.push_back(image);
        }
    }
}

// A shelf of twelve stacks and more is a grid: what the bottom tray of each is like is still seen without colours.
TEST(WithoutColours, StacksOfAGridDifferByTheStateOfTheirTrays)
{
    using reckoning::TrayState;
    const shelf::ShelfModel sample = shelf::makeShelf(tests::sampleInputs(14));
    for (const auto mode : {ui::ThemeMode::light, ui::ThemeMode::dark}) {
        ui::Theme theme;
        theme.setMode(mode);
        shelf::ShelfBoard board{theme};
        std::vector<QImage> seen;
        for (const TrayState state : {TrayState::working, TrayState::nearly, TrayState::ready, TrayState::overdue, TrayState::drying}) {
            auto model = std::make_shared<shelf::ShelfModel>(sample);
            model->stacks.front().picture.trays.front().ready = drawing::Readiness{0.85, state};
            board.setModel(model);
            board.setView({1100, 700});
            board.show();
            board.showPart({0, 0, 1100, 700});
            QCoreApplication::processEvents();
            ASSERT_TRUE(board.compact());
            const QImage picture = board.columns().front()->canvas()->grab().toImage();
            for (std::size_t other = 0; other < seen.size(); ++other) EXPECT_GE(pixelsThatDiffer(picture, seen[other]), 15) << "states " << other << " and " << seen.size();
            seen.push_back(picture);
        }
    }
}

// In the due list what cannot wait has a sign beside it, not a colour alone.
TEST_F(AccessTest, WhatCannotWaitHasASignInTheDueList)
{
    auto estimates = std::make_shared<reckoning::Reckoning>(*tests::sampleReckoning());
    for (reckoning::StackReckoning& stack : estimates->stacks) stack.now.binTempC = {38, 40, 42};
    estimates_ = estimates;
    openSample({1440, 1400});
    settled();
    int urgent = 0, others = 0;
    for (auto* button : desk().due()->findChildren<QPushButton*>(QStringLiteral("dueButton"))) {
        QWidget* mark = nullptr;
        for (QWidget* each : button->parentWidget()->findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
            if (each->objectName() == QLatin1StringView{"dueMark"}) mark = each;
        ASSERT_NE(mark, nullptr);
        // The lines come in the order of the advice; what is urgent says so by its tone.
        const bool cannotWait = button->property("tone").toString() == QLatin1StringView{"brick"};
        const QImage picture = mark->grab(QRect{mark->width() - 13, 1, 12, 12}).toImage();
        int dark = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x) dark += test::contrast(picture.pixelColor(x, y), theme_->palette().panel) >= 3.0;
        (cannotWait ? urgent : others)++;
        if (cannotWait) {
            EXPECT_GE(dark, 30) << button->accessibleName().toStdString();
            EXPECT_TRUE(button->accessibleDescription().startsWith(QStringLiteral("Urgent."))) << button->accessibleDescription().toStdString();
        }
    }
    EXPECT_GE(urgent, 1);
    EXPECT_GE(others, 1);
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
