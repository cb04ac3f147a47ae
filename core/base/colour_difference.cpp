// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/colour_difference.h"

#include <cmath>
#include <numbers>

namespace withy {

namespace {

constexpr double degree = std::numbers::pi / 180;

/// sRGB's transfer curve undone: IEC 61966-2-1.
double linear(std::uint8_t channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

/// CIE 15: the cube root with its straight foot.
double lightness(double share) {
    constexpr double knee = 6.0 / 29;
    return share > knee * knee * knee ? std::cbrt(share) : share / (3 * knee * knee) + 4.0 / 29;
}

/// Degrees from 0 to 360; nought where there is no hue.
double hue(double a, double b) {
    if (a == 0 && b == 0) return 0;
    const double h = std::atan2(b, a) / degree;
    return h < 0 ? h + 360 : h;
}

double power7(double x) {
    return std::pow(x, 7);
}

/// sqrt(c^7 / (c^7 + 25^7))
double strong(double chroma) {
    return std::sqrt(power7(chroma) / (power7(chroma) + power7(25)));
}

/// A colour after the correction of its a axis, equations 2 to 7.
struct Polar {
    double chroma;
    double hue;
};

/// Equation 10.
double hueStep(const Polar& x, const Polar& y) {
    if (x.chroma * y.chroma == 0) return 0;
    const double step = y.hue - x.hue;
    if (step > 180) return step - 360;
    return step < -180 ? step + 360 : step;
}

/// Equation 14.
double meanHue(const Polar& x, const Polar& y) {
    const double sum = x.hue + y.hue;
    if (x.chroma * y.chroma == 0) return sum;
    if (std::abs(x.hue - y.hue) <= 180) return sum / 2;
    return (sum < 360 ? sum + 360 : sum - 360) / 2;
}

double cosine(double degrees) {
    return std::cos(degrees * degree);
}

/// Equation 15.
double hueWeight(double h) {
    return 1 - 0.17 * cosine(h - 30) + 0.24 * cosine(2 * h) + 0.32 * cosine(3 * h + 6) -
           0.20 * cosine(4 * h - 63);
}

} // namespace

Lab labOf(Colour colour) {
    const double r = linear(colour.red), g = linear(colour.green), b = linear(colour.blue);
    // Rows of the sRGB matrix, divided by their sums: white is 1, 1, 1 exactly.
    const double x = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505;
    const double y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    const double z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.0890;
    return {116 * lightness(y) - 16, 500 * (lightness(x) - lightness(y)),
            200 * (lightness(y) - lightness(z))};
}

double colourDifference(const Lab& x, const Lab& y) {
    const double g = 0.5 * (1 - strong((std::hypot(x.a, x.b) + std::hypot(y.a, y.b)) / 2));
    const auto polar = [g](const Lab& lab) {
        const double a = (1 + g) * lab.a;
        return Polar{std::hypot(a, lab.b), hue(a, lab.b)};
    };
    const Polar p = polar(x), q = polar(y);
    const double meanL = (x.l + y.l) / 2, meanC = (p.chroma + q.chroma) / 2, meanH = meanHue(p, q);
    const double offMiddle = (meanL - 50) * (meanL - 50);
    const double l = (y.l - x.l) / (1 + 0.015 * offMiddle / std::sqrt(20 + offMiddle));
    const double c = (q.chroma - p.chroma) / (1 + 0.045 * meanC);
    const double h = 2 * std::sqrt(p.chroma * q.chroma) * std::sin(hueStep(p, q) / 2 * degree) /
                     (1 + 0.015 * meanC * hueWeight(meanH));
    const double turn = 30 * std::exp(-((meanH - 275) / 25) * ((meanH - 275) / 25));
    const double rotation = -std::sin(2 * turn * degree) * 2 * strong(meanC);
    return std::sqrt(l * l + c * c + h * h + rotation * c * h);
}

double colourDifference(Colour x, Colour y) {
    return colourDifference(labOf(x), labOf(y));
}

} // namespace withy
