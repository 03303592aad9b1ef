#include "tests/support/pictures.h"
#include "tests/ui/forms_fixture.h"
#include "ui/common/theme.h"
#include "ui/forms/new_stack.h"
#include "ui/forms/welcome.h"

#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyleOptionFrame>

/// Every form in both themes at 100 and 200 %: nothing is clipped, cautions stand in sight. TIERLOAM_PICTURES keeps what was drawn.
namespace tierloam::forms {

namespace {

struct Look {
    FormKind kind;
    const char* stack;
    const char* name;
    std::optional<int> slot;
};

const Look looks[] = {
    {FormKind::feed, "Scullery", "feed", {}},           {FormKind::cover, "Scullery", "cover", {}},       {FormKind::water, "Scullery", "water", {}},
    {FormKind::routine, "Scullery", "routine", {}},     {FormKind::drain, "Lean-to", "drain", {}},        {FormKind::flush, "Lean-to", "flush", {}},
    {FormKind::reading, "Cellar", "reading", {}},       {FormKind::check, "Scullery", "check", 2},        {FormKind::weigh, "Scullery", "weigh", {}},
    {FormKind::count, "Scullery", "count", {}},         {FormKind::trayWeight, "Scullery", "trayweight", 1}, {FormKind::rotate, "Scullery", "rotate", {}},
    {FormKind::loosen, "Cellar", "loosen", 3},          {FormKind::lid, "Cellar", "lid", {}},             {FormKind::harvest, "Cellar", "harvest", {}},
    {FormKind::addTray, "Lean-to", "addtray", {}},      {FormKind::bedding, "Lean-to", "bedding", 2},     {FormKind::stock, "Lean-to", "stock", {}},
    {FormKind::remove, "Scullery", "remove", {}},       {FormKind::move, "Scullery", "move", {}},         {FormKind::event, "Scullery", "event", {}},
    {FormKind::note, "Scullery", "note", {}},           {FormKind::retire, "Cellar", "retire", {}},       {FormKind::setup, "Lean-to", "setup", {}},
};

/// Text that does not fit where it stands, in words; empty when all fits.
QStringList clipped(QWidget& window)
{
    QStringList found;
    for (QWidget* each : window.findChildren<QWidget*>()) {
        if (!each->isVisible() || each->window() != &window) continue;
        const auto tell = [&](const QString& what, int wants, int has) {
            found << QStringLiteral("%1 «%2»: wants %3, has %4").arg(QString::fromLatin1(each->metaObject()->className()), what).arg(wants).arg(has);
        };
        if (const auto* label = qobject_cast<QLabel*>(each)) {
            if (label->text().isEmpty()) continue;
            if (label->wordWrap()) {
                if (label->heightForWidth(label->width()) > label->height()) tell(label->text(), label->heightForWidth(label->width()), label->height());
            } else if (label->sizeHint().width() > label->width() || label->minimumSizeHint().height() > label->height()) {
                tell(label->text(), label->sizeHint().width(), label->width());
            }
        } else if (const auto* button = qobject_cast<QAbstractButton*>(each)) {
            if (button->sizeHint().width() > button->width() || button->minimumSizeHint().height() > button->height()) tell(button->text(), button->sizeHint().width(), button->width());
        } else if (const auto* edit = qobject_cast<QLineEdit*>(each)) {
            if (edit->fontMetrics().height() > edit->height()) tell(edit->text(), edit->fontMetrics().height(), edit->height());
            QStyleOptionFrame frame;
            frame.initFrom(edit);
            const int room = edit->style()->subElementRect(QStyle::SE_LineEditContents, &frame, edit).width();
            const bool free = edit->objectName() == QLatin1StringView{"text"} || qobject_cast<QComboBox*>(edit->parentWidget()); // of any length: they scroll
            if (!free && edit->fontMetrics().horizontalAdvance(edit->text()) > room) tell(edit->text(), edit->fontMetrics().horizontalAdvance(edit->text()), room);
        } else if (const auto* list = qobject_cast<QComboBox*>(each)) {
            if (list->minimumSizeHint().height() > list->height() || list->minimumSizeHint().width() > list->width())
                tell(list->currentText(), list->minimumSizeHint().width(), list->width());
        }
        if (each->parentWidget() && each->parentWidget()->rect().isValid() && each->x() + each->width() > each->parentWidget()->width() + 1
            && !qobject_cast<QScrollArea*>(each->parentWidget()->parentWidget()))
            tell(each->objectName() + QStringLiteral(" beyond its parent"), each->x() + each->width(), each->parentWidget()->width());
    }
    return found;
}

class ThemeUse {
public:
    ThemeUse(ui::ThemeMode mode, int scale)
    {
        theme_.setMode(mode);
        theme_.setFontScale(scale);
        theme_.apply();
    }
    ~ThemeUse()
    {
        theme_.setMode(ui::ThemeMode::light);
        theme_.setFontScale(100);
        theme_.apply();
        qApp->setStyleSheet({});
    }
    ThemeUse(const ThemeUse&) = delete;
    ThemeUse& operator=(const ThemeUse&) = delete;

private:
    ui::Theme theme_;
};

}

class FormLooks : public FormsTest {
protected:
    void lookAt(const QString& name, int leastCautions)
    {
        QCoreApplication::processEvents();
        const QStringList faults = clipped(window());
        EXPECT_TRUE(faults.isEmpty()) << name.toStdString() << ":\n" << faults.join(QLatin1Char('\n')).toStdString();
        for (const QScrollArea* area : window().findChildren<QScrollArea*>())
            EXPECT_EQ(area->verticalScrollBar()->maximum(), 0)
                << "area " << area->width() << "x" << area->height() << " wants " << area->heightForWidth(area->width()) << " content " << area->widget()->width() << "x" << area->widget()->height()
                << " window " << window().width() << "x" << window().height() << " wants " << window().layout()->totalHeightForWidth(window().width()) << " " << name.toStdString() << " has the height it asks for and still scrolls";
        if (auto* frame = window().findChild<FormShell*>()) {
            EXPECT_GE(frame->cautions().size(), leastCautions) << name.toStdString();
            if (leastCautions > 0) {
                QWidget* card = window().findChild<QWidget*>(QStringLiteral("cautions"));
                EXPECT_TRUE(card->isVisible());
                EXPECT_FALSE(card->visibleRegion().isEmpty());
                EXPECT_EQ(card->visibleRegion().boundingRect(), card->rect()) << name.toStdString() << ": cautions in full without scrolling";
            }
        }
        tests::keepPicture(window().grab().toImage(), name);
    }
    static int cautionsOf(FormKind kind)
    {
        switch (kind) {
        case FormKind::drain:
        case FormKind::flush: return 2;
        case FormKind::rotate:
        case FormKind::harvest: return 3;
        case FormKind::trayWeight: return 2;
        case FormKind::loosen:
        case FormKind::remove: return 1;
        default: return 0;
        }
    }
};

TEST_F(FormLooks, EveryFormInBothThemesAndSizes)
{
    for (const auto mode : {ui::ThemeMode::light, ui::ThemeMode::dark}) {
        for (const int scale : {100, 200}) {
            const ThemeUse theme{mode, scale};
            for (const Look& look : looks) {
                show(new ActionForm{household(), look.kind, QString::fromUtf8(look.stack), look.slot}, scale == 100 ? 340 : 560);
                lookAt(QStringLiteral("form-%1-%2-%3").arg(QLatin1StringView{look.name}, mode == ui::ThemeMode::dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(scale),
                       cautionsOf(look.kind));
            }
            const QString tail = QStringLiteral("-%1-%2").arg(mode == ui::ThemeMode::dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(scale);
            show(new NewStack{household()}, scale == 100 ? 520 : 800);
            lookAt(QStringLiteral("new-stack") + tail, 0);
            auto* way = new QWidget;
            auto* column = new QVBoxLayout{way};
            column->setContentsMargins(0, 0, 0, 0);
            auto* welcome = new Welcome;
            welcome->setRecentFiles({QStringLiteral("/pantry/mill cottage.tierloam")});
            column->addWidget(welcome);
            way->resize(1000, 640);
            way->show();
            QCoreApplication::processEvents();
            EXPECT_TRUE(clipped(*way).isEmpty()) << clipped(*way).join(QLatin1Char('\n')).toStdString();
            tests::keepPicture(way->grab().toImage(), QStringLiteral("welcome") + tail);
            delete way;
            edit(entries().back().id);
            lookAt(QStringLiteral("editor") + tail, 0);
        }
    }
}

/// The search for clipped text must find text that is clipped on purpose.
TEST_F(FormLooks, ClippedTextIsFound)
{
    open(FormKind::drain, "Lean-to");
    QCoreApplication::processEvents();
    ASSERT_TRUE(clipped(window()).isEmpty());
    auto* effect = window().findChild<QWidget*>(QStringLiteral("cautions"))->findChild<QLabel*>();
    const QRect right = effect->geometry();
    effect->resize(right.width(), right.height() / 2);
    EXPECT_FALSE(clipped(window()).isEmpty()) << "a sentence cut at half its height";
    effect->setGeometry(right);
    auto* button = window().findChild<QPushButton*>(QStringLiteral("accept"));
    button->resize(button->width() / 2, button->height());
    EXPECT_FALSE(clipped(window()).isEmpty()) << "a button too narrow for its word";
}

TEST_F(FormLooks, FaultsStandBesideTheirFieldsAtBothSizes)
{
    for (const int scale : {100, 200}) {
        const ThemeUse theme{ui::ThemeMode::light, scale};
        open(FormKind::feed);
        type("Amount", "1.234,5");
        type("Food", "brocoli");
        pressEnter();
        giveItsHeight();
        EXPECT_FALSE(field("Amount")->shownProblem().isEmpty());
        EXPECT_NE(field("Food")->shownProblem().indexOf(QStringLiteral("broccoli")), -1) << field("Food")->shownProblem().toStdString();
        lookAt(QStringLiteral("form-faults-%1").arg(scale), 0);
    }
}

TEST_F(FormLooks, GivenLittleHeightOnlyTheFieldsScroll)
{
    open(FormKind::drain, "Lean-to");
    window().resize(340, 330);
    QCoreApplication::processEvents();
    QWidget* card = window().findChild<QWidget*>(QStringLiteral("cautions"));
    EXPECT_EQ(card->visibleRegion().boundingRect(), card->rect());
    EXPECT_TRUE(window().findChild<QPushButton*>(QStringLiteral("accept"))->isVisible());
    EXPECT_TRUE(window().rect().contains(QRect{window().findChild<QPushButton*>(QStringLiteral("accept"))->mapTo(&window(), QPoint{}), QSize{10, 10}}));
    tests::keepPicture(window().grab().toImage(), QStringLiteral("form-drain-low"));
}

}
