#pragma once

#include <QSize>
#include <QString>

#include <optional>

namespace tierloam::window {
class MainWindow;
}

namespace tierloam::portrait {

/// Draws each page that exists of the window's household to FOLDER/PAGE.png, as it looks at that size, when the
/// estimates are there. All pages are drawn before the first file is written, and each file is replaced as a whole.
/// Returns why it failed. Equal households, days, sizes, themes and fonts give equal pictures.
std::optional<QString> drawPortraits(window::MainWindow& window, const QString& folder, QSize size);

}
