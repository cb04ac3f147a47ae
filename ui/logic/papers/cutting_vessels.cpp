// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/cutting_vessels.h"

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
constexpr int mostNamed = 3;               // buckets listed one by one

const model::Holder* commonest(const model::Season& season, model::HolderKind kind) {
    const model::Holder* found = nullptr;
    for (const auto& h : season.holders)
        if (h.kind == kind && (!found || h.owned.value_or(0) > found->owned.value_or(0))) found = &h;
    return found;
}

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

QString bucketWords(int first, int last) {
    if (first == last) return CuttingVesselsSay::tr("bucket %1").arg(first);
    if (last - first >= mostNamed) return CuttingVesselsSay::tr("buckets %1 to %2").arg(first).arg(last);
    QStringList numbers;
    for (int n = first; n <= last; ++n)
        numbers << QString::number(n);
    return CuttingVesselsSay::tr("buckets %1").arg(numbers.join(QStringLiteral(", ")));
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
    : bucket_(commonest(season, model::HolderKind::bucket))
    , box_(commonest(season, model::HolderKind::griddedBox)) {
    if (box_ && (!box_->cells || !box_->stemsPerCell || *box_->cells < 1 || box_->stemsPerCell->value < 1))
        box_ = nullptr;
}

QString CuttingVessels::next(std::int64_t stems, std::optional<Millimetres> length, bool personal) {
    if (stems <= 0) return {};
    return personal && box_ ? nextCells(stems) : nextBucket(stems, length);
}

QString CuttingVessels::nextBucket(std::int64_t stems, std::optional<Millimetres> length) {
    if (!bucket_) return {};
    const auto kind = shed::lengthClass(length.value_or(lengthNotKnown));
    const std::int64_t room = roomOf(*bucket_, kind).value_or(Stems(0)).value;
    if (room < 1) return {};
    auto& open = open_[static_cast<std::size_t>(kind)];
    if (open.number > 0 && stems <= open.room) {
        open.room -= stems;
        return bucketWords(open.number, open.number);
    }
    const std::int64_t more = std::min<std::int64_t>((stems + room - 1) / room, 999);
    const int first = buckets_ + 1;
    buckets_ += static_cast<int>(more);
    open = {buckets_, more * room - stems};
    return bucketWords(first, buckets_);
}

QString CuttingVessels::nextCells(std::int64_t stems) {
    const std::int64_t each = box_->stemsPerCell->value;
    const std::int64_t cells = (stems + each - 1) / each;
    const std::int64_t first = cells_ / *box_->cells;
    cells_ += cells;
    const std::int64_t last = (cells_ - 1) / *box_->cells;
    if (first == last)
        return CuttingVesselsSay::tr("box %1, %n cell(s) of %2", nullptr, static_cast<int>(cells))
            .arg(letters(first))
            .arg(each);
    return CuttingVesselsSay::tr("boxes %1 to %2, %n cell(s) of %3", nullptr, static_cast<int>(cells))
        .arg(letters(first), letters(last))
        .arg(each);
}

} // namespace withy::ui
