// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/booking_groups.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/cover_facts.h"
#endif
#include "ui/logic/workbench.h"

#include <QAbstractListModel>
#include <QHash>

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <utility>

namespace withy::ui {

struct BookingState;

/// The bookings in groups, heads among them as rows of their own. Words are made when a row is asked for,
/// so that many bookings cost no more than those in view.
class BookingListModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        IdRole = Qt::UserRole + 1, ///< of the booking; invalid in a head
        HeadRole,                  ///< true in a head
        ShortHeadRole,             ///< of a head: "Sep", where the list's month changes
        FigureRole,                ///< of a head: "6–12 Sep, 21 h of work"
        SecondRole,                ///< "Sat 11, 24 jars and 2 more, booked"
        StateRole,                 ///< "2 to mend", "28 short"
        AsksRole,                  ///< the state wants the grower
        StrongRole,                ///< the state is worth a second look
        DayRole,                   ///< "11", for the narrow list
        FoldRole,                  ///< of the head of what is gone by: true when open, false when shut
        StandingRole,              ///< int of model::Standing
        ToMendRole,                ///< how many findings want mending; -1 while not known
    };

    explicit BookingListModel(Workbench& bench, QObject* parent = nullptr);

    /// First and last. Who shows the list says it, so that at every plan no others are compared.
    std::function<std::pair<int, int>()> rowsInView;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// -1 when it is not listed.
    [[nodiscard]] int rowOf(Id<model::Booking> id) const;
    [[nodiscard]] std::optional<Id<model::Booking>> idAt(int row) const;
    /// The booking listed `by` after (or before) this one; the first (or last) when it is not listed.
    [[nodiscard]] std::optional<Id<model::Booking>> neighbour(std::optional<Id<model::Booking>> id,
                                                              int by) const;

    [[nodiscard]] const BookingChoice& choice() const { return choice_; }

    /// Of the booking's stems, for its mark.
    [[nodiscard]] std::optional<CoverFacts> coverAt(int row) const;

    void setFind(const QString& words);
    void setSort(BookingSort sort);
    void setStanding(std::optional<model::Standing> standing);
    void setKind(std::optional<model::BookingKind> kind);
    void openGoneBy(bool open);
    /// Shows the booking, taking away whatever keeps it from the list.
    void makeListed(Id<model::Booking> id);

    [[nodiscard]] int goneBy() const { return laid_.goneBy; }

    [[nodiscard]] int found() const { return laid_.found; }

    /// "By date", "Enquiries by name": what the list shows, for its button.
    [[nodiscard]] QString choiceWords() const;
    /// What stands where the list would be, when nothing is listed: first the season's, else the search's.
    [[nodiscard]] QString emptyWords() const;

    [[nodiscard]] bool hasAny() const { return !bench_.season().bookings.empty(); }

private:
    struct Row {
        int group = 0;
        Id<model::Booking> id; ///< none: the group's head
        friend bool operator==(const Row&, const Row&) = default;
    };

    struct Laid {
        std::vector<BookingGroup> groups;
        std::vector<Row> rows;
        int goneBy = 0;
        int found = 0;
    };

    /// Everything a row shows; of a head or of a booking.
    struct Face {
        bool head = false;
        QString title;
        QString second; ///< of a head: its figure
        QString day;    ///< of a head: its short form
        BookingState state;
        std::optional<QString> owed; ///< instead of the state, where the list is by what is owed
        QVariant fold;
        int standing = 0;
        int toMend = -1;
        std::optional<CoverFacts> cover;
        friend bool operator==(const Face&, const Face&) = default;
    };

    void planned();
    void refresh();
    void tellOfWhatDiffers();
    [[nodiscard]] Face makeFace(int row) const;
    [[nodiscard]] Face headFace(std::size_t group) const;
    [[nodiscard]] Face bookingFace(const model::Booking& booking) const;
    [[nodiscard]] static QVariant headData(const Face& face, int role);
    [[nodiscard]] static QVariant bookingData(const Face& face, int role);
    [[nodiscard]] const Face& faceOf(int row) const; ///< until the next one is asked for
    [[nodiscard]] Laid lay();
    [[nodiscard]] bool isFound(const model::Booking& booking);
    [[nodiscard]] const std::vector<const model::Line*>& linesOf(Id<model::Booking> id) const;
    [[nodiscard]] QString shortHead(std::size_t group) const;
    [[nodiscard]] QString second(const model::Booking& booking, const BookingState& state) const;
    [[nodiscard]] BookingState stateOf(const model::Booking& booking) const;
    [[nodiscard]] QString figures(const BookingGroup& group) const;

    Workbench& bench_;
    BookingChoice choice_;
    model::Season season_; ///< as shown; shares its rows with the workbench
    Laid laid_;
    mutable QHash<qint64, std::vector<const model::Line*>> lines_;
    mutable std::optional<std::map<Day, Minutes>> work_; ///< of the plan; made when first asked for
    mutable QHash<int, Face> seen_; ///< each row's that was asked for since the last reset

    struct FindKey {
        std::shared_ptr<const void> booking;
        std::shared_ptr<const void> client;
        std::shared_ptr<const void> venue;
        QString text;
    };

    QHash<qint64, FindKey> keys_;
};

} // namespace withy::ui
