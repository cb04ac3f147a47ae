// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/model/season.h"

#include <string>
#include <utility>
#include <vector>

namespace withy::model {

/// Names one record of any table.
struct Ref {
    TableKind table = TableKind::none;
    std::int64_t id = 0;
    friend auto operator<=>(const Ref&, const Ref&) = default;
};

/// What an edit did, as facts for the undo menu; ui/logic words it ("5 more cornflowers in Supper jar").
struct EditName {
    std::string key;               ///< stable: "booking.add", "line.pieces"
    std::vector<std::string> args; ///< names and numbers in the order the wording expects
};

/// A named list of puts and erases of whole records: one undo step, one transaction, one notice.
/// The order within an edit does not matter; only the season it leads to is judged.
class Edit {
public:
    // Spelled out in edit.cpp: a Record may be any of some fifty types, too much for every source.
    Edit();
    explicit Edit(EditName name);
    explicit Edit(std::string key, std::vector<std::string> args = {});
    Edit(const Edit& other);
    Edit(Edit&& other) noexcept;
    Edit& operator=(const Edit& other);
    Edit& operator=(Edit&& other) noexcept;
    ~Edit();

    Edit& put(Record record);

    /// R: any record type of the model.
    template <class R>
    Edit& put(R record);

    template <class R>
    Edit& erase(Id<R> id) {
        return erase(Ref{kindOf<R>, id.value});
    }

    Edit& erase(Ref ref);

    [[nodiscard]] const EditName& name() const { return name_; }

    void rename(EditName name) { name_ = std::move(name); }

    [[nodiscard]] const std::vector<Record>& puts() const { return puts_; }

    [[nodiscard]] const std::vector<Ref>& erases() const { return erases_; }

    [[nodiscard]] bool empty() const { return puts_.empty() && erases_.empty(); }

private:
    EditName name_;
    std::vector<Record> puts_;
    std::vector<Ref> erases_;
};

struct Applied {
    Season season;
    /// The edit without what it would not have changed; empty when it changes nothing.
    Edit done;
    /// Leads back; bears the same name.
    Edit inverse;
};

/// Validates `edit` against `season` and applies it. Either the whole edit holds or none of it: the
/// error lists every problem by record, field and value. Erasing what is not there changes nothing.
Result<Applied, Problems> apply(const Season& season, const Edit& edit);

/// Every problem of a season as it stands (a file written by something else, an import).
Problems check(const Season& season);

} // namespace withy::model
