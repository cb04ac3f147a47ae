// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/paper_dialog.h"

#include "ui/logic/format.h"
#include "ui/logic/paper/painter.h"
#include "ui/logic/paper/pdf.h"

#include <QDateTime>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QImage>
#include <QLabel>
#include <QMessageBox>
#include <QPageSize>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSaveFile>
#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

constexpr double previewDotsPerMm = 4;

QPixmap pixmapOf(const paper::Page& page, paper::PaperSize size) {
    QImage image((paper::sizeOf(size) * previewDotsPerMm).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    paper::drawPage(painter, page, previewDotsPerMm);
    painter.end();
    return QPixmap::fromImage(image);
}

} // namespace

PaperDialog::PaperDialog(papers::Document document, paper::PaperSize size, QWidget* parent)
    : QDialog(parent)
    , document_(std::move(document))
    , size_(size)
    , layout_(paper::layoutDocument(document_, size_)) {
    setWindowTitle(text(document_.kind) + QStringLiteral(", ") + text(document_.name));
    auto* pages = new QWidget;
    auto* column = new QVBoxLayout(pages);
    for (std::size_t i = 0; i < layout_.pages.size(); ++i) {
        auto* label = new QLabel;
        label->setPixmap(pixmapOf(layout_.pages[i], size_));
        label->setAccessibleName(tr("Page %1 of %2").arg(i + 1).arg(layout_.pages.size()));
        column->addWidget(label, 0, Qt::AlignHCenter);
    }
    auto* scroll = new QScrollArea;
    scroll->setWidget(pages);
    scroll->setWidgetResizable(true);
    auto* printButton = new QPushButton(tr("&Print"));
    auto* pdfButton = new QPushButton(tr("Keep as P&DF"));
    auto* close = new QPushButton(tr("&Close"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(printButton);
    buttons->addWidget(pdfButton);
    buttons->addStretch();
    buttons->addWidget(close);
    auto* all = new QVBoxLayout(this);
    all->addWidget(scroll);
    all->addLayout(buttons);
    resize(920, 760);
    connect(printButton, &QPushButton::clicked, this, &PaperDialog::print);
    connect(pdfButton, &QPushButton::clicked, this, &PaperDialog::savePdf);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
}

void PaperDialog::savePdf() {
    const QString name = QFileDialog::getSaveFileName(
        this, tr("Keep as PDF"), text(document_.name) + QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (name.isEmpty()) return;
    if (!keepAs(name))
        QMessageBox::warning(this, tr("Not kept"),
                             tr("%1 cannot be written. Check the folder and the disk.").arg(name));
}

bool PaperDialog::keepAs(const QString& path) const {
    QSaveFile file(path);
    return file.open(QIODevice::WriteOnly) &&
           paper::writePdf(file, layout_,
                           {windowTitle(), QStringLiteral("Withy"), QDateTime::currentDateTime()}) &&
           file.commit();
}

void PaperDialog::print() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setFullPage(true);
    printer.setPageSize(QPageSize(size_ == paper::PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    QPrintDialog choose(&printer, this);
    if (choose.exec() != QDialog::Accepted) return;
    QPainter painter(&printer);
    for (std::size_t i = 0; i < layout_.pages.size(); ++i) {
        if (i > 0) printer.newPage();
        paper::drawPage(painter, layout_.pages[i], printer.resolution() / 25.4);
    }
}

} // namespace withy::ui
