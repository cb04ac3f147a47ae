// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"

#include "core/papers/text_table.h"
#include "core/papers/text_width.h"

#include <algorithm>
#include <optional>

namespace withy::papers {
namespace {

/// Collects lines and keeps blank ones single.
class Sheet {
public:
    void line(const std::string& words) {
        std::string text = words;
        while (!text.empty() && text.back() == ' ')
            text.pop_back();
        m_out += text + "\n";
        m_blank = text.empty();
    }

    void gap() {
        if (!m_blank) line("");
    }

    void rule(char c) { line(std::string(kTextWidth, c)); }

    /// Wrapped words after a first-line lead; the following lines are indented by the lead's width. A lead
    /// or a right-hand note too wide to stand beside the words takes lines of its own.
    void hanging(const std::string& lead, const std::string& words, const std::string& right = "") {
        constexpr int kHalf = kTextWidth / 2;
        if (displayWidth(lead) > kHalf) {
            own(lead, 0);
            return hanging("    ", words, right);
        }
        if (displayWidth(right) > kHalf) {
            hanging(lead, words);
            return own(right, kHalf - 8);
        }
        const int indent = displayWidth(lead);
        const int room = kTextWidth - indent - (right.empty() ? 0 : displayWidth(right) + 2);
        bool first = true;
        for (const std::string& part : wrap(words, std::max(8, room))) {
            const std::string start = first ? lead + part : std::string(indent, ' ') + part;
            line(first && !right.empty() ? apart(start, right, kTextWidth) : start);
            first = false;
        }
    }

    void own(const std::string& words, int indent) {
        for (const std::string& part : wrap(words, kTextWidth - indent))
            line(std::string(indent, ' ') + part);
    }

    const std::string& text() const { return m_out; }

private:
    std::string m_out;
    bool m_blank = true;
};

/// Where the lines under a lead begin; see Sheet::hanging for leads that are too wide.
int underLead(const std::string& lead) {
    const int width = displayWidth(lead);
    return width > kTextWidth / 2 ? 4 : width;
}

/// Small boxes of equal looks, in fours with a wider gap, `perRow` to a row.
void addTicks(Sheet& sheet, int indent, int count) {
    constexpr int kPerRow = 8;
    constexpr int kMost = 400;
    for (int from = 0; from < std::min(count, kMost); from += kPerRow) {
        std::string row(indent, ' ');
        for (int i = from; i < std::min({count, kMost, from + kPerRow}); ++i)
            row += i > from && (i - from) % 4 == 0 ? " [ ]" : "[ ]";
        sheet.line(row);
    }
    if (count > kMost) sheet.line(std::string(indent, ' ') + "+ " + std::to_string(count - kMost));
}

/// The write-in box with its label; a long label takes its own lines first.
std::string boxed(Sheet& sheet, int indent, const std::string& label) {
    if (displayWidth(label) <= 20) return label + " [________]";
    sheet.hanging(std::string(indent, ' '), label);
    return "[________]";
}

void addBoxes(Sheet& sheet, int indent, const std::vector<int>& boxes, const std::string& writeLabel) {
    const std::string write = writeLabel.empty() ? "" : boxed(sheet, indent, oneLine(writeLabel));
    std::string all;
    for (int size : boxes)
        all += (all.empty() ? "[" : " [") + std::to_string(size) + "]";
    const int room = kTextWidth - indent - (write.empty() ? 0 : displayWidth(write) + 2);
    std::vector<std::string> lines = wrap(all, std::max(8, room));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool final = i + 1 == lines.size();
        const std::string start = std::string(indent, ' ') + lines[i];
        if (!final || !write.empty() || !lines[i].empty())
            sheet.line(final ? apart(start, write, kTextWidth) : start);
    }
}

struct Writer {
    Sheet& sheet;

    void operator()(const SectionHead& head) const {
        sheet.gap();
        sheet.hanging("", head.title, oneLine(words(head.note)));
        sheet.rule('-');
    }

    void operator()(const TimedTask& task) const {
        const std::string latest = task.latest.empty() ? "" : " " + padRight(oneLine(task.latest), 7);
        const std::string lead = padRight(oneLine(task.time), 5) + latest + " [ ] ";
        sheet.hanging(lead, task.title, oneLine(task.who));
        const int indent = underLead(lead);
        if (!task.detail.empty()) sheet.hanging(std::string(indent, ' '), words(task.detail));
        addTicks(sheet, indent, task.pieces);
    }

