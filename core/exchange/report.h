#pragma once

#include <QByteArray>
#include <QList>
#include <QString>
#include <QStringList>

#include <variant>

/// A report as it stands on paper and on a page of HTML: words and pictures in their order, translated, and nothing that is still to be
/// reckoned. What users typed is in it as they typed it; whoever writes it out escapes it.
namespace tierloam::exchange {

struct ReportHeading {
    QString text;
};

/// What a box means; a word of its own stands in it, never the colour alone.
enum class ReportTone { plain, go, soon, danger };

struct ReportParagraph {
    QString text;
    bool muted = false;              ///< a reason, a source
};

/// A box with a bar at its side: the verdict, a caution.
struct ReportBox {
    ReportTone tone = ReportTone::plain;
    QString title;                   ///< may be empty
    QStringList lines;
    QString source;                  ///< may be empty
};

struct ReportList {
    QString title;                   ///< may be empty
    QStringList points;
};

struct ReportTable {
    QString title;
    QStringList head;                ///< empty: the first cell of each row is its head
    QList<QStringList> rows;         ///< as many cells as the head, or as the first row
    QList<int> numbers;              ///< columns set at the end of their line
};

/// A drawing. Paper paints it anew; HTML takes `svg`.
struct ReportFigure {
    QString title;                   ///< may be empty
    QString words;                   ///< what it shows, for those who do not see it
    int width = 0, height = 0;       ///< in units of 1/96 inch
    QByteArray svg;                  ///< as QSvgGenerator writes it
};

using ReportBlock = std::variant<ReportHeading, ReportParagraph, ReportBox, ReportList, ReportTable, ReportFigure>;

struct Report {
    QString language;                ///< BCP 47, of its words
    bool rightToLeft = false;
    QString title, subtitle;
    QString foot;                    ///< under every page
    QString program;                 ///< "Tierloam 1.2.3"
    QList<ReportBlock> blocks;
};

}
