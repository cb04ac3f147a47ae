// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "ui/logic/starting_seasons.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace withy {

namespace {

struct Said {
    int code;
    std::string out;
    std::string err;
};

class CommandLine : public testing::Test {
protected:
    Said call(const QStringList& words) {
        QProcess cli;
        cli.setWorkingDirectory(folder_.path());
        cli.start(QStringLiteral(WITHY_CLI), words);
        EXPECT_TRUE(cli.waitForFinished(60000));
        return {cli.exitCode(), cli.readAllStandardOutput().toStdString(),
                cli.readAllStandardError().toStdString()};
    }

    Said call(const char* words) { return call(QString::fromUtf8(words).split(QLatin1Char(' '))); }

    void write(const char* name, const char* bytes) {
        QFile file(folder_.filePath(QString::fromUtf8(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

    QTemporaryDir folder_;
};

} // namespace

TEST_F(CommandLine, PrintsTheSuppersPrepSheet) {
    ASSERT_EQ(call("new d.withy --demo").code, 0);
    ASSERT_EQ(call("paper prep --season d.withy --booking 1 --out p.pdf").code, 0);
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), folder_.filePath(QStringLiteral("p.pdf")), QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const auto words = reader.readAllStandardOutput().simplified().toStdString();
    EXPECT_THAT(words, testing::HasSubstr("Library roof supper"));
    EXPECT_THAT(words, testing::HasSubstr("355 to cut in whole bunches"));
    EXPECT_THAT(words, testing::HasSubstr("70 Dahlia, plum")); // 48 + 8 + 2 = 58, spare 6, in tens: by hand
    EXPECT_THAT(words, testing::HasSubstr("page 1 of"));
}

TEST_F(CommandLine, PlansASeasonMadeOnlyOfCsv) {
    ASSERT_EQ(call("new s.withy").code, 0);
    const auto edit = call("export settings --season s.withy settings.csv");
    ASSERT_EQ(edit.code, 0);
    const std::string settings = [&] {
        QFile f(folder_.filePath(QStringLiteral("settings.csv")));
        EXPECT_TRUE(f.open(QIODevice::ReadOnly));
        return f.readAll().toStdString();
    }();
    const auto year = settings.substr(settings.find("-03-01") - 4, 4);
    write("plant.csv",
          "name,vase_life_min_days,bunch,stem_length_max,conditioning_hours_min\nZinnia,7,10,500,4\n");
    write("container.csv", "name,inner_rim,inner_depth,outer_neck,owned\nJar,60,115,66,30\n");
    write("ribbon.csv", "name,width\nMoss,15\n");
    write("ribbon_length.csv", "ribbon,length\nMoss,9400\n");
    write("ribbon_mix.csv", "name\nMoss\n");
    write("ribbon_mix_part.csv", "mix,ribbon\nMoss,Moss\n");
    write("design.csv", "name,container,ribbon_mix,finish,tail\nSupper jar,Jar,Moss,knot,100\n");
    write("slot.csv", "design,label,count\nSupper jar,Round,3\n");
    write("slot_plant.csv", "slot,plant\nRound,Zinnia\n");
    write(
        "booking.csv",
        ("title,event_start,event_end\nSupper," + year + "-09-11 18:30," + year + "-09-11 22:30\n").c_str());
    write("line.csv", "booking,design,pieces\nSupper,Supper jar,24\n");
    for (const char* table : {"plant", "container", "ribbon", "ribbon_length", "ribbon_mix",
                              "ribbon_mix_part", "design", "slot", "slot_plant", "booking", "line"}) {
        const auto said =
            call(QStringList{QStringLiteral("import"), QString::fromUtf8(table), QStringLiteral("--season"),
                             QStringLiteral("s.withy"), QString::fromUtf8(table) + QStringLiteral(".csv")});
        ASSERT_EQ(said.code, 0) << table << ": " << said.err;
    }
    const auto said = call("plan --season s.withy --json");
    ASSERT_EQ(said.code, 0) << said.err;
    for (const char* key : {"\"need\"", "\"spare\"", "\"cut_window\"", "\"cut_length\"", "\"ribbon\"",
                            "\"containers\"", "\"working\""})
        EXPECT_THAT(said.out, testing::HasSubstr(key));
    EXPECT_THAT(said.out, testing::HasSubstr("\"stems_to_cut\": 80")); // 72 + 8, in tens
}

TEST_F(CommandLine, PrintsThePapersOfTheRoadAndTheWeekAndACalendar) {
    ASSERT_EQ(call("new d.withy --demo").code, 0);
    for (const char* words : {"paper run --season d.withy --booking 1 --out p.txt",
                              "paper hand-over --season d.withy --booking 1 --out p.txt",
                              "paper labels --season d.withy --booking 1 --out p.txt",
                              "paper cutting --season d.withy --booking 1 --day 2027-09-09 --out p.txt",
                              "paper week --season d.withy --day 2027-09-10 --out p.txt",
                              "paper helpers --season d.withy --day 2027-09-10 --out p.txt"}) {
        SCOPED_TRACE(words);
        const auto said = call(words);
        ASSERT_EQ(said.code, 0) << said.err;
        QFile f(folder_.filePath(QStringLiteral("p.txt")));
        ASSERT_TRUE(f.open(QIODevice::ReadOnly));
        EXPECT_GT(f.readAll().size(), 300);
    }
    const auto calendar = call("calendar --season d.withy --out -");
    EXPECT_EQ(calendar.code, 0);
    EXPECT_THAT(calendar.out, testing::StartsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_THAT(calendar.out, testing::HasSubstr("SUMMARY:Library roof supper\r\n"));
}

TEST_F(CommandLine, WritesTheOrdersAsCsv) {
    ASSERT_EQ(call("new d.withy --demo").code, 0);
    ASSERT_EQ(call("orders --season d.withy --out orders.csv").code, 0);
    QFile f(folder_.filePath(QStringLiteral("orders.csv")));
    ASSERT_TRUE(f.open(QIODevice::ReadOnly));
    const auto text = f.readAll().toStdString();
    EXPECT_EQ(call("orders --season d.withy --out -").out, text);
    const auto rows = exchange::parseCsv(text).value();
    const auto season = ui::demoSeason();
    const auto digits = minorDigits(season.theSettings().currency).value();
    const auto column = [&](const char* name) {
        for (std::size_t i = 0; i < rows.front().fields.size(); ++i)
            if (rows.front().fields[i].text == name) return i;
        ADD_FAILURE() << name;
        return std::size_t{0};
    };
    ASSERT_EQ(rows.size(), season.bookings.size() + 1);
    std::string before;
    bool lost = false;
    for (std::size_t row = 1; row < rows.size(); ++row) {
        const auto cell = [&](const char* name) { return rows[row].fields[column(name)].text; };
        const Id<model::Booking> id(std::stoll(cell("booking")));
        SCOPED_TRACE(cell("title"));
        const auto& b = *season.bookings.find(id);
        EXPECT_EQ(cell("title"), b.title);
        EXPECT_EQ(cell("date"), b.eventStart.day.iso());
        // By hand, not by the plan: pieces, and price by pieces, summed over the booking's lines.
        std::int64_t pieces = 0;
        Money asked;
        for (const auto& line : season.lines) {
            if (line.booking != id) continue;
            pieces += line.pieces.value;
            const auto price = line.unitPrice ? line.unitPrice : season.designs.find(line.design)->price;
            if (price) asked += Money{price->minor * line.pieces.value};
        }
        EXPECT_EQ(cell("pieces"), std::to_string(pieces));
        if (b.giftShare == 0) {
            EXPECT_EQ(cell("asked"), plainAmount(asked, digits));
        }
        if (b.standing == model::Standing::lost) {
            lost = true;
        } else {
            EXPECT_FALSE(lost) << "lost ones come last";
            EXPECT_LE(before, cell("date"));
            before = cell("date");
        }
    }
}

TEST_F(CommandLine, SaysWhatIsWrongAndHowToMendIt) {
    struct Case {
        const char* words;
        int code;
        const char* sentence;
    };

    ASSERT_EQ(call("new d.withy --demo").code, 0);
    write("empty.withy", "");
    write("other.withy", "not a season at all, just some words that somebody wrote");
    write("bad.csv", "name;q10\nZinnia;2\n");
    write("wrong.csv", "name,q10\nZinnia,lots\n");
    write("unknown.csv", "name,colour\nZinnia,red\n");
    const Case cases[] = {
        {"check nowhere.withy", 1, "no file"},
        {"check .", 1, "folder"},
        {"check empty.withy", 1, "empty"},
        {"check other.withy", 1, "not a Withy season"},
        {"new d.withy", 1, "there already"},
        {"paper prep --season d.withy --booking 999 --out p.pdf", 1, "no booking 999"},
        {"paper prep --season d.withy --out p.pdf", 2, "Add --booking"},
        {"paper poem --season d.withy --out p.pdf", 2, "no paper"},
        {"paper orders --season d.withy --out p.png", 2, "neither"},
        {"plan --season d.withy --today 2027-02-29", 2, "not a day"},
        {"import plant --season d.withy bad.csv", 1, "comma"},
        {"import plant --season d.withy wrong.csv", 1, "Line 2, column 2"},
        {"import plant --season d.withy unknown.csv", 1, "no column"},
        {"import sheep --season d.withy wrong.csv", 2, "no table"},
        {"import plant --season d.withy none.csv", 2, "cannot be read"},
        {"orders --season none.withy --out o.csv", 1, "no file"},
        {"orders --season d.withy --out nowhere/o.csv", 1, "cannot be written"},
        {"orders --season d.withy", 2, "--out"},
        {"paper week --season d.withy --day 2027-13-01 --out p.pdf", 2, "not a day"},
        {"paper run --season d.withy --out p.pdf", 2, "Add --booking"},
        {"calendar --season none.withy --out o.ics", 1, "no file"},
        {"calendar --season d.withy --out nowhere/o.ics", 1, "cannot be written"},
        {"calendar --season d.withy", 2, "--out"},
        {"nonsense", 2, ""},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.words);
        const auto said = call(c.words);
        EXPECT_EQ(said.code, c.code);
        EXPECT_THAT(said.err, testing::HasSubstr(c.sentence));
    }
    EXPECT_EQ(call("check d.withy").code, 0);
}

} // namespace withy
