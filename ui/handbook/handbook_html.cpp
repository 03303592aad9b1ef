#include "ui/handbook/handbook_html.h"

#include "ui/common/figure_words.h"
#include "ui/forms/cautions.h"
#include "ui/handbook/lists.h"
#include "ui/handbook/stages.h"

#include <QCoreApplication>

#include <algorithm>

namespace tierloam::handbook {

namespace {

struct HandbookHtml {
    Q_DECLARE_TR_FUNCTIONS(HandbookHtml)
};

/// Text between "[[" and "]]", cut at its bar.
struct Piece {
    QString words;
    QString link;        ///< empty: plain words
};

QList<Piece> pieces(const QString& text)
{
    QList<Piece> list;
    qsizetype from = 0;
    while (true) {
        const qsizetype open = text.indexOf(QStringLiteral("[["), from);
        const qsizetype close = open < 0 ? -1 : text.indexOf(QStringLiteral("]]"), open);
        if (close < 0) break;
        if (open > from) list.append({text.mid(from, open - from), {}});
        const QString inside = text.mid(open + 2, close - open - 2);
        const qsizetype bar = inside.indexOf(u'|');
        list.append({bar < 0 ? inside : inside.mid(bar + 1), bar < 0 ? inside : inside.left(bar)});
        from = close + 2;
    }
    if (from < text.size()) list.append({text.mid(from), {}});
    return list;
}

QString translated(const char* text) { return ui::withFigures(QCoreApplication::translate(textContext, text)); }

QString inlineHtml(const QString& text)
{
    QString html;
    for (const Piece& piece : pieces(text)) {
        const QString words = piece.words.toHtmlEscaped();
        html += piece.link.isEmpty() ? words : QString{QStringLiteral("<a href=\"page:") % piece.link.toHtmlEscaped() % QStringLiteral("\">") % words % QStringLiteral("</a>")};
    }
    return html;
}

QString inlinePlain(const QString& text)
{
    QString plain;
    for (const Piece& piece : pieces(text)) plain += piece.words;
    return plain;
}

forms::Caution cautionNamed(std::string_view word)
{
    const auto withTopic = [](const QList<forms::Caution>& list, forms::CautionTopic topic) {
        const auto found = std::ranges::find(list, topic, &forms::Caution::topic);
        return found == list.end() ? forms::Caution{} : *found;
    };
    using forms::CautionTopic;
    if (word == "leachate") return forms::leachateCaution();
    if (word == "lifting") return forms::liftingCaution({});
    if (word == "dust") return forms::dustCaution();
    if (word == "manure") return forms::manureCaution();
    const QList<forms::Caution> all = forms::allCautions();
    if (word == "hands" || word == "doctor") return withTopic(all, CautionTopic::dustAndMould);
    if (word == "kept-out") return withTopic(all, CautionTopic::doubtfulMaterial);
    if (word == "rules") return withTopic(all, CautionTopic::giving);
    if (word == "remedy") return withTopic(all, CautionTopic::remedy);
    if (word == "giving") {
        const auto found = std::find_if(all.rbegin(), all.rend(), [](const forms::Caution& each) { return each.topic == CautionTopic::giving; });
        return *found;
    }
    if (word == "heater") {
        const auto found = std::find_if(all.rbegin(), all.rend(), [](const forms::Caution& each) { return each.topic == CautionTopic::heater; });
        return *found;
    }
    return {};
}

QString cautionHtml(const forms::Caution& caution, const drawing::Palette& palette)
{
    return QStringLiteral("<table width=\"100%\" cellpadding=\"7\" cellspacing=\"0\" style=\"margin-top:6px;margin-bottom:6px\"><tr><td width=\"4\" bgcolor=\"") % palette.amber.name()
        % QStringLiteral("\"></td><td bgcolor=\"") % palette.amberSoft.name() % QStringLiteral("\">")
        % HandbookHtml::tr("Caution: %1").arg(caution.text).toHtmlEscaped() % QStringLiteral(" <span class=\"why\">(") % caution.source.toHtmlEscaped()
        % QStringLiteral(")</span></td></tr></table>");
}

QString listHtml(const MadeList& list, const drawing::Palette& palette)
{
    if (list.rows.isEmpty()) return QStringLiteral("<p class=\"why\">") % list.instead.toHtmlEscaped() % QStringLiteral("</p>");
    QString html = QStringLiteral("<table width=\"100%\" cellpadding=\"5\" cellspacing=\"0\"><tr>");
    for (const QString& head : list.head) html += QStringLiteral("<th align=\"left\" bgcolor=\"") % palette.rail.name() % QStringLiteral("\">") % head.toHtmlEscaped() % QStringLiteral("</th>");
    html += QStringLiteral("</tr>");
    bool even = false;
    for (const QStringList& row : list.rows) {
        html += even ? QString{QStringLiteral("<tr bgcolor=\"") % drawing::mixed(palette.panel, palette.ground, 0.4).name() % QStringLiteral("\">")} : QStringLiteral("<tr>");
        even = !even;
        for (const QString& cell : row) html += QStringLiteral("<td>") % cell.toHtmlEscaped() % QStringLiteral("</td>");
        html += QStringLiteral("</tr>");
    }
    return html % QStringLiteral("</table>");
}

/// Opens and closes lists around runs of steps and points.
class Runs {
public:
    explicit Runs(QString& html) : html_{html} {}
    ~Runs() { to(BlockKind::paragraph); }
    void to(BlockKind kind)
    {
        const bool lists = kind == BlockKind::step || kind == BlockKind::point;
        if (open_ && (!lists || kind != *open_)) {
            html_ += *open_ == BlockKind::step ? QStringLiteral("</ol>") : QStringLiteral("</ul>");
            open_.reset();
        }
        if (lists && !open_) {
            html_ += kind == BlockKind::step ? QStringLiteral("<ol>") : QStringLiteral("<ul>");
            open_ = kind;
        }
    }

private:
    QString& html_;
    std::optional<BlockKind> open_;
};

}

QString pageTitle(const Page& page) { return QCoreApplication::translate(textContext, page.title); }

QString pageHtml(const Page& page, const PageFacts& facts, const drawing::Palette& palette)
{
    QString html = QStringLiteral("<h1>") % pageTitle(page).toHtmlEscaped() % QStringLiteral("</h1>");
    {
        Runs runs{html};
        for (const Block& block : page.blocks) {
            runs.to(block.kind);
            switch (block.kind) {
            case BlockKind::paragraph: html += QStringLiteral("<p>") % inlineHtml(translated(block.text)) % QStringLiteral("</p>"); break;
            case BlockKind::heading: html += QStringLiteral("<h2>") % inlineHtml(translated(block.text)) % QStringLiteral("</h2>"); break;
            case BlockKind::step:
            case BlockKind::point: html += QStringLiteral("<li>") % inlineHtml(translated(block.text)) % QStringLiteral("</li>"); break;
            case BlockKind::why: html += QStringLiteral("<p class=\"why\">") % inlineHtml(translated(block.text)) % QStringLiteral("</p>"); break;
            case BlockKind::term: {
                const QString text = inlineHtml(translated(block.text));
                const qsizetype colon = text.indexOf(u':', 3); // "C:N: …" has one inside
                html += QStringLiteral("<p><b>") % text.left(colon) % QStringLiteral("</b>") % text.mid(colon) % QStringLiteral("</p>");
                break;
            }
            case BlockKind::diagram:
                html += QStringLiteral("<p><img src=\"stage:") % QString::fromLatin1(block.text) % QStringLiteral("\"></p><p class=\"why\">")
                    % stageNamed(block.text).caption.toHtmlEscaped() % QStringLiteral("</p>");
                break;
            case BlockKind::caution: html += cautionHtml(cautionNamed(block.text), palette); break;
            case BlockKind::list:
                if (const auto list = madeList(block.text, facts)) html += listHtml(*list, palette);
                break;
            }
        }
    }
    return html;
}

QString pagePlain(const Page& page, const PageFacts& facts)
{
    QStringList lines{pageTitle(page)};
    for (const Block& block : page.blocks) {
        switch (block.kind) {
        case BlockKind::diagram: lines << stageNamed(block.text).caption; break;
        case BlockKind::caution: lines << cautionNamed(block.text).text; break;
        case BlockKind::list:
            if (const auto list = madeList(block.text, facts)) {
                for (const QStringList& row : list->rows) lines << row.join(QStringLiteral(" · "));
            }
            break;
        default: lines << inlinePlain(translated(block.text)); break;
        }
    }
    return lines.join(u'\n');
}

QStringList linksOf(const Page& page)
{
    QStringList links;
    for (const Block& block : page.blocks) {
        if (block.kind == BlockKind::diagram || block.kind == BlockKind::caution || block.kind == BlockKind::list) continue;
        for (const Piece& piece : pieces(QString::fromUtf8(block.text))) {
            if (!piece.link.isEmpty()) links << piece.link;
        }
    }
    return links;
}

QList<Hit> findPages(const QString& words, const PageFacts& facts)
{
    const QStringList wanted = words.simplified().split(u' ', Qt::SkipEmptyParts);
    struct Ranked { int rank; Hit hit; };
    std::vector<Ranked> found;
    for (const Page& page : handbookPages()) {
        const QString title = pageTitle(page), also = QCoreApplication::translate(textContext, page.also);
        const QString text = wanted.isEmpty() ? QString{} : pagePlain(page, facts);
        int rank = 0;
        QString around;
        bool all = true;
        for (const QString& word : wanted) {
            if (title.contains(word, Qt::CaseInsensitive)) continue;
            if (also.contains(word, Qt::CaseInsensitive)) { rank = std::max(rank, 1); continue; }
            const qsizetype at = text.indexOf(word, 0, Qt::CaseInsensitive);
            if (at < 0) { all = false; break; }
            rank = 2;
            if (!around.isEmpty()) continue;
            const qsizetype line = text.lastIndexOf(u'\n', at) + 1, end = text.indexOf(u'\n', at);
            const qsizetype from = std::max(line, at - 30);
            around = (from > line ? QStringLiteral("…") : QString{}) % text.mid(from, std::min(end < 0 ? text.size() : end, at + 50) - from).trimmed();
        }
        if (all) found.push_back({rank, {&page, around}});
    }
    std::ranges::stable_sort(found, {}, &Ranked::rank);
    QList<Hit> hits;
    for (const Ranked& each : found) hits.append(each.hit);
    return hits;
}

}
