#pragma once

#include "core/exchange/report.h"

#include <string>

namespace tierloam::exchange {

/// The report as one page of HTML that needs nothing beside it: styles and pictures are inside, and it may load nothing and run nothing.
/// Written so that it is well-formed XML too. All text is escaped; control characters, which neither HTML nor XML may hold, are left out.
std::string reportHtml(const Report& report);

/// Text as it stands between tags and inside quotes.
QString htmlText(const QString& text);

/// A picture of QSvgGenerator made ready to stand in a page: without its prologue, with the role of an image and `words` as its name, and
/// with `mark` before every id, so that pictures of one page do not share them. Empty when it is no SVG.
QString inlineSvg(const QByteArray& svg, const QString& words, const QString& mark);

}
