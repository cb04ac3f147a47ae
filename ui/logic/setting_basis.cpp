// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/setting_basis.h"

#include "core/model/schema.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace withy::ui {

namespace {

struct SettingBasisSay {
    Q_DECLARE_TR_FUNCTIONS(SettingBasis)
};

constexpr std::array<std::string_view, 17> defaulted{
    "spare_rule",  "spare_percent", "spare_confidence",   "store_celsius", "bench_celsius",
    "van_celsius", "venue_celsius", "heat_limit_celsius", "work_from",     "work_to",
    "recut_mm",    "bucket_hours",  "lifting_limit_kg",   "deposit_share", "balance_days",
    "quote_days",  "promise_level"};

} // namespace

QString settingBasis(const model::Settings& settings, std::string_view name) {
    if (name == "tax_rate")
        return SettingBasisSay::tr("Yours, as of the day beside it. Ask your tax office what holds for you.");
    if (name == "labour_rate" || name == "travel_rate") {
        const auto& rate = name == "labour_rate" ? settings.labourRate : settings.travelRate;
        return rate.minor == 0 ? SettingBasisSay::tr("Not given yet: the cost is then left out.")
                               : SettingBasisSay::tr("Yours.");
    }
    if (std::find(defaulted.begin(), defaulted.end(), name) == defaulted.end()) return {};
    const auto* field = model::tableInfo(model::TableKind::settings).field(name);
    static const model::Settings fresh;
    if (!field || field->get(&settings) != field->get(&fresh)) return SettingBasisSay::tr("Yours.");
    if (name == "recut_mm")
        return SettingBasisSay::tr(
            "Published: 2.5 cm (University of Massachusetts Extension, Care for cut flowers).");
    if (name == "spare_percent")
        return SettingBasisSay::tr("One event florist's allowance for breakage, not yet yours.");
    if (name == "lifting_limit_kg")
        return SettingBasisSay::tr(
            "Common practice, not yet yours. Each person's own limit and local rules come first.");
    return SettingBasisSay::tr("Common practice, not yet yours.");
}

} // namespace withy::ui
