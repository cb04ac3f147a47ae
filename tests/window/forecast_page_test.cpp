// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_plan.h"
#include "tests/window/place_fixture.h"
#include "ui/common/figure.h"
#include "ui/common/finding_rows.h"
#include "ui/garden/forecast_page.h"
#include "ui/garden/garden_place.h"
#include "ui/garden/weather_import.h"
#include "ui/logic/edits/walk_edits.h"
#include "ui/logic/models/forecast_rows.h"

#include <QClipboard>
#include <QComboBox>
#include <QPushButton>
#include <QTableView>

#include <cmath>

namespace withy::ui {

class ForecastView : public PlaceTest {
protected:
    void begin(const model::Season& season) {
        openPlace<GardenPlace>(season);
        show("page.garden.forecast");
        page_ = in<ForecastPage>("garden.forecast");
    }

    ForecastPage* page_ = nullptr;
};

TEST_F(ForecastView, PatchesStandInWalkingOrderWithTheirFigures) {
    begin(demoSeason());
    const auto& rows = page_->rows();
    ASSERT_EQ(rows.rowCount(), static_cast<int>(held().patches.size()));
    for (int r = 0; r < rows.rowCount(); ++r) {
        const auto& outlook = bench_->plan().garden->patches.at(rows.at(r).patch);
        SCOPED_TRACE(rows.at(r).name.toStdString());
        if (!outlook.forecast) continue;
        EXPECT_EQ(QString(rows.at(r).stems).remove(QLatin1Char(',')).toLongLong(),
                  std::llround(outlook.forecast->expected));
        EXPECT_EQ(rows.at(r).early, earlyWords(outlook.daysEarly));
        EXPECT_EQ(rows.at(r).curve.likely.size(),
                  outlook.forecast->days.size() +
                      static_cast<std::size_t>(outlook.forecast->from - rows.at(r).curve.from));
    }
}

TEST_F(ForecastView, TheLeadOpensItsWorking) {
    begin(demoSeason());
    ASSERT_TRUE(bench_->plan().garden->lead) << "the demo season has weather";
    auto* lead = in<FigureButton>("garden.forecast.lead");
    EXPECT_EQ(lead->text(), leadFigure(bench_->plan()));
    EXPECT_TRUE(answer().contains(leadFigure(bench_->plan()))) << answer().toStdString();
    QTest::keyClick(lead, Qt::Key_Return);
    EXPECT_TRUE(in<QWidget>("garden.forecast.lead_working")->isVisible());
}

TEST_F(ForecastView, WithoutWeatherTheCalendarStandsAndItIsSaid) {
    auto season = demoSeason();
    for (const auto& w : demoSeason().weather)
        season.weather.erase(w.id);
    for (const auto& n : demoSeason().monthNormals)
        season.monthNormals.erase(n.id);
    begin(season);
    EXPECT_TRUE(answer().contains(QStringLiteral("the calendar stands"))) << answer().toStdString();
    EXPECT_FALSE(in<FigureButton>("garden.forecast.lead")->isVisible());
    bool said = false;
    for (const auto& listed : in<FindingRows>("garden.forecast.findings")->findings())
        said = said || listed.finding.code == plan::FindingCode::noNormals;
    EXPECT_TRUE(said);
}

TEST_F(ForecastView, AWalkMovesTheRowWhileThePageIsSeen) {
    begin(demoSeason());
    int row = 0;
    while (row < page_->rows().rowCount() && page_->rows().at(row).today.toInt() < 20)
        ++row;
    ASSERT_LT(row, page_->rows().rowCount());
    const auto before = page_->rows().at(row).stems;
    const auto patch = page_->rows().at(row).patch;
    const auto few = page_->rows().at(row).today.toInt() / 4;
    ASSERT_TRUE(bench_
                    ->apply(edits::setWalkCount(held(), *Day::fromYmd(2027, 9, 6), patch,
                                                edits::WalkCount::readyNow, Stems(few)))
                    .isEmpty());
    bench_->waitForPlan();
    EXPECT_NE(page_->rows().at(row).stems, before);
    EXPECT_LT(page_->rows().at(row).today.toInt(), few * 4);
}

TEST_F(ForecastView, AnEmptyGardenSaysSo) {
    begin(emptySeason(2027));
    EXPECT_TRUE(answer().contains(QStringLiteral("No patch yet"))) << answer().toStdString();
    EXPECT_EQ(page_->rows().rowCount(), 0);
}

TEST_F(ForecastView, ThePatchIsOneButtonAway) {
    begin(demoSeason());
    press("garden.forecast.facts");
    ASSERT_TRUE(led_);
    EXPECT_EQ(led_->table, model::TableKind::patches);
    press("garden.forecast.walk");
    EXPECT_TRUE(in<QWidget>("garden.walk_entry")->isVisible());
    show("page.garden.forecast");
    press("garden.forecast.sheet");
    EXPECT_TRUE(in<QWidget>("garden.walk_sheet")->isVisible());
}

class StationWeather : public PlaceTest {
protected:
    WeatherImport* paste(const char* text) {
        QApplication::clipboard()->setText(QString::fromUtf8(text));
        show("garden.weather.copied");
        return bare_->findChild<WeatherImport*>();
    }

