#include "ui/materials/materials_page.h"

#include "ui/common/field_edit.h"
#include "ui/common/flow_layout.h"
#include "ui/common/material_words.h"
#include "ui/common/panels.h"
#include "ui/common/row_table.h"
#include "ui/common/seams.h"
#include "ui/forms/action_form.h"
#include "ui/forms/caution_card.h"
#include "ui/forms/entry_editor.h"
#include "ui/forms/take_keys.h"
#include "ui/materials/bench.h"
#include "ui/materials/material_card.h"
#include "ui/materials/materials_model.h"
#include "ui/materials/mix_bench.h"
#include "ui/materials/name_column.h"

#include <QAction>
#include <QEvent>
#include <QHeaderView>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::materials_page {

namespace {

constexpr auto favouritesKey = "materials/favourites";
constexpr int besideAtLeast = 820;  ///< px at 100 %: below it the sums stand under the table
constexpr int sumsAtEase = 640;     ///< px at 100 % beyond which the sums gain nothing by being wider
constexpr int sumsAtLeast = 362;    ///< px at 100 % that the sums beside the table are left, the page's margins included

}

MaterialsPage::MaterialsPage(household::Household& household, const ui::Theme& theme, ui::Settings& settings, QWidget* parent)
    : QWidget{parent}, household_{household}, theme_{theme}, settings_{settings}, model_{new MaterialsModel{this}}, filter_{new MaterialsFilter{model_, this}},
      head_{new ui::PageHead{this}}, cautions_{new forms::CautionCard{this}}, scroll_{new QScrollArea{this}}, body_{new QWidget}, sides_{new QBoxLayout{QBoxLayout::LeftToRight, body_}},
      left_{new QWidget{body_}}, right_{new QWidget{body_}}
{
    setObjectName(QStringLiteral("materialsPage"));
    setProperty("page", true);
    body_->setProperty("page", true);
    ui::setAccess(this, tr("Materials"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(18, 14, 10, 0);
    rows->setSpacing(10);
    head_->setTitle(tr("Materials"));
    rows->addWidget(head_);
    rows->addWidget(cautions_);
    sides_->setContentsMargins(0, 0, 8, 14);
    sides_->setSpacing(16);
    sides_->addWidget(left_, 5);
    sides_->addWidget(right_, 5);
    scroll_->setWidget(body_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    rows->addWidget(scroll_, 1);
    auto* make = ui::makeButton(ui::actionText(ui::ActionId::newMaterial), ui::Tone::moss, this);
    make->setObjectName(QStringLiteral("newMaterialButton"));
    make->setEnabled(!household_.readOnly());
    connect(make, &QPushButton::clicked, this, &MaterialsPage::newMaterial);
    head_->addButton(make);
    const auto changed = [this] {
        stale_ = true;
        if (isVisible()) refresh();
    };
    connect(&household_, &household::Household::changed, this, changed);
    connect(&household_, &household::Household::reckoned, this, changed);
    connect(&theme_, &ui::Theme::changed, this, [this] { fit(); });
}

void MaterialsPage::build()
{
    if (table_) return;
    buildTable();
    buildSums();
    buildActions();
    setFocusProxy(table_);
}

void MaterialsPage::buildTable()
{
    auto* column = new QVBoxLayout{left_};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* filters = new QWidget{left_};
    auto* flow = new ui::FlowLayout{filters, 8};
    words_ = new ui::FieldEdit{filters};
    words_->setObjectName(QStringLiteral("findMaterial"));
    words_->setPlaceholderText(tr("Find (%1)").arg(ui::keysText(ui::ActionId::findMaterial)));
    words_->setClearButtonEnabled(true);
    words_->setMinimumWidth(190);
    ui::setAccess(words_, tr("Find a material"), tr("All words must be in its name, reason or source"));
    flow->addWidget(words_);
    show_ = new ui::FieldCombo{filters};
    show_->setObjectName(QStringLiteral("showMaterials"));
    show_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    ui::setAccess(show_, tr("Which materials are shown"));
    using Show = MaterialsFilter::Show;
    for (const auto& [text, show] : {std::pair{tr("All"), Show::all}, {tr("Food"), Show::food}, {tr("Bedding"), Show::bedding}, {tr("Minerals"), Show::mineral},
                                     {tr("Favourites"), Show::favourites}, {tr("Own"), Show::own}, {tr("Not, or only a little"), Show::doubtful}}) {
        show_->addItem(text, static_cast<int>(show));
    }
    flow->addWidget(show_);
    column->addWidget(filters);

    table_ = new QTableView{left_};
    table_->setObjectName(QStringLiteral("materialsTable"));
    table_->setModel(filter_);
    table_->viewport()->installEventFilter(this);
    ui::setUpRowTable(*table_);
    names_ = new NameColumn{*table_, *filter_};
    table_->sortByColumn(MaterialsModel::name, Qt::AscendingOrder);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    ui::setAccess(table_, tr("Materials"), tr("Enter puts the chosen material into the mix"));
    column->addWidget(table_, 1);
    card_ = new MaterialCard{left_};
    column->addWidget(card_);

    connect(words_, &QLineEdit::textChanged, this, [this](const QString& text) { filter_->setWords(text); tellChosen(); });
    connect(show_, &QComboBox::currentIndexChanged, this, [this] { filter_->setShow(static_cast<Show>(show_->currentData().toInt())); tellChosen(); });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] { tellChosen(); });
    connect(table_, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        if (index.column() == MaterialsModel::favourite) toggleFavourite();
        else mix()->add(chosen());
    });
    connect(card_, &MaterialCard::favouriteToggled, this, &MaterialsPage::toggleFavourite);
    connect(card_, &MaterialCard::mixWanted, this, [this] {
        showSum(Sum::mix);
        mix()->add(chosen());
    });
    connect(card_, &MaterialCard::editWanted, this, &MaterialsPage::editMaterial);
}

