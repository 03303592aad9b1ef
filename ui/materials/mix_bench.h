#pragma once

#include "core/guide/softening.h"
#include "core/materials/mix.h"
#include "ui/materials/bench.h"

#include <vector>

class QLabel;
class QPushButton;

namespace tierloam::ui {
class FactList;
class ChoiceField;
class MaterialField;
class NumberField;
class ShareField;
}

namespace tierloam::materials_page {

class Gauge;

/// A mix of materials by mass, volume or kitchen measures: what it holds, and what to add to reach an aim of moisture and C:N.
class MixBench : public Bench {
    Q_OBJECT

public:
    MixBench(household::Household& household, const ui::Theme& theme, QWidget* parent = nullptr);

    void follow() override;
    /// A line with that material, by mass; an empty line is filled first.
    void add(const QString& material, double grams = 500);
    /// The mix as typed; lines that are not sound are left out.
    guide::Portions portions() const;
    materials::Mix mix() const;
    const materials::Addition& proposal() const { return proposal_; }
    QString adviceText() const;
    /// Puts what is proposed into the mix.
    void takeProposal();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Line {
        QWidget* box;
        ui::MaterialField* material;
        ui::NumberField* amount;
        ui::ChoiceField* measure;
    };
    Line& newLine();
    void fitLines();
    void dropLine(const QWidget* box);
    void reckon();
    QString advise(const materials::Mix& mix, const materials::Material& added, double moisture, double ratio);
    /// The material that reaches both aims with the least to add; nullptr when none does.
    const materials::Material* reaching(const materials::Mix& mix, double moisture, double ratio, Mass* amount) const;

    materials::Table table_;
    std::vector<Line> lines_;
    QVBoxLayout* lineColumn_;
    ui::NumberField* ratio_;
    ui::ShareField* moisture_;
    ui::MaterialField* added_;
    Gauge* ratioGauge_;
    Gauge* moistureGauge_;
    ui::FactList* facts_;
    QLabel* advice_;
    QPushButton* take_;
    materials::Addition proposal_;
    double water_ = 0;               ///< L poured by proposals that were taken
};

}
