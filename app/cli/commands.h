// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

/// The commands of withy-cli. Each returns the exit code: 0 done, 1 the season or its data is at fault,
/// 2 the call is. Trouble goes to standard error, one clear sentence each.
namespace withy::cli {

enum ExitCode { done = 0, dataAtFault = 1, callAtFault = 2 };

int newSeason(const std::string& file, bool demo);
/// `day`: empty, or YYYY-MM-DD for papers of one day or week.
int paper(const std::string& kind, const std::string& season, std::optional<std::int64_t> booking,
          const std::string& day, const std::string& out);
int plan(const std::string& season, std::optional<std::int64_t> booking, const std::string& today, bool json);
int import(const std::string& table, const std::string& season, const std::string& csv);
int exportTo(const std::string& table, const std::string& season, const std::string& csv);
/// The orders as CSV to the file, or to standard output for "-".
int orders(const std::string& season, const std::string& csv);
/// Bookings, rounds and steps as an iCalendar file, or to standard output for "-".
int calendar(const std::string& season, const std::string& ics);
int check(const std::string& file);

} // namespace withy::cli