void MaterialsPage::buildActions()
{
    const auto on = [this](ui::ActionId id, QWidget* where, auto act) {
        QAction* action = ui::makeAction(id, this);
        where->addAction(action);
        connect(action, &QAction::triggered, this, act);
        return action;
    };
    on(ui::ActionId::findMaterial, this, [this] { words_->setFocus(); words_->selectAll(); });
    QAction* make = on(ui::ActionId::newMaterial, this, [this] { newMaterial(); });
    // Letters and Return mean something else in fields, so they work in the table only.
    on(ui::ActionId::favouriteMaterial, table_, [this] { toggleFavourite(); });
    on(ui::ActionId::mixMaterial, table_, [this] { showSum(Sum::mix); if (!chosen().isEmpty()) mix()->add(chosen()); });
    on(ui::ActionId::anotherInMix, this, [this] {
        showSum(Sum::mix);
        mix()->findChild<QPushButton*>(QStringLiteral("moreMaterial"))->click();
    });
    on(ui::ActionId::editMaterial, table_, [this] { editMaterial(); });
    findChild<QPushButton*>(QStringLiteral("newMaterialButton"))->setToolTip(make->toolTip());
}

QStringList MaterialsPage::favourites() const { return settings_.value(QString::fromLatin1(favouritesKey)).toStringList(); }

void MaterialsPage::toggleFavourite()
{
    const QString name = chosen().toCaseFolded();
    if (name.isEmpty()) return;
    QStringList kept = favourites();
    if (!kept.removeOne(name)) kept << name;
    settings_.setValue(QString::fromLatin1(favouritesKey), kept);
    model_->setFavourites({kept.begin(), kept.end()});
    const QString before = chosen();
    filter_->refresh();
    choose(before);
    tellChosen();
}

QString MaterialsPage::chosen() const
{
    if (!table_) return {};
    const materials::Material* row = model_->materialAt(filter_->mapToSource(table_->currentIndex()).row());
    return row ? QString::fromStdString(row->name) : QString{};
}

