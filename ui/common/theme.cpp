#include "ui/common/theme.h"

#include "ui/common/seams.h"
#include "ui/drawing/type_sizes.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QEvent>
#include <QPalette>
#include <QProxyStyle>

#include <algorithm>
#include <cmath>

namespace tierloam::ui {

namespace {

QString nameOf(ThemeMode mode)
{
    switch (mode) {
    case ThemeMode::light: return QStringLiteral("light");
    case ThemeMode::dark: return QStringLiteral("dark");
    case ThemeMode::system: break;
    }
    return QStringLiteral("system");
}

/// Fusion draws from these; what the style sheet does not reach (menus of the system, spin boxes, lists) stays in the same colours.
QPalette qtPalette(const drawing::Palette& p)
{
    QPalette q;
    q.setColor(QPalette::Window, p.ground);
    q.setColor(QPalette::WindowText, p.ink);
    q.setColor(QPalette::Base, p.panel);
    q.setColor(QPalette::AlternateBase, drawing::mixed(p.panel, p.ground, 0.5));
    q.setColor(QPalette::Text, p.ink);
    q.setColor(QPalette::PlaceholderText, p.mutedInk);
    q.setColor(QPalette::Button, p.panel);
    q.setColor(QPalette::ButtonText, p.ink);
    q.setColor(QPalette::BrightText, p.brick);
    q.setColor(QPalette::ToolTipBase, p.panel);
    q.setColor(QPalette::ToolTipText, p.ink);
    q.setColor(QPalette::Highlight, p.moss);
    q.setColor(QPalette::HighlightedText, p.panel);
    q.setColor(QPalette::Link, p.water);
    q.setColor(QPalette::LinkVisited, p.water);
    q.setColor(QPalette::Light, drawing::mixed(p.panel, p.ground, 0.3));
    q.setColor(QPalette::Midlight, p.line);
    q.setColor(QPalette::Mid, p.line);
    q.setColor(QPalette::Dark, p.outline);
    q.setColor(QPalette::Shadow, p.outline);
    const QColor faint = drawing::mixed(p.ink, p.ground, 0.5);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) q.setColor(QPalette::Disabled, role, faint);
    q.setColor(QPalette::Disabled, QPalette::Highlight, p.line);
    return q;
}

/// Fusion, with the boxes to tick in lists growing with the letters; those of check boxes the style sheet sizes.
class GrownStyle final : public QProxyStyle {
public:
    explicit GrownStyle(double scale) : QProxyStyle{QStringLiteral("Fusion")}, scale_{scale} {}
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override
    {
        const int usual = QProxyStyle::pixelMetric(metric, option, widget);
        const bool box = metric == PM_IndicatorWidth || metric == PM_IndicatorHeight;
        return box && qobject_cast<const QAbstractItemView*>(widget) ? static_cast<int>(std::lround(usual * scale_)) : usual;
    }

private:
    double scale_;
};

bool isDarkPalette(const QPalette& palette) { return palette.color(QPalette::WindowText).lightnessF() > palette.color(QPalette::Window).lightnessF(); }

/// With no palette of its own the application has that of the system.
bool systemPaletteIsDark()
{
    QApplication::setPalette(QPalette{});
    return isDarkPalette(QApplication::palette());
}

}

Theme::Theme(QObject* parent) : QObject{parent}
{
    systemDark_ = isDarkPalette(QApplication::palette());
    systemIsDark_ = systemPaletteIsDark;
    systemFont_ = QApplication::font();
    if (systemFont_.pointSizeF() <= 0) systemFont_.setPointSizeF(10.0); // a font given in pixels
}

std::unique_ptr<Theme> Theme::ofPaper(const QFont& font)
{
    auto theme = std::make_unique<Theme>();
    theme->mode_ = ThemeMode::light;
    theme->systemFont_ = font;
    return theme;
}

