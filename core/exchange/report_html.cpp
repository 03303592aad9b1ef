#include "core/exchange/report_html.h"

#include <QXmlStreamReader>
#include <QXmlStreamWriter>

namespace tierloam::exchange {

namespace {

constexpr auto svgNamespace = "http://www.w3.org/2000/svg";

/// Colours of the light theme, which is that of paper; tests/ui/paper_html_test.cpp holds them to the palette.
constexpr auto style = R"(
:root{color-scheme:light}
body{margin:0;background:#F4EFE2;color:#2B2420;font:15px/1.45 "DejaVu Sans",Verdana,sans-serif}
main{max-width:46em;margin:0 auto;padding:1.5em;background:#FFFFFF}
h1{font-size:1.7em;margin:0}h2{font-size:1.2em;margin:1.6em 0 .5em;border-bottom:1px solid #D8CFBE;padding-bottom:.2em}h3{font-size:1em;margin:1em 0 .3em}
h1,h2,h3,td,th,li,p{overflow-wrap:anywhere}
.sub,.muted,footer{color:#655B53}.sub{margin:.2em 0 1em}p{margin:.4em 0}
.box{margin:.6em 0;padding:.5em .8em;border-inline-start:5px solid #5A524B;background:#F4EFE2}
.box.go{border-color:#466630;background:#EDF2E4}.box.soon{border-color:#855407;background:#F8EED9}.box.danger{border-color:#A03A27;background:#F8E6E0}
.box p{margin:.15em 0}ul{margin:.2em 0;padding-inline-start:1.3em}
table{border-collapse:collapse;width:100%;font-size:.92em}caption{text-align:start;font-weight:bold;padding:.8em 0 .3em}
th{text-align:start}thead th{background:#EDE6D6}tbody th{font-weight:normal;color:#655B53}th,td{padding:.25em .5em;border-bottom:1px solid #D8CFBE;vertical-align:top}.n{text-align:end}
figure{margin:.8em 0}figure svg{max-width:100%;height:auto}figcaption{font-weight:bold;margin-bottom:.2em}
footer{margin-top:2em;border-top:1px solid #D8CFBE;padding-top:.6em;font-size:.9em}
@media print{body,main{background:none;padding:0}main{max-width:none}.box,figure,tr{break-inside:avoid}h2,h3,caption,figcaption{break-after:avoid}}
)";

bool mayStand(QChar c)
{
    // Of the control characters only these three may stand in XML; the other two are never characters.
    const char16_t code = c.unicode();
    return (code >= 0x20 || code == 0x09 || code == 0x0A || code == 0x0D) && !(code >= 0x7F && code <= 0x9F) && code != 0xFFFE && code != 0xFFFF;
}

class Page {
public:
    std::string of(const Report& report)
    {
        out_ += QStringLiteral("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"%1\" dir=\"%2\">\n<head>\n<meta charset=\"utf-8\"/>\n")
                    .arg(htmlText(report.language), report.rightToLeft ? QStringLiteral("rtl") : QStringLiteral("ltr"));
        out_ += QStringLiteral("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<meta http-equiv=\"Content-Security-Policy\" "
                               "content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\"/>\n");
        out_ += QStringLiteral("<meta name=\"generator\" content=\"") % htmlText(report.program) % QStringLiteral("\"/>\n<title>") % htmlText(report.title)
            % QStringLiteral("</title>\n<style>") % QString::fromLatin1(style) % QStringLiteral("</style>\n</head>\n<body>\n<main>\n");
        tag("h1", report.title);
        out_ += QStringLiteral("<p class=\"sub\">") % htmlText(report.subtitle) % QStringLiteral("</p>\n");
        for (const ReportBlock& block : report.blocks) std::visit([this](const auto& each) { write(each); }, block);
        out_ += QStringLiteral("<footer>") % htmlText(report.foot) % QStringLiteral("<br/>") % htmlText(report.program) % QStringLiteral("</footer>\n</main>\n</body>\n</html>\n");
        return out_.toStdString();
    }

private:
    void tag(const char* name, const QString& text)
    {
        if (text.isEmpty()) return;
        const QString element = QString::fromLatin1(name);
        out_ += u'<' % element % u'>' % htmlText(text) % QStringLiteral("</") % element % QStringLiteral(">\n");
    }

    void write(const ReportHeading& heading) { tag("h2", heading.text); }
    void write(const ReportParagraph& paragraph)
    {
        out_ += (paragraph.muted ? QStringLiteral("<p class=\"muted\">") : QStringLiteral("<p>")) % htmlText(paragraph.text) % QStringLiteral("</p>\n");
    }
    void write(const ReportBox& box)
    {
        static const char* const names[] = {"box", "box go", "box soon", "box danger"};
        out_ += QStringLiteral("<div class=\"%1\">\n").arg(QString::fromLatin1(names[static_cast<int>(box.tone)]));
        if (!box.title.isEmpty()) out_ += QStringLiteral("<p><strong>") % htmlText(box.title) % QStringLiteral("</strong></p>\n");
        for (const QString& line : box.lines) tag("p", line);
        if (!box.source.isEmpty()) out_ += QStringLiteral("<p class=\"muted\">") % htmlText(box.source) % QStringLiteral("</p>\n");
        out_ += QStringLiteral("</div>\n");
    }
    void write(const ReportList& list)
    {
        tag("h3", list.title);
        if (list.points.isEmpty()) return;
        out_ += QStringLiteral("<ul>\n");
        for (const QString& point : list.points) tag("li", point);
        out_ += QStringLiteral("</ul>\n");
    }
    void cell(const char* element, const QString& scope, const QString& text, bool number)
    {
        const QString name = QString::fromLatin1(element);
        out_ += u'<' % name % scope % (number ? QStringLiteral(" class=\"n\">") : QStringLiteral(">")) % htmlText(text) % QStringLiteral("</") % name % u'>';
    }
    void write(const ReportTable& table)
    {
        out_ += QStringLiteral("<table>\n");
        tag("caption", table.title);
        if (!table.head.isEmpty()) {
            out_ += QStringLiteral("<thead><tr>");
            for (int i = 0; i < table.head.size(); ++i) cell("th", QStringLiteral(" scope=\"col\""), table.head[i], table.numbers.contains(i));
            out_ += QStringLiteral("</tr></thead>\n");
        }
        out_ += QStringLiteral("<tbody>\n");
        for (const QStringList& row : table.rows) {
            out_ += QStringLiteral("<tr>");
            for (int i = 0; i < row.size(); ++i) {
                if (i == 0 && table.head.isEmpty()) cell("th", QStringLiteral(" scope=\"row\""), row[i], false);
                else cell("td", {}, row[i], table.numbers.contains(i));
            }
            out_ += QStringLiteral("</tr>\n");
        }
        out_ += QStringLiteral("</tbody>\n</table>\n");
    }
    void write(const ReportFigure& figure)
    {
        const QString picture = inlineSvg(figure.svg, figure.words, QStringLiteral("p%1-").arg(++figures_));
        if (picture.isEmpty()) return;
        out_ += QStringLiteral("<figure>\n");
        tag("figcaption", figure.title);
        out_ += picture % QStringLiteral("\n</figure>\n");
    }

    QString out_;
    int figures_ = 0;
};

/// Copies what stands inside <svg>, with ids and what refers to them marked. Its own title and description ("Qt SVG Document") stay behind.
void copyInside(QXmlStreamReader& in, QXmlStreamWriter& out, const QString& mark)
{
    const QString space = QString::fromLatin1(svgNamespace);
    const auto marked = [&](const QXmlStreamAttribute& attribute) {
        QString value = attribute.value().toString();
        if (attribute.name() == u"id") return QString{mark % value};
        value.replace(QStringLiteral("url(#"), QStringLiteral("url(#") % mark);
        if (attribute.name() == u"href" && value.startsWith(u'#')) value.insert(1, mark);
        return value;
    };
    int depth = 0;
    while (!in.atEnd()) {
        switch (in.readNext()) {
        case QXmlStreamReader::StartElement:
            if (depth == 0 && (in.name() == u"title" || in.name() == u"desc")) {
                in.skipCurrentElement();
                break;
            }
            ++depth;
            out.writeStartElement(space, in.name().toString());
            for (const QXmlStreamAttribute& attribute : in.attributes()) {
                if (attribute.namespaceUri().isEmpty()) out.writeAttribute(attribute.name().toString(), marked(attribute));
                else out.writeAttribute(attribute.namespaceUri().toString(), attribute.name().toString(), marked(attribute));
            }
            break;
        case QXmlStreamReader::EndElement:
            if (depth-- == 0) return;
            out.writeEndElement();
            break;
        case QXmlStreamReader::Characters:
            if (!in.isWhitespace()) out.writeCharacters(in.text().toString());
            break;
        default: break;
        }
    }
}

}

std::string reportHtml(const Report& report) { return Page{}.of(report); }

QString htmlText(const QString& text)
{
    QString made;
    made.reserve(text.size());
    for (const QChar c : text) {
        switch (c.unicode()) {
        case u'<': made += QStringLiteral("&lt;"); break;
        case u'>': made += QStringLiteral("&gt;"); break;
        case u'&': made += QStringLiteral("&amp;"); break;
        case u'"': made += QStringLiteral("&quot;"); break;
        case u'\'': made += QStringLiteral("&#39;"); break;
        default:
            if (mayStand(c)) made += c;
        }
    }
    return made;
}

QString inlineSvg(const QByteArray& svg, const QString& words, const QString& mark)
{
    QXmlStreamReader in{svg};
    while (!in.atEnd() && !(in.isStartElement() && in.name() == u"svg")) in.readNext();
    if (in.hasError() || in.atEnd()) return {};
    QByteArray bytes;
    QXmlStreamWriter out{&bytes};
    out.writeDefaultNamespace(QString::fromLatin1(svgNamespace));
    out.writeStartElement(QString::fromLatin1(svgNamespace), QStringLiteral("svg"));
    const QString box = in.attributes().value(QStringLiteral("viewBox")).toString();
    const QStringList sizes = box.split(u' ', Qt::SkipEmptyParts);
    out.writeAttribute(QStringLiteral("viewBox"), box);
    if (sizes.size() == 4) {
        out.writeAttribute(QStringLiteral("width"), sizes[2]);
        out.writeAttribute(QStringLiteral("height"), sizes[3]);
    }
    out.writeAttribute(QStringLiteral("role"), QStringLiteral("img"));
    QString name;
    for (const QChar c : words)
        if (mayStand(c)) name += c;
    out.writeAttribute(QStringLiteral("aria-label"), name);
    copyInside(in, out, mark);
    out.writeEndElement();
    return in.hasError() ? QString{} : QString::fromUtf8(bytes);
}

}