void MaterialsPage::choose(const QString& material)
{
    const int row = model_->rowOf(material);
    const QModelIndex index = row < 0 ? QModelIndex{} : filter_->mapFromSource(model_->index(row, MaterialsModel::name));
    if (!index.isValid()) return;
    table_->setCurrentIndex(index);
    table_->scrollTo(index.siblingAtColumn(MaterialsModel::favourite));
}

void MaterialsPage::tellChosen()
{
    const int row = filter_->mapToSource(table_->currentIndex()).row();
    const materials::Material* material = model_->materialAt(row);
    card_->setMaterial(material, model_->isFavourite(row), !household_.readOnly());
    tellCautions();
    const int shown = filter_->rowCount(), all = model_->rowCount();
    head_->setLine(shown == all ? tr("%n material(s); what each holds, whether it is welcome, and sums with them", nullptr, all) : tr("%1 of %n material(s)", nullptr, all).arg(shown));
}

void MaterialsPage::tellCautions()
{
    const auto* shown = sums_ ? qobject_cast<const Bench*>(sums_->currentWidget()) : nullptr;
    if (!card_ || !shown) return;
    QList<forms::Caution> told = shown->cautions();
    const bool manureTold = std::ranges::find(told, forms::CautionTopic::manure, &forms::Caution::topic) != told.end();
    if (!manureTold && card_->material() && forms::isManure(*card_->material())) told.append(forms::manureCaution());
    cautions_->setCautions(told);
}

void MaterialsPage::newMaterial()
{
    if (household_.readOnly() || !makesWay()) return;
    auto* form = new forms::ActionForm{household_, forms::FormKind::material, QString{}};
    const QString typed = words_->text().trimmed();
    if (!typed.isEmpty() && model_->rowOf(typed) < 0) form->propose(journal::OwnMaterial{typed.toStdString(), {}, {}, {}, {}, {}, {}});
    connect(form, &forms::ActionForm::recorded, this, [this](const std::vector<journal::EntryId>& ids) {
        refresh();
        const auto journal = household_.journal();
        for (const journal::Entry& entry : journal->entries) {
            const auto* own = std::get_if<journal::OwnMaterial>(&entry.action);
            if (own && !ids.empty() && entry.id == ids.front()) choose(QString::fromStdString(own->name));
        }
    });
    connect(form, &forms::ActionForm::finished, this, &MaterialsPage::closeForm);
    showForm(form);
}

void MaterialsPage::editMaterial()
{
    if (!card_->material() || !card_->material()->own || household_.readOnly() || !makesWay()) return;
    const auto journal = household_.journal();
    journal::EntryId id = journal::EntryId::none; // the later in the journal rules
    for (const journal::Entry& entry : journal->entries) {
        const auto* own = std::get_if<journal::OwnMaterial>(&entry.action);
        if (own && QString::fromStdString(own->name).compare(chosen(), Qt::CaseInsensitive) == 0) id = entry.id;
    }
    if (id == journal::EntryId::none) return;
    auto* form = new forms::EntryEditor{household_, id};
    connect(form, &forms::EntryEditor::finished, this, &MaterialsPage::closeForm);
    showForm(form);
}

bool MaterialsPage::editing() const { return form_ && form_->touched(); }

/// Another form is asked for in its place.
bool MaterialsPage::makesWay()
{
    if (!editing() || (mayThrowAway_ && form_->mayGo())) return true;
    forms::takeKeys(*form_);
    scroll_->ensureWidgetVisible(formBox_);
    return false;
}

void MaterialsPage::showForm(forms::TypedForm* form)
{
    closeForm();
    form_ = form;
    form_->setMayThrowAway(mayThrowAway_);
    static_cast<ui::Card*>(formBox_)->column()->addWidget(form);
    formBox_->show();
    form->show();
    scroll_->ensureWidgetVisible(formBox_);
}

