#include "ui/shelf/legend_bar.h"

#include "ui/shelf/shelf_board.h"

#include <QPainter>

#include <cmath>

namespace tierloam::shelf {

namespace {

constexpr int above = 4, below = 2;
constexpr double mostOfView = 1.0 / 6.0, mostOfViewForShades = 1.0 / 3.0;

}

LegendBar::LegendBar(const ui::Theme& theme, const ShelfBoard& board, QWidget* view) : QWidget{view}, theme_{theme}, board_{board}
{
    setObjectName(QStringLiteral("legendBar"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_OpaquePaintEvent);
    hide();
}

void LegendBar::follow()
{
    const QSize view = parentWidget()->size();
    const QRect own = board_.legend().toAlignedRect().translated(board_.mapTo(parentWidget(), QPoint{}));
    int height = own.height() + above + below;
    form_ = board_.legendForm();
    double most = view.height() * mostOfView;
    if (height > most) {
        form_ = drawing::LegendForm::shades;
        height = static_cast<int>(std::ceil(drawing::legendHeight(board_.legend().width(), drawing::Type::from(board_.font()), form_))) + above + below;
        most = view.height() * mostOfViewForShades;
    }
    const bool away = board_.legend().isNull() || board_.compact() || own.bottom() < view.height() || height > most;
    setHidden(away);
    if (away) return;
    setGeometry(0, view.height() - height, view.width(), height);
    raise();
    update();
}

void LegendBar::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.fillRect(rect(), theme_.palette().ground);
    painter.fillRect(QRect{0, 0, width(), 1}, theme_.palette().line);
    const QRectF legend = board_.legend();
    const double margin = std::max(0.0, (width() - legend.width()) / 2);
    drawing::drawLegend(painter, {margin, above, legend.width(), legend.height()}, theme_.palette(), drawing::Type::from(board_.font()), form_);
}

}
