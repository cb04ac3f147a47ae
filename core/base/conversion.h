// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the customary units are worth, exactly by definition. Yard and pound: the international agreement of
/// 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237 kg); the US gallon is 231 cubic inches (NIST Handbook 44,
/// appendix C). All else is a whole part or multiple of these.
namespace withy {

inline constexpr double millimetresInInch = 25.4;
inline constexpr double millimetresInFoot = 12 * millimetresInInch;
inline constexpr double millimetresInYard = 3 * millimetresInFoot;
inline constexpr double kilometresInMile = 1760 * millimetresInYard / 1e6;

inline constexpr double gramsInPound = 453.59237;
inline constexpr double gramsInOunce = gramsInPound / 16;

inline constexpr double millilitresInUsGallon =
    231 * millimetresInInch * millimetresInInch * millimetresInInch / 1000;
inline constexpr double millilitresInUsQuart = millilitresInUsGallon / 4;
inline constexpr double millilitresInUsPint = millilitresInUsGallon / 8;
inline constexpr double millilitresInUsFluidOunce = millilitresInUsGallon / 128;

} // namespace withy
