// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <vector>

namespace withy::model {

/// The largest id a record may bear: what a spreadsheet or JSON still holds to the last digit.
inline constexpr std::int64_t mostId = (std::int64_t{1} << 53) - 1;

/// Records of one kind in order of id. Copies share their rows until one of them changes, so that a
/// Season is a cheap value and "did this table change?" is one pointer comparison (see sameRowsAs).
template <class R>
class Table {
public:
    using Row = std::shared_ptr<const R>;

    class Iterator {
    public:
        using value_type = R;
        using difference_type = std::ptrdiff_t;
        using pointer = const R*;
        using reference = const R&;
        using iterator_category = std::forward_iterator_tag;
        Iterator() = default;

        explicit Iterator(typename std::vector<Row>::const_iterator at) : at_(at) {}

        reference operator*() const { return **at_; }

        pointer operator->() const { return at_->get(); }

        Iterator& operator++() {
            ++at_;
            return *this;
        }

        Iterator operator++(int) {
            auto old = *this;
            ++at_;
            return old;
        }

        friend bool operator==(const Iterator&, const Iterator&) = default;

    private:
        typename std::vector<Row>::const_iterator at_;
    };

    [[nodiscard]] Iterator begin() const { return Iterator(rows_->begin()); }

    [[nodiscard]] Iterator end() const { return Iterator(rows_->end()); }

    [[nodiscard]] std::size_t size() const { return rows_->size(); }

    [[nodiscard]] bool empty() const { return rows_->empty(); }

    /// Null when there is no such record.
    [[nodiscard]] const R* find(Id<R> id) const {
        const auto at = lowerBound(*rows_, id);
        return at != rows_->end() && (*at)->id == id ? at->get() : nullptr;
    }

    /// The record itself, shared: its address stays the same until the record is put anew.
    [[nodiscard]] Row row(Id<R> id) const {
        const auto at = lowerBound(*rows_, id);
        return at != rows_->end() && (*at)->id == id ? *at : nullptr;
    }

    [[nodiscard]] bool sameRowsAs(const Table& other) const { return rows_ == other.rows_; }

    /// The first of at least a million ids that are free: after the largest there is, or, where that
    /// one is near the end of all ids, within the widest gap.
    [[nodiscard]] Id<R> nextId() const {
        constexpr std::int64_t room = 1'000'000;
        const std::int64_t last = empty() ? 0 : rows_->back()->id.value;
        return Id<R>(last <= mostId - room ? last + 1 : startOfWidestGap());
    }

    void put(R record) {
        auto& rows = own();
        const auto at = lowerBound(rows, record.id);
        auto row = std::make_shared<const R>(std::move(record));
        if (at != rows.end() && (*at)->id == row->id)
            *at = std::move(row);
        else
            rows.insert(at, std::move(row));
    }

    void erase(Id<R> id) {
        auto& rows = own();
        const auto at = lowerBound(rows, id);
        if (at != rows.end() && (*at)->id == id) rows.erase(at);
    }

private:
    template <class Rows>
    static auto lowerBound(Rows& rows, Id<R> id) {
        return std::lower_bound(rows.begin(), rows.end(), id,
                                [](const Row& row, Id<R> wanted) { return row->id < wanted; });
    }

    /// Wide whatever the ids are: a season of n records leaves a gap of at least mostId / (n + 1).
    [[nodiscard]] std::int64_t startOfWidestGap() const {
        std::int64_t start = 1, widest = 0, before = 0;
        for (const auto& row : *rows_) {
            const std::int64_t gap = row->id.value - before - 1;
            if (gap > widest) {
                widest = gap;
                start = before + 1;
            }
            before = row->id.value;
        }
        return start;
    }

    std::vector<Row>& own() {
        if (rows_.use_count() > 1) rows_ = std::make_shared<std::vector<Row>>(*rows_);
        // Another thread may just have let go of the last copy: what it read comes before what we write.
        std::atomic_thread_fence(std::memory_order_acquire);
        return *rows_;
    }

    std::shared_ptr<std::vector<Row>> rows_ = std::make_shared<std::vector<Row>>();
};

} // namespace withy::model
