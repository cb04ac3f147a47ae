// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

/// The type scale. Everything follows the size of the text the system (or the grower) asks for.
namespace withy::ui {

enum class TypeRole {
    title,   ///< a page's name: Vollkorn bold
    answer,  ///< the answer sentence: Lato
    name,    ///< a booking, design or patch in a list: Vollkorn semi-bold
    head,    ///< head of a group of rows: Vollkorn bold; no figures in it
    text,    ///< Lato
    strong,  ///< Lato bold: figures, controls
    caption, ///< Lato; the smallest there is
    tally,   ///< counts being tallied
};

/// Points of TypeRole::text; 10.5 unless the system or the grower says otherwise.
double textPoints();
/// At least 6. Called once at the start and when the grower changes the size of the text.
void setTextPoints(double points);

QFont typeFont(TypeRole role);

} // namespace withy::ui
