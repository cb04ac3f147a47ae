// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/reference_control.h"

#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/workbench.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QCoreApplication>
#include <QStandardItemModel>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr int makeRole = Qt::UserRole + 1;
constexpr std::size_t mostOffers = 60;

/// Names that begin with what was typed stand first.
struct Offer {
    int rank;
    QString words;

    friend bool operator<(const Offer& a, const Offer& b) {
        if (a.rank != b.rank) return a.rank < b.rank;
        return QString::localeAwareCompare(a.words, b.words) < 0;
    }
};

} // namespace

ReferenceControl::ReferenceControl(Workbench& bench, const model::FieldInfo& field, QWidget* parent)
    : LineControl(parent)
    , bench_(bench)
    , field_(field)
    , items_(new QStandardItemModel(line_))
    , completer_(new QCompleter(items_, line_)) {
    completer_->setWidget(line_);
    completer_->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    completer_->popup()->setProperty("look", QStringLiteral("popup"));
    QObject::connect(line_, &QLineEdit::textEdited, line_, [this](const QString& typed) {
        if (typed.trimmed().isEmpty())
            completer_->popup()->hide(); // taking a name away is no question
        else
            offer(typed);
    });
    QObject::connect(
        completer_, qOverload<const QModelIndex&>(&QCompleter::activated), line_,
        [this](const QModelIndex& at) { take(at.data().toString(), at.data(makeRole).toString()); });
}

bool ReferenceControl::isPopupOpen() const {
    return completer_->popup()->isVisible();
}

void ReferenceControl::openPopup() {
    if (!line_->isReadOnly()) offer(QString());
}

void ReferenceControl::offer(const QString& typed) {
    const QString wanted = typed.trimmed().toCaseFolded();
    std::vector<Offer> offers;
    bool exact = wanted.isEmpty();
    model::forEachRecord(bench_.season(), field_.refersTo, [&](std::int64_t id, const void*) {
        const QString words = recordWords(bench_.season(), field_.refersTo, id);
        const auto at = words.toCaseFolded().indexOf(wanted);
        if (at >= 0) offers.push_back({at == 0 ? 0 : 1, words});
        exact = exact || words.toCaseFolded() == wanted;
    });
    std::sort(offers.begin(), offers.end());
    if (offers.size() > mostOffers) offers.resize(mostOffers);
    items_->clear();
    for (const auto& offered : offers)
        items_->appendRow(new QStandardItem(offered.words));
    if (!exact && edits::canMakeNamed(field_.refersTo)) {
        auto* make = new QStandardItem(
            QCoreApplication::translate("FieldControl", "Make “%1”").arg(typed.trimmed().left(200)));
        make->setData(typed.trimmed(), makeRole);
        items_->appendRow(make);
    }
    if (items_->rowCount() == 0)
        completer_->popup()->hide();
    else
        completer_->complete();
}

void ReferenceControl::take(const QString& shown, const QString& make) {
    if (!make.isEmpty()) {
        line_->setText(make);
        if (makeAsked) makeAsked(make);
        return;
    }
    line_->setText(shown);
    if (picked) picked();
}

} // namespace withy::ui
