#pragma once

#include "ui/common/theme.h"
#include "ui/handbook/handbook_html.h"

#include <QHash>
#include <QImage>
#include <QTextBrowser>

namespace tierloam::handbook {

/// Shows one page: text, tables, and diagrams that are drawn when they are needed. It opens nothing outside the program.
class HandbookView : public QTextBrowser {
    Q_OBJECT

public:
    explicit HandbookView(const ui::Theme& theme, QWidget* parent = nullptr);

    void showPage(const Page& page, const PageFacts& facts);
    /// Marks and reaches the first place of a word.
    void showWord(const QString& word);

Q_SIGNALS:
    void pageWanted(const QString& id);

protected:
    QVariant loadResource(int type, const QUrl& name) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void render();

    const ui::Theme& theme_;
    const Page* page_ = nullptr;
    PageFacts facts_;
    QString html_;
    int width_ = 0;
};

}
