// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/fonts.h"
#include "ui/logic/paper_shop.h"

#include <CLI/CLI.hpp>

#include <QGuiApplication>

namespace {

/// The options, and what the chosen command returned.
struct Call {
    std::string file, kind, season, out, today, table, csv, day;
    std::int64_t booking = 0;
    bool demo = false;
    bool json = false;
    int code = 0;

    [[nodiscard]] std::optional<std::int64_t> chosen() const {
        return booking > 0 ? std::optional(booking) : std::nullopt;
    }
};

void addCommands(CLI::App& app, Call& c) {
    using namespace withy;
    auto* create = app.add_subcommand("new", "Make a season file");
    create->add_option("file", c.file, "the new file, ending in .withy")->required();
    create->add_flag("--demo", c.demo, "with the invented demo season in it");
    create->callback([&c] { c.code = cli::newSeason(c.file, c.demo); });

    auto* paper = app.add_subcommand("paper", "Print a paper to a file");
    std::string kinds;
    for (const auto word : ui::paperWords())
        kinds += (kinds.empty() ? "" : ", ") + std::string(word);
    paper->add_option("kind", c.kind, kinds)->required();
    paper->add_option("--season", c.season)->required();
    paper->add_option("--booking", c.booking, "the booking's number")->check(CLI::PositiveNumber);
    paper->add_option("--day", c.day, "YYYY-MM-DD: the day to cut on, or a day of the week to print");
    paper->add_option("--out", c.out, "ends in .pdf or .txt")->required();
    paper->callback([&c] { c.code = cli::paper(c.kind, c.season, c.chosen(), c.day, c.out); });

    auto* plan = app.add_subcommand("plan", "Say what the season needs");
    plan->add_option("--season", c.season)->required();
    plan->add_option("--booking", c.booking)->check(CLI::PositiveNumber);
    plan->add_option("--today", c.today, "YYYY-MM-DD");
    plan->add_flag("--json", c.json);
    plan->callback([&c] { c.code = cli::plan(c.season, c.chosen(), c.today, c.json); });

    for (const char* verb : {"import", "export"}) {
        const bool in = std::string(verb) == "import";
        auto* sub =
            app.add_subcommand(verb, in ? "Take a table's rows from CSV" : "Write a table's rows as CSV");
        sub->add_option("table", c.table)->required();
        sub->add_option("--season", c.season)->required();
        sub->add_option("csv", c.csv)->required();
        sub->callback([&c, in] {
            c.code = in ? cli::import(c.table, c.season, c.csv) : cli::exportTo(c.table, c.season, c.csv);
        });
    }
    auto* orders = app.add_subcommand("orders", "Write the season's orders as CSV");
    orders->add_option("--season", c.season)->required();
    orders->add_option("--out", c.out, "a file, or - for standard output")->required();
    orders->callback([&c] { c.code = cli::orders(c.season, c.out); });

    auto* calendar = app.add_subcommand("calendar", "Write bookings, rounds and steps for a calendar");
    calendar->add_option("--season", c.season)->required();
    calendar->add_option("--out", c.out, "a file ending in .ics, or - for standard output")->required();
    calendar->callback([&c] { c.code = cli::calendar(c.season, c.out); });

    auto* check = app.add_subcommand("check", "Look over a season file without changing it");
    check->add_option("file", c.file)->required();
    check->callback([&c] { c.code = cli::check(c.file); });
}

} // namespace

int main(int argc, char** argv) {
    // Fonts and PDF need a QGuiApplication; the offscreen platform needs no display.
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication qt(argc, argv);
    withy::ui::loadFonts();
    withy::ui::installEnglishPlurals();
    CLI::App app("Withy without the window");
    app.require_subcommand(1);
    Call call;
    addCommands(app, call);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& e) {
        const int code = app.exit(e);
        return code == 0 ? 0 : withy::cli::callAtFault;
    }
    return call.code;
}
