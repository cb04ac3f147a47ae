// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/calendar_file.h"

#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/run_up_stretches.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QSaveFile>
#include <QUuid>

namespace withy::ui {

namespace {

using exchange::CalendarEntry;
using plan::RunUpStep;
using plan::StepKind;

class CalendarMaker {
    Q_DECLARE_TR_FUNCTIONS(CalendarFile)

public:
    CalendarMaker(const model::Season& season, const plan::Plan& plan)
        : season_(season), plan_(plan), space_(spaceOf(season)) {}

    std::vector<CalendarEntry> entries() {
        for (const auto& booking : season_.bookings)
            if (booking.standing != model::Standing::lost) entries_.push_back(entryOf(booking));
        for (const auto& step : runUpSteps(season_, plan_))
            if (step.to > step.from) addStep(step);
        return std::move(entries_);
    }

private:
    /// The season has no number of its own; its year and place are what makes it this one.
    static QUuid spaceOf(const model::Season& season) {
        const auto& s = season.theSettings();
        const QString name = QStringLiteral("withy season %1 %2 %3")
                                 .arg(s.firstDay.year())
                                 .arg(s.latitude, 0, 'f', 4)
                                 .arg(s.longitude, 0, 'f', 4);
        // The name space of RFC 4122 for names that are neither hosts nor addresses.
        return QUuid::createUuidV5(QUuid(QStringLiteral("{6ba7b812-9dad-11d1-80b4-00c04fd430c8}")), name);
    }

    [[nodiscard]] std::string uid(const QString& thing) const {
        return utf8(QUuid::createUuidV5(space_, thing).toString(QUuid::WithoutBraces));
    }

    [[nodiscard]] std::string uidOf(const plan::StepKey& key, std::size_t stretch = 0) const {
        const auto number = [](const auto& id) { return id ? QString::number(id->value) : QString(); };
        QStringList parts{text(std::string(model::wordOf(key.step))),
                          number(key.booking),
                          number(key.line),
                          number(key.drop),
                          key.day ? text(key.day->iso()) : QString(),
                          QString::number(key.number)};
        if (stretch > 0) parts << QString::number(stretch); // the first keeps the step's own
        return uid(QStringLiteral("step ") + parts.join(QLatin1Char('|')));
    }

    [[nodiscard]] std::string venueWords(const model::Booking& booking) const {
        const auto* venue = booking.venue ? season_.venues.find(*booking.venue) : nullptr;
        if (!venue) return {};
        return venue->address.empty() ? venue->name : venue->name + ", " + venue->address;
    }

    [[nodiscard]] CalendarEntry entryOf(const model::Booking& booking) const {
        CalendarEntry out;
        out.uid = uid(QStringLiteral("booking %1").arg(booking.id.value));
        out.from = booking.eventStart;
        out.to = booking.eventEnd;
        out.summary = booking.title;
        out.location = venueWords(booking);
        out.category = utf8(tr("Booking"));
        out.tentative = booking.standing == model::Standing::enquiry ||
                        booking.standing == model::Standing::held ||
                        booking.standing == model::Standing::quoted;
        QStringList words{standingWords(booking.standing)};
        for (const auto& line : season_.lines)
            if (line.booking == booking.id)
                if (const auto* design = season_.designs.find(line.design))
                    words << andSpare(tr("%1 × %2").arg(whole(line.pieces.value), text(design->name)),
                                      line.sparePieces.value);
        for (const auto& drop : season_.drops)
            if (drop.booking == booking.id)
                words
                    << tr("To %1 by %2 %3").arg(text(drop.place), shortDay(drop.time.day), clock(drop.time));
        out.description = utf8(words.join(QLatin1Char('\n')));
        out.takesNoTime = true; // it is the guests' time; the grower's are the steps
        return out;
    }

