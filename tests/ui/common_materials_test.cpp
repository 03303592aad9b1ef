#include "ui/common/material_names.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTranslator>

namespace tierloam::ui {

namespace {

/// A language in which every name of a material is read backwards.
class Backwards final : public QTranslator {
public:
    QString translate(const char* context, const char* text, const char*, int) const override
    {
        if (QLatin1StringView{context} != QLatin1StringView{"MaterialNames"}) return {};
        QString word = QString::fromUtf8(text);
        std::reverse(word.begin(), word.end());
        return word;
    }
    bool isEmpty() const override { return false; }
};

}

TEST(MaterialNames, AreMarkedForTranslatorsAsTheTableHasThem)
{
    Backwards language;
    QCoreApplication::installTranslator(&language);
    const auto& rows = materials::Table::builtIn().rows();
    EXPECT_EQ(namedMaterials(), rows.size()) << "a row of resources/materials.csv without a name in material_names.cpp, or the other way round";
    for (const materials::Material& row : rows) {
        QString backwards = QString::fromStdString(row.name);
        std::reverse(backwards.begin(), backwards.end());
        EXPECT_EQ(materialText(row.name), backwards) << row.name << " is not marked";
        EXPECT_EQ(materialTyped(materials::Table::builtIn(), backwards.toUpper()), &row) << "typed in the language of the window";
        EXPECT_EQ(materialTyped(materials::Table::builtIn(), QString::fromStdString(row.name)), &row) << "typed as the journal has it";
    }
    EXPECT_EQ(materialTyped(materials::Table::builtIn(), QStringLiteral("plutonium")), nullptr);
    EXPECT_EQ(materialsNear(materials::Table::builtIn(), QStringLiteral("yal")).isEmpty(), false);
    QCoreApplication::removeTranslator(&language);
    EXPECT_EQ(materialText("Kitchen Mix"), QStringLiteral("Kitchen Mix")) << "as it was written";
    EXPECT_EQ(materialText("Gran's scraps"), QStringLiteral("Gran's scraps")) << "own names are nobody's to translate";
}

}
