// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/describe.h"
#include "core/model/fields.h"

namespace withy::model {

using namespace fields;

std::vector<TableInfo> describeRunup() {
    return {
        table<Helper>("helper", "name",
                      {
                          field("name", &Helper::name, needed()),
                          field("speed", &Helper::speed),
                          field("rate", &Helper::rate, number(0, 1e11)),
                          field("can_cut", &Helper::canCut),
                          field("can_condition", &Helper::canCondition),
                          field("can_make", &Helper::canMake),
                          field("can_drive", &Helper::canDrive),
                          field("note", &Helper::note, text(10000)),
                      }),
        table<HelperHours>("helper_hours", "",
                           {
                               field("helper", &HelperHours::helper),
                               field("from", &HelperHours::from),
                               field("to", &HelperHours::to),
                           }),
        table<BusyHours>("busy_hours", "label",
                         {
                             field("helper", &BusyHours::helper),
                             field("from", &BusyHours::from),
                             field("to", &BusyHours::to),
                             field("label", &BusyHours::label, needed()),
                             field("repeats", &BusyHours::repeats),
                             field("repeats_until", &BusyHours::repeatsUntil),
                         }),
        table<Round>("round", "",
                     {
                         field("from", &Round::from),
                         field("to", &Round::to),
                         field("note", &Round::note, text(2000)),
                     }),
        table<RoundBooking>("round_booking", "",
                            {
                                field("round", &RoundBooking::round),
                                field("booking", &RoundBooking::booking),
                            }),
        table<Tally>("tally", "",
                     {
                         field("round", &Tally::round),
                         field("patch", &Tally::patch),
                         field("cut", &Tally::cut, number(0, 1000000, "stems")),
                         field("thrown_away", &Tally::thrownAway, number(0, 1000000, "stems")),
                     },
                     {"round", "patch"}),
        table<Made>("made", "",
                    {
                        field("line", &Made::line),
                        field("pieces", &Made::pieces, number(0, 100000, "pieces")),
                        field("minutes", &Made::minutes, number(0, 100000, "minutes")),
                        field("by_whom", &Made::byWhom),
                    }),
        table<Return>("return", "",
                      {
                          field("booking", &Return::booking),
                          field("container", &Return::container),
                          field("out", &Return::out, number(0, 100000)),
                          field("back", &Return::back, number(0, 100000)),
                          field("broken", &Return::broken, number(0, 100000)),
                      }),
        table<JobNote>("job_note", "",
                       {
                           field("booking", &JobNote::booking),
                           field("hours_cutting", &JobNote::hoursCutting, number(0, 1000, "hours")),
                           field("hours_conditioning", &JobNote::hoursConditioning, number(0, 1000, "hours")),
                           field("hours_making", &JobNote::hoursMaking, number(0, 1000, "hours")),
                           field("hours_on_the_road", &JobNote::hoursOnTheRoad, number(0, 1000, "hours")),
                           field("drooped", &JobNote::drooped, text(10000)),
                           field("next_time", &JobNote::nextTime, text(10000)),
                       }),
        table<JobNotePlant>("job_note_plant", "",
                            {
                                field("note", &JobNotePlant::note),
                                field("plant", &JobNotePlant::plant),
                                field("used", &JobNotePlant::used, number(0, 1000000, "stems")),
                                field("left", &JobNotePlant::left, number(0, 1000000, "stems")),
                            }),
        table<StepMark>("step_mark", "",
                        {
                            field("step", &StepMark::step),
                            field("booking", &StepMark::booking),
                            field("line", &StepMark::line),
                            field("drop", &StepMark::drop),
                            field("day", &StepMark::day),
                            field("number", &StepMark::number, number(0, 1000)),
                            field("pinned", &StepMark::pinned),
                            field("by_helper", &StepMark::byHelper),
                            field("helper", &StepMark::helper),
                            field("done", &StepMark::done),
                            field("minutes", &StepMark::minutes, number(0, 100000, "minutes")),
                            field("note", &StepMark::note, text(2000)),
                        }),
    };
}

} // namespace withy::model
