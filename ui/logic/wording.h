// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/working.h"
#include "core/model/edit.h"
#include "core/plan/finding.h"
#include "core/store/store_error.h"
#include "ui/logic/measures.h"

#include <QString>
#include <QStringList>

#include <vector>

/// The one place where facts become sentences: what is wrong, why, and what would mend it.
namespace withy::ui {

/// "Booking 3, event end: 10:00 is before the start, 18:30. Give a later end."
QString sentence(const Problem& problem);
/// One sentence a problem, the first few, and how many more there are.
QString sentences(const Problems& problems);
QString sentence(const store::StoreError& error);
/// Of whatever was thrown, for the outermost catch (...) of a thread; to be called inside it.
QString caughtWords();
QString sentence(const plan::Finding& finding, Units units);
/// Where its mend is: "Go to the design".
QString leadWords(const plan::Finding& finding);
/// "stem length max" for "stem_length_max".
QString fieldWords(const std::string& field);
/// The lines of a working, one each: "24 pieces, Supper jar", "× 5 stems a piece", "= 120 stems, need"; sums
/// of money in the season's currency, what is measured in its units. Sources are quoted as they stand.
QStringList lines(const Working& working, const model::Settings& settings);
/// Of a working without money.
QStringList lines(const Working& working, model::UnitSystem units);
/// The lines of a working with what makes one result on one line, where it fits: "24 pieces × 3 stems a piece
/// = 72 stems, need". `lines` are those of `working`, one each.
QStringList grouped(const QStringList& lines, const Working& working);

/// The way from a line of a working to what it rests on.
struct WorkingLead {
    model::Ref place;
    QString words;  ///< "Settings"
    QString spoken; ///< "Settings, for 10 %, spare share"
    friend bool operator==(const WorkingLead&, const WorkingLead&) = default;
};

/// What makes one result, and where its figures can be changed: a place once, however many of them lead
/// there.
struct WorkingGroup {
    QString words;
    std::vector<WorkingLead> leads;
    friend bool operator==(const WorkingGroup&, const WorkingGroup&) = default;
};

/// As grouped(), with the ways.
std::vector<WorkingGroup> groups(const QStringList& lines, const Working& working);
QString basisWords(Basis basis);

} // namespace withy::ui
