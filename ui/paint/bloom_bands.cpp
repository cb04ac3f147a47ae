// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/bloom_bands.h"

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

struct Paint {
    float red, green, blue;

    explicit Paint(const QColor& c)
        : red(static_cast<float>(c.red()))
        , green(static_cast<float>(c.green()))
        , blue(static_cast<float>(c.blue())) {}
};

struct Pixel {
    float red = 0, green = 0, blue = 0, share = 0;

    void add(const Paint& paint, float part) {
        red += paint.red * part;
        green += paint.green * part;
        blue += paint.blue * part;
        share += part;
    }
};

/// One column of pixels, from the baseline up.
class Column {
public:
    explicit Column(int height) : pixels_(static_cast<std::size_t>(height)) {}

    void clear() { std::fill(pixels_.begin(), pixels_.end(), Pixel{}); }

    void fill(float from, float to, const Paint& paint) {
        to = std::min(to, static_cast<float>(pixels_.size()));
        for (auto row = static_cast<std::size_t>(from); from < to; ++row) {
            const float next = std::min(to, static_cast<float>(row + 1));
            pixels_[row].add(paint, next - from);
            from = next;
        }
    }

    /// Into the pixel at `foot` and those above it, each `stride` before the one below.
    void write(QRgb* foot, std::ptrdiff_t stride) const {
        const auto byte = [](float v) { return static_cast<int>(std::min(v, 255.0F) + 0.5F); };
        for (const auto& p : pixels_) {
            if (p.share > 0) *foot = qRgba(byte(p.red), byte(p.green), byte(p.blue), byte(p.share * 255));
            foot -= stride;
        }
    }

private:
    std::vector<Pixel> pixels_;
};

/// A band while it is filled in, column by column.
struct Filling {
    const float* days;
    int first, last; ///< of the days with anything; none: last before first
    Paint fill, edge;
    float before = 0; ///< top in the column at the left

    explicit Filling(const BloomBand& b) : days(b.thickness.data()), fill(b.fill), edge(b.edge) {
        const auto stands = [](float v) { return v > 0; };
        first = static_cast<int>(std::find_if(b.thickness.begin(), b.thickness.end(), stands) -
                                 b.thickness.begin());
        last = static_cast<int>(std::find_if(b.thickness.rbegin(), b.thickness.rend(), stands).base() -
                                b.thickness.begin()) -
               1;
    }

    /// Between the noons of day `at` and the next.
    [[nodiscard]] float thickness(int at, float share) const {
        if (at + 1 < first || at > last) return 0;
        return (at < first ? 0.0F : days[at] * (1 - share)) + (at + 1 > last ? 0.0F : days[at + 1] * share);
    }
};

} // namespace

float betweenNoons(const std::vector<float>& days, double day) {
    const double at = day - 0.5;
    const double below = std::floor(at);
    const auto value = [&](double i) {
        return i < 0 || i >= static_cast<double>(days.size()) ? 0.0F : days[static_cast<std::size_t>(i)];
    };
    const float share = static_cast<float>(at - below);
    return value(below) * (1 - share) + value(below + 1) * share;
}

QImage paintBloomBands(const std::vector<BloomBand>& bands, const BloomFrame& f) {
    QImage image(f.size, QImage::Format_ARGB32_Premultiplied);
    if (image.isNull()) return image;
    image.fill(Qt::transparent);
    std::vector<Filling> fillings(bands.begin(), bands.end());
    Column column(f.size.height());
    const auto stride = image.bytesPerLine() / static_cast<std::ptrdiff_t>(sizeof(QRgb));
    auto* const baseline = reinterpret_cast<QRgb*>(image.bits()) + stride * (f.size.height() - 1);
    const float line = static_cast<float>(f.edge);
    const float unit = static_cast<float>(f.unitHeight);
    for (int x = 0; x < f.size.width(); ++x) {
        const double at = f.firstDay + (x + 0.5) / f.dayWidth - 0.5;
        const int day = static_cast<int>(std::floor(at));
        const float share = static_cast<float>(at - day);
        column.clear();
        float foot = 0;
        for (auto& band : fillings) {
            const float thick = band.thickness(day, share) * unit;
            const float top = foot + thick;
            const float rise = x > 0 ? std::min(std::abs(top - band.before), 3.0F) : 0.0F;
            band.before = top;
            if (thick <= 0) continue;
            // A steep line is as thick as a level one, and a thin band still shows its colour.
            const float edge = std::min(line * std::sqrt(1 + rise * rise), thick * 0.4F);
            column.fill(foot, top - edge, band.fill);
            column.fill(top - edge, top, band.edge);
            foot = top;
        }
        if (foot > 0) column.write(baseline + x, stride);
    }
    return image;
}

QColor bandFill(const Palette& palette, const std::optional<Colour>& bloom) {
    const QColor plain = bloom ? Palette::bloom(*bloom) : palette.of(Role::line);
    return palette.theme == Theme::light ? plain : mixed(plain, palette.of(Role::sheet), 0.12);
}

QColor bandEdge(const Palette& palette, const QColor& fill) {
    return palette.theme == Theme::light ? palette.bloomEdge(fill)
                                         : mixed(fill, palette.of(Role::night), 0.6);
}

QColor steppedBack(const Palette& palette, const QColor& band) {
    return mixed(band, palette.of(Role::paper), 0.72);
}

} // namespace withy::ui
