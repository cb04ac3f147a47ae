// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_colours.h"

#include "ui/logic/fields/colour_reading.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_groups.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace withy::ui {

namespace {

class BookingColoursSay {
    Q_DECLARE_TR_FUNCTIONS(Colours)

public:
    static QString example() { return tr("Say a colour and its share: “plum 30, coral 30”."); }

    static QString unknown(const QString& name) {
        return tr("No plant here is called %1, and no usual colour is. Add it below and choose its colour.")
            .arg(name);
    }

    static QString tooMuch(double sum) {
        return tr("The shares come to %1 %. Take some off to make a hundred.")
            .arg(QString::number(sum, 'g', 5));
    }

    static QString tooLittle(double sum) {
        return tr("The shares come to %1 %; the rest is open.").arg(QString::number(sum, 'g', 5));
    }

    static QString share(double share, const QString& name) {
        return tr("%1 % %2").arg(QString::number(share, 'g', 4), name);
    }
};

bool hasWord(const QString& folded, const QString& word) {
    const auto at = folded.indexOf(word);
    if (at < 0) return false;
    const auto end = at + word.size();
    return (at == 0 || !folded[at - 1].isLetter()) && (end == folded.size() || !folded[end].isLetter());
}

/// The bloom of a plant whose kind is told by the word ("Zinnia, coral"), before one that merely holds it.
std::optional<Colour> ofPlant(const model::Season& season, const QString& name) {
    const QString word = foldedForFinding(name);
    std::optional<Colour> any;
    for (const auto& plant : season.plants) {
        const QString has = foldedForFinding(text(plant.name));
        if (!plant.colour1 || !hasWord(has, word)) continue;
        if (has.section(QLatin1Char(','), 1).trimmed() == word) return plant.colour1;
        if (!any) any = plant.colour1;
    }
    return any;
}

std::optional<Colour> colourNamed(const model::Season& season, const QString& name) {
    if (name.startsWith(QLatin1Char('#'))) return readColour(name);
    if (const auto bloom = ofPlant(season, name)) return bloom;
    return readColour(name);
}

} // namespace

ColoursReading readColours(const model::Season& season, const QString& typed) {
    static const QRegularExpression share(QStringLiteral("(?<![#\\w])(\\d+(?:[.,]\\d+)?)\\s*%?(?!\\w)"));
    ColoursReading all;
    static const QRegularExpression between(QStringLiteral("[;\\n]|,(?!\\d)"));
    for (QString part : typed.split(between, Qt::SkipEmptyParts)) {
        model::BookingColour colour;
        if (const auto m = share.match(part); m.hasMatch()) {
            colour.share = m.captured(1).replace(QLatin1Char(','), QLatin1Char('.')).toDouble();
            part.remove(m.capturedStart(), m.capturedLength());
        }
        const QString name = part.simplified();
        if (name.isEmpty()) {
            if (colour.share) return {{}, BookingColoursSay::example()};
            continue;
        }
        const auto found = colourNamed(season, name);
        if (!found) return {{}, BookingColoursSay::unknown(name)};
        colour.colour = *found;
        colour.name = utf8(name);
        all.colours.push_back(colour);
    }
    if (all.colours.empty()) all.sentence = BookingColoursSay::example();
    return all;
}

std::vector<const model::BookingColour*> coloursOf(const model::Season& season, Id<model::Booking> booking) {
    std::vector<const model::BookingColour*> list;
    for (const auto& c : season.bookingColours) {
        if (c.booking == booking) list.push_back(&c);
    }
    return list;
}

QString coloursWords(const std::vector<const model::BookingColour*>& colours) {
    QStringList words;
    for (const auto* c : colours) {
        const QString name = c->name.empty() ? colourName(c->colour) : text(c->name);
        words << (c->share ? BookingColoursSay::share(*c->share, name) : name);
    }
    return words.join(QStringLiteral(", "));
}

QString sharesWords(const std::vector<const model::BookingColour*>& colours) {
    double sum = 0;
    int said = 0;
    for (const auto* c : colours) {
        sum += c->share.value_or(0);
        said += c->share ? 1 : 0;
    }
    if (sum > 100.0001) return BookingColoursSay::tooMuch(sum);
    return said > 0 && said == static_cast<int>(colours.size()) && sum < 99.9999
               ? BookingColoursSay::tooLittle(sum)
               : QString();
}

} // namespace withy::ui
