// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/document.h"

namespace withy::papers {

Text plain(std::string_view words) {
    return {Run{std::string(words), false}};
}

Text strong(std::string_view words) {
    return {Run{std::string(words), true}};
}

Text operator+(Text left, const Text& right) {
    left.insert(left.end(), right.begin(), right.end());
    return left;
}

std::string words(const Text& text) {
    std::string all;
    for (const Run& run : text)
        all += run.text;
    return all;
}

std::string footMiddle(const Document& document) {
    if (document.version.empty()) return document.footPrinted;
    if (document.footPrinted.empty()) return document.version;
    return document.footPrinted + ", " + document.version;
}

std::vector<int> tallyBoxes(int stems, int bunch, int most) {
    std::vector<int> boxes;
    if (bunch < 1) bunch = 1;
    while (stems > 0) {
        const bool final = static_cast<int>(boxes.size()) + 1 >= most;
        const int size = final || stems < bunch ? stems : bunch;
        boxes.push_back(size);
        stems -= size;
    }
    return boxes;
}

} // namespace withy::papers
