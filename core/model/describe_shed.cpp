// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/describe.h"
#include "core/model/fields.h"

namespace withy::model {

using namespace fields;

std::vector<TableInfo> describeShed() {
    return {
        table<Container>("container", "name",
                         {
                             field("name", &Container::name, needed()),
                             field("profile", &Container::profile),
                             field("inner_rim", &Container::innerRim, number(1, 5000, "mm")),
                             field("inner_body", &Container::innerBody, number(1, 5000, "mm")),
                             field("inner_base", &Container::innerBase, number(1, 5000, "mm")),
                             field("inner_length", &Container::innerLength, number(1, 10000, "mm")),
                             field("inner_depth", &Container::innerDepth, number(1, 5000, "mm")),
                             field("outer_height", &Container::outerHeight, number(1, 5000, "mm")),
                             field("outer_diameter", &Container::outerDiameter, number(1, 5000, "mm")),
                             field("outer_neck", &Container::outerNeck, number(1, 5000, "mm")),
                             field("neck_height", &Container::neckHeight, number(0, 5000, "mm")),
                             field("measured_volume", &Container::measuredVolume, number(1, 1000000, "ml")),
                             field("empty_weight", &Container::emptyWeight, number(0, 1000000, "g")),
                             field("owned", &Container::owned, number(0, 100000)),
                             field("cost", &Container::cost, number(0, 1e11)),
                             field("replacement_price", &Container::replacementPrice, number(0, 1e11)),
                             field("returnable", &Container::returnable),
                             field("notes", &Container::notes, text(10000)),
                         }),
        table<Ribbon>("ribbon", "name",
                      {
                          field("name", &Ribbon::name, needed()),
                          field("colour", &Ribbon::colour),
                          field("width", &Ribbon::width, number(1, 500, "mm")),
                          field("cost_per_metre", &Ribbon::costPerMetre, number(0, 1e11)),
                      }),
        table<RibbonLength>("ribbon_length", "",
                            {
                                field("ribbon", &RibbonLength::ribbon),
                                field("kind", &RibbonLength::kind),
                                field("length", &RibbonLength::length, number(1, 1000000, "mm")),
                                field("dye_lot", &RibbonLength::dyeLot, text(100)),
                            }),
        table<RibbonMix>("ribbon_mix", "name",
                         {
                             field("name", &RibbonMix::name, needed()),
                             field("not_two_alike_side_by_side", &RibbonMix::notTwoAlikeSideBySide),
                         }),
        table<RibbonMixPart>("ribbon_mix_part", "",
                             {
                                 field("mix", &RibbonMixPart::mix),
                                 field("ribbon", &RibbonMixPart::ribbon),
                                 field("share", &RibbonMixPart::share, number(0.01, 100, "%")),
                             },
                             {"mix", "ribbon"}),
        table<Sundry>("sundry", "name",
                      {
                          field("name", &Sundry::name, needed()),
                          field("unit", &Sundry::unit, needed(40)),
                          field("on_hand", &Sundry::onHand, number(0, 1000000)),
                          field("cost", &Sundry::cost, number(0, 1e11)),
                          field("rule", &Sundry::rule),
                          field("amount", &Sundry::amount, number(0, 10000)),
                      }),
        table<Holder>("holder", "name",
                      {
                          field("name", &Holder::name, needed()),
                          field("kind", &Holder::kind),
                          field("inner_length", &Holder::innerLength, number(1, 10000, "mm")),
                          field("inner_width", &Holder::innerWidth, number(1, 10000, "mm")),
                          field("inner_height", &Holder::innerHeight, number(1, 10000, "mm")),
                          field("tare", &Holder::tare, number(0, 1000000, "g")),
                          field("owned", &Holder::owned, number(0, 100000)),
                          field("cells", &Holder::cells, number(1, 10000)),
                          field("stems_per_cell", &Holder::stemsPerCell, number(1, 10000, "stems")),
                          field("short_stems", &Holder::shortStems, number(0, 1000000, "stems")),
                          field("middle_stems", &Holder::middleStems, number(0, 1000000, "stems")),
                          field("long_stems", &Holder::longStems, number(0, 1000000, "stems")),
                          field("water", &Holder::water, number(0, 1000000, "ml")),
                      }),
        table<Vehicle>("vehicle", "name",
                       {
                           field("name", &Vehicle::name, needed()),
                           field("floor_length", &Vehicle::floorLength, number(1, 20000, "mm")),
                           field("floor_width", &Vehicle::floorWidth, number(1, 20000, "mm")),
                           field("plate_load_kg", &Vehicle::plateLoadKg, number(0, 50000, "kg")),
                       }),
    };
}

} // namespace withy::model
