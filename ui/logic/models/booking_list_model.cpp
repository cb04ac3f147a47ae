// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_list_model.h"

#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/week_steps.h"

#include <algorithm>
#include <iterator>

namespace withy::ui {

namespace {

constexpr qsizetype mostSeen = 60; ///< rows compared, face by face, at every plan

const plan::BookingPlan* planOf(const plan::Plan& plan, Id<model::Booking> id) {
    const auto found = plan.bookings.find(id);
    return found == plan.bookings.end() ? nullptr : found->second.get();
}

} // namespace

BookingListModel::BookingListModel(Workbench& bench, QObject* parent)
    : QAbstractListModel(parent), bench_(bench) {
    laid_ = lay();
    connect(&bench_, &Workbench::changed, this, &BookingListModel::refresh);
    connect(&bench_, &Workbench::planned, this, &BookingListModel::planned);
}

int BookingListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(laid_.rows.size());
}

bool BookingListModel::isFound(const model::Booking& b) {
    if (choice_.find.isEmpty()) return true;
    auto& key = keys_[b.id.value];
    std::shared_ptr<const void> booking = season_.bookings.row(b.id);
    std::shared_ptr<const void> client = b.client ? season_.clients.row(*b.client) : nullptr;
    std::shared_ptr<const void> venue = b.venue ? season_.venues.row(*b.venue) : nullptr;
    if (key.booking != booking || key.client != client || key.venue != venue)
        key = {booking, client, venue, findText(season_, b)};
    return std::all_of(choice_.find.begin(), choice_.find.end(),
                       [&](const QString& word) { return key.text.contains(word); });
}

BookingListModel::Laid BookingListModel::lay() {
    season_ = bench_.season();
    lines_.clear();
    Laid laid;
    laid.groups = bookingGroups(season_, bench_.plan(), bench_.today(), choice_,
                                [this](const model::Booking& b) { return isFound(b); });
    for (std::size_t g = 0; g < laid.groups.size(); ++g) {
        const auto& group = laid.groups[g];
        if (!group.head.isEmpty()) laid.rows.push_back({static_cast<int>(g), {}});
        laid.found += static_cast<int>(group.bookings.size());
        if (group.goneBy) laid.goneBy = static_cast<int>(group.bookings.size());
        if (group.goneBy && !choice_.goneByOpen && choice_.find.isEmpty()) continue;
        for (const auto id : group.bookings)
            laid.rows.push_back({static_cast<int>(g), id});
    }
    return laid;
}

void BookingListModel::planned() {
    work_.reset();
    refresh();
}

void BookingListModel::refresh() {
    auto next = lay();
    if (next.rows == laid_.rows) {
        laid_ = std::move(next);
        tellOfWhatDiffers();
        return;
    }
    beginResetModel();
    seen_.clear();
    laid_ = std::move(next);
    endResetModel();
}

/// A plan comes with every edit and changes the words of one booking or two: only those are painted anew.
void BookingListModel::tellOfWhatDiffers() {
    if (seen_.size() > mostSeen) { // after scrolling: cheaper to paint the few in view
        seen_.clear();
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    if (rowsInView) {
        const auto [first, last] = rowsInView();
        for (auto row = seen_.begin(); row != seen_.end();)
            row = row.key() < first || row.key() > last ? seen_.erase(row) : std::next(row);
    }
    std::vector<int> rows; // told of afterwards: who listens may ask for more rows
    for (auto row = seen_.begin(); row != seen_.end(); ++row) {
        auto now = makeFace(row.key());
        if (now == row.value()) continue;
        row.value() = std::move(now);
        rows.push_back(row.key());
    }
    for (const int row : rows)
        Q_EMIT dataChanged(index(row), index(row));
}

BookingListModel::Face BookingListModel::makeFace(int at) const {
    const Row& row = laid_.rows[static_cast<std::size_t>(at)];
    if (!row.id) return headFace(static_cast<std::size_t>(row.group));
    const auto* booking = season_.bookings.find(row.id);
    return booking ? bookingFace(*booking) : Face();
}

const BookingListModel::Face& BookingListModel::faceOf(int row) const {
    auto known = seen_.find(row);
    if (known == seen_.end()) known = seen_.insert(row, makeFace(row));
    return *known;
}

Qt::ItemFlags BookingListModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    // A head cannot be chosen; the arrow keys pass over it.
    return idAt(index.row()) ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::ItemFlags(Qt::NoItemFlags);
}

const std::vector<const model::Line*>& BookingListModel::linesOf(Id<model::Booking> id) const {
    if (lines_.isEmpty()) {
        for (const auto& line : season_.lines)
            lines_[line.booking.value].push_back(&line);
    }
    return lines_[id.value];
}

QVariant BookingListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role == IdRole) {
        const auto id = laid_.rows[static_cast<std::size_t>(index.row())].id;
        return id ? QVariant::fromValue<qlonglong>(id.value) : QVariant();
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole && role != Qt::AccessibleTextRole &&
        role < Qt::UserRole)
        return {}; // views ask for many more
    const Face& face = faceOf(index.row());
    return face.head ? headData(face, role) : bookingData(face, role);
}

