#include "ui/trends/series_pens.h"

namespace tierloam::trends {

QPen penOf(int place, const drawing::Palette& p, double width)
{
    const QColor colours[] = {p.moss, p.brick, p.water, p.amber, p.ink};
    // Ten ways to be broken, then the same ones wider: who sees no colours tells thirty stacks apart.
    constexpr Qt::PenStyle styles[] = {Qt::SolidLine, Qt::DashLine, Qt::DashDotLine, Qt::DotLine};
    static const QList<qreal> dashes[] = {{1, 2, 1, 2, 1, 7}, {10, 3}, {3, 2, 3, 7}, {10, 3, 1, 3, 1, 3, 1, 3}, {1, 6}, {3, 7}};
    QPen pen{colours[place % 5], width * (1.0 + 1.2 * (place / 10)), styles[place % 10 % 4], Qt::RoundCap, Qt::RoundJoin};
    if (place % 10 >= 4) {
        pen.setDashPattern(dashes[place % 10 - 4]);
        pen.setCapStyle(Qt::FlatCap);
    }
    pen.setCosmetic(true);
    return pen;
}

QBrush fillOf(int place, const QColor& colour)
{
    constexpr Qt::BrushStyle styles[] = {Qt::SolidPattern, Qt::BDiagPattern, Qt::Dense5Pattern, Qt::HorPattern, Qt::DiagCrossPattern, Qt::FDiagPattern, Qt::VerPattern, Qt::CrossPattern};
    return {colour, styles[place % 8]};
}

QPen changedPen(const QColor& colour, double scale)
{
    QPen pen{colour, 2.2 * scale, Qt::CustomDashLine, Qt::FlatCap, Qt::RoundJoin};
    pen.setDashPattern({1.0, 1.2});
    pen.setCosmetic(true);
    return pen;
}

QBrush changedBrush(const QColor& colour)
{
    QColor faint = colour;
    faint.setAlphaF(0.5f);
    return {faint, Qt::BDiagPattern};
}

}
