// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/garden.h"
#include "ui/paint/sketch.h"

#include <QRectF>

#include <array>

/// Flower heads from the side: petals are ellipses in rings, squashed; spikes, umbels and sprays grow up
/// from their foot. Shapes are of our own making; no plant is meant exactly.
namespace withy::ui {

enum class HeadForm {
    doubled,   ///< rings of petals to the middle: dahlia
    layered,   ///< two rings round a raised eye: zinnia
    daisy,     ///< one ring of broad petals
    darkEyed,  ///< a ring of pointed petals round a dark cone
    aster,     ///< many narrow petals
    cup,       ///< broad petals, the front two folded over: rose, peony
    tulip,     ///< an upright cup
    globe,     ///< a ball of florets
    trumpet,   ///< a star with a tube in front
    bell,      ///< nodding bells
    spike,     ///< lipped florets up a stem: snapdragon
    florets,   ///< open florets up a stem: larkspur
    bellSpike, ///< bells up a stem: foxglove
    plume,     ///< froth
    pea,
    umbel,
    plate, ///< a flat plate of small heads: yarrow
    leaf,
    trail,
    grass,
    berry
};

inline constexpr std::array allHeadForms{
    HeadForm::doubled, HeadForm::layered, HeadForm::daisy,     HeadForm::darkEyed, HeadForm::aster,
    HeadForm::cup,     HeadForm::tulip,   HeadForm::globe,     HeadForm::trumpet,  HeadForm::bell,
    HeadForm::spike,   HeadForm::florets, HeadForm::bellSpike, HeadForm::plume,    HeadForm::pea,
    HeadForm::umbel,   HeadForm::plate,   HeadForm::leaf,      HeadForm::trail,    HeadForm::grass,
    HeadForm::berry};

/// How a plant's heads are drawn, from its shape, its uses and its size.
HeadForm headForm(const model::Plant& plant);

struct Head {
    HeadForm form = HeadForm::daisy;
    double diameter = 40; ///< across, in the units of the sketch; the diameter of a spike is its width
    QColor bloom;
    QColor eye;      ///< invalid: the form's own
    double tilt = 0; ///< degrees from upright, clockwise
    std::uint64_t seed = 1;
};

/// The head with its foot (spikes, sprays, umbels) or its middle (all else) at the origin, y down.
/// `diameter` of nought or less draws nothing.
Sketch headSketch(const Head& head, Theme theme = Theme::light);

/// How far the form reaches above its origin, in diameters.
double headReach(HeadForm form);

/// Around the form at exactly its diameter, its rings unturned: what spreads are measured by.
QRectF headOutline(HeadForm form, double diameter, double tilt);

/// Around the head as headSketch() draws it, a little generous and much quicker.
QRectF headBounds(HeadForm form, double diameter, double tilt);

/// Whether its origin is the foot of what it shows, as of a spike, spray or umbel; else it is the middle.
bool growsFromFoot(HeadForm form);

/// Stems and leaves drawn along the stem.
QColor stemColour(HeadForm form, const QColor& bloom);

} // namespace withy::ui
