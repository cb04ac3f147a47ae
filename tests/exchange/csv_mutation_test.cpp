// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/csv_check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <vector>

/// The promises the fuzzer checks, kept over its seeds and over many seeded mutations of them, so that
/// every run of the tests has them, with any compiler.
namespace withy::exchange {
namespace {

std::vector<std::string> seeds() {
    const auto folder = std::filesystem::path(WITHY_TEST_DATA).parent_path() / "fuzz" / "corpus" / "csv";
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end()); // a folder's own order differs between machines
    std::vector<std::string> texts;
    for (const auto& path : paths) {
        std::ifstream in(path, std::ios::binary);
        texts.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    }
    return texts;
}

class Mutator {
public:
    Mutator(std::vector<std::string> from, std::uint64_t seed) : seeds_(std::move(from)), random_(seed) {}

    std::string next() {
        std::string text = seeds_[below(seeds_.size())];
        for (auto n = 1 + below(4); n > 0; --n)
            mutate(text);
        return text;
    }

private:
    std::size_t below(std::size_t n) { return n == 0 ? 0 : random_() % n; }

    void mutate(std::string& text) {
        static const std::vector<std::string> bits{"\"",
                                                   "\"\"",
                                                   ",",
                                                   ";",
                                                   "\t",
                                                   "\r\n",
                                                   "\n",
                                                   "\r",
                                                   std::string(1, '\0'),
                                                   "\xEF\xBB\xBF",
                                                   "\xFF",
                                                   "\xE2\x9C",
                                                   "id",
                                                   "name",
                                                   "plant",
                                                   "-",
                                                   "0",
                                                   "1",
                                                   "9999999999999999999",
                                                   "1,5",
                                                   "2026-02-29",
                                                   "\u273F"};
        const std::size_t at = below(text.size() + 1);
        switch (below(5)) {
        case 0:
            text.insert(at, bits[below(bits.size())]);
            break;
        case 1:
            text.erase(at, 1 + below(8));
            break;
        case 2:
            if (at < text.size()) text[at] = static_cast<char>(random_() % 256);
            break;
        case 3:
            text.insert(at, text.substr(below(text.size()), below(40)));
            break;
        default: {
            const std::string& other = seeds_[below(seeds_.size())];
            text = text.substr(0, at) + other.substr(below(other.size() + 1));
        }
        }
    }

    std::vector<std::string> seeds_;
    std::mt19937_64 random_;
};

TEST(CsvPromises, HoldForTheSeeds) {
    const auto texts = seeds();
    ASSERT_GE(texts.size(), 10u);
    for (const auto& text : texts)
        EXPECT_EQ(fuzz::brokenCsvPromise(text), "") << testing::PrintToString(text);
}

TEST(CsvPromises, HoldForTwentyThousandMutations) {
    Mutator mutator(seeds(), 20260704);
    for (int i = 0; i < 20'000; ++i) {
        const std::string text = mutator.next();
        ASSERT_EQ(fuzz::brokenCsvPromise(text), "")
            << "mutation " << i << ": " << testing::PrintToString(text);
    }
}

} // namespace
} // namespace withy::exchange