bool Theme::dark() const
{
    return mode_ == ThemeMode::dark || (mode_ == ThemeMode::system && systemDark_);
}

const drawing::Palette& Theme::palette() const
{
    return dark() ? drawing::Palette::dark() : drawing::Palette::light();
}

double pointsOf(TextSize size, double bodyPoints)
{
    switch (size) {
    case TextSize::small: return bodyPoints * drawing::smallSize;
    case TextSize::body: break;
    case TextSize::title: return bodyPoints * drawing::titleSize;
    }
    return bodyPoints;
}

QFont Theme::font(TextSize size, bool strong) const
{
    QFont font = systemFont_;
    font.setPointSizeF(pointsOf(size, systemFont_.pointSizeF() * scale()));
    font.setBold(strong);
    return font;
}

int Theme::px(double atHundred) const
{
    return static_cast<int>(std::lround(atHundred * scale()));
}

bool Theme::moves() const
{
    return !lessMotion_ && QApplication::style()->styleHint(QStyle::SH_Widget_Animation_Duration) > 0;
}

void Theme::setMode(ThemeMode mode)
{
    if (mode == mode_) return;
    mode_ = mode;
    apply();
}

void Theme::setSystemDark(bool dark)
{
    if (dark == systemDark_) return;
    systemDark_ = dark;
    if (mode_ == ThemeMode::system) apply();
}

void Theme::readSystemPalette()
{
    setSystemReader(systemPaletteIsDark);
    lookAgain();
}

bool Theme::eventFilter(QObject* watched, QEvent* event)
{
    const bool told = event->type() == QEvent::ThemeChange || (event->type() == QEvent::ApplicationPaletteChange && watched == qApp);
    if (told && !applying_ && !asked_) {
        asked_ = true;
        QMetaObject::invokeMethod(this, &Theme::lookAgain, Qt::QueuedConnection); // not in the midst of Qt's own work on the change
    }
    return false;
}

void Theme::lookAgain()
{
    asked_ = false;
    const bool before = systemDark_;
    applying_ = true;
    systemDark_ = systemIsDark_();
    applying_ = false;
    if (mode_ == ThemeMode::system && systemDark_ != before) return apply();
    applying_ = true;
    QApplication::setPalette(qtPalette(palette())); // what was asked for stays, whatever the system put in its place
    applying_ = false;
}

void Theme::setFontScale(int percent)
{
    const int held = std::clamp(percent, smallestScale, largestScale);
    if (held == scale_) return;
    scale_ = held;
    apply();
}

void Theme::apply()
{
    applying_ = true;
    QApplication::setStyle(new GrownStyle{scale()});
    QApplication::setPalette(qtPalette(palette()));
    QApplication::setFont(font(TextSize::body));
    qApp->setStyleSheet(styleSheetFor(palette(), systemFont_.pointSizeF() * scale(), scale()));
    applying_ = false;
    qApp->removeEventFilter(this); // a theme that is only asked, such as that of paper, watches nothing
    qApp->installEventFilter(this);
    Q_EMIT changed();
}

void Theme::restore(const Settings& settings)
{
    const QString mode = settings.value(QStringLiteral("window/theme")).toString();
    for (const ThemeMode known : {ThemeMode::light, ThemeMode::dark, ThemeMode::system}) {
        if (nameOf(known) == mode) mode_ = known;
    }
    lessMotion_ = settings.value(QStringLiteral("window/lessMotion"), false).toBool();
    const int scale = settings.value(QStringLiteral("window/fontScale"), 100).toInt();
    if (scale >= smallestScale && scale <= largestScale) scale_ = scale;
}

void Theme::remember(Settings& settings) const
{
    settings.setValue(QStringLiteral("window/theme"), nameOf(mode_));
    settings.setValue(QStringLiteral("window/fontScale"), scale_);
    settings.setValue(QStringLiteral("window/lessMotion"), lessMotion_);
}

}
