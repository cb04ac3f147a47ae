// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_paper/checks.h"

#include <cmath>
#include <map>

namespace withy::checks {
namespace {

constexpr double kSlack = 0.05; // mm; a font's side bearing and rounding

QString place(const QRectF& r) {
    return QStringLiteral("%1,%2 %3x%4").arg(r.x()).arg(r.y()).arg(r.width()).arg(r.height());
}

bool finite(const QRectF& r) {
    return std::isfinite(r.x()) && std::isfinite(r.y()) && std::isfinite(r.width()) &&
           std::isfinite(r.height());
}

void checkInk(const paper::Page& page, const QRectF& area, QStringList& out) {
    const QRectF allowed = area.adjusted(-kSlack, -kSlack, kSlack, kSlack);
    for (const paper::Op& op : page.ops) {
        const QRectF bounds = paper::boundsOf(op);
        const bool inside = bounds.left() >= allowed.left() && bounds.right() <= allowed.right() &&
                            bounds.top() >= allowed.top() && bounds.bottom() <= allowed.bottom();
        if (!finite(bounds) || !inside) {
            const auto* text = std::get_if<paper::TextOp>(&op);
            out << "outside: " + place(bounds) + " " + (text ? text->line.text().left(40) : QString());
        }
    }
}

void checkType(const paper::Page& page, QStringList& out) {
    for (const paper::Op& op : page.ops)
        if (const auto* text = std::get_if<paper::TextOp>(&op))
            for (const paper::Span& span : text->line.spans)
                if (paper::dotsOf(span.type) * 72.0 / paper::kDotsPerInch < 11)
                    out << "small letters: " + span.text.left(40);
}

/// The space of letters without accents, from above the capitals to below the tails; null for scripts whose
/// fonts claim far more height than their letters fill.
QRectF letters(const paper::TextOp& op) {
    const double em = op.line.emMm();
    if (op.line.ascent + op.line.descent > 1.45 * em) return {};
    return QRectF(op.at.x(), op.at.y() - 0.75 * em, op.line.width, 0.97 * em).adjusted(0.3, 0, -0.3, 0);
}

void checkWords(const paper::Page& page, QStringList& out) {
    std::vector<std::pair<QRectF, QString>> seen;
    for (const paper::Op& op : page.ops) {
        const auto* text = std::get_if<paper::TextOp>(&op);
        if (!text) continue;
        const QRectF box = letters(*text);
        for (const auto& [other, words] : seen)
            if (box.isValid() && other.isValid() && other.intersects(box))
                out << "words over words at " + place(box) + ": " + text->line.text().left(30) + " / " +
                           words + " at " + place(other);
        seen.emplace_back(box, text->line.text().left(30));
    }
}

void checkRows(const paper::Layout& layout, QStringList& out) {
    std::map<int, int> times;
    for (const paper::Page& page : layout.pages)
        for (std::size_t i = 0; i < page.rows.size(); ++i) {
            const paper::PlacedRow& row = page.rows[i];
            if (!row.repeated) ++times[row.source];
            for (std::size_t j = 0; j < i; ++j) {
                const QRectF shared = page.rows[j].rect.intersected(row.rect);
                if (shared.width() > 0.01 && shared.height() > 0.01)
                    out << "rows overlap at " + place(shared);
            }
        }
    int expected = 0;
    for (const auto& [source, count] : times) {
        if (source != expected) out << QStringLiteral("row %1 lost").arg(expected);
        if (count != 1) out << QStringLiteral("row %1 printed %2 times").arg(source).arg(count);
        expected = source + 1;
    }
}

} // namespace

QStringList faults(const paper::Layout& layout) {
    QStringList out;
    constexpr double m = paper::kMargin;
    const QRectF area = QRectF(QPointF(0, 0), paper::sheetOf(layout)).adjusted(m, m, -m, -m);
    for (const paper::Page& page : layout.pages) {
        checkInk(page, area, out);
        checkType(page, out);
        checkWords(page, out);
    }
    checkRows(layout, out);
    return out;
}

QStringList linesOf(const paper::Page& page) {
    QStringList lines;
    for (const paper::Op& op : page.ops)
        if (const auto* text = std::get_if<paper::TextOp>(&op)) lines << text->line.text();
    return lines;
}

} // namespace withy::checks
