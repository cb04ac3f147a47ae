// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/units.h"

#include "core/base/conversion.h"
#include "ui/logic/format.h"

#include <QCoreApplication>
#include <QHash>
#include <QSet>

namespace withy::ui {

namespace {

using model::FieldInfo;
using model::TableKind;
using model::UnitSystem;

constexpr double inch = millimetresInInch;
constexpr double foot = millimetresInFoot;
constexpr double yard = millimetresInYard;
constexpr double mile = kilometresInMile;
constexpr double pound = gramsInPound;

QString unitWord(const char* word) {
    return QCoreApplication::translate("Unit", word);
}

/// Beds and reels are paced or measured off in metres.
bool isLong(TableKind kind, std::string_view name) {
    return (kind == TableKind::patches && name == "bed_length") ||
           (kind == TableKind::ribbonLengths && name == "length");
}

/// What people measure with a tape, not with a rule.
bool isMiddling(TableKind kind, std::string_view name) {
    static const QSet<QByteArray> names{
        "stem_length_min", "stem_length_max", "spacing", "stems_below_tie", "tail",
        "floor_length",    "floor_width"};
    return kind == TableKind::venueTables ||
           names.contains(QByteArray(name.data(), static_cast<qsizetype>(name.size())));
}

Measure symbol(const QString& unit, double worth = 1, int decimals = -1) {
    return {unit, unit, worth, decimals};
}

Measure lengthOf(TableKind kind, const FieldInfo& field, UnitSystem system) {
    const bool far = isLong(kind, field.name);
    if (system == UnitSystem::imperial)
        return far ? symbol(unitWord(QT_TRANSLATE_NOOP("Unit", "ft")), foot, 3)
                   : symbol(unitWord(QT_TRANSLATE_NOOP("Unit", "in")), inch, 2);
    if (far) return symbol(QStringLiteral("m"), 1000, 3);
    if (isMiddling(kind, field.name)) return symbol(QStringLiteral("cm"), 10, 1);
    return symbol(QStringLiteral("mm"));
}

Measure counted(const char* many, const char* one) {
    return {unitWord(many), unitWord(one)};
}

using Worths = QHash<QString, double>;

const Worths& lengths() {
    static const Worths w{
        {QStringLiteral("mm"), 1},        {QStringLiteral("cm"), 10},       {QStringLiteral("m"), 1000},
        {QStringLiteral("metre"), 1000},  {QStringLiteral("metres"), 1000}, {QStringLiteral("meter"), 1000},
        {QStringLiteral("meters"), 1000}, {QStringLiteral("in"), inch},     {QStringLiteral("inch"), inch},
        {QStringLiteral("inches"), inch}, {QStringLiteral("\""), inch},     {QStringLiteral("″"), inch},
        {QStringLiteral("”"), inch},      {QStringLiteral("ft"), foot},     {QStringLiteral("foot"), foot},
        {QStringLiteral("feet"), foot},   {QStringLiteral("'"), foot},      {QStringLiteral("′"), foot},
        {QStringLiteral("’"), foot},      {QStringLiteral("yd"), yard},     {QStringLiteral("yard"), yard},
        {QStringLiteral("yards"), yard}};
    return w;
}

const Worths& volumes() {
    static const Worths w{{QStringLiteral("ml"), 1},
                          {QStringLiteral("cl"), 10},
                          {QStringLiteral("dl"), 100},
                          {QStringLiteral("l"), 1000},
                          {QStringLiteral("litre"), 1000},
                          {QStringLiteral("litres"), 1000},
                          {QStringLiteral("liter"), 1000},
                          {QStringLiteral("liters"), 1000},
                          {QStringLiteral("us fl oz"), millilitresInUsFluidOunce},
                          {QStringLiteral("us pt"), millilitresInUsPint},
                          {QStringLiteral("us pint"), millilitresInUsPint},
                          {QStringLiteral("us pints"), millilitresInUsPint},
                          {QStringLiteral("us qt"), millilitresInUsQuart},
                          {QStringLiteral("us quart"), millilitresInUsQuart},
                          {QStringLiteral("us quarts"), millilitresInUsQuart},
                          {QStringLiteral("us gal"), millilitresInUsGallon},
                          {QStringLiteral("us gallon"), millilitresInUsGallon},
                          {QStringLiteral("us gallons"), millilitresInUsGallon}};
    return w;
}

const Worths& weights() {
    static const Worths w{{QStringLiteral("g"), 1},          {QStringLiteral("gram"), 1},
                          {QStringLiteral("grams"), 1},      {QStringLiteral("kg"), 1000},
                          {QStringLiteral("lb"), pound},     {QStringLiteral("lbs"), pound},
                          {QStringLiteral("oz"), pound / 16}};
    return w;
}

const Worths& distances() {
    static const Worths w{{QStringLiteral("km"), 1},
                          {QStringLiteral("m"), 0.001},
                          {QStringLiteral("mile"), mile},
                          {QStringLiteral("miles"), mile},
                          {QStringLiteral("mi"), mile}};
    return w;
}

/// Minutes in each unit of time.
const Worths& times() {
    static const Worths w{
        {QStringLiteral("min"), 1},      {QStringLiteral("mins"), 1},  {QStringLiteral("minute"), 1},
        {QStringLiteral("minutes"), 1},  {QStringLiteral("m"), 1},     {QStringLiteral("h"), 60},
        {QStringLiteral("hr"), 60},      {QStringLiteral("hrs"), 60},  {QStringLiteral("hour"), 60},
        {QStringLiteral("hours"), 60},   {QStringLiteral("d"), 1440},  {QStringLiteral("day"), 1440},
        {QStringLiteral("days"), 1440},  {QStringLiteral("w"), 10080}, {QStringLiteral("week"), 10080},
        {QStringLiteral("weeks"), 10080}};
    return w;
}

/// Units that are only ever themselves.
const Worths& plain(std::string_view stored) {
    static const Worths none;
    static const Worths percent{
        {QStringLiteral("%"), 1}, {QStringLiteral("percent"), 1}, {QStringLiteral("per cent"), 1}};
    static const Worths celsius{
        {QStringLiteral("c"), 1}, {QStringLiteral("°c"), 1}, {QStringLiteral("°"), 1}};
    static const Worths degrees{
        {QStringLiteral("°"), 1}, {QStringLiteral("degrees"), 1}, {QStringLiteral("deg"), 1}};
    static const Worths stems{{QStringLiteral("stems"), 1}, {QStringLiteral("stem"), 1}};
    static const Worths pieces{{QStringLiteral("pieces"), 1}, {QStringLiteral("piece"), 1}};
    static const Worths warmth{{QStringLiteral("c days"), 1},
                               {QStringLiteral("°c days"), 1},
                               {QStringLiteral("f days"), 5.0 / 9},
                               {QStringLiteral("°f days"), 5.0 / 9}};
    if (stored == "%") return percent;
    if (stored == "C") return celsius;
    if (stored == "degrees") return degrees;
    if (stored == "stems") return stems;
    if (stored == "pieces") return pieces;
    return stored == "C days" ? warmth : none;
}

/// The table of a stored unit, and what the stored unit itself is worth in it.
std::pair<const Worths*, double> tableFor(std::string_view stored) {
    if (stored == "mm") return {&lengths(), 1};
    if (stored == "ml") return {&volumes(), 1};
    if (stored == "g") return {&weights(), 1};
    if (stored == "kg") return {&weights(), 1000};
    if (stored == "km") return {&distances(), 1};
    if (stored == "minutes") return {&times(), 1};
    if (stored == "hours") return {&times(), 60};
    if (stored == "days") return {&times(), 1440};
    if (stored == "weeks") return {&times(), 10080};
    return {&plain(stored), 1};
}

} // namespace

Measure measureOf(TableKind kind, const FieldInfo& field, UnitSystem system) {
    const bool imperial = system == UnitSystem::imperial;
    if (field.unit == "mm") return lengthOf(kind, field, system);
    if (field.unit == "ml")
        return imperial
                   ? symbol(unitWord(QT_TRANSLATE_NOOP("Unit", "US fl oz")), millilitresInUsFluidOunce, 2)
                   : symbol(QStringLiteral("ml"));
    if (field.unit == "g")
        return imperial ? symbol(QStringLiteral("oz"), pound / 16, 2) : symbol(QStringLiteral("g"));
    if (field.unit == "kg")
        return imperial ? symbol(QStringLiteral("lb"), pound / 1000, 2) : symbol(QStringLiteral("kg"));
    if (field.unit == "km")
        return imperial ? symbol(unitWord(QT_TRANSLATE_NOOP("Unit", "miles")), mile, 2)
                        : symbol(QStringLiteral("km"));
    if (field.unit == "%") return symbol(QStringLiteral("%"));
    if (field.unit == "C") {
        Measure degrees = symbol(imperial ? QStringLiteral("°F") : QStringLiteral("°C"));
        if (imperial) degrees.worth = 5.0 / 9, degrees.nought = 32, degrees.decimals = 3;
        return degrees;
    }
    if (field.unit == "C days")
        return imperial ? symbol(QStringLiteral("°F days"), 5.0 / 9, 2) : symbol(QStringLiteral("°C days"));
    if (field.unit == "minutes") return symbol(QStringLiteral("min"));
    if (field.unit == "hours")
        return counted(QT_TRANSLATE_NOOP("Unit", "hours"), QT_TRANSLATE_NOOP("Unit", "hour"));
    if (field.unit == "days")
        return counted(QT_TRANSLATE_NOOP("Unit", "days"), QT_TRANSLATE_NOOP("Unit", "day"));
    if (field.unit == "weeks")
        return counted(QT_TRANSLATE_NOOP("Unit", "weeks"), QT_TRANSLATE_NOOP("Unit", "week"));
    return {};
}

std::optional<double> worthOf(std::string_view storedUnit, const QString& typed) {
    const auto [table, own] = tableFor(storedUnit);
    const auto found = table->find(typed.toLower());
    if (found == table->end()) return std::nullopt;
    return found.value() / own;
}

bool isFahrenheit(std::string_view storedUnit, const QString& typed) {
    const QString unit = typed.toLower();
    return storedUnit == "C" && (unit == QLatin1String("f") || unit == QStringLiteral("°f"));
}

} // namespace withy::ui
