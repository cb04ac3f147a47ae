// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/walk_entry_model.h"

#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/wording.h"

#include <QColor>

#include <algorithm>
#include <utility>

namespace withy::ui {

using edits::WalkCount;

namespace {

WalkCount countAt(int column) {
    return edits::allWalkCounts[static_cast<std::size_t>(column - WalkEntryModel::ReadyColumn)];
}

bool hasCount(const std::optional<model::Walk>& w) {
    return w && (w->readyNow || w->withinThreeDays || w->withinWeek);
}

/// Whether the edit touches anything but walks: then what was expected is another.
bool touchesMore(const model::Edit& edit) {
    const auto isWalk = [](const auto& record) { return std::holds_alternative<model::Walk>(record); };
    return !std::all_of(edit.puts().begin(), edit.puts().end(), isWalk) ||
           std::any_of(edit.erases().begin(), edit.erases().end(),
                       [](const model::Ref& r) { return r.table != model::TableKind::walks; });
}

} // namespace

WalkEntryModel::WalkEntryModel(Workbench& bench, Day day, QObject* parent)
    : QAbstractTableModel(parent), bench_(bench), day_(day), rows_(rowsNow()) {
    pool_.setMaxThreadCount(1);
    connect(&bench, &Workbench::changed, this, &WalkEntryModel::seasonChanged);
}

WalkEntryModel::~WalkEntryModel() {
    pool_.clear();
    pool_.waitForDone(); // its work tells this
}

std::vector<WalkEntryModel::Row> WalkEntryModel::rowsNow() const {
    const auto& season = bench_.season();
    std::map<std::int64_t, std::pair<std::optional<model::Walk>, std::optional<model::Walk>>> walks;
    for (const auto& w : season.walks) {
        auto& [today, before] = walks[w.patch.value];
        if (w.date == day_)
            today = w;
        else if (w.date < day_ && w.readyNow && (!before || before->date <= w.date))
            before = w;
    }
    std::vector<Row> rows;
    int number = 0;
    std::optional<std::int64_t> place;
    for (const auto* patch : inWalkingOrder(season)) {
        const bool same = place && *place == patch->place;
        if (!same) ++number;
        place = patch->place;
        const auto& [today, before] = walks[patch->id.value];
        rows.push_back({patch->id, same ? QString() : QString::number(number), today, before});
    }
    return rows;
}

void WalkEntryModel::setDay(Day day) {
    if (day == day_) return;
    beginResetModel();
    day_ = day;
    rows_ = rowsNow();
    refused_.clear();
    expected_.clear();
    knows_ = false;
    endResetModel();
    Q_EMIT expectedWanted();
    Q_EMIT answerChanged();
}

void WalkEntryModel::seasonChanged(const model::Edit& done) {
    refresh();
    if (touchesMore(done)) Q_EMIT expectedWanted();
}

void WalkEntryModel::refresh() {
    auto now = rowsNow();
    if (now == rows_) {
        rows_ = std::move(now);
        if (!rows_.empty())
            Q_EMIT dataChanged(index(0, 0), index(static_cast<int>(rows_.size()) - 1, Columns - 1));
    } else {
        beginResetModel();
        rows_ = std::move(now);
        endResetModel();
    }
    Q_EMIT answerChanged();
}

void WalkEntryModel::askExpected() {
    const int turn = ++turn_;
    pool_.clear(); // only the newest is worth an answer
    pool_.start([this, turn, season = bench_.season(), day = day_] {
        WalkExpectations expected;
        QString trouble;
        try {
            expected = walkExpectations(season, day);
        } catch (...) {
            trouble = caughtWords();
        }
        QMetaObject::invokeMethod(
            this,
            [this, turn, expected = std::move(expected), trouble] {
                if (!trouble.isEmpty()) return Q_EMIT refused(trouble);
                takeExpected(turn, expected);
            },
            Qt::QueuedConnection);
    });
}

void WalkEntryModel::takeExpected(int turn, const WalkExpectations& expected) {
    if (turn != turn_) return;
    expected_ = expected;
    knows_ = true;
    if (!rows_.empty())
        Q_EMIT dataChanged(index(0, ReadyColumn), index(static_cast<int>(rows_.size()) - 1, RemarkColumn));
    Q_EMIT answerChanged();
    Q_EMIT expectedChanged();
}

bool WalkEntryModel::isResting(int row) const {
    const auto& at = rows_[static_cast<std::size_t>(row)];
    return knows_ && !at.walk && isOutOfBloom(expected_, at.patch);
}

int WalkEntryModel::restingRows() const {
    int resting = 0;
    for (int row = 0; row < rowCount(); ++row)
        resting += isResting(row) ? 1 : 0;
    return resting;
}

int WalkEntryModel::firstBlankRow() const {
    for (int row = 0; row < rowCount(); ++row)
        if (!hasCount(rows_[static_cast<std::size_t>(row)].walk) && !isResting(row)) return row;
    const auto at = std::find_if(rows_.begin(), rows_.end(), [](const Row& r) { return !hasCount(r.walk); });
    return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int WalkEntryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int WalkEntryModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Columns;
}

QVariant WalkEntryModel::patchData(const Row& row, int role) const {
    const auto* patch = bench_.season().patches.find(row.patch);
    const auto* plant = patch ? bench_.season().plants.find(patch->plant) : nullptr;
    const QString label = patch ? text(patch->label) : QString();
    const QString name = plant ? text(plant->name) : QString();
    switch (role) {
    case Qt::DisplayRole:
        return label;
    case PlantRole:
        return name;
    case ColourRole:
        if (!plant || !plant->colour1) return {};
        return QColor(QString::fromStdString(plant->colour1->hex()));
    case Qt::ToolTipRole:
        return patch && !patch->wayThere.empty() ? text(patch->wayThere) : label;
    case Qt::AccessibleTextRole:
        return tr("%1 %2, %3").arg(row.number, label, name);
    default:
        return {};
    }
}

QString WalkEntryModel::cautionOf(const Row& row, WalkCount count) const {
    if (!row.walk) return {};
    const auto e = expected_.find(row.patch);
    return countCaution(*row.walk, count, e == expected_.end() ? WalkExpectation{} : e->second);
}

const WalkEntryModel::Refused* WalkEntryModel::refusedAt(const QModelIndex& index) const {
    const auto found = refused_.find({patchAt(index.row()).value, index.column()});
    return found == refused_.end() ? nullptr : &found->second;
}

QVariant WalkEntryModel::countData(const QModelIndex& index, int role) const {
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    const auto count = countAt(index.column());
    const auto e = expected_.find(row.patch);
    QString expected;
    if (e != expected_.end() && e->second.week > 0) // a patch out of flower is not cluttered with noughts
        if (const auto& likely = e->second.likely[static_cast<std::size_t>(count)]) expected = whole(*likely);
    const auto stems = row.walk ? edits::countOf(*row.walk, count) : std::nullopt;
    switch (role) {
    case Qt::DisplayRole:
        return stems ? whole(stems->value) : QString();
    case Qt::EditRole:
        return stems ? QString::number(stems->value) : QString();
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    case ExpectedRole:
        return expected;
    case CautionRole:
        return cautionOf(row, count);
    case Qt::AccessibleTextRole: {
        const QString counted = stems ? whole(stems->value) : tr("blank");
        return expected.isEmpty() ? counted : tr("%1, expected %2").arg(counted, expected);
    }
    default:
        return {};
    }
}

QVariant WalkEntryModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == NumberRole) return row.number;
    if (role == CountedRole) return hasCount(row.walk);
    const auto* wrong = refusedAt(index);
    if (role == SentenceRole) return wrong ? wrong->sentence : QString();
    if (wrong && (role == Qt::DisplayRole || role == Qt::EditRole)) return wrong->typed;
    if (index.column() == PatchColumn) return patchData(row, role);
    if (isCount(index.column())) return countData(index, role);
    if (index.column() == LastColumn) {
        if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
        return row.before ? tr("%1, %2").arg(whole(row.before->readyNow->value), shortDay(row.before->date))
                          : tr("not walked");
    }
    if (role == Qt::DisplayRole || role == Qt::EditRole || role == Qt::ToolTipRole)
        return row.walk ? text(row.walk->remark) : QString();
    if (role != CautionRole) return {};
    for (const auto count : edits::allWalkCounts)
        if (const auto words = cautionOf(row, count); !words.isEmpty()) return words;
    return {};
}

