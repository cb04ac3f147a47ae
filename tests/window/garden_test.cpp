// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/large_seasons.h"
#include "tests/window/place_fixture.h"
#include "ui/common/blocked_notice.h"
#include "ui/common/record_form.h"
#include "ui/garden/catalogue_field.h"
#include "ui/garden/garden_place.h"
#include "ui/logic/edits/garden_edits.h"

#include <QClipboard>
#include <QElapsedTimer>

namespace withy::ui {

namespace {

const model::Plant* plantNamed(const model::Season& season, const std::string& name) {
    for (const auto& p : season.plants) {
        if (p.name == name) return &p;
    }
    return nullptr;
}

/// The season with `n` plants more.
} // namespace

class Garden : public PlaceTest {
protected:
    void takeFromCatalogue(const char* words) {
        auto* field = in<CatalogueField>("garden.plants.catalogue");
        field->setFocus();
        QTest::keyClicks(field, QString::fromUtf8(words));
        QTest::keyClick(field, Qt::Key_Return);
        QTest::qWait(10);
    }
};

TEST_F(Garden, APlantIsTakenFromTheCatalogueByTyping) {
    openPlace<GardenPlace>(emptySeason(2027));
    show("garden.plants.add");
    takeFromCatalogue("ammi");
    ASSERT_EQ(held().plants.size(), 1u);
    EXPECT_EQ(held().plants.begin()->name, "Ammi");
    EXPECT_GT(held().plantFacts.size(), 10u);
    EXPECT_EQ(in<RecordTable>("garden.plants.table")->chosenId(), held().plants.begin()->id.value);
    EXPECT_TRUE(bench_->undo().isEmpty());
    EXPECT_TRUE(held().plants.empty() && held().plantFacts.empty()) << "one step, one undo";
}

TEST_F(Garden, ANameTheCatalogueHasNotMakesAPlantOfOnesOwn) {
    openPlace<GardenPlace>(emptySeason(2027));
    show("garden.plants.add");
    takeFromCatalogue("Gran's blue thing");
    ASSERT_NE(plantNamed(held(), "Gran's blue thing"), nullptr);
    EXPECT_TRUE(held().plantFacts.empty());
}

TEST_F(Garden, AFactTypedInIsMine) {
    openPlace<GardenPlace>(demoSeason());
    show("page.garden.plants");
    auto* table = in<RecordTable>("garden.plants.table");
    const auto id = *table->chosenId();
    auto* life = in<RecordForm>("garden.plants.form")->field("vase_life_min_days");
    ASSERT_NE(life, nullptr);
    life->control()->setFocus();
    life->setTyped(QStringLiteral("6"));
    QTest::keyClick(life->control(), Qt::Key_Return);
    EXPECT_EQ(held().plants.find(Id<model::Plant>(id))->vaseLifeMinDays, 6.0);
    for (const auto& f : held().plantFacts) {
        EXPECT_TRUE(f.plant.value != id || f.fact != "vase_life_min_days" || f.basis == Basis::mine);
    }
}

TEST_F(Garden, BadFactsAreSaidBesideTheFieldAndNothingIsLost) {
    openPlace<GardenPlace>(demoSeason());
    show("page.garden.plants");
    const auto* form = in<RecordForm>("garden.plants.form");

    struct Case {
        const char* field;
        const char* typed;
    };

    const Case cases[] = {{"vase_life_min_days", "soon"},
                          {"vase_life_min_days", "-3"},
                          {"colour_1", "no colour at all"},
                          {"stem_length_max", "1"},
                          {"q10", "99"},
                          {"bunch", "2.5"}};
    for (const auto& c : cases) {
        SCOPED_TRACE(std::string(c.field) + " " + c.typed);
        auto* field = form->field(c.field);
        const auto before = field->typed();
        field->control()->setFocus();
        field->setTyped(QString::fromUtf8(c.typed));
        QTest::keyClick(field->control(), Qt::Key_Return);
        EXPECT_FALSE(field->sentence().isEmpty());
        EXPECT_EQ(field->typed().toStdString(), c.typed) << "the words stay";
        QTest::keyClick(field->control(), Qt::Key_Escape);
        EXPECT_EQ(field->typed(), before);
    }
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(Garden, NamesAreShownAsTyped) {
    openPlace<GardenPlace>(emptySeason(2027));
    show("garden.plants.add");
    const QString odd = QString::fromUtf8("<b>Réséda</b> 🌻 عيد & co");
    Q_EMIT in<CatalogueField>("garden.plants.catalogue")->named(odd);
    ASSERT_EQ(held().plants.size(), 1u);
    EXPECT_EQ(held().plants.begin()->name, odd.toStdString());
    const auto longName = QString(10000, QLatin1Char('x'));
    Q_EMIT in<CatalogueField>("garden.plants.catalogue")->named(longName);
    EXPECT_EQ(held().plants.size(), 1u);
    EXPECT_FALSE(refused_.isEmpty());
}

TEST_F(Garden, PatchesAreAddedByTypingAndReorderedByKeys) {
    openPlace<GardenPlace>(seasonOfPlants(7));
    show("page.garden.patches");
    auto* table = in<RecordTable>("garden.patches.table");
    typeInto(table, 0, "label", QStringLiteral("Long border"));
    typeInto(table, 0, "plant", QStringLiteral("Zinnia, shade 7"));
    ASSERT_EQ(held().patches.size(), 1u);
    typeInto(table, 1, "label", QStringLiteral("Wall bed"));
    typeInto(table, 1, "plant", QStringLiteral("Foliage, shade 1"));
    ASSERT_EQ(held().patches.size(), 2u);
    table->setCurrentIndex(table->records().index(1, 0));
    QTest::keyClick(table, Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(table->records().idAt(0), 2);
    EXPECT_TRUE(answer().startsWith(QStringLiteral("2 patches of 2 plants"))) << answer().toStdString();
}

TEST_F(Garden, APlantInUseIsNotTakenOutAndItIsSaidByWhom) {
    openPlace<GardenPlace>(demoSeason());
    show("page.garden.plants");
    auto* table = in<RecordTable>("garden.plants.table");
    std::int64_t used = 0;
    for (const auto& patch : held().patches)
        used = patch.plant.value;
    table->choose(used);
    const auto before = held().plants.size();
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_EQ(held().plants.size(), before);
    BlockedNotice* notice = nullptr;
    for (auto* n : bare_->findChildren<BlockedNotice*>()) {
        if (n->isVisible()) notice = n;
    }
    ASSERT_NE(notice, nullptr);
    EXPECT_FALSE(notice->sentence().isEmpty());
}

TEST_F(Garden, ANewWalkIsABlankRowForEachPatch) {
    openPlace<GardenPlace>(demoSeason());
    show("page.garden.walks");
    const auto before = held().walks.size();
    press("garden.walks.today_button");
    EXPECT_EQ(held().walks.size(), before + held().patches.size());
    auto* table = in<RecordTable>("garden.walks.table");
    EXPECT_EQ(table->records().idAt(0), static_cast<std::int64_t>(before) + 1) << "newest first";
    typeInto(table, 0, "ready_now", QStringLiteral("46"));
    EXPECT_EQ(held().walks.find(Id<model::Walk>(*table->records().idAt(0)))->readyNow, Stems(46));
    press("garden.walks.today_button");
    EXPECT_FALSE(said_.isEmpty()) << "every patch has its row";
}

TEST_F(Garden, WeatherIsPastedFromASpreadsheet) {
    openPlace<GardenPlace>(emptySeason(2027));
    show("page.garden.weather");
    auto* table = in<RecordTable>("garden.weather.table");
    table->setFocus();
    table->setCurrentIndex(table->records().index(0, 0));
    QApplication::clipboard()->setText(
        QStringLiteral("2027-05-01\t4\t17\tmeasured\n2027-05-02\t6\t19\tforecast\n"));
    QTest::keySequence(table, QKeySequence::Paste);
    EXPECT_EQ(held().weather.size(), 2u);
    QApplication::clipboard()->setText(QStringLiteral("Supper\tjar\n"));
    table->setCurrentIndex(table->records().index(2, 0));
    QTest::keySequence(table, QKeySequence::Paste);
    EXPECT_EQ(held().weather.size(), 2u) << "the wrong table changes nothing";
    EXPECT_FALSE(refused_.isEmpty());
}

TEST_F(Garden, TwoThousandPlantsAreFiltered) {
    openPlace<GardenPlace>(seasonOfPlants(2000));
    show("page.garden.plants");
    auto* find = in<QLineEdit>("garden.plants.find");
    auto& records = in<RecordTable>("garden.plants.table")->records();
    find->setFocus();
    QTest::keyClicks(find, QStringLiteral("z")); // the keys of all rows are made once
    qint64 slowest = 0;
    for (const QChar c : QStringLiteral("innia")) {
        QElapsedTimer timer;
        timer.start();
        QTest::keyClick(find, static_cast<char>(c.toLatin1()));
        slowest = std::max(slowest, timer.elapsed());
    }
    EXPECT_EQ(records.rowCount(), 2000 / 7);
    RecordProperty("slowest_key_ms", static_cast<int>(slowest));
    find->setText(QStringLiteral("no such plant"));
    EXPECT_EQ(records.rowCount(), 0);
}

TEST_F(Garden, LeadsToWhatBelongsHereOnly) {
    openPlace<GardenPlace>(demoSeason());
    const auto patch = held().patches.begin()->id.value;
    EXPECT_TRUE(place_->goTo({model::TableKind::patches, patch}));
    EXPECT_EQ(in<RecordTable>("garden.patches.table")->chosenId(), patch);
    EXPECT_TRUE(place_->goTo({model::TableKind::plants, held().plants.begin()->id.value}));
    EXPECT_FALSE(place_->goTo({model::TableKind::bookings, held().bookings.begin()->id.value}));
    EXPECT_FALSE(place_->goTo({model::TableKind::patches, 99999}));
}

} // namespace withy::ui
