// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/logic/paper/type.h"

#include <QString>

#include <memory>
#include <string>
#include <vector>

class QTextLayout;

namespace withy::paper {

/// Words of one type.
struct Span {
    QString text;
    Type type;
};

using Spans = std::vector<Span>;

/// One set line, measured in millimetres. Its letters are kept in reading order; a line of right-to-left
/// words is turned round only when it is drawn.
struct TextLine {
    Spans spans;
    bool rightToLeft = false;
    double width = 0;
    double ascent = 0;
    double descent = 0;

    QString text() const;
    double emMm() const; // size of its largest letters
};

/// Above and below the baseline, what letters may fill; fonts claim more than that.
double inkAscent(const TextLine& line);
double inkDescent(const TextLine& line);

/// Height a line takes in a column of lines `lineMm` apart: more only for letters that stand much higher
/// than Latin ones.
double stepOf(const TextLine& line, double lineMm);

/// UTF-8 to what can be set: line ends become line separators, other control characters blanks, broken
/// bytes U+FFFD, and more than 20,000 letters are cut (they could not be read on a sheet).
QString shown(const std::string& utf8);

/// Figures in serif are set in sans, which has them all of one height and width.
Spans spansOf(const papers::Text& text, const Type& normal, const Type& strong);
Spans spansOf(const std::string& words, const Type& type);

/// Breaks words at `widthMm` (at least 5), inside a word only when it is longer than a line. If more than
/// `mostLines` would be needed the last one ends in an ellipsis. Empty words give no line.
std::vector<TextLine> breakLines(const Spans& spans, double widthMm, int mostLines = 12);

/// What a line set alone may come out wider than when it was broken, millimetres. Breaking leaves this much
/// free, so a width that is to hold given words must be larger by it.
inline constexpr double kBreakSlack = 0.12;

/// One line, cut with an ellipsis if it is wider than `widthMm`.
TextLine oneLine(const Spans& spans, double widthMm);

/// Width in millimetres when set on one line.
double widthOf(const Spans& spans);

/// The layout of a line, ready to draw in dots.
std::unique_ptr<QTextLayout> layoutOf(const TextLine& line);

} // namespace withy::paper
