#pragma once

#include "ui/common/theme.h"
#include "ui/shelf/part_story.h"

#include <QWidget>

namespace tierloam::shelf {

/// Height that the charts of a story take.
double storyHeight(const PartStory& story, const drawing::Type& type);
/// Paints them, on screen and on paper; false when a label did not fit.
bool drawStory(QPainter& painter, const QRectF& place, const PartStory& story, const drawing::Palette& palette, const drawing::Type& type);

/// The charts of a tray's or the sump's story, one under the other on one time axis; what lies after today stands on hatched ground.
/// What they show is told in words as the widget's description.
class StoryCharts : public QWidget {
    Q_OBJECT

public:
    StoryCharts(const ui::Theme& theme, PartStory story, QWidget* parent = nullptr);

    const PartStory& story() const { return story_; }
    bool labelsFit() const { return fits_; } ///< of the last paint
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    const ui::Theme& theme_;
    PartStory story_;
    bool fits_ = true;
};

}
