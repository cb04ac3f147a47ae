// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_paper/samples.h"

namespace withy::samples {
namespace {

using namespace papers;

Block block(auto content) {
    return Block{std::move(content)};
}

Block task(const char* time, const char* title, const char* detail, const char* who, int pieces = 0) {
    return block(TimedTask{time, title, plain(detail), who, pieces});
}

Block tick(const Text& text) {
    return block(TickRow{text, {}, false});
}

std::vector<Block> prepSteps() {
    return {task("06:35", "Cut 53 dahlia, 80 zinnia", "By the cutting list. Straight into water.", "You"),
            block(BusyBand{"08:00 to 09:05", "dentist"}),
            task("09:15", "Strip and stand deep", "No leaf under water. Barn, north end.", "You"),
            task("10:15", "Leave to drink", "Until 14:20, with fennel and ninebark.", "—"),
            block(BusyBand{"11:30 to 13:00", "shop hours"}),
            task("13:05", "Jars out in tens, wiped", "26 on the long bench, chips to the box.", "Wilf"),
            task("13:45", "Water, 275 ml each", "To the mark on the jug. All 24, then stop.", "Wilf"),
            task("14:25", "Ribbon on all 24", "One wrap, knot to the front, tails level.", "Wilf"),
            task("14:25", "Count, sort, share out", "Set the 8 with collars apart.", "You"),
            task("15:10", "Make up 24 jars", "Leaf, airy, face, round, spike. Tick each.", "Both", 24),
            task("16:25", "Door pedestal", "On its own stand, not in the van order.", "You"),
            task("17:15", "Speaker's posy", "Bind, cut level, back in water.", "You"),
            task("17:35", "Jars to the cool floor", "16 °C or less. Door shut, lights out.", "You")};
}

std::vector<Block> prepKit() {
    return {block(SectionHead{"Each jar, ten stems", {}}),
            block(CountRow{"2", "leaf", "ninebark"}),
            block(CountRow{"2", "airy", "fennel"}),
            block(CountRow{"2", "face", "dahlia"}),
            block(CountRow{"3", "round", "zinnia"}),
            block(CountRow{"1", "spike", "snapdragon"}),
            block(Paragraph{plain("Cut low 169, middle 219, tall 279 mm"), true}),
            block(SectionHead{"Lay out", {}}),
            tick(strong("26") + plain(" honey jars, 1 lb")),
            tick(strong("3") + plain(" trays, ") + strong("24") + plain(" collars")),
            tick(strong("2") + plain(" snips, ") + strong("1") + plain(" rubbish sack")),
            tick(plain("jug marked at ") + strong("275 ml")),
            tick(plain("tape, labels, pencil")),
            block(SectionHead{"Water", {}}),
            block(FigureLine{"6.6 litres", plain("jars")}),
            block(FigureLine{"1.8 litres", plain("pedestal")}),
            block(SectionHead{"Ribbon, moss", {}}),
            block(FigureLine{"24 × 460 mm", {}}),
            block(Paragraph{plain("15 mm wide"), false}),
            tick(strong("20") + plain(" from the 9.4 m roll")),
            tick(strong("4") + plain(" from the 2.1 m end")),
            block(Cautions{"Take care",
                           {{"Sap:", "sleeves and gloves."},
                            {"Decoration, not food.", ""},
                            {"Tray of 8", "weighs 4.9 kg."}}})};
}

Block tally(const char* count, const char* unit, const char* mark, const char* title, const char* stage,
            const char* how, const char* bucket, int stems) {
    return block(
        TallyRow{count, unit, mark, title, strong(stage) + plain(how), bucket, tallyBoxes(stems), "cut"});
}

std::string money(int pounds) {
    std::string digits = std::to_string(pounds);
    if (digits.size() > 3) digits.insert(digits.size() - 3, ",");
    return "£" + digits + ".00";
}

TableRow order(int i) {
    static const char* const kNames[] = {
        "Library roof supper",       "Tamsin and Joel, Sedge Cross",
        "School fair, Fenny Bridge", "Sheaf for Mrs Alder",
        "Weekly jar, the inn",       "Anniversary lunch, the old mill at Lower Marrow"};
    static const char* const kStanding[] = {"settled", "booked", "quoted", "enquiry"};
    const int gift = i % 6 == 0 ? 48 + i : 0;
    return {{strong("Sat " + std::to_string(1 + i % 30) + " Jun"), plain(kNames[i % 6]),
             plain(kStanding[i % 4]), plain(std::to_string(1 + (i * 7) % 40)),
             plain(std::to_string(12 + (i * 53) % 700)), plain(money(40 + (i * 97) % 1300)),
             plain(i % 3 ? "£0.00" : money(20 + i)), plain(gift ? money(gift) : "")},
            RowKind::Body};
}

} // namespace

Document prepSheet() {
    Document sheet;
    sheet.kind = "Prep sheet";
    sheet.name = "Library roof supper";
    sheet.key = "Fri 10 Sep";
    sheet.keyNote = "the day before";
    sheet.facts = {strong("24") + plain(" supper jars, ") + strong("1") + plain(" pedestal, ") + strong("1") +
                       plain(" posy"),
                   plain("sunrise ") + strong("06:26"), plain("over 22 °C from ") + strong("12:10"),
                   plain("done by ") + strong("17:35")};
    sheet.body = {block(Columns{Split::TwoThirds, prepSteps(), prepKit()})};
    sheet.last = {
        block(WriteHere{"Write here,\ntype in later",
                        {{"minutes for all 24", 36}, {"thrown away, which", 0}, {"jars chipped", 33}}})};
    sheet.footWhat = "Library roof supper, Sat 11 Sep, guests 18:30";
    sheet.footPrinted = "printed Thu 9 Sep, 19:40";
    return sheet;
}

Document cuttingList() {
    Document sheet;
    sheet.kind = "Cutting list, round 2";
    sheet.name = "Dawn cut, Friday";
    sheet.key = "Fri 10 Sep";
    sheet.keyNote = "06:35 to 07:50, done before 09:00";
    HourStrip hours;
    hours.cells = {{"06", "9 °C", false}, {"07", "11 °C", false}, {"08", "14 °C", false},
                   {"09", "17 °C", true}, {"10", "19 °C", true},  {"11", "21 °C", true},
                   {"12", "22 °C", true}};
    hours.openNote = "sun up 06:26";
    hours.noteAt = 0.43;
    hours.closedNote = "too warm to cut from here";
    sheet.body = {
        block(hours),
        block(KeyRow{{{"L", "Library roof supper, Sat"}, {"C", "Christening at Lower Sedge, Sun"}}}),
        block(PatchHead{"3", "Long border", plain("start at the gate")}),
        tally("53", "stems", "L", "Dahlia, plum", "three-quarters open", ", 35 cm and up, cut to a side bud",
              "bucket 1", 53),
        block(PatchHead{"5", "Tunnel side", plain("40 paces on, past the water butt")}),
        tally("80", "or all", "L", "Zinnia, coral", "stiff when shaken", ", 30 cm and up, bunch in tens",
              "buckets 2, 3", 80),
        tally("24", "stems", "C", "Snapdragon, apricot", "lower third open", ", 45 cm and up, bunch in tens",
              "box A, cells of 6", 24),
        block(PatchHead{"6", "Wall bed", plain("turn back along the wall")}),
        tally("18", "stems", "C", "Cosmos, pale", "just opening", ", 40 cm and up, loose", "bucket 4", 18),
        block(PatchHead{"7", "Low field", plain("through the lower gate")}),
        tally("30", "stems", "C", "Rudbeckia, bronze", "open, centre firm", ", 40 cm and up, bunch in tens",
              "bucket 4", 30)};
    sheet.last = {block(
        Cautions{"",
                 {{"Wet boards by Tunnel side.",
                   "Zinnias first if the sky clears. Count as you go: one stroke a stem, one box a ten."}}})};
    sheet.footWhat = "Round 2, four patches, 205 stems";
    sheet.footPrinted = "printed Thu 9 Sep, 19:40";
    return sheet;
}

Document seasonOrders(int bookings) {
    static const char* const kMonths[] = {"May", "June", "July", "August", "September", "October"};
    Document sheet;
    sheet.kind = "Season's orders";
    sheet.name = "Wren Bank";
    sheet.key = "2027";
    sheet.keyNote = "15 March to 30 October";
    sheet.facts = {strong(std::to_string(bookings)) + plain(" bookings"), strong("4,118") + plain(" stems"),
                   strong("£6,940") + plain(" income"), strong("£312") + plain(" owed")};
    Table table;
    table.title = "Orders";
    table.columns = {{"day", Align::Left, 0, false},      {"booking", Align::Left, 1, false},
                     {"standing", Align::Left, 0, false}, {"pieces", Align::Right, 0, true},
                     {"stems", Align::Right, 0, true},    {"income", Align::Right, 0, true},
                     {"owed", Align::Right, 0, true},     {"gift", Align::Right, 0, true}};
    for (int i = 0; i < bookings; ++i) {
        if (i % 25 == 0) table.rows.push_back({{plain(kMonths[(i / 25) % 6])}, RowKind::Group});
        table.rows.push_back(order(i));
    }
    table.rows.push_back({{plain("Season"),
                           {},
                           {},
                           plain("388"),
                           plain("4,118"),
                           plain("£6,940.00"),
                           plain("£312.00"),
                           plain("£1,310.00")},
                          RowKind::Total});
    sheet.body = {block(table)};
    sheet.footWhat = "Season 2027, Wren Bank";
    sheet.footPrinted = "printed Tue 16 Nov, 19:25";
    sheet.version = "version 3";
    return sheet;
}

namespace {

struct Collector {
    std::vector<std::string>& out;

