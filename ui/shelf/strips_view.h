#pragma once

#include "ui/common/theme.h"
#include "ui/shelf/shelf_model.h"

#include <QWidget>

#include <memory>

namespace tierloam::shelf {

/// The small charts under a stack: processing, drained, colony, and the time axis that all stacks share.
class StripsView : public QWidget {
    Q_OBJECT

public:
    explicit StripsView(const ui::Theme& theme, QWidget* parent = nullptr);
    void setStack(std::shared_ptr<const ShelfModel> model, std::size_t index);
    /// `roomy` 0…1, as in drawing::stripHeight.
    static double heightFor(const QFont& font, double roomy);
    bool labelsFit() const { return fits_; } ///< of the last paint

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ui::Theme& theme_;
    std::shared_ptr<const ShelfModel> model_;
    std::size_t index_ = 0;
    bool fits_ = true;
};

}
