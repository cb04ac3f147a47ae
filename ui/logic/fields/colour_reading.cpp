// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/colour_reading.h"

#include <QColor>
#include <QCoreApplication>
#include <QRegularExpression>

namespace withy::ui {

namespace {

struct TradeColour {
    const char* word;
    const char* hex;
};

/// Our own choice of a mid tone for each word: common practice, no source.
constexpr TradeColour tradeColours[] = {
    {QT_TRANSLATE_NOOP("ColourWords", "apricot"), "#f3b886"},
    {QT_TRANSLATE_NOOP("ColourWords", "blush"), "#f1d3cc"},
    {QT_TRANSLATE_NOOP("ColourWords", "bronze"), "#8f5a2b"},
    {QT_TRANSLATE_NOOP("ColourWords", "burgundy"), "#6b1f33"},
    {QT_TRANSLATE_NOOP("ColourWords", "butter"), "#f4e3a1"},
    {QT_TRANSLATE_NOOP("ColourWords", "claret"), "#7a1f35"},
    {QT_TRANSLATE_NOOP("ColourWords", "cream"), "#f5edd6"},
    {QT_TRANSLATE_NOOP("ColourWords", "dusk"), "#b98494"},
    {QT_TRANSLATE_NOOP("ColourWords", "lemon"), "#f2e05c"},
    {QT_TRANSLATE_NOOP("ColourWords", "lilac"), "#c3a5cf"},
    {QT_TRANSLATE_NOOP("ColourWords", "mauve"), "#b08bb5"},
    {QT_TRANSLATE_NOOP("ColourWords", "peach"), "#f6c29c"},
    {QT_TRANSLATE_NOOP("ColourWords", "rust"), "#a6522a"},
    {QT_TRANSLATE_NOOP("ColourWords", "sage"), "#9fae8c"},
    {QT_TRANSLATE_NOOP("ColourWords", "wine"), "#5e2233"},
};

QString worded(const TradeColour& colour) {
    return QCoreApplication::translate("ColourWords", colour.word);
}

std::optional<Colour> tradeColour(const QString& word) {
    for (const auto& own : tradeColours) {
        if (word == QLatin1String(own.word) || word == worded(own).toLower()) return Colour::parse(own.hex);
    }
    return std::nullopt;
}

QString hexOf(const QString& typed) {
    static const QRegularExpression hex(QStringLiteral("^#?([0-9a-f]{6}|[0-9a-f]{3})$"));
    const auto match = hex.match(typed);
    if (!match.hasMatch()) return {};
    QString digits = match.captured(1);
    if (digits.size() == 3) digits = QString(2, digits[0]) + QString(2, digits[1]) + QString(2, digits[2]);
    return QLatin1Char('#') + digits;
}

} // namespace

std::optional<Colour> readColour(const QString& typed) {
    const QString word = typed.trimmed().toLower();
    if (const QString hex = hexOf(word); !hex.isEmpty()) return Colour::parse(hex.toStdString());
    if (const auto own = tradeColour(word)) return own;
    if (const auto named = publishedColour(word)) return named;
    QString keyword = word;
    keyword.remove(QLatin1Char(' '));
    if (keyword.isEmpty() || keyword == QLatin1String("transparent") || !QColor::isValidColor(keyword))
        return std::nullopt;
    return Colour::parse(QColor(keyword).name().toStdString());
}

QString colourName(Colour colour) {
    for (const auto& own : tradeColours) {
        if (colour.hex() == own.hex) return worded(own);
    }
    return nearestColourWord(colour);
}

QString colourName(const QString& hex) {
    const auto colour = Colour::parse(hex.toStdString());
    return colour ? colourName(*colour) : hex;
}

} // namespace withy::ui