void MaterialsPage::closeForm()
{
    if (!form_) return;
    const bool hadFocus = form_->isAncestorOf(focusWidget());
    form_->hide();
    form_->deleteLater();
    form_ = nullptr;
    formBox_->hide();
    if (hadFocus) table_->setFocus();
}

void MaterialsPage::refreshNow() { refresh(); }

void MaterialsPage::refresh()
{
    build();
    stale_ = false;
    const QString before = chosen();
    const auto journal = household_.journal();
    if (model_->rows() != journal->materials.rows()) {
        model_->setTable(journal->materials);
        const QStringList kept = favourites();
        model_->setFavourites({kept.begin(), kept.end()});
    }
    choose(before.isEmpty() ? QStringLiteral("kitchen mix") : before);
    for (Bench* each : benches_)
        if (each) each->follow();
    tellChosen();
    fit();
}

void MaterialsPage::fit()
{
    if (!table_) return;
    const bool beside = width() >= theme_.px(besideAtLeast);
    sides_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    const QFontMetrics metrics = table_->fontMetrics();
    table_->verticalHeader()->setDefaultSectionSize(metrics.height() + theme_.px(12));
    table_->setMinimumHeight(theme_.px(beside ? 300 : 260));
    const int letter = metrics.averageCharWidth();
    const int widths[] = {4, 0, 11, 6, 8, 11, 12, 10, 28, 9};
    int welcome = 0; // its three words must be read whole in every language, as each header must
    for (const auto each : {materials::Welcome::yes, materials::Welcome::aLittle, materials::Welcome::no})
        welcome = std::max(welcome, metrics.horizontalAdvance(QString{ui::welcomeMark(each) % u' ' % ui::welcomeText(each)}) + theme_.px(24));
    for (int c = 0; c < MaterialsModel::columns; ++c) {
        if (c == MaterialsModel::name) continue; // has what is left
        const int words = c == MaterialsModel::favourite ? table_->horizontalHeader()->fontMetrics().horizontalAdvance(QStringLiteral("★")) + theme_.px(20) : std::max(table_->horizontalHeader()->sectionSizeHint(c), c == MaterialsModel::welcome ? welcome : 0);
        table_->setColumnWidth(c, std::max(letter * widths[c], words));
    }
    names_->measure();
    giveNameTheRest();
    tellCautions();
}

/// Name, welcome, C:N and moisture are seen without scrolling, even if the sums beside them must be narrower, which wrap better than a table does: names have
/// what they need before the sums have more than their least. Only then long names go on over a second line.
void MaterialsPage::giveNameTheRest()
{
    const int shown = table_->viewport()->width();
    int others = 0, all = names_->whole();
    for (const int c : {MaterialsModel::favourite, MaterialsModel::welcome, MaterialsModel::ratio, MaterialsModel::moisture}) others += table_->columnWidth(c);
    for (int c = 0; c < MaterialsModel::columns; ++c) all += c == MaterialsModel::name ? 0 : table_->columnWidth(c);
    const bool beside = sides_->direction() == QBoxLayout::LeftToRight;
    const int aroundTable = table_->width() - shown;
    const int needed = std::max(std::min(others + names_->whole() + aroundTable, width() - theme_.px(sumsAtLeast)), others + names_->least() + aroundTable);
    const int whole = std::min(all + aroundTable, width() - theme_.px(sumsAtEase)); // in a wide window the sums leave the table what they do not need
    left_->setMinimumWidth(beside ? std::max(needed, whole) : 0);
    names_->setRoom(shown - others, table_->verticalHeader()->defaultSectionSize());
}

bool MaterialsPage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize && table_ && watched == table_->viewport()) giveNameTheRest();
    return QWidget::eventFilter(watched, event);
}

void MaterialsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void MaterialsPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

void MaterialsPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LocaleChange && isVisible()) refresh();
}

}
