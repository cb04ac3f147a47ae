// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/finding.h"
#include "ui/logic/wording.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

#include <set>

namespace withy::ui {

// Every code the planner has is worded, and no two alike: a finding without its sentence says nothing.
TEST(FindingWords, EveryCodeHasItsOwnSentence) {
    std::set<QString> seen;
    for (int code = 0; code <= static_cast<int>(plan::FindingCode::hardCutNotUsed); ++code) {
        plan::Finding f;
        f.code = static_cast<plan::FindingCode>(code);
        f.subjects = {"2027-09-06", "2027-09-07", "2027-09-08", "2027-09-09"};
        f.numbers = {3, 2};
        SCOPED_TRACE(std::string(plan::findingWord(f.code)));
        const QString words = sentence(f, model::UnitSystem::metric);
        EXPECT_FALSE(words.isEmpty());
        EXPECT_FALSE(words.contains(QRegularExpression(QStringLiteral("%[0-9nL]")))) << words.toStdString();
        EXPECT_TRUE(seen.insert(words).second) << words.toStdString();
    }
}

TEST(FindingWords, GardenFindingsLeadToTheirPlace) {
    struct Case {
        model::TableKind table;
        const char* words;
    };

    using model::TableKind;
    const Case cases[] = {{TableKind::patches, "Go to the patch"},
                          {TableKind::walks, "Go to the walk"},
                          {TableKind::weather, "Go to the weather"},
                          {TableKind::monthNormals, "Go to the usual year"},
                          {TableKind::plants, "Go to the plant"}};
    for (const auto& c : cases) {
        plan::Finding f;
        f.code = plan::FindingCode::noWeather;
        f.place = {c.table, 1};
        EXPECT_EQ(leadWords(f).toStdString(), c.words);
    }
}

} // namespace withy::ui
