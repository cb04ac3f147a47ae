// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/picture_words.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct PictureWordsSay {
    Q_DECLARE_TR_FUNCTIONS(TrialPicture)
};

} // namespace

QString noPictureWords() {
    return PictureWordsSay::tr(
        "No picture yet. A trial on the kitchen sill, photographed, says more than a note.");
}

QString pictureGoneWords(const QString& name, const QString& folder) {
    return PictureWordsSay::tr("%1 is not there any more; it was in %2. Put it back, or choose it again.")
        .arg(name, folder);
}

QString pictureUnreadableWords(const QString& name, const QString& why) {
    return PictureWordsSay::tr("%1 cannot be read as a picture (%2). Choose a JPEG or PNG file.")
        .arg(name, why);
}

} // namespace withy::ui
