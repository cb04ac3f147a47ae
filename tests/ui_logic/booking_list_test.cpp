// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/models/booking_list_model.h"

#include <QAbstractItemModelTester>

#include <set>

namespace withy::ui {

namespace {

using Model = BookingListModel;

class BookingListTest : public LogicTest {
protected:
    void SetUp() override { installEnglishPlurals(); }

    void open(const model::Season& season, std::optional<Day> today) {
        bench = benchOn(season, today);
        bench->waitForPlan();
        list = std::make_unique<Model>(*bench);
        tester = std::make_unique<QAbstractItemModelTester>(
            list.get(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    }

    [[nodiscard]] std::vector<std::string> heads() const {
        std::vector<std::string> words;
        for (int row = 0; row < list->rowCount(); ++row) {
            if (list->index(row).data(Model::HeadRole).toBool())
                words.push_back(list->index(row).data().toString().toStdString());
        }
        return words;
    }

    [[nodiscard]] std::vector<std::string> titles() const {
        std::vector<std::string> words;
        for (int row = 0; row < list->rowCount(); ++row) {
            if (!list->index(row).data(Model::HeadRole).toBool())
                words.push_back(list->index(row).data().toString().toStdString());
        }
        return words;
    }

    /// An empty season with bookings of these titles on these days.
    static model::Season with(const std::vector<std::pair<const char*, const char*>>& bookings) {
        auto season = emptySeason(2027);
        for (const auto& [title, day] : bookings) {
            Id<model::Booking> made;
            season =
                model::apply(season, edits::newBooking(season, title, *Day::parse(day), made)).value().season;
        }
        return season;
    }

    std::unique_ptr<Workbench> bench;
    std::unique_ptr<Model> list;
    std::unique_ptr<QAbstractItemModelTester> tester;
};

using Words = std::vector<std::string>;

} // namespace

// 6 September 2027 is a Monday (ISO 8601 week 36).
TEST_F(BookingListTest, GroupsByWeekThenByMonthAndFoldsWhatHasGoneBy) {
    open(with({{"Mon", "2027-09-06"},
               {"Sun", "2027-09-12"},
               {"Next", "2027-09-13"},
               {"Third", "2027-09-26"},
               {"October", "2027-10-20"},
               {"August", "2027-08-28"},
               {"July", "2027-07-28"}}),
         Day::parse("2027-09-08"));
    EXPECT_EQ(heads(), (Words{"This week", "Next week", "20–26 Sep", "October", "Gone by"}));
    EXPECT_EQ(titles(), (Words{"Mon", "Sun", "Next", "Third", "October"}));
    EXPECT_EQ(list->goneBy(), 2);
    list->openGoneBy(true);
    EXPECT_EQ(titles(), (Words{"Mon", "Sun", "Next", "Third", "October", "August", "July"}))
        << "the latest of what has gone by comes first";
}

TEST_F(BookingListTest, WithoutADayOfTodayItGoesByMonths) {
    open(with({{"A", "2027-09-06"}, {"B", "2027-05-06"}, {"C", "2027-09-30"}}), std::nullopt);
    EXPECT_EQ(heads(), (Words{"May", "September"}));
    EXPECT_EQ(titles(), (Words{"B", "A", "C"}));
}

TEST_F(BookingListTest, FindsByTitleClientPlaceKindAndDate) {
    open(demoSeason(), Day::parse("2027-09-06"));
    const auto all = bench->season().bookings.size();
    const std::pair<const char*, const char*> cases[] = {{"library", "Library roof supper"},
                                                         {"LIBRARY roof", "Library roof supper"},
                                                         {"marrowby village", "Library roof supper"},
                                                         {"11 sep", "Library roof supper"},
                                                         {"saturday september", "Library roof supper"},
                                                         {"2027-09-11", "Library roof supper"},
                                                         {"charity", "Library roof supper"}};
    for (const auto& [typed, title] : cases) {
        SCOPED_TRACE(typed);
        list->setFind(QString::fromUtf8(typed));
        const auto found = titles();
        EXPECT_NE(std::find(found.begin(), found.end(), title), found.end());
        EXPECT_LT(found.size(), all);
    }
    list->setFind(QStringLiteral("no such words"));
    EXPECT_TRUE(titles().empty());
    EXPECT_FALSE(list->emptyWords().isEmpty());
    list->setFind({});
    EXPECT_TRUE(list->emptyWords().isEmpty());
}

TEST_F(BookingListTest, FindsWithoutAccentsAndAfterARename) {
    open(with({{"Fête de la Réunion", "2027-06-06"}}), std::nullopt);
    list->setFind(QStringLiteral("fete reunion"));
    EXPECT_EQ(titles().size(), 1u);
    EXPECT_EQ(
        bench->apply(edits::renameBooking(bench->season(), bench->season().bookings.begin()->id, "Party")),
        QString());
    EXPECT_TRUE(titles().empty());
    list->setFind(QStringLiteral("party"));
    EXPECT_EQ(titles(), Words{"Party"});
}

TEST_F(BookingListTest, SortsAndFilters) {
    open(demoSeason(), Day::parse("2027-09-06"));
    list->setSort(BookingSort::name);
    auto names = titles();
    EXPECT_TRUE(heads().empty());
    EXPECT_EQ(names.size(), bench->season().bookings.size());
    EXPECT_TRUE(std::is_sorted(names.begin(), names.end(), [](const auto& a, const auto& b) {
        return QString::fromStdString(a).toLower() < QString::fromStdString(b).toLower();
    }));
    list->setSort(BookingSort::owed);
    std::vector<std::int64_t> owed;
    bool lost = false;
    for (int row = 0; row < list->rowCount(); ++row) {
        const auto id = *list->idAt(row);
        const bool isLost = bench->season().bookings.find(id)->standing == model::Standing::lost;
        EXPECT_TRUE(isLost || !lost) << "the lost come last";
        lost = lost || isLost;
        const auto& sum = bench->plan().bookings.at(id)->money->owed;
        if (!isLost) owed.push_back(sum.owed.minor - sum.overpaid.minor);
    }
    EXPECT_TRUE(std::is_sorted(owed.rbegin(), owed.rend()));
    EXPECT_GT(owed.front(), 0);
    list->setSort(BookingSort::standing);
    list->setStanding(model::Standing::settled);
    EXPECT_EQ(heads(), Words{"Settled"});
    for (int row = 1; row < list->rowCount(); ++row)
        EXPECT_EQ(bench->season().bookings.find(*list->idAt(row))->standing, model::Standing::settled);
    list->setKind(model::BookingKind::wedding);
    for (int row = 1; row < list->rowCount(); ++row)
        EXPECT_EQ(bench->season().bookings.find(*list->idAt(row))->kind, model::BookingKind::wedding);
}

/// Whoever owes most comes first; to whom something is to be paid back after those; the lost at the end.
TEST_F(BookingListTest, ByWhatIsOwedTheLostComeLastAndOweNothing) {
    auto season = with({{"Owes", "2027-09-06"}, {"Paid", "2027-09-07"}, {"Lost", "2027-09-08"}});
    const auto put = [&](auto record) {
        season = model::apply(season, model::Edit("x").put(record)).value().season;
    };
    model::Design posy;
    posy.id = season.designs.nextId();
    posy.name = "Posy";
    posy.kind = model::PieceKind::handTied;
    posy.price = Money{3000};
    put(posy);
    for (const auto& b : model::Season(season).bookings) {
        Id<model::Line> line;
        season =
            model::apply(season, edits::addPieces(season, b.id, posy.id, b.title == "Lost" ? 9 : 1, line))
                .value()
                .season;
        auto changed = b;
        if (b.title == "Lost") changed.standing = model::Standing::lost;
        put(changed);
        if (b.title != "Paid") continue;
        model::Payment deposit;
        deposit.id = season.payments.nextId();
        deposit.booking = b.id;
        deposit.amount = Money{4000};
        deposit.date = *Day::parse("2027-06-01");
        put(deposit);
    }
    open(season, Day::parse("2027-09-06"));
    list->setSort(BookingSort::owed);
    EXPECT_EQ(titles(), (Words{"Owes", "Paid", "Lost"}));
    Words states;
    for (int row = 0; row < list->rowCount(); ++row)
        states.push_back(list->index(row).data(Model::StateRole).toString().toStdString());
    EXPECT_EQ(states, (Words{"£30.00", "£10.00 to pay back", "–"}));
}

TEST_F(BookingListTest, ABookingThatIsLookedForIsAlwaysListed) {
    open(demoSeason(), Day::parse("2027-09-06"));
    list->setStanding(model::Standing::lost);
    list->setFind(QStringLiteral("nothing has this"));
    for (const auto& b : bench->season().bookings) {
        list->makeListed(b.id);
        EXPECT_GE(list->rowOf(b.id), 0) << b.title;
    }
}

TEST_F(BookingListTest, NeighboursPassOverHeads) {
    open(with({{"A", "2027-09-06"}, {"B", "2027-09-13"}, {"C", "2027-10-30"}}), Day::parse("2027-09-06"));
    auto at = list->neighbour(std::nullopt, 1);
    std::string seen;
    for (; at; at = list->neighbour(at, 1))
        seen += bench->season().bookings.find(*at)->title;
    EXPECT_EQ(seen, "ABC");
    EXPECT_EQ(bench->season().bookings.find(*list->neighbour(std::nullopt, -1))->title, "C");
}

TEST_F(BookingListTest, HeadsCannotBeChosen) {
    open(demoSeason(), Day::parse("2027-09-06"));
    for (int row = 0; row < list->rowCount(); ++row) {
        const auto index = list->index(row);
        EXPECT_EQ(index.flags().testFlag(Qt::ItemIsSelectable), !index.data(Model::HeadRole).toBool());
        EXPECT_FALSE(index.data(Qt::AccessibleTextRole).toString().isEmpty());
    }
}

TEST_F(BookingListTest, AnEditTellsOfTheRowsItChangesAlone) {
    open(demoSeason(), Day::parse("2027-09-06"));
    int resets = 0;
    std::set<int> told;
    for (int row = 0; row < list->rowCount(); ++row) // as a view paints them
        list->index(row).data(Qt::DisplayRole);
    QObject::connect(list.get(), &QAbstractItemModel::modelReset, [&] { ++resets; });
    QObject::connect(list.get(), &QAbstractItemModel::dataChanged,
                     [&](const QModelIndex& from, const QModelIndex& to) {
                         for (int row = from.row(); row <= to.row(); ++row)
                             told.insert(row);
                     });
    EXPECT_EQ(bench->apply(edits::renameBooking(bench->season(), Id<model::Booking>(1), "Another")),
              QString());
    EXPECT_EQ(resets, 0);
    EXPECT_EQ(told, std::set<int>{list->rowOf(Id<model::Booking>(1))});
    EXPECT_EQ(bench->apply(edits::eraseBooking(bench->season(), Id<model::Booking>(1))), QString());
    EXPECT_EQ(resets, 1);
}

TEST_F(BookingListTest, TwoHundredBookingsAreListedWithinAFrame) {
    auto season = demoSeason();
    while (season.bookings.size() < 200) {
        edits::BookingCopy copy;
        const auto id = Id<model::Booking>(1 + static_cast<std::int64_t>(season.bookings.size() % 24));
        season = model::apply(season, edits::duplicateBooking(season, id, copy)).value().season;
    }
    open(season, Day::parse("2027-06-01"));
    QElapsedTimer since;
    qint64 best = 1'000'000'000;
    for (int i = 0; i < 5; ++i) { // the best of five: other work on the machine is not ours to measure
        since.start();
        list->setFind(i % 2 ? QStringLiteral("sup") : QString());
        for (int row = 0; row < std::min(25, list->rowCount()); ++row) {
            for (const int role : {int(Qt::DisplayRole), int(Model::SecondRole), int(Model::StateRole)})
                static_cast<void>(list->index(row).data(role));
        }
        best = std::min(best, since.nsecsElapsed());
    }
    EXPECT_LT(best, 16'000'000) << "nanoseconds";
}

} // namespace withy::ui
