// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

/// The letters of the papers. Sizes are points, line heights millimetres.
namespace withy::paper {

enum class Face {
    Sans, // Lato: everything that may hold a figure
    Serif // Vollkorn: names only, its figures are uneven
};

struct Type {
    Face face = Face::Sans;
    int weight = QFont::Normal;
    double points = 12.5;
    double lineMm = 5.76;

    friend bool operator==(const Type&, const Type&) = default;
};

/// Nothing on a paper is smaller: it is read at arm's length in poor light.
inline constexpr double kFloorPoints = 11;

/// The grid in which words are measured and drawn. Font sizes are whole steps of it, so that what was
/// measured is what is drawn at every scale.
inline constexpr double kDotsPerInch = 1200;
inline constexpr double kDotsPerMm = kDotsPerInch / 25.4;

/// Size in dots, rounded up so that the floor holds.
int dotsOf(const Type& type);

/// The font in dots, unhinted, without ligatures (a ligature has no letters to read back from a PDF).
QFont fontOf(const Type& type);

namespace types {
inline constexpr Type kKind{Face::Sans, QFont::Bold, 11.5, 5.3};
inline constexpr Type kName{Face::Serif, QFont::Bold, 28, 10.5};
inline constexpr Type kKey{Face::Sans, QFont::Black, 30, 10.84};
inline constexpr Type kNameAgain{Face::Serif, QFont::Bold, 17, 7.2};
inline constexpr Type kKeyAgain{Face::Sans, QFont::Black, 17, 7.2};
inline constexpr Type kDetail{Face::Sans, QFont::Normal, 11, 5.08};
inline constexpr Type kDetailStrong{Face::Sans, QFont::Bold, 11, 5.08};
inline constexpr Type kText{Face::Sans, QFont::Normal, 12.5, 5.76};
inline constexpr Type kTextStrong{Face::Sans, QFont::Bold, 12.5, 5.76};
inline constexpr Type kTask{Face::Sans, QFont::Bold, 14.5, 6.43};
inline constexpr Type kTime{Face::Sans, QFont::Black, 17, 7.11};
inline constexpr Type kLatest{Face::Sans, QFont::Normal, 14, 6.43};
inline constexpr Type kHead{Face::Serif, QFont::Bold, 14.5, 6.1};
inline constexpr Type kPatch{Face::Serif, QFont::Bold, 17, 7.45};
inline constexpr Type kPlant{Face::Sans, QFont::Bold, 16.3, 6.77};
inline constexpr Type kBucket{Face::Sans, QFont::Bold, 13, 6.77};
inline constexpr Type kCount{Face::Sans, QFont::Black, 31, 11.2};
} // namespace types

} // namespace withy::paper
