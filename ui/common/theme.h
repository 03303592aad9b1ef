#pragma once

#include "ui/drawing/palette.h"

#include <QFont>
#include <QObject>
#include <QString>

#include <functional>
#include <memory>

namespace tierloam::ui {

class Settings;

enum class ThemeMode { light, dark, system };

/// The three sizes of the one typeface.
enum class TextSize { small, body, title };

/// Colours and text sizes of the program. Applies both to the application (QPalette, font, style sheet); widgets that paint
/// themselves ask palette() and font() in their paint event and repaint on changed().
class Theme : public QObject {
    Q_OBJECT

public:
    static constexpr int smallestScale = 100, largestScale = 200, scaleStep = 25;

    /// Needs a QApplication; remembers its palette and font as those of the system. Nothing is applied before apply().
    explicit Theme(QObject* parent = nullptr);
    /// That of paper: light, in that font, whatever the window looks like. It is asked and never applied.
    static std::unique_ptr<Theme> ofPaper(const QFont& font);

    ThemeMode mode() const { return mode_; }
    int fontScale() const { return scale_; }               ///< percent, 100…200
    double scale() const { return scale_ / 100.0; }        ///< lengths beside text grow with it
    bool dark() const;
    const drawing::Palette& palette() const;
    QFont font(TextSize size, bool strong = false) const;
    /// A length in pixels at 100 %, grown with the font.
    int px(double atHundred) const;

    /// Whether a stack that changes may move for a moment: not when the desktop has animations off, nor when less motion was asked for.
    bool moves() const;
    bool lessMotion() const { return lessMotion_; }
    void setLessMotion(bool less) { lessMotion_ = less; }

    void setMode(ThemeMode mode);
    /// The system's colours are dark now, or light: followed at once while they are asked for.
    void setSystemDark(bool dark);
    /// How the system's colours are looked up when it says that they changed; tests plant an answer.
    void setSystemReader(std::function<bool()> isDark) { systemIsDark_ = std::move(isDark); }
    /// As before anybody set a reader: the system's palette says it. Looked at at once.
    void readSystemPalette();
    void setFontScale(int percent);                        ///< held to 100…200
    /// Sets style, palette, font and style sheet of the application and emits changed().
    void apply();

    /// Reads mode, scale and motion; unknown values leave the defaults.
    void restore(const Settings& settings);
    void remember(Settings& settings) const;

Q_SIGNALS:
    void changed();

protected:
    /// Of the application: sees when the system's palette or theme changes while the program runs.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void lookAgain();

    ThemeMode mode_ = ThemeMode::system;
    int scale_ = 100;
    bool lessMotion_ = false;
    bool systemDark_ = false;
    bool applying_ = false;          ///< what the application is told now comes from here
    bool asked_ = false;             ///< lookAgain is on its way
    std::function<bool()> systemIsDark_;
    QFont systemFont_;
};

/// The style sheet for a palette; sizes in points.
QString styleSheetFor(const drawing::Palette& palette, double bodyPoints, double scale);
double pointsOf(TextSize size, double bodyPoints);

}
