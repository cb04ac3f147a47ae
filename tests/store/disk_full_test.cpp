// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/season_file.h"
#include "tests/store/seasons.h"
#include "tests/store/store_test.h"

#include <csignal>

#include <sys/resource.h>

namespace withy::test {

using namespace store;
using Mode = SeasonFile::Mode;

namespace {

model::Edit bigEdit(std::int64_t id) {
    model::Edit edit("client.add");
    for (std::int64_t i = 0; i < 20; ++i) {
        model::Client client;
        client.id = Id<model::Client>(id + i);
        client.name = "Someone";
        client.note = std::string(9000, 'x');
        edit.put(client);
    }
    return edit;
}

/// The system lets no file of ours grow beyond so many bytes for a while.
class SizeLimit {
public:
    explicit SizeLimit(rlim_t bytes) {
        EXPECT_EQ(::getrlimit(RLIMIT_FSIZE, &before_), 0);
        signal_ = std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{bytes, before_.rlim_max};
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &limit), 0);
    }

    ~SizeLimit() {
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &before_), 0);
        std::signal(SIGXFSZ, signal_);
    }

private:
    rlimit before_{};
    void (*signal_)(int) = nullptr;
};

} // namespace

class DiskFullTest : public StoreTest {};

TEST_F(DiskFullTest, AnEditThatFindsNoRoomIsNotKeptAndNothingIsLost) {
    OpenOptions options;
    options.mostPages = 300;
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(1, 2), Existing::refuse, options);
    std::int64_t kept = 0;
    std::string fault = "none";
    for (std::int64_t id = 100; fault == "none" && id < 2000; id += 100) {
        fault = faultOf([&] { file.commit(bigEdit(id)); });
        if (fault == "none") kept = id;
    }
    EXPECT_EQ(fault, "diskFull");
    ASSERT_GT(kept, 0);
    const auto before = textOf(file.season());
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::read).season()), before);

    model::Edit room("client.erase"); // and the way on: make room, and go on
    for (std::int64_t i = 0; i < 20; ++i)
        room.erase(Id<model::Client>(kept + i));
    file.commit(room);
    file.commit(bigEdit(3000));
    file.close();
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::write).season()), textOf(file.season()));
}

TEST_F(DiskFullTest, ANewFileThatFindsNoRoomLeavesNothingBehind) {
    OpenOptions options;
    options.mostPages = 20;
    EXPECT_FAULT(SeasonFile::create(at("spring.withy"), lawfulSeason(1, 2), Existing::refuse, options),
                 diskFull);
    EXPECT_EQ(filesHere(), QStringList());
}

TEST_F(DiskFullTest, TheSystemRefusingToWriteLosesNothing) {
    auto file = SeasonFile::create(at("spring.withy"), lawfulSeason(1, 2));
    const auto before = textOf(file.season());
    const auto size = static_cast<rlim_t>(bytesOf(at("spring.withy")).size());
    {
        const SizeLimit limit(size + 8192);
        const std::string fault = faultOf([&] { file.commit(bigEdit(100)); });
        EXPECT_TRUE(fault == "diskFull" || fault == "cannotWrite") << fault;
        const std::string copying = faultOf([&] { file.saveCopy(at("copy.withy")); });
        EXPECT_EQ(copying, "none") << "as large as the file itself, which fits";
    }
    EXPECT_EQ(textOf(file.season()), before);
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::read).season()), before);
    file.commit(bigEdit(100));
    EXPECT_EQ(textOf(SeasonFile::open(at("spring.withy"), Mode::read).season()), textOf(file.season()));
}

} // namespace withy::test