    void operator()(const TimeHead& head) const {
        sheet.gap();
        sheet.hanging(padRight(oneLine(head.time), 6) + padRight(oneLine(head.latest), 8), head.note);
        sheet.rule('-');
    }

    void operator()(const DropCard& card) const {
        sheet.gap();
        sheet.rule('-');
        sheet.hanging("[" + oneLine(card.number) + "] " + padRight(oneLine(card.time), 6) +
                          padRight(oneLine(card.latest), 7),
                      card.name, oneLine(words(card.note)));
        for (const DropCard::Answer& answer : card.answers)
            sheet.hanging(padRight("    " + oneLine(answer.label), 16),
                          answer.words.empty() ? "[________________]" : words(answer.words));
        for (const DropCard::Item& item : card.items)
            sheet.hanging("    [ ] " + padLeft(oneLine(item.count), 4) + "  ", words(item.words));
        if (!card.handedTo.empty())
            sheet.line("    " + oneLine(card.handedTo) + " [________________] " + oneLine(card.at) +
                       " [______]");
        sheet.rule('-');
    }

    void operator()(const BoardHead& head) const {
        sheet.gap();
        sheet.hanging("", head.title, oneLine(head.note));
        sheet.rule('-');
    }

    void operator()(const BoardItem& item) const {
        const std::string mark = item.mark.empty() ? "   " : "[" + oneLine(item.mark) + "]";
        const std::string sign = item.kind == BoardItem::Kind::busy    ? "//"
                                 : item.kind == BoardItem::Kind::fixed ? "##"
                                                                       : "  ";
        sheet.hanging(padRight(oneLine(item.time), 16) + sign + " " + mark + " ",
                      item.title + (item.detail.empty() ? "" : ". " + item.detail));
    }

    void operator()(const Lanes& lanes) const {
        for (const auto& lane : lanes.lanes)
            all(lane);
    }

    void operator()(const BusyBand& band) const {
        const std::string text = "//// " + oneLine(band.hours + " " + band.label) + " ";
        const int room = kTextWidth - displayWidth(text);
        sheet.hanging("", room > 0 ? text + std::string(room, '/') : text);
    }

    void operator()(const CountRow& row) const {
        const std::string rest = row.rest.empty() ? "" : " " + row.rest;
        sheet.hanging(padLeft(oneLine(row.count), 4) + "  ", row.word + rest);
    }

    void operator()(const TickRow& row) const {
        sheet.hanging("[ ] ", words(row.text), oneLine(words(row.right)));
    }

    void operator()(const FigureLine& line) const {
        const std::string rest = words(line.rest);
        sheet.hanging("", line.figure + (rest.empty() ? "" : " ") + rest);
    }

    void operator()(const Paragraph& paragraph) const { sheet.hanging("", words(paragraph.text)); }

    void operator()(const KeyRow& key) const {
        std::string all;
        for (const KeyRow::Item& item : key.items)
            all += (all.empty() ? "[" : "  [") + oneLine(item.mark) + "] " + oneLine(item.meaning);
        sheet.hanging("", all);
    }

    void operator()(const HourStrip& strip) const {
        std::string row;
        for (const HourStrip::Cell& cell : strip.cells) {
            const std::string one = oneLine(cell.hour + " " + cell.value) + (cell.closed ? " //" : "");
            if (displayWidth(row + one) + 5 > kTextWidth) {
                sheet.hanging("", row + " |");
                row.clear();
            }
            row += (row.empty() ? "| " : " | ") + one;
        }
        if (!row.empty()) sheet.hanging("", row + " |");
        if (!strip.openNote.empty()) sheet.hanging("^ ", strip.openNote);
        if (!strip.closedNote.empty()) sheet.hanging("// ", strip.closedNote);
    }

    void operator()(const PatchHead& patch) const {
        sheet.gap();
        const std::string number = "(" + oneLine(patch.number) + ") ";
        sheet.hanging(number, patch.name, oneLine(words(patch.note)));
        sheet.rule('-');
    }

    void operator()(const TallyRow& row) const {
        std::string lead = padLeft(oneLine(row.count), 4) + " " + oneLine(row.unit);
        if (!row.mark.empty()) lead += " [" + oneLine(row.mark) + "]";
        lead = padRight(lead, 16) + "  ";
        sheet.hanging(lead, row.title, oneLine(row.bucket));
        const int indent = underLead(lead);
        if (!row.detail.empty()) sheet.hanging(std::string(indent, ' '), words(row.detail));
        addBoxes(sheet, indent, row.boxes, row.writeLabel);
    }