    void add(const std::string& s) const {
        if (!s.empty()) out.push_back(s);
    }

    void add(const Text& t) const {
        for (const Run& run : t)
            add(run.text);
    }

    void operator()(const SectionHead& b) const { add(b.title), add(b.note); }

    void operator()(const TimedTask& b) const { add(b.time), add(b.title), add(b.detail), add(b.who); }

    void operator()(const BusyBand& b) const { add(b.hours), add(b.label); }

    void operator()(const CountRow& b) const { add(b.count), add(b.word), add(b.rest); }

    void operator()(const TickRow& b) const { add(b.text), add(b.right); }

    void operator()(const FigureLine& b) const { add(b.figure), add(b.rest); }

    void operator()(const Paragraph& b) const { add(b.text); }

    void operator()(const KeyRow& b) const {
        for (const auto& item : b.items)
            add(item.mark), add(item.meaning);
    }

    void operator()(const HourStrip& b) const {
        for (const auto& cell : b.cells)
            add(cell.hour), add(cell.value);
        add(b.openNote), add(b.closedNote);
    }

    void operator()(const PatchHead& b) const { add(b.number), add(b.name), add(b.note); }

    void operator()(const TallyRow& b) const {
        add(b.count), add(b.unit), add(b.mark), add(b.title), add(b.detail), add(b.bucket), add(b.writeLabel);
    }

