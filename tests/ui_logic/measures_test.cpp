// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/measures.h"

#include "core/base/conversion.h"

#include <gtest/gtest.h>

namespace withy::ui::tests {

namespace {

using model::UnitSystem;

constexpr auto metric = UnitSystem::metric;
constexpr auto imperial = UnitSystem::imperial;

std::string said(const QString& words) {
    return words.toStdString();
}

} // namespace

/// NIST Special Publication 811 (2008), appendix B.8, "Factors for units listed alphabetically"; those in
/// bold type there are exact. NIST Handbook 44, appendix C, has the same, the US gallon as 231 cubic inches.
TEST(Measures, AreWorthWhatIsPublished) {
    EXPECT_DOUBLE_EQ(millimetresInInch, 25.4);
    EXPECT_DOUBLE_EQ(millimetresInFoot, 304.8);
    EXPECT_DOUBLE_EQ(millimetresInYard, 914.4);
    EXPECT_DOUBLE_EQ(kilometresInMile, 1.609344);
    EXPECT_DOUBLE_EQ(gramsInPound, 453.59237);
    EXPECT_NEAR(gramsInOunce, 28.34952, 5e-6);
    EXPECT_NEAR(millilitresInUsGallon, 3785.412, 5e-4);
    EXPECT_NEAR(millilitresInUsQuart, 946.3529, 5e-5);
    EXPECT_NEAR(millilitresInUsPint, 473.1765, 5e-5);
    EXPECT_NEAR(millilitresInUsFluidOunce, 29.57353, 5e-6);
}

TEST(Measures, MetricReadsAsEver) {
    EXPECT_EQ(said(lengthWords(312, metric)), "312 mm");
    EXPECT_EQ(said(lengthWords(Millimetres(1800), metric)), "1,800 mm");
    EXPECT_EQ(said(tapeWords(Millimetres(305), metric)), "30.5 cm");
    EXPECT_EQ(said(tableLengthWords(Millimetres(1830), metric)), "1,830 mm");
    EXPECT_EQ(said(sidesWords(Millimetres(1800), Millimetres(750), metric)), "1,800 × 750 mm");
    EXPECT_EQ(said(reelWords(Millimetres(11040), metric)), "11.04 m");
    EXPECT_EQ(said(millilitresWords(1350, metric)), "1,350 ml");
    EXPECT_EQ(said(litresWords(6.62, metric)), "6.6 litres");
    EXPECT_EQ(said(litresInShort(6.62, metric)), "6.6 l");
    EXPECT_EQ(said(weightWords(4.16, metric)), "4.2 kg");
    EXPECT_EQ(said(weightWords(10, metric, -1)), "10 kg");
    EXPECT_EQ(said(temperatureWords(22, metric)), "22 °C");
    EXPECT_EQ(said(temperatureWords(21.26, metric, 1)), "21.3 °C");
    EXPECT_EQ(said(warmthWords(1318.2, metric)), "1,318 °C days");
    EXPECT_EQ(said(distanceWords(12.5, metric)), "12.5 km");
}

TEST(Measures, InchesAreTenthsAndBelowOneHundredths) {
    EXPECT_EQ(said(lengthWords(304.8, imperial)), "12 in");
    EXPECT_EQ(said(lengthWords(312, imperial)), "12.3 in"); // 12.28
    EXPECT_EQ(said(lengthWords(25.4, imperial)), "1 in");
    EXPECT_EQ(said(lengthWords(3, imperial)), "0.12 in"); // 0.118
    EXPECT_EQ(said(lengthWords(0, imperial)), "0 in");
    EXPECT_EQ(said(lengthWords(-3, imperial)), "-0.12 in");
    EXPECT_EQ(said(lengthWords(50000, imperial)), "1,968.5 in"); // 1968.50
    EXPECT_EQ(said(lengthFigure(312, imperial)), "12.3");
    EXPECT_EQ(said(tapeWords(Millimetres(305), imperial)), "12 in"); // 12.008
}

TEST(Measures, TablesHaveFeetFromAYardOnAndRibbonAlways) {
    EXPECT_EQ(said(tableLengthWords(Millimetres(762), imperial)), "30 in");
    EXPECT_EQ(said(tableLengthWords(Millimetres(914), imperial)), "36 in"); // 35.98
    EXPECT_EQ(said(tableLengthWords(Millimetres(915), imperial)), "3 ft");  // 36.02
    EXPECT_EQ(said(tableLengthWords(Millimetres(1800), imperial)), "5 ft 10.9 in");
    EXPECT_EQ(said(tableLengthWords(Millimetres(1829), imperial)), "6 ft"); // 72.008
    EXPECT_EQ(said(sidesWords(Millimetres(1829), Millimetres(762), imperial)), "6 ft × 30 in");
    EXPECT_EQ(said(reelWords(Millimetres(9144), imperial)), "30.00 ft"); // ten yards
}

/// A quart is 32 fluid ounces, a gallon four quarts (Handbook 44, appendix C).
TEST(Measures, VolumesAreSaidToBeUs) {
    EXPECT_EQ(said(millilitresWords(millilitresInUsFluidOunce * 12, imperial)), "12 US fl oz");
    EXPECT_EQ(said(millilitresWords(350, imperial)), "11.8 US fl oz"); // 11.835
    EXPECT_EQ(said(millilitresWords(946, imperial)), "32 US fl oz");   // 31.99
    EXPECT_EQ(said(millilitresWords(947, imperial)), "1 US qt");
    EXPECT_EQ(said(litresWords(1.1, imperial)), "1.16 US qt"); // 1.1624
    EXPECT_EQ(said(litresWords(3.785411784, imperial)), "1 US gal");
    EXPECT_EQ(said(litresInShort(24, imperial)), "6.34 US gal"); // 6.3401
}

/// Sixteen ounces to the pound.
TEST(Measures, WeightsAreOuncesThenPounds) {
    EXPECT_EQ(said(weightWords(0.21, imperial)), "7.4 oz"); // 7.407
    EXPECT_EQ(said(weightWords(0.45359237, imperial)), "1 lb");
    EXPECT_EQ(said(weightWords(4.16, imperial)), "9 lb 3 oz"); // 9 lb 2.74 oz
    EXPECT_EQ(said(weightWords(10, imperial)), "22 lb");       // 22.046
    EXPECT_EQ(said(weightWords(600, imperial)), "1,322.8 lb"); // 1322.77
}

/// SP 811, section 4.2.1.1: t/°F = 9/5 t/°C + 32; ice melts at 32 °F, water boils at 212 °F.
TEST(Measures, TemperaturesAndWarmth) {
    EXPECT_EQ(said(temperatureWords(0, imperial)), "32 °F");
    EXPECT_EQ(said(temperatureWords(100, imperial)), "212 °F");
    EXPECT_EQ(said(temperatureWords(-40, imperial)), "-40 °F");
    EXPECT_EQ(said(temperatureWords(22, imperial)), "71.6 °F");
    EXPECT_EQ(said(temperatureWords(22, imperial, 0)), "72 °F");
    EXPECT_EQ(said(warmthWords(1000, imperial)), "1,800 °F days");
    EXPECT_EQ(said(distanceWords(16.09344, imperial)), "10 miles");
    EXPECT_EQ(said(distanceWords(1.609344, imperial)), "1 mile");
    EXPECT_EQ(said(distanceWords(1.6, imperial)), "1 mile"); // 0.994
    EXPECT_EQ(said(distanceWords(0, imperial)), "0 miles");
}

/// Fine enough that the lines of a working come to their sum: as the fields.
TEST(Measures, WorkingsAreFiner) {
    EXPECT_EQ(said(workingLength(312, metric)), "312 mm");
    EXPECT_EQ(said(workingLength(312, imperial)), "12.28 in");
    EXPECT_EQ(said(workingVolume(1200, metric)), "1.2 litres");
    EXPECT_EQ(said(workingVolume(350, imperial)), "11.83 US fl oz"); // 11.835
    EXPECT_EQ(said(workingWeight(20, imperial)), "0.71 oz");         // 0.7055
    EXPECT_EQ(said(workingWeight(300000, imperial)), "661.4 lb");    // 661.39
    EXPECT_EQ(said(workingTemperature(8, metric, false)), "8 °C");
    EXPECT_EQ(said(workingTemperature(20, imperial, true)), "68.0 °F");
}

} // namespace withy::ui::tests