    void operator()(const Table& table) const {
        sheet.gap();
        for (const std::string& line : tableLines(table, kTextWidth))
            sheet.line(line);
        sheet.gap();
    }

    void operator()(const Cautions& cautions) const {
        sheet.gap();
        if (!cautions.title.empty()) sheet.hanging("! ", cautions.title);
        for (const Cautions::Item& item : cautions.items)
            sheet.hanging(cautions.title.empty() ? "! " : "  ",
                          item.what + (item.toDo.empty() || item.what.empty() ? "" : " ") + item.toDo);
    }

    void operator()(const WriteHere& write) const {
        sheet.gap();
        if (!write.title.empty()) sheet.hanging("", oneLine(write.title));
        for (const WriteHere::Box& box : write.boxes)
            sheet.hanging("  ", box.label + " [________________]");
    }

    void operator()(const Spacer&) const { sheet.gap(); }

    void operator()(const Drawing& drawing) const {
        if (!drawing.inWords.empty()) sheet.hanging("", drawing.inWords);
    }

    void operator()(const SlotRow& row) const {
        const std::string lead = padRight(oneLine(row.number), 2) + " ";
        sheet.hanging(lead, row.count + " " + row.word + " " + row.rest, oneLine(words(row.detail)));
    }

    void operator()(const PieceGroupRow& row) const {
        std::string cells;
        for (const auto& cell : row.cells)
            cells += (cells.empty() ? "" : ", ") + (cell.differs ? "*" + cell.count + "*" : cell.count) +
                     " " + cell.label;
        std::string collar;
        if (row.collar == PieceGroupRow::Collar::round) collar = "( ) ";
        if (row.collar == PieceGroupRow::Collar::square) collar = "[#] ";
        sheet.hanging(oneLine(row.count) + " ", row.unit + ": " + collar + cells);
        addTicks(sheet, 4, row.pieces);
    }

    void operator()(const Columns& columns) const {
        all(columns.left);
        sheet.gap();
        all(columns.right);
    }

    void all(const std::vector<Block>& blocks) const {
        for (const Block& block : blocks)
            std::visit(*this, block.content);
    }
};

void addLabel(Sheet& sheet, const BucketLabel& label) {
    sheet.gap();
    sheet.rule('-');
    sheet.hanging("", label.name, oneLine(label.day));
    sheet.hanging(padLeft(oneLine(label.count), 4) + " " + oneLine(label.unit) + "  ",
                  label.plant + (label.variety.empty() ? "" : ", " + label.variety),
                  label.vessel.empty() ? "" : "[" + oneLine(label.vessel) + "]");
    sheet.hanging("", label.bandWords);
    if (label.caution) sheet.hanging("! ", label.cautionWords);
    sheet.line(oneLine(label.cutLabel) + " [________________]  " + oneLine(label.waterLabel) + " " +
               oneLine(label.water));
    sheet.hanging("", label.round, oneLine(label.number));
}

void addFacts(Sheet& sheet, const std::vector<Text>& facts) {
    std::string row;
    for (const Text& fact : facts) {
        const std::string text = oneLine(words(fact));
        if (!row.empty() && displayWidth(row) + 3 + displayWidth(text) > kTextWidth) {
            sheet.hanging("", row);
            row.clear();
        }
        row += (row.empty() ? "" : " | ") + text;
    }
    if (!row.empty()) sheet.hanging("", row);
}

} // namespace

namespace {

void render(Sheet& sheet, const Document& document) {
    sheet.hanging("", document.kind, oneLine(document.key));
    sheet.hanging("", document.name, oneLine(document.keyNote));
    sheet.rule('=');
    addFacts(sheet, document.facts);
    if (!document.facts.empty()) sheet.rule('-');
    const Writer writer{sheet};
    writer.all(document.body);
    for (const BucketLabel& label : document.labels)
        addLabel(sheet, label);
    sheet.gap();
    writer.all(document.last);
    sheet.gap();
    sheet.rule('=');
    sheet.hanging("", document.footWhat, oneLine(footMiddle(document)));
    for (const auto& next : document.sheets) {
        sheet.gap();
        render(sheet, next);
    }
}

} // namespace

std::string renderText(const Document& document) {
    Sheet sheet;
    render(sheet, document);
    return sheet.text();
}

} // namespace withy::papers
