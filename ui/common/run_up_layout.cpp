// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/run_up_layout.h"

#include "ui/logic/models/week_steps.h"
#include "ui/paint/spacing.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>

namespace withy::ui {

namespace {

double widthOf(const QString& words, TypeRole role) {
    return QFontMetricsF(typeFont(role)).horizontalAdvance(words);
}

double lineHeight(TypeRole role) {
    return QFontMetricsF(typeFont(role)).height();
}

/// The heavy left edge and the air after it.
double insideLeft() {
    return grid(2.25);
}

QString wordsOf(const BoardBox& box) {
    return box.letter.isEmpty() ? box.name : box.letter + QStringLiteral("  ") + box.name;
}

} // namespace

RunUpLayout::RunUpLayout(const Board& board, BoardStyle style, double width)
    : style_(style), firstHour_(board.firstHour), lastHour_(board.lastHour) {
    const bool week = style == BoardStyle::week;
    left_ = week ? grid(37) : grid(23);
    right_ = std::max(left_ + 10, width - (week ? grid(27) : 1));
    double top = week ? grid(6) : 0;
    for (std::size_t d = 0; d < board.days.size(); ++d)
        top = layDay(board, d, top);
    height_ = top;
}

double RunUpLayout::xOfHour(double hour) const {
    return left_ + (right_ - left_) * (hour - firstHour_) / std::max(1, lastHour_ - firstHour_);
}

double RunUpLayout::xOf(Day day, LocalTime t) const {
    const auto minutes = static_cast<double>((t - LocalTime{day, 0}).value);
    return std::clamp(xOfHour(minutes / 60), left_, right_);
}

double RunUpLayout::layDay(const Board& board, std::size_t d, double top) {
    const auto& day = board.days[d];
    const bool week = style_ == BoardStyle::week;
    LaidDay out;
    const double start = top;
    if (week) {
        out.heat = QRectF(left_, top, right_ - left_, grid(4));
        top += grid(3);
    } else {
        out.head = QRectF(0, top, right_, grid(8));
        top += grid(8);
        out.scale = QRectF(left_, top, right_ - left_, grid(5));
        top += grid(5);
        out.heat = QRectF(left_, top, right_ - left_, grid(13));
        top += grid(13);
    }
    const double lane = laneHeight();
    for (std::size_t l = 0; l < day.lanes.size(); ++l) {
        out.lanes.emplace_back(left_, top, right_ - left_, lane);
        layLane(board, {d, l, 0}, out.lanes.back());
        top += lane;
    }
    top = std::max(top, start + (week ? grid(15) : 0)) + (week ? grid(1) : 0);
    out.all = QRectF(0, start, week ? right_ + grid(27) : right_, top - start);
    if (week) {
        out.head = QRectF(0, start, grid(19), top - start);
        out.hands = QRectF(right_ + grid(5), start, grid(22), top - start);
    }
    out.names = week ? QRectF(grid(19), start, left_ - grid(21), top - start)
                     : QRectF(0, start, left_ - grid(2), top - start);
    days_.push_back(out);
    return top + (week ? 0 : grid(7));
}

/// Names, the boxes, how long they take, the names of the threads and the threads, each in a row of its own.
double RunUpLayout::laneHeight() const {
    if (style_ == BoardStyle::week) return grid(9);
    return lineHeight(TypeRole::strong) + 2 * lineHeight(TypeRole::caption) + grid(13);
}

double RunUpLayout::nextStart(const BoardLane& lane, std::size_t box, Day day) const {
    double next = right_;
    const auto& mine = lane.boxes[box];
    for (std::size_t i = 0; i < lane.boxes.size(); ++i) {
        const auto& other = lane.boxes[i];
        const bool inWay = other.look != BoardLook::busy && other.look != BoardLook::thread;
        if (i != box && inWay && mine.from <= other.from && (mine.from < other.from || i > box))
            next = std::min(next, xOf(day, other.from));
    }
    return next;
}

/// Where the words of a box may begin that have no room to its right.
double RunUpLayout::lastEnd(const BoardLane& lane, std::size_t box, Day day) const {
    double last = left_;
    const auto& mine = lane.boxes[box];
    for (std::size_t i = 0; i < lane.boxes.size(); ++i) {
        const auto& other = lane.boxes[i];
        const bool inWay = other.look != BoardLook::busy && other.look != BoardLook::thread;
        if (i != box && inWay && other.from <= mine.from) last = std::max(last, xOf(day, other.to) + grid(1));
    }
    return last;
}

void RunUpLayout::layLane(const Board& board, BoardPlace place, const QRectF& lane) {
    const auto& day = board.days[place.day];
    const auto& boxes = day.lanes[place.lane].boxes;
    const bool week = style_ == BoardStyle::week;
    int threads = 0;
    const std::size_t first = boxes_.size();
    for (place.box = 0; place.box < boxes.size(); ++place.box) {
        const auto& box = boxes[place.box];
        LaidBox laid;
        laid.place = place;
        const double from = xOf(day.day, box.from), to = xOf(day.day, box.to);
        if (to - from < 0.5) continue; // outside the hours shown
        const double above = lineHeight(TypeRole::strong), below = lineHeight(TypeRole::caption);
        const double middle = week ? lane.top() + grid(0.5) : lane.top() + above + grid(1);
        const double high = week ? grid(6.5) : lane.height() - above - 2 * below - grid(5.5);
        laid.box = QRectF(from, middle, std::max(to - from, 3.0), high);
        if (box.look == BoardLook::busy)
            laid.box = QRectF(from, lane.top() + 1, to - from, lane.height() - 2);
        if (box.look == BoardLook::fixed && !week)
            laid.box = QRectF(from, lane.top() + 1, to - from, lane.height() - 2);
        if (box.look == BoardLook::thread) {
            const double up = week ? 5 : grid(2) + (threads % 2) * 6;
            laid.box = QRectF(from, lane.bottom() - up, to - from, week ? 3 : 4);
            ++threads;
        }
        const auto& hands = day.lanes[place.lane];
        layWords(box, lane, lastEnd(hands, place.box, day.day), nextStart(hands, place.box, day.day), laid);
        boxes_.push_back(laid);
    }
    clearWords(day.lanes[place.lane], first);
}

void RunUpLayout::clearWords(const BoardLane& lane, std::size_t first) {
    const auto boxOf = [&](const LaidBox& laid) -> const BoardBox& { return lane.boxes[laid.place.box]; };
    const bool week = style_ == BoardStyle::week;
    std::vector<QRectF> taken;
    for (std::size_t i = first; i < boxes_.size(); ++i) {
        const auto look = boxOf(boxes_[i]).look;
        if (look != BoardLook::busy && look != BoardLook::thread) taken.push_back(boxes_[i].box);
    }
    // What stands in its own box stays; beside and above, who comes first.
    for (std::size_t i = first; i < boxes_.size(); ++i) {
        auto& laid = boxes_[i];
        const auto& box = boxOf(laid);
        if (box.look == BoardLook::busy || laid.words.isEmpty()) continue;
        const bool within = laid.box.adjusted(0, -1, 0, 1).contains(laid.words);
        if (within) continue;
        const auto role = box.look == BoardLook::thread ? TypeRole::caption : TypeRole::strong;
        laid.words.setWidth(std::min(laid.words.width(), widthOf(wordsOf(box), role) + 2));
        const bool meets = std::any_of(taken.begin(), taken.end(), [&](const QRectF& r) {
            return r.adjusted(1, 1, -1, -1).intersects(laid.words);
        });
        if (meets)
            laid.words = {};
        else
            taken.push_back(laid.words);
    }
    for (std::size_t i = first; i < boxes_.size(); ++i) {
        auto& laid = boxes_[i];
        if (boxOf(laid).look == BoardLook::busy) layBusyWords(boxOf(laid), taken, laid);
        if (boxOf(laid).look != BoardLook::busy) continue;
        for (std::size_t other = first; other < boxes_.size(); ++other)
            if (boxOf(boxes_[other]).look != BoardLook::busy)
                boxes_[other].overBusy |= laid.box.intersects(boxes_[other].words);
    }
    if (!week) layGroups(lane, first, taken);
}

/// The first place along its middle where nothing else stands; none where there is no room.
void RunUpLayout::layBusyWords(const BoardBox& box, const std::vector<QRectF>& taken, LaidBox& laid) const {
    const double wide = std::min(widthOf(box.name, TypeRole::caption) + grid(2), laid.box.width() - grid(2));
    QRectF at(laid.box.left() + grid(1), laid.box.center().y() - grid(2.5), wide, grid(5));
    laid.words = {};
    bool moved = true;
    while (moved && at.right() <= laid.box.right()) {
        moved = false;
        for (const auto& other : taken) {
            if (!other.intersects(at)) continue;
            at.moveLeft(other.right() + grid(1));
            moved = true;
        }
    }
    if (at.right() <= laid.box.right() && (wide >= grid(12) || wide > widthOf(box.name, TypeRole::caption)))
        laid.words = at;
}

/// Steps side by side that have no room for words: how many, and how long.
void RunUpLayout::layGroups(const BoardLane& lane, std::size_t first, const std::vector<QRectF>& taken) {
    std::vector<const LaidBox*> run;
    const double below = lineHeight(TypeRole::caption);
    const auto settle = [&] {
        if (run.size() < 2) return run.clear();
        Minutes work;
        for (const auto* laid : run) {
            const auto& box = lane.boxes[laid->place.box];
            work += box.to - box.from;
        }
        const QString said = QCoreApplication::translate("RunUpLayout", "%n step(s), %1", nullptr,
                                                         static_cast<int>(run.size()))
                                 .arg(workWords(work));
        const QRectF at(run.front()->box.left(), run.front()->box.bottom() + grid(0.5),
                        widthOf(said, TypeRole::caption) + 2, below);
        bool free = at.right() <= right_;
        for (std::size_t i = first; i < boxes_.size(); ++i)
            free &= !boxes_[i].detail.intersects(at);
        for (const auto& other : taken)
            free &= !other.intersects(at);
        for (const auto& group : groups_)
            free &= !group.words.intersects(at);
        if (free) groups_.push_back({at, said});
        run.clear();
    };
    for (std::size_t i = first; i < boxes_.size(); ++i) {
        const auto& laid = boxes_[i];
        const auto& box = lane.boxes[laid.place.box];
        if (box.look != BoardLook::step && box.look != BoardLook::round) continue;
        const bool nameless = laid.words.isEmpty() && laid.detail.isEmpty();
        if (!run.empty() && (!nameless || laid.box.left() > run.back()->box.right() + grid(2))) settle();
        if (nameless) run.push_back(&laid);
    }
    settle();
}

void RunUpLayout::layWords(const BoardBox& box, const QRectF& lane, double from, double limit,
                           LaidBox& laid) const {
    if (box.name.isEmpty()) return;
    const bool week = style_ == BoardStyle::week;
    const double above = lineHeight(TypeRole::strong), below = lineHeight(TypeRole::caption);
    const double name =
        widthOf(wordsOf(box), box.look == BoardLook::busy ? TypeRole::caption : TypeRole::strong);
    const bool step = box.look != BoardLook::busy && box.look != BoardLook::thread;
    const QRectF inside = laid.box.adjusted(step ? insideLeft() : grid(1), 0, -grid(1), 0);
    laid.inside = name <= inside.width();
    const double room = limit - laid.box.left() - grid(1);
    if (box.look == BoardLook::thread) {
        laid.inside = false;
        if (!week && widthOf(box.name, TypeRole::caption) + grid(4) < laid.box.width())
            laid.words = QRectF(laid.box.left() + grid(4), lane.bottom() - grid(2) - 7 - below,
                                laid.box.width() - grid(4), below); // over both rows of threads
        return;
    }
    if (laid.inside || box.look == BoardLook::busy || box.look == BoardLook::fixed)
        laid.words = inside;
    else if (!week && room >= name)
        laid.words = QRectF(laid.box.left(), lane.top() + grid(0.5), room, above);
    else if (week && limit - laid.box.right() > name + grid(2))
        laid.words = QRectF(laid.box.right() + grid(1), laid.box.top(), name + grid(1), laid.box.height());
    // To the left only where the words of the box before have room as well.
    else if (!week && laid.box.right() - from >= 2 * name)
        laid.words = QRectF(laid.box.right() - name - grid(1.5), lane.top() + grid(0.5), name + 1, above);
    else if (week && laid.box.left() - from > 2 * name + grid(6))
        laid.words =
            QRectF(laid.box.left() - name - grid(1.5), laid.box.top(), name + grid(1), laid.box.height());
    else if (week && !box.letter.isEmpty() && widthOf(box.letter, TypeRole::strong) <= inside.width())
        laid.words = inside;
    if (!week && step && room >= widthOf(box.detail, TypeRole::caption) && box.look != BoardLook::fixed &&
        !box.detail.isEmpty())
        laid.detail = QRectF(laid.box.left(), laid.box.bottom() + grid(0.5), room, below);
}

const LaidBox* RunUpLayout::at(const Board& board, QPointF point) const {
    const LaidBox* found = nullptr;
    for (const auto& laid : boxes_) {
        const auto& p = laid.place;
        const auto& box = board.days[p.day].lanes[p.lane].boxes[p.box];
        const double more = box.look == BoardLook::busy ? 0 : 3;
        if (laid.box.adjusted(-more, -more, more, more).contains(point)) found = &laid; // the last is on top
    }
    return found;
}

} // namespace withy::ui
