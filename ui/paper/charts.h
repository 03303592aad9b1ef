#pragma once

#include "ui/common/theme.h"
#include "ui/paper/sheet.h"
#include "ui/trends/trend_seen.h"

#include <QImage>

/// What the trends page shows, as a picture, a drawing or pages.
namespace tierloam::paper {

/// One tall picture in the colours of the theme, its charts beside each other as on the page, `width` wide.
QImage chartsImage(const trends::SeenTrends& seen, const ui::Theme& theme, double width);
QByteArray chartsSvg(const trends::SeenTrends& seen, const ui::Theme& theme, double width);

/// For PDF and printer: one chart below the other on white.
Sheet chartsSheet(const trends::SeenTrends& seen, Day today, const QString& version);

}
