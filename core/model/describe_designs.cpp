// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/describe.h"
#include "core/model/fields.h"

namespace withy::model {

using namespace fields;

std::vector<TableInfo> describeDesigns() {
    return {
        table<Design>("design", "name",
                      {
                          field("name", &Design::name, needed()),
                          field("kind", &Design::kind),
                          field("container", &Design::container),
                          field("loose", &Design::loose),
                          field("lift", &Design::lift, number(0, 2000, "mm")),
                          field("height_low", &Design::heightLow, number(0, 5000, "mm")),
                          field("height_middle", &Design::heightMiddle, number(0, 5000, "mm")),
                          field("height_tall", &Design::heightTall, number(0, 5000, "mm")),
                          field("stems_below_tie", &Design::stemsBelowTie, number(0, 5000, "mm")),
                          field("spread", &Design::spread, number(0, 10000, "mm")),
                          field("water_share", &Design::waterShare, number(0, 100, "%")),
                          field("ribbon_mix", &Design::ribbonMix),
                          field("wraps", &Design::wraps, number(0, 50)),
                          field("overlap", &Design::overlap, number(0, 1000, "mm")),
                          field("finish", &Design::finish),
                          field("loop", &Design::loop, number(0, 5000, "mm")),
                          field("loops", &Design::loops, number(0, 40)),
                          field("tail", &Design::tail, number(0, 10000, "mm")),
                          field("trim", &Design::trim, number(0, 1000, "mm")),
                          field("minutes", &Design::minutes, number(0, 10000, "minutes")),
                          field("minutes_basis", &Design::minutesBasis),
                          field("price", &Design::price, number(0, 1e11)),
                          field("making_notes", &Design::makingNotes, text(10000)),
                          field("picture", &Design::picture, text(500)),
                          field("trial_count", &Design::trialCount, number(0, 1000000, "stems")),
                          field("trial_date", &Design::trialDate),
                          field("trial_note", &Design::trialNote, text(10000)),
                      }),
        table<Slot>("slot", "label",
                    {
                        field("design", &Slot::design),
                        field("position", &Slot::position, number(0, 100000)),
                        field("label", &Slot::label, needed()),
                        field("purpose", &Slot::purpose),
                        field("count", &Slot::count, number(0, 10000, "stems")),
                        field("may_vary_by", &Slot::mayVaryBy, number(0, 10000, "stems")),
                        field("tier", &Slot::tier),
                        field("clump", &Slot::clump),
                    }),
        table<SlotPlant>("slot_plant", "",
                         {
                             field("slot", &SlotPlant::slot),
                             field("position", &SlotPlant::position, number(0, 100000)),
                             field("plant", &SlotPlant::plant),
                             field("share", &SlotPlant::share, number(0, 100, "%")),
                         },
                         {"slot", "plant"}),
        table<DesignSundry>("design_sundry", "",
                            {
                                field("design", &DesignSundry::design),
                                field("sundry", &DesignSundry::sundry),
                                field("amount", &DesignSundry::amount, number(0, 10000)),
                            }),
    };
}

} // namespace withy::model
