// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/planned_demo.h"
#include "ui/logic/models/share_sums.h"
#include "ui/logic/models/stem_sources.h"

#include <gmock/gmock.h>

#include <set>

/// A share-out adds up with the tally beside it.
namespace withy::ui::tests {

namespace {

using testing::HasSubstr;

class ShareAddsUp : public PlannedDemo {};

} // namespace

/// By hand: of 30 and 20 tallied, 35 and 12 are used. 30 + 12 = 42 come from the tally, 5 from elsewhere, and
/// 20 - 12 = 8 are left: 42 + 8 = 50, what came in.
TEST_F(ShareAddsUp, AShareOutAddsUpWithTheTally) {
    const StemsByPlant tallied{{Id<model::Plant>(1), 30}, {Id<model::Plant>(2), 20}};
    shareout::ShareOut share;
    share.plants = {{Id<model::Plant>(1), Stems(36), Stems(35), Stems(1)},
                    {Id<model::Plant>(2), Stems(40), Stems(12), Stems(28)}};
    const auto sums = shareSums(tallied, share);
    EXPECT_EQ(sums.tallied, 42);
    EXPECT_EQ(sums.besides, 5);
    EXPECT_EQ(sums.left, 8);
    EXPECT_EQ(sumsWords(sums), QStringLiteral("47 stems, 5 of them not from the tally; 8 of the tally left"));
    const QString left = leftOverWords(season(), tallied, share);
    EXPECT_TRUE(left.startsWith(QStringLiteral("8 stems are left: 8 "))) << left.toStdString();
}

TEST_F(ShareAddsUp, PlantsAreCountedAsAGrowerCountsThem) {
    const std::pair<const char*, const char*> rows[] = {{"zinnia", "zinnias"},
                                                        {"dahlia", "dahlias"},
                                                        {"peony", "peonies"},
                                                        {"sweet pea", "sweet peas"},
                                                        {"cornflower", "cornflowers"},
                                                        {"fennel", "fennel"},
                                                        {"cosmos", "cosmos"},
                                                        {"ammi", "ammi"},
                                                        {"phlox", "phlox"}};
    for (const auto& [one, many] : rows)
        EXPECT_EQ(pluralOf(QLatin1String(one)), QLatin1String(many));
}

} // namespace withy::ui::tests
