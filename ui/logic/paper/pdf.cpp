// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/pdf.h"

#include "ui/logic/paper/painter.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

namespace withy::paper {
namespace {

QByteArray drawn(const Layout& layout, const PdfFacts& facts) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(static_cast<int>(kDotsPerInch));
    writer.setPageSize(QPageSize(layout.paper == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageOrientation(layout.landscape ? QPageLayout::Landscape : QPageLayout::Portrait);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(facts.title);
    writer.setCreator(facts.creator);
    QPainter painter(&writer);
    bool first = true;
    for (const Page& page : layout.pages) {
        if (!first) writer.newPage();
        first = false;
        drawPage(painter, page, kDotsPerMm);
    }
    painter.end();
    return buffer.data();
}

/// Qt writes the present moment into the file; ours is put in its place, byte for byte as long.
void setMade(QByteArray& pdf, const QDateTime& made) {
    const QByteArray mark("/CreationDate (D:");
    const qsizetype at = pdf.lastIndexOf(mark);
    const qsizetype from = at + mark.size();
    const qsizetype end = at < 0 ? -1 : pdf.indexOf(')', from);
    if (end < from) return;
    const QDateTime when = made.isValid() ? made.toUTC() : QDateTime(QDate(2000, 1, 1), QTime(0, 0), Qt::UTC);
    const QByteArray ours = when.toString(QStringLiteral("yyyyMMddHHmmss")).toLatin1() + "Z)";
    const qsizetype length = end + 1 - from;
    if (ours.size() <= length) pdf.replace(from, length, ours.leftJustified(length, ' '));
}

} // namespace

bool writePdf(QIODevice& device, const Layout& layout, const PdfFacts& facts) {
    QByteArray bytes = drawn(layout, facts);
    setMade(bytes, facts.made);
    return !bytes.isEmpty() && device.write(bytes) == bytes.size();
}

bool writePdf(QIODevice& device, const papers::Document& document, PaperSize paper, const PdfFacts& facts) {
    PdfFacts named = facts;
    if (named.title.isEmpty()) {
        const QString name = QString::fromStdString(document.name);
        named.title = QString::fromStdString(document.kind) +
                      (name.isEmpty() ? QString() : QStringLiteral(", ") + name);
        named.title.truncate(200);
    }
    return writePdf(device, layoutDocument(document, paper), named);
}

} // namespace withy::paper
