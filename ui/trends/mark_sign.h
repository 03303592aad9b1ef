#pragma once

#include "ui/drawing/palette.h"
#include "ui/trends/trend_data.h"

#include <QPointF>

class QPainter;

/// The signs that entries of the journal have in the charts.
namespace tierloam::trends {

/// The sign of a kind of mark, centred on `centre`; also drawn in the key below the charts.
void paintSign(QPainter& painter, MarkKind kind, QPointF centre, double size, const drawing::Palette& palette);
/// What is often done on one day (lifted, taken, bedded anew) stands below each other along the top, not over each other: from 0 downwards.
int laneOf(MarkKind kind);
/// So often that it stands as a small tick at the bottom.
bool isFrequent(MarkKind kind);

}
