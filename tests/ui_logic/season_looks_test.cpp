// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/models/booking_groups.h"
#include "ui/logic/season_looks.h"

#include <QFile>

namespace withy::ui {

namespace {

class Looks : public LogicTest {
protected:
    [[nodiscard]] SeasonLook of(const QString& path) {
        QSettings settings(at("settings.ini"), QSettings::IniFormat);
        return SeasonLooks(settings).of(path);
    }

    void keep(const QString& path, const SeasonLook& look) {
        QSettings settings(at("settings.ini"), QSettings::IniFormat);
        SeasonLooks(settings).keep(path, look);
    }
};

const SeasonLook atTheStems{QStringLiteral("go.bookings"), Id<model::Booking>(7), QStringLiteral("stems"),
                            QStringLiteral("owed")};
const SeasonLook inTheGarden{QStringLiteral("go.garden"), std::nullopt, {}, {}};

} // namespace

TEST_F(Looks, AreThoseOfTheFileWhateverLinksLeadToIt) {
    QFile file(at("a, b.withy"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_TRUE(QFile::link(at("a, b.withy"), at("link.withy")));
    EXPECT_EQ(of(at("a, b.withy")), SeasonLook());
    keep(at("link.withy"), atTheStems);
    keep(at("c.withy"), inTheGarden);
    EXPECT_EQ(of(at("a, b.withy")), atTheStems);
    EXPECT_EQ(of(at("c.withy")), inTheGarden);
    keep(at("a, b.withy"), inTheGarden);
    EXPECT_EQ(of(at("a, b.withy")), inTheGarden);
    EXPECT_EQ(of(at("d.withy")), SeasonLook());
}

TEST_F(Looks, OfSeasonsLongGoneAreForgotten) {
    for (int i = 0; i <= SeasonLooks::most; ++i)
        keep(folder.filePath(QString::number(i)), atTheStems);
    EXPECT_EQ(of(at("0")), SeasonLook());
    EXPECT_EQ(of(at("1")), atTheStems);
}

TEST_F(Looks, WhatIsNoLookAtAllIsPassedOver) {
    QSettings settings(at("settings.ini"), QSettings::IniFormat);
    settings.setValue(QStringLiteral("seasonLooks/size"), QStringLiteral("many"));
    settings.setValue(QStringLiteral("seasonLooks/1/path"), at("a.withy"));
    settings.setValue(QStringLiteral("seasonLooks/1/booking"), QStringLiteral("-9000000000000000000000"));
    settings.sync();
    EXPECT_EQ(of(at("a.withy")), SeasonLook());
    settings.setValue(QStringLiteral("seasonLooks/size"), 2000000000);
    settings.sync();
    EXPECT_EQ(of(at("a.withy")), SeasonLook());
    keep(at("a.withy"), atTheStems);
    EXPECT_EQ(of(at("a.withy")), atTheStems);
}

TEST_F(Looks, TheOrderOfTheListHasItsWord) {
    for (const auto sort : {BookingSort::date, BookingSort::name, BookingSort::standing, BookingSort::owed})
        EXPECT_EQ(sortOf(sortWord(sort)), sort);
    EXPECT_FALSE(sortOf(QStringLiteral("by the moon")));
    EXPECT_FALSE(sortOf({}));
}

} // namespace withy::ui
