// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/type.h"

#include <QStringList>

#include <algorithm>

namespace withy::ui {

namespace {

double& points() {
    static double size = 10.5;
    return size;
}

QFont font(const QStringList& families, double scale, QFont::Weight weight) {
    QFont f;
    f.setFamilies(families);
    f.setPointSizeF(points() * scale);
    f.setWeight(weight);
    return f;
}

QFont lato(double scale, QFont::Weight weight = QFont::Normal) {
    return font({QStringLiteral("Lato"), QStringLiteral("Noto Sans")}, scale, weight);
}

QFont vollkorn(double scale, QFont::Weight weight) {
    return font({QStringLiteral("Vollkorn Lining"), QStringLiteral("Vollkorn"), QStringLiteral("Noto Serif")}, scale,
                weight);
}

} // namespace

double textPoints() {
    return points();
}

void setTextPoints(double size) {
    points() = std::max(6.0, size);
}

QFont typeFont(TypeRole role) {
    switch (role) {
    case TypeRole::title:
        return vollkorn(2.0, QFont::Bold);
    case TypeRole::answer:
        return lato(1.43);
    case TypeRole::name:
        return vollkorn(1.14, QFont::DemiBold);
    case TypeRole::head:
        return vollkorn(1.14, QFont::Bold);
    case TypeRole::text:
        return lato(1);
    case TypeRole::strong:
        return lato(1, QFont::Bold);
    case TypeRole::caption:
        return lato(0.905);
    case TypeRole::tally:
        return lato(2.86, QFont::Black);
    }
    return lato(1);
}

} // namespace withy::ui