    void operator()(const Table& b) const {
        add(b.title);
        for (const auto& column : b.columns)
            add(column.title);
        for (const auto& row : b.rows)
            for (const auto& cell : row.cells)
                add(cell);
    }

    void operator()(const Cautions& b) const {
        add(b.title);
        for (const auto& item : b.items)
            add(item.what), add(item.toDo);
    }

    void operator()(const WriteHere& b) const {
        add(b.title);
        for (const auto& box : b.boxes)
            add(box.label);
    }

    void operator()(const Spacer&) const {}

    void operator()(const Drawing& b) const {
        for (const auto& label : b.labels)
            add(label.words);
    }

    void operator()(const SlotRow& b) const {
        add(b.number), add(b.count), add(b.word), add(b.rest), add(b.detail);
    }

    void operator()(const PieceGroupRow& b) const {
        add(b.count), add(b.unit), add(b.collarWord);
        for (const auto& cell : b.cells)
            add(cell.count), add(cell.label);
    }

    void operator()(const TimeHead& b) const { add(b.time), add(b.latest), add(b.note); }

    void operator()(const DropCard& b) const {
        add(b.number), add(b.time), add(b.latest), add(b.name), add(b.note), add(b.handedTo), add(b.at);
        for (const auto& answer : b.answers)
            add(answer.label), add(answer.words);
        for (const auto& item : b.items)
            add(item.count), add(item.words);
    }

    void operator()(const BoardHead& b) const { add(b.title), add(b.note); }

    void operator()(const BoardItem& b) const { add(b.time), add(b.mark), add(b.title), add(b.detail); }

    void operator()(const Lanes& b) const {
        for (const auto& lane : b.lanes)
            all(lane);
    }

    void operator()(const Columns& b) const { all(b.left), all(b.right); }

