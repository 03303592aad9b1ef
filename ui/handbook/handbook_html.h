#pragma once

#include "core/household/household.h"
#include "ui/drawing/palette.h"
#include "ui/handbook/handbook_text.h"

#include <QString>
#include <QStringList>

/// A page of the handbook as rich text, and as plain text for search and for tests.
namespace tierloam::handbook {

/// What a page needs to know of the household for its living parts (track record).
struct PageFacts {
    std::shared_ptr<const reckoning::Reckoning> reckoning;
    Day today{};
};

/// The title, translated.
QString pageTitle(const Page& page);
/// Rich text; pictures are named "stage:NAME", links "page:ID".
QString pageHtml(const Page& page, const PageFacts& facts, const drawing::Palette& palette);
/// All its words, lists included, translated and with figures.
QString pagePlain(const Page& page, const PageFacts& facts);
/// Ids that the page leads to.
QStringList linksOf(const Page& page);

/// Pages that hold all of the words (in title, further words or text), best first: title before further words before text.
struct Hit {
    const Page* page;
    QString around;      ///< the words about the first place where it was found
};
QList<Hit> findPages(const QString& words, const PageFacts& facts);

}
