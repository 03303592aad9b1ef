#include "ui/handbook/handbook_view.h"

#include "ui/common/panels.h"
#include "ui/handbook/stages.h"

#include <QScrollBar>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QUrl>

#include <algorithm>

namespace tierloam::handbook {

namespace {

constexpr int widest = 760;      ///< px at 100 %: longer lines are hard to read

QString sheet(const drawing::Palette& palette, const ui::Theme& theme)
{
    const auto points = [&](ui::TextSize size) -> QString { return QString::number(theme.font(size).pointSizeF(), 'f', 2) % QStringLiteral("pt"); };
    return QStringLiteral("body, p, li, td, th { color: ") % palette.ink.name() % QStringLiteral("; } h1 { font-weight: bold; margin-top: 0; } h2 { font-weight: bold; margin-top: 14px; margin-bottom: 4px; } p { margin-top: 4px; margin-bottom: 6px; } li { margin-bottom: 4px; } .why { color: ") % palette.mutedInk.name()
        % QStringLiteral("; font-size: ") % points(ui::TextSize::small) % QStringLiteral("; } td, th { font-size: ") % points(ui::TextSize::small)
        % QStringLiteral("; vertical-align: top; } a { color: ") % palette.water.name() % QStringLiteral("; text-decoration: underline; }");
}

/// The viewer makes headings larger by steps of its own, whatever the sheet says; they have the sizes of the program.
void sizeHeadings(QTextDocument& document, const ui::Theme& theme)
{
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        const int level = block.blockFormat().headingLevel();
        if (level == 0) continue;
        QTextCursor cursor{block};
        cursor.setPosition(block.position() + block.length() - 1, QTextCursor::KeepAnchor);
        QTextCharFormat format = cursor.charFormat(); // a heading holds plain words alone
        format.clearProperty(QTextFormat::FontSizeAdjustment);
        format.setFontPointSize(theme.font(level == 1 ? ui::TextSize::title : ui::TextSize::body).pointSizeF());
        cursor.setCharFormat(format);
    }
}

}

HandbookView::HandbookView(const ui::Theme& theme, QWidget* parent) : QTextBrowser{parent}, theme_{theme}
{
    setObjectName(QStringLiteral("handbookView"));
    setOpenLinks(false);
    setOpenExternalLinks(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
    ui::setAccess(this, tr("Page of the handbook"));
    connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& url) {
        if (url.scheme() == QStringLiteral("page")) Q_EMIT pageWanted(url.path());
    });
    connect(&theme_, &ui::Theme::changed, this, [this] { html_.clear(); render(); });
}

void HandbookView::showPage(const Page& page, const PageFacts& facts)
{
    const bool same = page_ == &page;
    page_ = &page;
    facts_ = facts;
    render();
    if (!same) verticalScrollBar()->setValue(0);
}

void HandbookView::render()
{
    if (!page_) return;
    const QString html = pageHtml(*page_, facts_, theme_.palette());
    if (html == html_) return;
    html_ = html;
    const int at = verticalScrollBar()->value();
    document()->clear();
    document()->setDefaultStyleSheet(sheet(theme_.palette(), theme_));
    document()->setDocumentMargin(theme_.px(14));
    setHtml(html);
    sizeHeadings(*document(), theme_);
    verticalScrollBar()->setValue(at);
    ui::setAccess(this, tr("Handbook: %1").arg(pageTitle(*page_)));
}

void HandbookView::showWord(const QString& word)
{
    moveCursor(QTextCursor::Start);
    if (!word.isEmpty()) find(word);
}

QVariant HandbookView::loadResource(int type, const QUrl& name)
{
    if (name.scheme() != QStringLiteral("stage")) return QTextBrowser::loadResource(type, name);
    const Stage stage = stageNamed(name.path().toStdString());
    if (stage.stacks.empty()) return {};
    const double room = viewport()->width() - 2.0 * theme_.px(14) - 8;
    return drawStage(stage, std::max(160.0, std::min(room, double(theme_.px(520)))), theme_.px(230), devicePixelRatioF(), theme_.palette(), drawing::Type::from(theme_.font(ui::TextSize::body)),
                     isRightToLeft());
}

/// Lines of a comfortable length: what is wider than that becomes margin at the end.
void HandbookView::resizeEvent(QResizeEvent* event)
{
    QTextBrowser::resizeEvent(event);
    if (width() == width_) return;
    width_ = width();
    const int spare = std::max(0, width() - theme_.px(widest));
    setViewportMargins(0, 0, spare, 0);
    html_.clear(); // diagrams are drawn anew for the room there is
    render();
}

}