    /// What lies idle over busy hours or a night is an entry for each stretch: the hours between are free.
    void addStep(const RunUpStep& step) {
        const auto stretches = workedAt(plan_.runUp.get(), step);
        for (std::size_t i = 0; i < stretches.size(); ++i) {
            auto entry = entryOf(step);
            entry.from = stretches[i].from;
            entry.to = stretches[i].to;
            if (i > 0) {
                entry.uid = uidOf(step.key, i);
                entry.summary = utf8(goesOnWords(text(entry.summary)));
            }
            entries_.push_back(std::move(entry));
        }
    }

    [[nodiscard]] CalendarEntry entryOf(const RunUpStep& step) const {
        CalendarEntry out;
        out.uid = uidOf(step.key);
        out.from = step.from;
        out.to = step.to;
        out.summary = utf8(stepTitle(season_, step));
        out.category = utf8(step.key.step == StepKind::cut ? tr("Round") : tr("Step"));
        out.takesNoTime = needsNobody(step);
        out.location = placeOf(step);
        QStringList words{bookingWords(season_, step.bookings), stepDetail(season_, step), who(step)};
        if (step.round && plan_.runUp) words << roundFrom(season_, plan_.runUp->rounds[*step.round]);
        words.removeAll(QString());
        out.description = utf8(words.join(QLatin1Char('\n')));
        return out;
    }

    [[nodiscard]] QString who(const RunUpStep& step) const {
        const QString names = needsNobody(step) ? QString() : whoWords(season_, step);
        return names.isEmpty() ? QString() : tr("Who: %1").arg(names);
    }

    /// Only what is done away from home has a place.
    [[nodiscard]] std::string placeOf(const RunUpStep& step) const {
        using enum StepKind;
        const auto kind = step.key.step;
        if (kind != drive && kind != place && kind != handOver && kind != collect) return {};
        const auto* drop = step.key.drop ? season_.drops.find(*step.key.drop) : nullptr;
        const auto* booking = step.bookings.empty() ? nullptr : season_.bookings.find(step.bookings.front());
        const std::string venue = booking ? venueWords(*booking) : std::string();
        if (!drop || drop->place.empty()) return venue;
        return venue.empty() || venue.rfind(drop->place, 0) == 0 ? (venue.empty() ? drop->place : venue)
                                                                 : drop->place + ", " + venue;
    }

    const model::Season& season_;
    const plan::Plan& plan_;
    QUuid space_;
    std::vector<CalendarEntry> entries_;
};

struct CalendarFileSay {
    Q_DECLARE_TR_FUNCTIONS(CalendarFile)
};

} // namespace

exchange::CalendarOut seasonCalendar(const model::Season& season, const plan::Plan& plan,
                                     const QDateTime& written) {
    const auto& s = season.theSettings();
    const QString name = s.placeName.empty()
                             ? text(s.seasonName)
                             : CalendarFileSay::tr("%1, %2").arg(text(s.seasonName), text(s.placeName));
    return {utf8(name), s.zoneRule, Instant{written.toSecsSinceEpoch()},
            CalendarMaker(season, plan).entries()};
}

QString writeCalendar(const model::Season& season, const plan::Plan& plan, const QDateTime& written,
                      const QString& path) {
    const auto bytes =
        QByteArray::fromStdString(exchange::calendarText(seasonCalendar(season, plan, written)));
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return CalendarFileSay::tr("%1 cannot be written: %2. Choose another folder.")
            .arg(QFileInfo(path).fileName(), file.errorString());
    return {};
}

QString calendarFileName(const model::Season& season) {
    QString name = text(season.theSettings().seasonName);
    for (QChar& c : name)
        if (c.unicode() < 32 || QStringLiteral("/\\:*?\"<>|").contains(c)) c = QLatin1Char(' ');
    name = name.simplified().left(80);
    return (name.isEmpty() ? CalendarFileSay::tr("season") : name) + QStringLiteral(".ics");
}

} // namespace withy::ui
