// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/season_file.h"
#include "tests/store/seasons.h"
#include "tests/store/store_test.h"

#include <QElapsedTimer>

#include <algorithm>

namespace withy::test {

using namespace store;

class SpeedTest : public StoreTest {};

// The demo season has about 2,000 records. Best of many runs, so that a busy machine does not count.
TEST_F(SpeedTest, TwoThousandRecordsOpenWithinTwentyMilliseconds) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(9, 50, 120));
    std::size_t records = 0;
    for (const auto& table : model::allTables())
        records += model::sizeOf(file.season(), table.kind);
    file.close();
    ASSERT_GE(records, 2000u);

    double best = 1e9;
    for (int run = 0; run < 20; ++run) {
        QElapsedTimer timer;
        timer.start();
        SeasonFile::open(at("spring.withy"), SeasonFile::Mode::write);
        best = std::min(best, static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    RecordProperty("open_ms", std::to_string(best));
    std::printf("open: %.2f ms for %zu records\n", best, records);

    file = SeasonFile::open(at("spring.withy"), SeasonFile::Mode::write);
    double commit = 1e9;
    for (int run = 0; run < 20; ++run) {
        auto settings = file.season().theSettings();
        settings.terms = "run " + std::to_string(run);
        QElapsedTimer timer;
        timer.start();
        file.commit(model::Edit("terms").put(settings));
        commit = std::min(commit, static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    RecordProperty("commit_ms", std::to_string(commit));
    std::printf("commit: %.2f ms\n", commit);
#if defined(__OPTIMIZE__) && !defined(__SANITIZE_ADDRESS__)
    EXPECT_LT(best, 20);
#endif
}

} // namespace withy::test
