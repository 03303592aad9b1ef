#pragma once

#include "ui/common/theme.h"
#include "ui/drawing/type.h"

#include <QWidget>

namespace tierloam::rotation {

/// What the lanes' signs mean, in as many lines as the width asks for.
class LanesKey final : public QWidget {
public:
    LanesKey(const ui::Theme& theme, QWidget* parent);
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void fit();
    drawing::Type type() const { return drawing::Type::from(theme_.font(ui::TextSize::body)); }
    const ui::Theme& theme_;
};

}
