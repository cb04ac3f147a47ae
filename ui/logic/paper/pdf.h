// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper/layout.h"

#include <QDateTime>
#include <QString>

class QIODevice;

namespace withy::paper {

struct PdfFacts {
    QString title;                             // empty = kind and name of the document
    QString creator = QStringLiteral("Withy"); // the program that wrote it
    QDateTime made;                            // invalid = 1 January 2000, so that tests need no clock
};

/// Writes a document as PDF with its fonts embedded and its words readable. The same document, paper, facts,
/// fonts and time zone give the same bytes. False when the device takes no more.
bool writePdf(QIODevice& device, const papers::Document& document, PaperSize paper,
              const PdfFacts& facts = {});

/// The same for a layout already made for a preview.
bool writePdf(QIODevice& device, const Layout& layout, const PdfFacts& facts);

} // namespace withy::paper
