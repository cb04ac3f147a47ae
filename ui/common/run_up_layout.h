// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/run_up_board.h"
#endif

#include <QRectF>

#include <vector>

/// Where everything of a drawn run-up stands: days below each other, all on one scale of hours.
namespace withy::ui {

enum class BoardStyle {
    days, ///< of one booking: room for words, the heat by itself
    week, ///< seven days on a page
};

/// A box, by its place in the board.
struct BoardPlace {
    std::size_t day = 0;
    std::size_t lane = 0;
    std::size_t box = 0;
    friend bool operator==(const BoardPlace&, const BoardPlace&) = default;
};

struct LaidBox {
    BoardPlace place;
    QRectF box;
    QRectF words;  ///< of the name: inside, above or beside; empty: there is no room
    QRectF detail; ///< below it; empty: there is no room
    bool inside = false;
    bool overBusy = false; ///< the words lie on hatching, and need a ground of their own
};

/// Several steps too short for words: what they are together, below them.
struct LaidGroup {
    QRectF words;
    QString said;
};

struct LaidDay {
    QRectF all;
    QRectF head;
    QRectF scale; ///< hours; empty where the first day has them for all
    QRectF heat;
    std::vector<QRectF> lanes; ///< right of the names
    QRectF names;              ///< column of the lanes' names
    QRectF hands;              ///< hours against hands; week only
};

class RunUpLayout {
public:
    RunUpLayout() = default;
    RunUpLayout(const Board& board, BoardStyle style, double width);

    [[nodiscard]] double height() const { return height_; }

    [[nodiscard]] const std::vector<LaidDay>& days() const { return days_; }

    [[nodiscard]] const std::vector<LaidBox>& boxes() const { return boxes_; }

    [[nodiscard]] const std::vector<LaidGroup>& groups() const { return groups_; }

    [[nodiscard]] double xOf(Day day, LocalTime t) const;
    [[nodiscard]] double xOfHour(double hour) const;

    [[nodiscard]] double left() const { return left_; }

    [[nodiscard]] double right() const { return right_; }

    /// The step at a point; the guests and busy hours too. Null: nothing.
    [[nodiscard]] const LaidBox* at(const Board& board, QPointF point) const;

private:
    double layDay(const Board& board, std::size_t day, double top);
    void layLane(const Board& board, BoardPlace place, const QRectF& lane);
    void layWords(const BoardBox& box, const QRectF& lane, double from, double limit, LaidBox& laid) const;
    /// Of a lane that is laid, from its first box on: no words on others, nor busy hours' on any.
    void clearWords(const BoardLane& lane, std::size_t first);
    void layBusyWords(const BoardBox& box, const std::vector<QRectF>& taken, LaidBox& laid) const;
    void layGroups(const BoardLane& lane, std::size_t first, const std::vector<QRectF>& taken);
    [[nodiscard]] double laneHeight() const;
    [[nodiscard]] double lastEnd(const BoardLane& lane, std::size_t box, Day day) const;
    [[nodiscard]] double nextStart(const BoardLane& lane, std::size_t box, Day day) const;

    BoardStyle style_ = BoardStyle::days;
    double left_ = 0;
    double right_ = 0;
    int firstHour_ = 0;
    int lastHour_ = 24;
    double height_ = 0;
    std::vector<LaidDay> days_;
    std::vector<LaidBox> boxes_;
    std::vector<LaidGroup> groups_;
};

} // namespace withy::ui