QString BookingListModel::shortHead(std::size_t group) const {
    const auto month = [this](std::size_t g) {
        const auto* b = season_.bookings.find(laid_.groups[g].bookings.front());
        return b && choice_.sort == BookingSort::date
                   ? shortDay(b->eventStart.day).section(QLatin1Char(' '), 2)
                   : QString();
    };
    const QString here = month(group);
    return group > 0 && month(group - 1) == here ? QString() : here;
}

BookingListModel::Face BookingListModel::headFace(std::size_t at) const {
    const auto& group = laid_.groups[at];
    Face face;
    face.head = true;
    face.title = group.head;
    face.second = figures(group);
    face.day = shortHead(at);
    if (group.goneBy && choice_.find.isEmpty()) face.fold = choice_.goneByOpen;
    return face;
}

QVariant BookingListModel::headData(const Face& face, int role) {
    switch (role) {
    case HeadRole:
        return true;
    case Qt::DisplayRole:
        return face.title;
    case ShortHeadRole:
        return face.day;
    case FigureRole:
        return face.second;
    case FoldRole:
        return face.fold;
    case Qt::AccessibleTextRole:
        return tr("%1, %2").arg(face.title, face.second);
    default:
        return {};
    }
}

QString BookingListModel::figures(const BookingGroup& group) const {
    if (!work_) work_ = workByDay(season_, bench_.plan());
    if (group.goneBy || choice_.sort != BookingSort::date)
        return tr("%n booking(s)", nullptr, static_cast<int>(group.bookings.size()));
    QStringList parts;
    if (!group.range.isEmpty()) parts << group.range;
    // All hands' work of those days, as the diary tells it; not of a part of the bookings.
    const bool all = !choice_.standing && !choice_.kind && choice_.find.isEmpty();
    const auto work =
        all && group.days ? workBetween(*work_, group.days->first, group.days->second) : Minutes(0);
    if (work.value > 0) parts << tr("%1 of work").arg(workWords(work));
    return parts.join(QStringLiteral(", "));
}

QString BookingListModel::second(const model::Booking& b, const BookingState& state) const {
    const auto parts = shortDay(b.eventStart.day).split(QLatin1Char(' '));
    // Under a head that names the month, or with the season's other months about.
    const bool inMonth = choice_.sort == BookingSort::date && bench_.today() &&
                         b.eventStart.day.month() == bench_.today()->month();
    const QString day = inMonth ? parts.mid(0, 2).join(QLatin1Char(' ')) : parts.join(QLatin1Char(' '));
    const QString pieces = piecesWords(season_, linesOf(b.id));
    const QString standing = standingWords(b);
    // The state at the right often is the standing: not twice in one row.
    const bool atRight = choice_.sort != BookingSort::owed && state.words == standing;
    return atRight ? tr("%1, %2").arg(day, pieces) : tr("%1, %2, %3").arg(day, pieces, standing);
}

BookingState BookingListModel::stateOf(const model::Booking& b) const {
    return bookingState(season_, b, bench_.plan(), bench_.today(),
                        coverFacts(bench_.plan().cover.get(), b.id));
}

std::optional<CoverFacts> BookingListModel::coverAt(int row) const {
    return idAt(row) ? faceOf(row).cover : std::nullopt;
}

BookingListModel::Face BookingListModel::bookingFace(const model::Booking& b) const {
    const auto* plan = planOf(bench_.plan(), b.id);
    Face face;
    face.title = text(b.title);
    face.state = stateOf(b);
    face.second = second(b, face.state);
    face.day = QString::number(b.eventStart.day.dayOfMonth());
    if (choice_.sort == BookingSort::owed)
        face.owed = plan && plan->money ? owedWords(season_.theSettings(), b.standing, plan->money->owed.owed,
                                                    plan->money->owed.overpaid)
                                        : QString();
    face.standing = static_cast<int>(b.standing);
    if (plan) face.toMend = toMend(season_, bench_.plan(), b.id);
    face.cover = coverFacts(bench_.plan().cover.get(), b.id);
    return face;
}

QVariant BookingListModel::bookingData(const Face& face, int role) {
    switch (role) {
    case HeadRole:
        return false;
    case Qt::DisplayRole:
        return face.title;
    case SecondRole:
        return face.second;
    case StateRole:
        return face.owed.value_or(face.state.words);
    case AsksRole:
        return !face.owed && face.state.asks;
    case StrongRole:
        return !face.owed && face.state.strong;
    case DayRole:
        return face.day;
    case StandingRole:
        return face.standing;
    case ToMendRole:
        return face.toMend;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return tr("%1, %2, %3").arg(face.title, face.second, face.state.words);
    default:
        return {};
    }
}

} // namespace withy::ui
