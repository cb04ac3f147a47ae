// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/colour_reading.h"

#include <QColor>
#include <QMap>
#include <QRegularExpression>

namespace withy::ui {

namespace {

/// Our own choice of a mid tone for each word: common practice, no source.
const QMap<QString, QString>& tradeColours() {
    static const QMap<QString, QString> colours{
        {QStringLiteral("apricot"), QStringLiteral("#f3b886")},
        {QStringLiteral("blush"), QStringLiteral("#f1d3cc")},
        {QStringLiteral("bronze"), QStringLiteral("#8f5a2b")},
        {QStringLiteral("burgundy"), QStringLiteral("#6b1f33")},
        {QStringLiteral("butter"), QStringLiteral("#f4e3a1")},
        {QStringLiteral("claret"), QStringLiteral("#7a1f35")},
        {QStringLiteral("cream"), QStringLiteral("#f5edd6")},
        {QStringLiteral("dusk"), QStringLiteral("#b98494")},
        {QStringLiteral("lemon"), QStringLiteral("#f2e05c")},
        {QStringLiteral("lilac"), QStringLiteral("#c3a5cf")},
        {QStringLiteral("mauve"), QStringLiteral("#b08bb5")},
        {QStringLiteral("peach"), QStringLiteral("#f6c29c")},
        {QStringLiteral("rust"), QStringLiteral("#a6522a")},
        {QStringLiteral("sage"), QStringLiteral("#9fae8c")},
        {QStringLiteral("wine"), QStringLiteral("#5e2233")},
    };
    return colours;
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
    if (const auto own = tradeColours().constFind(word); own != tradeColours().constEnd())
        return Colour::parse(own.value().toStdString());
    QString keyword = word;
    keyword.remove(QLatin1Char(' '));
    if (keyword.isEmpty() || keyword == QLatin1String("transparent") || !QColor::isValidColor(keyword))
        return std::nullopt;
    return Colour::parse(QColor(keyword).name().toStdString());
}

} // namespace withy::ui