    void all(const std::vector<Block>& blocks) const {
        for (const Block& each : blocks)
            std::visit(*this, each.content);
    }
};

} // namespace

Document runSheet(int drops) {
    Document d;
    d.kind = "Run sheet";
    d.name = "Library roof supper";
    d.key = "Sat 11 Sep";
    d.keyNote = "driver: You, Wilf";
    d.facts = {plain("first guest ") + strong("18:30"), strong("50 min") + plain(" in hand")};
    d.body.push_back({TimeHead{"plan", "latest", "each latest time still meets the guests"}});
    TimedTask load{"12:05", "Load the van", plain("Last drop in first."), "You", 0, true, "12:40"};
    d.body.push_back({load});
    for (int i = 1; i <= drops; ++i) {
        DropCard card;
        card.number = std::to_string(i);
        card.time = "12:50";
        card.latest = "13:25";
        card.name = "Village Hall, kitchen door";
        card.note = plain("wanted by ") + strong("13:20");
        for (const char* label :
             {"door", "key", "park", "water", "fix", "receives", "clears", "back", "care"})
            card.answers.push_back(
                {label, i % 2 == 0 ? Text{} : strong("The caretaker,") + plain(" next door")});
        card.items = {{"24", strong("Supper jar") + plain(" two on each trestle, 610 mm from the ends")},
                      {"2", strong("Supper jar") + plain(" spare, for what breaks")}};
        card.handedTo = "handed to";
        card.at = "at";
        d.body.push_back({card});
    }
    d.last.push_back({WriteHere{"Write here,\ntype in later", {{"left home", 24}, {"what was missing", 0}}}});
    d.footWhat = "Library roof supper. Read it standing, never driving";
    d.footPrinted = "printed Fri 10 Sep, 18:05";
    return d;
}

Document weekBoard(int itemsADay) {
    using Kind = BoardItem::Kind;
    Document d;
    d.landscape = true;
    d.kind = "Week board";
    d.name = "Wren Bank";
    d.key = "Mon 6 Sep to Sun 12 Sep";
    Lanes lanes;
    for (const char* day :
         {"Mon 6 Sep", "Tue 7 Sep", "Wed 8 Sep", "Thu 9 Sep", "Fri 10 Sep", "Sat 11 Sep", "Sun 12 Sep"}) {
        std::vector<Block> lane{{BoardHead{day, "8 h 15, warm 12:10", false}}};
        for (int i = 0; i < itemsADay; ++i)
            lane.push_back({BoardItem{static_cast<Kind>(i % 4), "06:35-07:50", i % 2 ? "L" : "",
                                      "Cut 133 stems", i % 3 ? "You, Wilf" : ""}});
        lanes.lanes.push_back(std::move(lane));
    }
    d.body.push_back({KeyRow{{{"L", "Library roof supper"}}}});
    d.body.push_back({std::move(lanes)});
    d.footWhat = "Black cannot move, hatched is busy";
    return d;
}

Document bucketLabels(int count) {
    Document d;
    d.kind = "Bucket labels";
    d.name = "Library roof supper";
    for (int i = 1; i <= count; ++i) {
        BucketLabel label;
        label.name = "Library roof supper";
        label.day = "Sat 11";
        label.count = std::to_string(50 + i);
        label.unit = "stems";
        label.plant = "Snapdragon";
        label.variety = "apricot";
        label.band = static_cast<BucketLabel::Band>(i % 3);
        label.bandWords = "Hold to Fri 14:20";
        label.cutLabel = "cut, day\nand hour";
        label.waterLabel = "deep water";
        label.water = "4 h or more";
        label.vessel = std::to_string(i);
        label.caution = i % 2 == 0;
        label.cautionWords = "gloves, harmful if eaten";
        label.round = "round Thu 9 Sep, 17:45";
        label.number = "label " + std::to_string(i) + " of " + std::to_string(count);
        d.labels.push_back(std::move(label));
    }
    return d;
}

std::vector<std::string> wordsOn(const Document& document) {
    std::vector<std::string> out;
    const Collector collect{out};
    for (const auto* words : {&document.kind, &document.name, &document.key, &document.keyNote,
                              &document.footWhat, &document.footPrinted, &document.version})
        collect.add(*words);
    for (const Text& fact : document.facts)
        collect.add(fact);
    collect.all(document.body);
    collect.all(document.last);
    for (const auto& label : document.labels)
        for (const auto* words : {&label.name, &label.day, &label.count, &label.unit, &label.plant,
                                  &label.variety, &label.bandWords, &label.vessel, &label.number})
            collect.add(*words);
    return out;
}

} // namespace withy::samples
