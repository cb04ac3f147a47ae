// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What a paper says, as plain data. A paper is filled in by its own file, then drawn on A4 or Letter, or
/// written as plain text; nothing here knows about fonts, pages or the screen.
/// All strings are UTF-8 and already worded; they are shown as typed, so markup has no meaning.
namespace withy::papers {

/// A stretch of words of one weight.
struct Run {
    std::string text;
    bool strong = false;

    friend bool operator==(const Run&, const Run&) = default;
};

/// Words with bold stretches: the count or the name stands out, the rest is plain.
using Text = std::vector<Run>;

Text plain(std::string_view words);
Text strong(std::string_view words);
/// Joins two texts as they are; put the space where it belongs.
Text operator+(Text left, const Text& right);
/// The words alone, without their weights.
std::string words(const Text& text);

/// A name in serif above a thick rule. Stays with the row below it.
struct SectionHead {
    std::string title;
    Text note; // at the right, small; a date belongs here, not in the title
};

/// One timed step: time, tick box, what, how, who.
struct TimedTask {
    std::string time;
    std::string title;
    Text detail;
    std::string who;
    int pieces = 0;          // small tick boxes under the step, one a piece, in fours, eight to a row
    bool beside = false;     // the detail stands beside the title where both fit one line
    std::string latest = {}; // on the road: when it must begin at the latest, beside the time
};

/// What stands over the two times of the steps below.
struct TimeHead {
    std::string time;
    std::string latest;
    std::string note;
};

/// One drop on the road, framed: what the driver needs to know there, and what is carried in.
struct DropCard {
    struct Answer {
        std::string label;
        Text words; // empty: a box to write in
    };

    struct Item {
        std::string count;
        Text words;
    };

    std::string number; // in a black square
    std::string time;
    std::string latest;
    std::string name;
    Text note; // at the right of the name
    std::vector<Answer> answers;
    std::vector<Item> items;
    std::string handedTo; // labels of the two boxes below the items; empty: none
    std::string at;
};

/// A day at the head of a column of the week.
struct BoardHead {
    std::string title; // "Fri 10"
    std::string note;
    bool strong = false; // the full one
};

/// What stands in a day of the week. Black: cannot move. Hatched: busy. Heavy left edge: work.
struct BoardItem {
    enum class Kind { fixed, round, step, busy, note };

    Kind kind = Kind::step;
    std::string time;
    std::string mark; // whose it is, one letter
    std::string title;
    std::string detail;
};

/// Hours that are taken already: a hatched band in its place between the steps.
struct BusyBand {
    std::string hours;
    std::string label;
};

/// A count with its word: `2  leaf ninebark`.
struct CountRow {
    std::string count;
    std::string word;
    std::string rest;
};

/// A tick box and what is to be ticked; `right` stands at the right edge. Ruled rows take a line below.
struct TickRow {
    Text text;
    Text right;
    bool ruled = false;
};

/// One figure to be read from a step away, and its words: `6.6 litres  jars`.
struct FigureLine {
    std::string figure;
    Text rest;
};

/// Running words. The only block whose lines may part at a page end.
struct Paragraph {
    Text text;
    bool small = false;
};

/// What the letters in small boxes stand for.
struct KeyRow {
    struct Item {
        std::string mark;
        std::string meaning;
    };

    std::vector<Item> items;
};

/// The hours of a round side by side, the closed ones hatched, a heavy bar before the first closed one.
struct HourStrip {
    struct Cell {
        std::string hour;
        std::string value;
        bool closed = false;
    };

    std::vector<Cell> cells;
    std::string openNote; // under the strip, at `noteAt` with a small solid pointer
    double noteAt = 0;    // in cells from the left; 0.43 is in the first cell
    std::string closedNote;
};

/// A patch on the walk: its number in a black circle, strung on a dotted line with the others.
struct PatchHead {
    std::string number;
    std::string name;
    Text note; // the way from the last patch
};

/// One plant to cut, with pencil boxes for one stroke a stem.
struct TallyRow {
    std::string count;
    std::string unit;
    std::string mark; // whose it is, one letter as in the KeyRow
    std::string title;
    Text detail;
    std::string bucket;
    std::vector<int> boxes; // size of each tally box, usually tens and a rest
    std::string writeLabel; // label of the write-in box; empty = no box
};

enum class Align { Left, Centre, Right };

/// What a column's cells are: words; a box for the pencil with its words small in the corner; a line to
/// write on; a number in a black circle.
enum class CellKind { Words, Box, Line, Disc };

struct Column {
    std::string title;
    Align align = Align::Left;
    double weight = 0;    // share of the width that is left over; 0 = as wide as its longest entry
    bool numeric = false; // right-aligned and never broken over lines while it fits
    CellKind cells = CellKind::Words;
};

enum class RowKind {
    Body,  // one cell for each column
    Group, // a head inside the table: only the first cell, serif, kept with the row below
    Total  // strong, closed by a thick rule
};

struct TableRow {
    std::vector<Text> cells; // missing cells are blank, extra ones are left out
    RowKind kind = RowKind::Body;
};

/// Rows under heads that come again on every page. If no column has a title there is no head row.
struct Table {
    std::string title; // serif, in the head row when the first column has no title, else above it
    std::vector<Column> columns;
    std::vector<TableRow> rows;
    bool small = false; // entries at the floor size, for wide tables
};

/// What may go wrong: bold what, then what to do. Framed when there are three or more.
struct Cautions {
    struct Item {
        std::string what;
        std::string toDo;
    };

