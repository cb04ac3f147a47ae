// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/logic/paper/layout.h"

#include <QDialog>

namespace withy::ui {

/// A paper's pages, to be looked at, printed or kept as PDF.
class PaperDialog : public QDialog {
    Q_OBJECT

public:
    PaperDialog(papers::Document document, paper::PaperSize size, QWidget* parent = nullptr);

    /// False when the file cannot be written.
    bool keepAs(const QString& path) const;

private:
    void savePdf();
    void print();

    papers::Document document_;
    paper::PaperSize size_;
    paper::Layout layout_;
};

} // namespace withy::ui