QVariant WalkEntryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case PatchColumn:
        return tr("Patch and plant, in walking order");
    case LastColumn:
        return tr("Last walk");
    case ReadyColumn:
        return tr("Ready now");
    case ThreeDaysColumn:
        return tr("In 3 days");
    case WeekColumn:
        return tr("In a week");
    default:
        return tr("Remark");
    }
}

Qt::ItemFlags WalkEntryModel::flags(const QModelIndex& index) const {
    const auto usual = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
    return index.column() >= ReadyColumn ? usual | Qt::ItemIsEditable : usual;
}

bool WalkEntryModel::putBack(const QModelIndex& index) {
    if (!index.isValid() || refused_.erase({patchAt(index.row()).value, index.column()}) == 0) return false;
    Q_EMIT dataChanged(index, index);
    Q_EMIT refused({});
    return true;
}

bool WalkEntryModel::say(const QModelIndex& index, const QString& typed, const QString& sentence) {
    const std::pair key{patchAt(index.row()).value, index.column()};
    if (sentence.isEmpty())
        refused_.erase(key);
    else
        refused_[key] = {typed, sentence};
    Q_EMIT dataChanged(index, index);
    Q_EMIT refused(sentence);
    return sentence.isEmpty();
}

bool WalkEntryModel::setCount(const QModelIndex& at, const QString& typed) {
    const auto count = countAt(at.column());
    const auto& row = rows_[static_cast<std::size_t>(at.row())];
    const auto last = row.before ? edits::countOf(*row.before, count) : std::nullopt;
    const auto reading = edits::readCount(bench_.season(), count, typed, last);
    if (!reading.ok()) return say(at, typed, reading.sentence);
    return say(at, typed,
               bench_.apply(edits::setWalkCount(bench_.season(), day_, row.patch, count, reading.stems)));
}

bool WalkEntryModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid() || !flags(index).testFlag(Qt::ItemIsEditable)) return false;
    const QString typed = value.toString();
    if (isCount(index.column())) return setCount(index, typed);
    return say(index, typed,
               bench_.apply(edits::setWalkRemark(bench_.season(), day_, patchAt(index.row()), typed)));
}

} // namespace withy::ui