    std::string title;
    std::vector<Item> items;
};

/// Boxes for the pencil, typed in later.
struct WriteHere {
    struct Box {
        std::string label;
        double widthMm = 0; // 0 = shares what is left over
    };

    std::string title; // may hold one line break
    std::vector<Box> boxes;
};

/// Air, in millimetres; dropped at the top of a page.
struct Spacer {
    double mm = 0;
};

/// A drawing in black line, millimetres of paper from its own top left.
struct Drawing {
    enum class Fill { none, white, black };

    /// Where a line goes next. A curve takes three points: two that bend it, and its end.
    struct Point {
        enum class Kind { move, line, curve } kind = Kind::line;
        double x = 0;
        double y = 0;
    };

    struct Shape {
        std::vector<Point> points;
        Fill fill = Fill::none;
        double line = 0; // millimetres; nought draws none
    };

    struct Label {
        double x = 0;
        double y = 0; // of the words' middle
        std::string words;
        double share = 0; // of the words that stands left of x: 0, 0.5, 1
        bool strong = false;
    };

    double width = 0;
    double height = 0;
    std::vector<Shape> shapes;
    std::vector<Label> labels;
    std::string inWords; // for who cannot see it
};

/// A slot in making order: number, stems of one piece, what, and how long it is cut.
struct SlotRow {
    std::string number;
    std::string count;
    std::string word;
    std::string rest;
    Text detail;
};

/// Pieces made alike: how many, what goes in each, a tick for every piece. White on black: what differs from
/// the first group. Round collar: as most are; square: the odd ones; none where all are alike.
struct PieceGroupRow {
    enum class Collar { none, round, square };

    struct Cell {
        std::string count;
        std::string label;
        bool differs = false;
    };

    std::string count;
    std::string unit;
    Collar collar = Collar::none;
    std::string collarWord;
    std::vector<Cell> cells;
    int pieces = 0; // tick boxes, in fours, eight to a row
};

struct Block;

enum class Split { TwoThirds, Halves };

/// Two columns side by side; each flows over the pages on its own. Not nested.
struct Columns {
    Split split = Split::TwoThirds;
    std::vector<Block> left;
    std::vector<Block> right;
};

/// Columns of one width side by side, each flowing over the pages on its own; its heads come again. Not
/// nested.
struct Lanes {
    std::vector<std::vector<Block>> lanes;
};

struct Block {
    std::variant<SectionHead, TimedTask, BusyBand, CountRow, TickRow, FigureLine, Paragraph, KeyRow,
                 HourStrip, PatchHead, TallyRow, Table, Cautions, WriteHere, Spacer, Columns, Drawing,
                 SlotRow, PieceGroupRow, TimeHead, DropCard, BoardHead, BoardItem, Lanes>
        content;
    bool keepWithNext = false; // section and patch heads keep in any case
};

/// A ruler in true millimetres at the right edge, from the foot of the paper: true only when printed at 100
/// %. Marks beyond the sheet are left to words.
struct CuttingGauge {
    struct Mark {
        double mm = 0;
        std::string label;
    };

    std::vector<Mark> marks;
    std::string words;   // along the edge
    double tick = 10;    // millimetres
    int ticksToLong = 5; // every so many is longer
};

/// A label for one bucket, to be cut out: eight of them to a sheet.
struct BucketLabel {
    enum class Band { first, hold, apart }; // solid, hatched, double frame

    std::string name; // whose stems
    std::string day;
    std::string count;
    std::string unit;
    std::string plant;
    std::string variety;
    Band band = Band::hold;
    std::string bandWords;
    std::string cutLabel; // of the box for the pencil
    std::string waterLabel;
    std::string water;
    std::string vessel; // its number, in a black square
    bool caution = false;
    std::string cautionWords;
    Drawing flower;     // in line, beside the name
    std::string round;  // on which it is cut
    std::string number; // "label 3 of 9"
};

struct Document {
    std::string kind;        // "Prep sheet"
    std::string name;        // the booking, the round, the season
    std::string key;         // the one thing looked for: a day, a sum, a year
    std::string keyNote;     // small, under the key
    std::vector<Text> facts; // three to five, in one strip on page 1
    std::vector<Block> body;
    std::vector<Block> last; // at the foot of the last page only: write-here boxes, signatures
    std::string footWhat;
    std::string footPrinted; // "printed Thu 9 Sep, 19:40"
    std::string version;     // joined to it when not empty: "version 2"
    std::optional<CuttingGauge> gauge;
    bool landscape = false;
    std::vector<BucketLabel> labels; // where there are any, the sheets hold them and nothing else
    std::vector<Document> sheets; // that belong to it; each begins on a page of its own, under its own head
};

/// The middle of the foot: when it was printed, and which version it is.
std::string footMiddle(const Document& document);

/// Splits a number of stems into tally boxes: tens, then the rest. Nought or less gives none; at most
/// `most` boxes are made and the last of them then holds all that is left.
std::vector<int> tallyBoxes(int stems, int bunch = 10, int most = 60);

} // namespace withy::papers
