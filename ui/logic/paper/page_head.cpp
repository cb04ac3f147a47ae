// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/page_head.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Align;

/// Words side by side with equal air between, as many to a line as fit.
double drawFacts(Pen& pen, const std::vector<papers::Text>& facts, double top, double width) {
    constexpr double kLeastAir = 5;
    std::vector<std::vector<TextLine>> lines;
    double used = 0;
    for (const papers::Text& fact : facts) {
        TextLine words = oneLine(spansOf(fact, types::kText, types::kTextStrong), width);
        if (words.spans.empty()) continue;
        if (lines.empty() || used + kLeastAir + words.width > width) {
            lines.emplace_back();
            used = -kLeastAir;
        }
        used += kLeastAir + words.width;
        lines.back().push_back(std::move(words));
    }
    double y = top;
    for (auto& line : lines) {
        double words = 0;
        for (const TextLine& fact : line)
            words += fact.width;
        const double air = line.size() > 1 ? (width - words) / static_cast<double>(line.size() - 1) : 0;
        double x = 0;
        for (TextLine& fact : line) {
            const double wide = fact.width;
            pen.in(x, y, types::kText.lineMm, std::move(fact));
            x += wide + (lines.size() > 1 ? std::min(air, 12.0) : air);
        }
        y += types::kText.lineMm;
    }
    return y - top;
}

/// Left and right words of a head, and where the right ones begin.
struct HeadWords {
    std::vector<TextLine> kind;
    std::vector<TextLine> name;
    TextLine key;
    std::vector<TextLine> note;
    double keyWidth = 0;
};

HeadWords setWords(const papers::Document& document, double width, bool again) {
    HeadWords words;
    words.key = oneLine(spansOf(document.key, again ? types::kKeyAgain : types::kKey), width * 0.5);
    words.note = again ? std::vector<TextLine>{}
                       : breakLines(spansOf(document.keyNote, types::kDetail), width * 0.5, 2);
    words.keyWidth = words.key.width;
    for (const TextLine& line : words.note)
        words.keyWidth = std::max(words.keyWidth, line.width);
    const double left = width - words.keyWidth - (words.keyWidth > 0 ? 6 : 0);
    words.kind = breakLines(spansOf(document.kind, types::kKind), left, 1);
    words.name =
        breakLines(spansOf(document.name, again ? types::kNameAgain : types::kName), left, again ? 1 : 2);
    return words;
}

} // namespace

Row firstHead(const papers::Document& document, double width) {
    const HeadWords words = setWords(document, width, false);
    const double left = heightOf(words.kind, types::kKind.lineMm) + heightOf(words.name, types::kName.lineMm);
    const double keyHeight = words.key.spans.empty() ? 0 : stepOf(words.key, types::kKey.lineMm);
    const double right = keyHeight + heightOf(words.note, types::kDetail.lineMm);
    const double high = std::max(left, right);
    Row row;
    Pen pen(row);
    double y = (high - left) / 2;
    y += pen.lines(0, y, words.kind, types::kKind.lineMm);
    pen.lines(0, y, words.name, types::kName.lineMm);
    y = (high - right) / 2;
    double noteTop = y + keyHeight;
    if (keyHeight > 0) {
        const double base = std::max(baselineIn(y, keyHeight, words.key), inkAscent(words.key));
        pen.at(width, base, words.key, Align::Right);
        noteTop = std::max(noteTop, base + inkDescent(words.key));
    }
    pen.lines(width, noteTop, words.note, types::kDetail.lineMm, Align::Right);

    y = std::max(high, noteTop + heightOf(words.note, types::kDetail.lineMm)) + 2 + kThick;
    pen.across(y - kThick / 2, 0, width, kThick);
    const double facts = drawFacts(pen, document.facts, y + 1.7, width);
    if (facts > 0) {
        y += 1.7 + facts + 1.7 + kHairline;
        pen.across(y - kHairline / 2, 0, width);
    }
    row.height = y + 2.8;
    return row;
}

Row laterHead(const papers::Document& document, double width) {
    const HeadWords words = setWords(document, width, true);
    Row row;
    Pen pen(row);
    double y = pen.lines(0, 0, words.kind, types::kKind.lineMm);
    const double top = y;
    y += pen.lines(0, y, words.name, types::kNameAgain.lineMm);
    y = std::max(y, types::kKind.lineMm + types::kNameAgain.lineMm);
    if (!words.name.empty() && !words.key.spans.empty()) {
        const double base = baselineIn(top, types::kNameAgain.lineMm, words.name.front());
        pen.at(width, base, words.key, Align::Right);
    } else {
        pen.in(width, y - types::kNameAgain.lineMm, types::kNameAgain.lineMm, words.key, Align::Right);
    }
    y += 1.2 + kThick;
    pen.across(y - kThick / 2, 0, width, kThick);
    row.height = y + 2.8;
    return row;
}

Row pageFoot(const papers::Document& document, double width, int page, int pages) {
    constexpr double kTop = 3.4 + kThick + 1.5; // air over the rule, the rule, air over the words
    constexpr double kAir = 4;
    Row row;
    Pen pen(row);
    const QString count = QCoreApplication::translate("paper", "page %1 of %2").arg(page).arg(pages);
    const TextLine right = oneLine({{count, types::kDetailStrong}}, width);
    const double room = width - right.width - 2 * kAir;
    const TextLine printed = oneLine(spansOf(papers::footMiddle(document), types::kDetail), room * 0.6);
    const TextLine what = oneLine(spansOf(document.footWhat, types::kDetail), room - printed.width);
    constexpr double kLeast = types::kDetail.lineMm + 0.4; // room for letters of other scripts
    const double line = std::max(stepOf(what, kLeast), stepOf(printed, kLeast));
    pen.across(3.4 + kThick / 2, 0, width, kThick);
    pen.in(0, kTop, line, what);
    const double from = what.width + kAir;
    const double until = width - right.width - kAir;
    pen.in((from + until - printed.width) / 2, kTop, line, printed);
    pen.in(width, kTop, line, right, Align::Right);
    row.height = kTop + line;
    return row;
}

} // namespace withy::paper
