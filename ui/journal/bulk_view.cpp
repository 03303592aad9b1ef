#include "ui/journal/bulk_view.h"

#include "ui/common/dates.h"
#include "ui/common/field_edit.h"
#include "ui/common/panels.h"
#include "ui/journal/entry_words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tierloam::journal_page {

namespace {

using household::BulkField;

constexpr std::size_t mostListed = 200;

QString words(const journal::Entry& entry)
{
    return tierloam::journal_page::BulkView::tr("%1, %2: %3 %4").arg(ui::fullDay(entry.date.day), QString::fromStdString(entry.stack), actionWord(entry.action), detailWords(entry));
}

}

BulkView::BulkView(household::Household& household, std::vector<journal::EntryId> chosen, QWidget* parent)
    : ui::View{parent}, household_{household}, chosen_{std::move(chosen)}
{
    setObjectName(QStringLiteral("bulkView"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Change together"));
    auto* rows = new QVBoxLayout{this};
    rows->setContentsMargins(20, 18, 20, 14);
    rows->setSpacing(10);
    rows->addWidget(ui::makeLabel(tr("Change %n entry(ies) together", nullptr, static_cast<int>(chosen_.size())), ui::TextRole::title, this));
    auto* form = new QFormLayout;
    field_ = new ui::FieldCombo{this};
    field_->setObjectName(QStringLiteral("bulkField"));
    for (const auto& [text, which] : {std::pair{tr("Material, species or word"), BulkField::item}, std::pair{tr("Amount"), BulkField::amount}, std::pair{tr("Tray (slot)"), BulkField::slot},
                                      std::pair{tr("Stack"), BulkField::stack}, std::pair{tr("Note"), BulkField::note}})
        field_->addItem(text, static_cast<int>(which));
    before_ = new ui::FieldCombo{this};
    before_->setObjectName(QStringLiteral("bulkBefore"));
    after_ = new ui::FieldEdit{this};
    after_->setObjectName(QStringLiteral("bulkAfter"));
    const auto row = [&](const QString& name, QWidget* widget) {
        auto* label = ui::makeLabel(name, ui::TextRole::body, this);
        label->setBuddy(widget);
        ui::setAccess(widget, name);
        form->addRow(label, widget);
    };
    row(tr("What changes"), field_);
    row(tr("From"), before_);
    row(tr("To"), after_);
    rows->addLayout(form);
    line_ = ui::makeLabel({}, ui::TextRole::body, this, true);
    line_->setObjectName(QStringLiteral("bulkLine"));
    rows->addWidget(line_);
    list_ = new QPlainTextEdit{this};
    list_->setReadOnly(true);
    list_->setTabChangesFocus(true);
    ui::setAccess(list_, tr("What will change"));
    rows->addWidget(list_, 1);
    auto* buttons = new QDialogButtonBox{this};
    change_ = buttons->addButton(tr("&Change"), QDialogButtonBox::ActionRole);
    change_->setObjectName(QStringLiteral("bulkChange"));
    auto* cancel = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    rows->addWidget(buttons);
    connect(field_, &QComboBox::currentIndexChanged, this, &BulkView::fillValues);
    connect(before_, &QComboBox::currentIndexChanged, this, &BulkView::say);
    connect(after_, &QLineEdit::textChanged, this, &BulkView::say);
    connect(change_, &QPushButton::clicked, this, &BulkView::change);
    connect(cancel, &QPushButton::clicked, this, &QDialog::close);
    connect(&household_, &QObject::destroyed, this, &QDialog::close);
    connect(&household_, &household::Household::recorded, this, [this](household::Ticket ticket) {
        if (ticket == ticket_) close();
    });
    connect(&household_, &household::Household::failed, this, [this](household::Ticket ticket, const QString& why) {
        if (ticket != ticket_) return;
        line_->setText(why);
        change_->setEnabled(true);
    });
    resize(640, 460);
    fillValues();
}

BulkField BulkView::field() const { return static_cast<BulkField>(field_->currentData().toInt()); }

void BulkView::fillValues()
{
    const auto values = household::bulkValues(household_.journal()->entries, chosen_, field());
    std::vector<std::pair<int, QString>> byCount;
    byCount.reserve(values.size());
    for (const auto& [value, count] : values) byCount.emplace_back(-count, QString::fromStdString(value));
    std::ranges::sort(byCount);
    {
        const QSignalBlocker quiet{before_};
        before_->clear();
        for (const auto& [count, value] : byCount)
            before_->addItem(tr("%1 (%2)").arg(value.isEmpty() ? tr("nothing") : value.simplified().left(60), QString::number(-count)), value);
    }
    after_->setText(before_->currentData().toString());
    say();
}

void BulkView::say()
{
    const QString before = before_->currentData().toString();
    const auto journal = household_.journal();
    made_ = household::bulkEdit(journal->entries, chosen_, field(), before.toStdString(), after_->text().toStdString(), journal->materials);
    const QString refusal = made_.fault.isEmpty() && !made_.edit.replaced.empty() ? household_.refusalOf(made_.edit) : QString{};
    change_->setEnabled(made_.fault.isEmpty() && refusal.isEmpty() && !made_.edit.replaced.empty() && !household_.readOnly());
    QStringList lines;
    for (const auto& changed : made_.edit.replaced) {
        if (static_cast<std::size_t>(lines.size()) >= mostListed) {
            lines << tr("and %n more", nullptr, static_cast<int>(made_.edit.replaced.size() - mostListed));
            break;
        }
        const auto was = std::ranges::find(journal->entries, changed.id, &journal::Entry::id);
        lines << tr("%1 → %2").arg(words(*was), QString::fromStdString(household::bulkValueOf(changed, field())));
    }
    list_->setPlainText(lines.join(u'\n'));
    if (!made_.fault.isEmpty()) line_->setText(made_.fault);
    else if (!refusal.isEmpty()) line_->setText(refusal);
    else
        line_->setText(tr("%1 %2").arg(tr("%n entry(ies) will change.", nullptr, static_cast<int>(made_.edit.replaced.size())),
                                       made_.staying.empty() ? QString{} : tr("%n chosen entry(ies) with another value: left alone.", nullptr, static_cast<int>(made_.staying.size()))).trimmed());
}

void BulkView::change()
{
    say(); // the journal may have moved on
    if (!change_->isEnabled()) return;
    change_->setEnabled(false);
    ticket_ = household_.apply(made_.edit, tr("Change %n entry(ies) together", nullptr, static_cast<int>(made_.edit.replaced.size())));
}

}
