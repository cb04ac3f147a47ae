// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/cutting_vessels.h"

#include "core/plan/usual_holder.h"
#include "core/shed/holder_totals.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace withy::ui {

namespace {

struct CuttingVesselsSay {
    Q_DECLARE_TR_FUNCTIONS(CuttingList)
};

constexpr Millimetres lengthNotKnown{500}; // as the kit takes it
constexpr std::size_t mostNamed = 3;       // buckets listed one by one

std::optional<Stems> roomOf(const model::Holder& bucket, shed::LengthClass length) {
    switch (length) {
    case shed::LengthClass::shortStems:
        return bucket.shortStems;
    case shed::LengthClass::middleStems:
        return bucket.middleStems;
    case shed::LengthClass::longStems:
        break;
    }
    return bucket.longStems;
}

QString bucketWords(const std::vector<QString>& names) {
    if (names.size() == 1) return CuttingVesselsSay::tr("bucket %1").arg(names.front());
    if (names.size() > mostNamed)
        return CuttingVesselsSay::tr("buckets %1 to %2").arg(names.front(), names.back());
    return CuttingVesselsSay::tr("buckets %1")
        .arg(QStringList(names.begin(), names.end()).join(QStringLiteral(", ")));
}

/// A, B ... Z, AA.
QString letters(std::int64_t n) {
    QString out;
    for (n += 1; n > 0; n = (n - 1) / 26)
        out.prepend(QChar(static_cast<char16_t>(u'A' + (n - 1) % 26)));
    return out;
}

} // namespace

CuttingVessels::CuttingVessels(const model::Season& season)
    : bucket_(plan::commonestHolder(season, model::HolderKind::bucket))
    , box_(plan::commonestHolder(season, model::HolderKind::griddedBox)) {
    if (box_ && (!box_->cells || !box_->stemsPerCell || *box_->cells < 1 || box_->stemsPerCell->value < 1))
        box_ = nullptr;
}

CuttingVessels::Vessels CuttingVessels::deal(std::int64_t stems, std::optional<Millimetres> length,
                                             bool personal) {
    if (stems <= 0) return {};
    return personal && box_ ? cells(stems) : buckets(stems, length);
}

QString CuttingVessels::next(std::int64_t stems, std::optional<Millimetres> length, bool personal) {
    const Vessels dealt = deal(stems, length, personal);
    if (dealt.names.empty()) return {};
    if (!dealt.boxes) return bucketWords(dealt.names);
    const std::int64_t each = box_->stemsPerCell->value;
    const int cells = static_cast<int>(dealt.cells);
    if (dealt.names.size() == 1)
        return CuttingVesselsSay::tr("box %1, %n cell(s) of %2", nullptr, cells)
            .arg(dealt.names.front())
            .arg(each);
    return CuttingVesselsSay::tr("boxes %1 to %2, %n cell(s) of %3", nullptr, cells)
        .arg(dealt.names.front(), dealt.names.back())
        .arg(each);
}

CuttingVessels::Vessels CuttingVessels::buckets(std::int64_t stems, std::optional<Millimetres> length) {
    if (!bucket_) return {};
    const auto kind = shed::lengthClass(length.value_or(lengthNotKnown));
    const std::int64_t room = roomOf(*bucket_, kind).value_or(Stems(0)).value;
    if (room < 1) return {};
    auto& open = open_[static_cast<std::size_t>(kind)];
    if (open.number > 0 && stems <= open.room) {
        open.room -= stems;
        return {{QString::number(open.number)}, false, 0};
    }
    const std::int64_t more = std::min<std::int64_t>((stems + room - 1) / room, 999);
    Vessels out;
    for (std::int64_t i = 0; i < more; ++i)
        out.names.push_back(QString::number(++buckets_));
    open = {buckets_, more * room - stems};
    return out;
}

CuttingVessels::Vessels CuttingVessels::cells(std::int64_t stems) {
    const std::int64_t each = box_->stemsPerCell->value;
    Vessels out;
    out.boxes = true;
    out.cells = (stems + each - 1) / each;
    const std::int64_t first = cells_ / *box_->cells;
    cells_ += out.cells;
    const std::int64_t last = std::min((cells_ - 1) / *box_->cells, first + 999);
    for (std::int64_t box = first; box <= last; ++box)
        out.names.push_back(letters(box));
    return out;
}

} // namespace withy::ui
