// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/trial_picture.h"

#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/picture_words.h"
#include "ui/paint/spacing.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QImageReader>
#include <QLabel>
#include <QPushButton>

namespace withy::ui {

namespace {

QDir seasonFolder(const Workbench& bench) {
    return QFileInfo(bench.path()).absoluteDir();
}

/// Beside the season the name alone is kept, so that both can move together.
QString nameFor(const Workbench& bench, const QString& file) {
    const QString inside = seasonFolder(bench).relativeFilePath(file);
    return inside.startsWith(QStringLiteral("..")) || QDir::isAbsolutePath(inside) ? QDir::cleanPath(file)
                                                                                   : inside;
}

/// Never larger in memory than it is shown.
QImage readSmall(const QString& file, QSize room, QString& trouble) {
    QImageReader reader(file);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && (size.width() > room.width() || size.height() > room.height()))
        reader.setScaledSize(size.scaled(room, Qt::KeepAspectRatio));
    const QImage image = reader.read();
    if (image.isNull()) trouble = reader.errorString();
    return image;
}

} // namespace

TrialPicture::TrialPicture(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , image_(new QLabel)
    , words_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , choose_(namedButton(tr("Choose a pi&cture..."), "designs.picture.choose"))
    , away_(linkButton(tr("Take the picture away"), "designs.picture.away")) {
    image_->setObjectName(QStringLiteral("designs.picture"));
    image_->setAccessibleName(tr("Picture of a real trial"));
    words_->setObjectName(QStringLiteral("designs.picture.words"));
    words_->setWordWrap(true);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(grid(2));
    buttons->addWidget(choose_);
    buttons->addWidget(away_);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(1), 0, 0);
    column->setSpacing(grid(1));
    column->addWidget(image_);
    column->addWidget(words_);
    column->addLayout(buttons);
    connect(choose_, &QPushButton::clicked, this, &TrialPicture::ask);
    connect(away_, &QPushButton::clicked, this, [this] { keep({}); });
    connect(&bench_, &Workbench::changed, this, &TrialPicture::refresh);
}

void TrialPicture::showDesign(std::optional<Id<model::Design>> design) {
    design_ = design;
    refresh();
}

void TrialPicture::ask() {
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Picture of the trial"), seasonFolder(bench_).path(),
                                     tr("Pictures (*.jpg *.jpeg *.png *.webp *.gif *.bmp)"));
    if (!file.isEmpty()) choose(file);
}

void TrialPicture::choose(const QString& file) {
    QString trouble;
    if (readSmall(file, {16, 16}, trouble).isNull())
        return Q_EMIT refused(pictureUnreadableWords(QFileInfo(file).fileName(), trouble));
    keep(utf8(nameFor(bench_, file)));
}

void TrialPicture::keep(const std::string& name) {
    if (design_)
        Q_EMIT refused(bench_.apply(edits::setField(
            bench_.season(), {model::TableKind::designs, design_->value}, "picture", model::Value(name))));
}

void TrialPicture::refresh() {
    const auto* d = design_ ? bench_.season().designs.find(*design_) : nullptr;
    const QString name = d ? text(d->picture) : QString();
    away_->setVisible(!name.isEmpty());
    if (name.isEmpty()) {
        image_->hide();
        shown_.clear();
        words_->setText(noPictureWords());
        return;
    }
    showImage(seasonFolder(bench_).absoluteFilePath(name));
}

void TrialPicture::showImage(const QString& file) {
    const QString name = QFileInfo(file).fileName();
    if (!QFileInfo::exists(file)) {
        image_->hide();
        shown_.clear();
        words_->setText(pictureGoneWords(name, QDir::toNativeSeparators(QFileInfo(file).absolutePath())));
        return;
    }
    if (file == shown_) return;
    QString trouble;
    const QSize room(grid(72), grid(60));
    QImage image = readSmall(file, room * devicePixelRatioF(), trouble);
    if (image.isNull()) {
        image_->hide();
        shown_.clear();
        words_->setText(pictureUnreadableWords(name, trouble));
        return;
    }
    image.setDevicePixelRatio(devicePixelRatioF());
    image_->setPixmap(QPixmap::fromImage(image));
    image_->setAccessibleDescription(name);
    image_->show();
    words_->setText(name);
    shown_ = file;
}

} // namespace withy::ui
