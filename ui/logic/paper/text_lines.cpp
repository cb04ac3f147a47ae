// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/text_lines.h"

#include <QTextCharFormat>
#include <QTextLayout>
#include <QTextOption>

#include <algorithm>

namespace withy::paper {
namespace {

constexpr double kVeryWide = 2'000'000; // dots; QTextLayout keeps 26 bits before the point
constexpr int kMostLetters = 20'000;
constexpr double kUsualHeight = 1.45; // ascent and descent in ems; Vollkorn 1.39, Lato 1.2, Noto 1.36

QString joined(const Spans& spans) {
    QString all;
    for (const Span& span : spans)
        all += span.text;
    return all;
}

QList<QTextLayout::FormatRange> formatsOf(const Spans& spans) {
    QList<QTextLayout::FormatRange> formats;
    int at = 0;
    for (const Span& span : spans) {
        QTextLayout::FormatRange range;
        range.start = at;
        range.length = static_cast<int>(span.text.size());
        range.format.setFont(fontOf(span.type));
        formats.append(range);
        at += range.length;
    }
    return formats;
}

std::unique_ptr<QTextLayout> newLayout(const Spans& spans, QTextOption::WrapMode wrap,
                                       Qt::LayoutDirection way) {
    auto layout =
        std::make_unique<QTextLayout>(joined(spans), fontOf(spans.empty() ? Type() : spans.front().type));
    QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setWrapMode(wrap);
    option.setUseDesignMetrics(true);
    option.setTextDirection(way);
    layout->setTextOption(option);
    if (spans.size() > 1) layout->setFormats(formatsOf(spans));
    return layout;
}

/// The part [from, from + length) of the spans, without blanks at its end.
Spans part(const Spans& spans, int from, int length) {
    Spans out;
    int at = 0;
    for (const Span& span : spans) {
        const int size = static_cast<int>(span.text.size());
        const int first = std::max(from, at);
        const int end = std::min(from + length, at + size);
        if (first < end) out.push_back({span.text.mid(first - at, end - first), span.type});
        at += size;
    }
    while (!out.empty()) {
        QString& text = out.back().text;
        while (!text.isEmpty() && text.back().isSpace())
            text.chop(1);
        if (!text.isEmpty()) break;
        out.pop_back();
    }
    return out;
}

void takeMeasures(TextLine& line, const QTextLine& set) {
    line.width = set.naturalTextWidth() / kDotsPerMm;
    line.ascent = set.ascent() / kDotsPerMm;
    line.descent = set.descent() / kDotsPerMm;
}

TextLine measured(Spans spans, Qt::LayoutDirection way) {
    TextLine line{std::move(spans), way == Qt::RightToLeft};
    takeMeasures(line, layoutOf(line)->lineAt(0));
    return line;
}

/// A line as the breaking set it; measured again only when blanks at its end were dropped.
TextLine taken(const Spans& spans, const QTextLine& set, Qt::LayoutDirection way) {
    TextLine line{part(spans, set.textStart(), set.textLength()), way == Qt::RightToLeft};
    if (line.text().size() != set.textLength()) return measured(std::move(line.spans), way);
    takeMeasures(line, set);
    return line;
}

Qt::LayoutDirection directionOf(const QString& text) {
    return text.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight;
}

/// The longest beginning of the spans that fits together with an ellipsis.
TextLine elided(const Spans& spans, double widthMm, Qt::LayoutDirection way) {
    const QString all = joined(spans);
    int fits = 0;
    int tooMany = static_cast<int>(all.size()) + 1;
    auto cut = [&](int length) {
        if (length > 0 && all.at(length - 1).isHighSurrogate()) --length;
        Spans shorter = part(spans, 0, length);
        shorter.push_back(
            {QString(QChar(0x2026)), shorter.empty() ? spans.front().type : shorter.back().type});
        return measured(std::move(shorter), way);
    };
    while (tooMany - fits > 1) {
        const int middle = fits + (tooMany - fits) / 2;
        (cut(middle).width <= widthMm ? fits : tooMany) = middle;
    }
    return cut(fits);
}

/// No more letters than could stand in so many lines of a wide sheet.
Spans capped(Spans spans, int mostLines) {
    constexpr int kPerLine = 400;
    int left = mostLines * kPerLine;
    for (Span& span : spans) {
        span.text.truncate(std::max(0, left));
        left -= static_cast<int>(span.text.size());
    }
    return spans;
}

} // namespace

QString TextLine::text() const {
    return joined(spans);
}

double TextLine::emMm() const {
    int most = 0;
    for (const Span& span : spans)
        most = std::max(most, dotsOf(span.type));
    return most / kDotsPerMm;
}

namespace {

bool isUsual(const TextLine& line) {
    return line.ascent + line.descent <= kUsualHeight * line.emMm();
}

} // namespace

double inkAscent(const TextLine& line) {
    return isUsual(line) ? std::min(line.ascent, 0.95 * line.emMm()) : line.ascent;
}

double inkDescent(const TextLine& line) {
    return isUsual(line) ? std::min(line.descent, 0.3 * line.emMm()) : line.descent;
}

double stepOf(const TextLine& line, double lineMm) {
    return isUsual(line) ? lineMm : std::max(lineMm, line.ascent + line.descent);
}

QString shown(const std::string& utf8) {
    QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    text.truncate(kMostLetters);
    text.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    for (QChar& c : text) {
        if (c == QLatin1Char('\n'))
            c = QChar(QChar::LineSeparator);
        else if (c.category() == QChar::Other_Control || c == QChar(QChar::SoftHyphen))
            c = QLatin1Char(' ');
    }
    return text;
}

namespace {

Type figureType(const Type& serif) {
    Type type = serif;
    type.face = Face::Sans;
    type.points = std::max(kFloorPoints, serif.points * 0.92); // to the height of the serif capitals
    return type;
}

/// Letters that Vollkorn changes beside others, into shapes that have no letter to read back from a PDF;
/// Qt 6.4 cannot switch that off, but a letter in a span of its own has no neighbours.
const QString kAlone = QStringLiteral(u"fR\u0154\u0156\u0158\u017F");

void append(Spans& spans, const QString& words, const Type& type) {
    if (type.face == Face::Sans) {
        if (!words.isEmpty()) spans.push_back({words, type});
        return;
    }
    auto kindOf = [](QChar c) { return c.isDigit() ? 1 : kAlone.contains(c) ? 2 : 0; };
    qsizetype from = 0;
    while (from < words.size()) {
        const int kind = kindOf(words[from]);
        qsizetype end = from + 1;
        while (end < words.size() && kind != 2 && kindOf(words[end]) == kind)
            ++end;
        spans.push_back({words.mid(from, end - from), kind == 1 ? figureType(type) : type});
        from = end;
    }
}

} // namespace

Spans spansOf(const papers::Text& text, const Type& normal, const Type& strong) {
    Spans spans;
    for (const papers::Run& run : text)
        append(spans, shown(run.text), run.strong ? strong : normal);
    return spans;
}

Spans spansOf(const std::string& words, const Type& type) {
    Spans spans;
    append(spans, shown(words), type);
    return spans;
}

std::unique_ptr<QTextLayout> layoutOf(const TextLine& line) {
    auto layout =
        newLayout(line.spans, QTextOption::ManualWrap, line.rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    layout->beginLayout();
    QTextLine only = layout->createLine();
    if (only.isValid()) only.setLineWidth(kVeryWide);
    layout->endLayout();
    return layout;
}

std::vector<TextLine> breakLines(const Spans& given, double widthMm, int mostLines) {
    std::vector<TextLine> lines;
    const Spans spans = capped(given, mostLines);
    const QString all = joined(spans);
    if (all.trimmed().isEmpty()) return lines;
    const double width = std::max(5.0, widthMm) - kBreakSlack;
    const Qt::LayoutDirection way = directionOf(all);
    auto layout = newLayout(spans, QTextOption::WrapAtWordBoundaryOrAnywhere, way);
    layout->beginLayout();
    for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine()) {
        line.setLineWidth(width * kDotsPerMm);
        const int from = line.textStart();
        const int rest = static_cast<int>(all.size()) - from;
        const bool more = line.textLength() < rest;
        if (line.textLength() == 0) break;
        if (more && static_cast<int>(lines.size()) + 1 == mostLines) {
            Spans tail = part(spans, from, line.textLength());
            if (tail.empty()) tail = {{QString(), spans.front().type}};
            lines.push_back(elided(tail, width, way));
            break;
        }
        lines.push_back(taken(spans, line, way));
    }
    layout->endLayout();
    return lines;
}

TextLine oneLine(const Spans& spans, double widthMm) {
    std::vector<TextLine> lines = breakLines(spans, widthMm, 1);
    return lines.empty() ? TextLine{} : std::move(lines.front());
}

double widthOf(const Spans& spans) {
    if (spans.empty()) return 0;
    const Spans some = capped(spans, 1);
    return measured(some, directionOf(joined(some))).width;
}

} // namespace withy::paper
