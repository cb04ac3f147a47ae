// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/type.h"

#include <QStringList>

#include <cmath>

namespace withy::paper {

int dotsOf(const Type& type) {
    return static_cast<int>(std::ceil(type.points * kDotsPerInch / 72.0 - 1e-9));
}

QFont fontOf(const Type& type) {
    static const QStringList kSans{QStringLiteral("Lato"), QStringLiteral("Noto Sans"),
                                   QStringLiteral("Sans Serif")};
    static const QStringList kSerif{QStringLiteral("Vollkorn Lining"), QStringLiteral("Vollkorn"),
                                    QStringLiteral("Noto Serif"), QStringLiteral("Serif")};
    QFont font;
    font.setFamilies(type.face == Face::Sans ? kSans : kSerif);
    font.setStyleHint(type.face == Face::Sans ? QFont::SansSerif : QFont::Serif, QFont::PreferOutline);
    font.setPixelSize(dotsOf(type));
    if (type.weight == QFont::Black) {
        // Asked for by weight, Qt thickens Lato Black a second time (its file has no "bold" flag).
        font.setStyleName(QStringLiteral("Black"));
        font.setWeight(QFont::DemiBold);
    } else {
        font.setWeight(static_cast<QFont::Weight>(type.weight));
    }
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any letter spacing switches ligatures off in Qt; one 64th of a dot is not seen.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

} // namespace withy::paper