    static void choose(WeatherImport* import, const char* name, int index) {
        import->findChild<QComboBox*>(QStringLiteral("garden.weather.import.%1").arg(QLatin1String(name)))
            ->setCurrentIndex(index);
    }

    static QPushButton* takeOf(WeatherImport* import) {
        return import->findChild<QPushButton*>(QStringLiteral("garden.weather.import.take"));
    }
};

TEST_F(StationWeather, CopiedRowsAreShownFirstAndReadInAsOneStep) {
    openPlace<GardenPlace>(emptySeason(2027));
    auto* import = paste("date\thigh\tlow\n2027-05-01\t63\t39\n2027-05-02\t66\t43\n2027-05-05\t59\t41\n");
    ASSERT_NE(import, nullptr);
    EXPECT_TRUE(import->troubles().contains(QStringLiteral("Missing in between")))
        << import->troubles().toStdString();
    choose(import, "unit", 1);
    EXPECT_FALSE(import->troubles().contains(QStringLiteral("Fahrenheit")))
        << import->troubles().toStdString();
    QTest::mouseClick(takeOf(import), Qt::LeftButton);
    ASSERT_EQ(held().weather.size(), 3u);
    EXPECT_NEAR(held().weather.begin()->maxCelsius, 17.22, 0.001); // (63 - 32) / 1.8
    EXPECT_TRUE(said_.contains(QStringLiteral("3 days"))) << said_.toStdString();
    EXPECT_TRUE(bench_->undo().isEmpty());
    EXPECT_TRUE(held().weather.empty());
}

TEST_F(StationWeather, NothingIsTakenWithoutAllThreeColumnsAndLeavingChangesNothing) {
    openPlace<GardenPlace>(emptySeason(2027));
    auto* import = paste("2027-05-01;4;17\n2027-05-02;6;19\n");
    ASSERT_NE(import, nullptr);
    EXPECT_TRUE(takeOf(import)->isEnabled());
    choose(import, "minimum", 0);
    EXPECT_FALSE(takeOf(import)->isEnabled());
    EXPECT_FALSE(import->summary().isEmpty());
    choose(import, "minimum", 3);
    EXPECT_FALSE(takeOf(import)->isEnabled()) << "one column twice";
    QTest::keyClick(import, Qt::Key_Escape);
    EXPECT_TRUE(held().weather.empty());
    QApplication::clipboard()->setText(QString());
    show("garden.weather.copied");
    EXPECT_FALSE(refused_.isEmpty());
}

} // namespace withy::ui
