// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/season_text.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/backup_keeper.h"
#include "ui/logic/edits.h"

#include <QFile>

namespace withy::ui {

class BackupKeeping : public LogicTest {
protected:
    void SetUp() override {
        bench_ = benchOn(demoSeason());
        anotherKeeper();
    }

    /// As at the next start of the program.
    void anotherKeeper() {
        keeper_.reset();
        keeper_ =
            std::make_unique<BackupKeeper>(at("a.withy"), BackupHabit{backups_, [this] { return now_; }, 3});
        QObject::connect(keeper_.get(), &BackupKeeper::made, [this] { ++made_; });
        QObject::connect(keeper_.get(), &BackupKeeper::failed, [this](const QString& s) { said_ << s; });
        QObject::connect(bench_.get(), &Workbench::changed, keeper_.get(), &BackupKeeper::seasonChanged);
    }

    void edit() {
        const auto line = bench_->season().lines.begin()->id;
        ASSERT_EQ(bench_->apply(edits::setPieces(bench_->season(), line, ++pieces_)), QString());
    }

    QString backups_ = at("data/backups");
    QDateTime now_ = QDateTime(QDate(2027, 6, 1), QTime(9, 0)); // noon is far from it in every zone
    std::int64_t pieces_ = 1000;
    int made_ = 0;
    QStringList said_;
    std::unique_ptr<Workbench> bench_;
    std::unique_ptr<BackupKeeper> keeper_;
};

TEST_F(BackupKeeping, OneAtTheFirstOpeningOfADay) {
    keeper_->seasonOpened();
    ASSERT_TRUE(eventually([&] { return made_ == 1; }));
    now_ = now_.addSecs(3600);
    anotherKeeper();
    keeper_->seasonOpened();
    keeper_->finish();
    EXPECT_EQ(made_, 1) << "there is one of today";
    now_ = now_.addDays(1);
    anotherKeeper();
    keeper_->seasonOpened();
    keeper_->finish();
    EXPECT_EQ(made_, 2);
    EXPECT_EQ(keeper_->list().size(), 2u);
    EXPECT_EQ(keeper_->list().front().at, now_.toUTC());
}

TEST_F(BackupKeeping, OneWhenTheSeasonIsLeftChanged) {
    keeper_->seasonOpened();
    keeper_->finish();
    EXPECT_EQ(made_, 1);
    edit();
    now_ = now_.addSecs(600);
    bench_.reset();
    keeper_.reset(); // as when the window closes
    EXPECT_EQ(made_, 2);
    const auto newest = store::Backups(backups_).list(at("a.withy")).front();
    EXPECT_EQ(newest.at, now_.toUTC());
    const auto read = store::SeasonFile::open(newest.path, store::SeasonFile::Mode::read);
    EXPECT_EQ(read.season().lines.begin()->pieces.value, pieces_);
}

TEST_F(BackupKeeping, EveryFewHoursOfALongSessionWhileItChanges) {
    keeper_->seasonOpened();
    ASSERT_TRUE(eventually([&] { return made_ == 1; }));
    edit();
    now_ = now_.addSecs(2 * 3600);
    keeper_->lookAround();
    now_ = now_.addSecs(3600);
    keeper_->lookAround();
    ASSERT_TRUE(eventually([&] { return made_ == 2; }));
    now_ = now_.addSecs(9 * 3600);
    keeper_->lookAround();
    keeper_->finish();
    EXPECT_EQ(made_, 2) << "nothing changed since";
}

TEST_F(BackupKeeping, FailureIsSaidOnceAndTheSeasonGoesOn) {
    QFile(at("data")).open(QIODevice::WriteOnly); // a file where the folder should go
    keeper_->seasonOpened();
    ASSERT_TRUE(eventually([&] { return said_.size() == 1; }));
    EXPECT_TRUE(said_.front().contains(QStringLiteral("No backup"))) << said_.front().toStdString();
    EXPECT_TRUE(said_.front().contains(QStringLiteral("season itself is kept")));
    edit();
    now_ = now_.addSecs(4 * 3600);
    keeper_->lookAround();
    keeper_->finish();
    EXPECT_EQ(said_.size(), 1);
    EXPECT_EQ(made_, 0);
    QFile::remove(at("data"));
    edit();
    keeper_->finish();
    EXPECT_EQ(made_, 1);
}

TEST_F(BackupKeeping, OfOneDayTheNewestStays) {
    keeper_->seasonOpened();
    keeper_->finish();
    edit();
    now_ = now_.addSecs(60);
    keeper_->finish();
    EXPECT_EQ(keeper_->list().size(), 1u);
}

TEST_F(BackupKeeping, ABackupOfTheSameDayIsRestoredAndOpened) {
    const auto before = exchange::exportSeason(bench_->season());
    keeper_->seasonOpened();
    keeper_->finish();
    edit();
    const auto after = exchange::exportSeason(bench_->season());
    EXPECT_NE(before, after);
    const auto wanted = keeper_->list().front();
    const QString path = bench_->path();
    EXPECT_FALSE(restoreSeason(path, wanted, at("data"), now_).file) << "not while it is open";
    now_ = now_.addSecs(60);
    keeper_->leave(); // a last backup here would thin out the one that is wanted
    bench_.reset();
    auto out = restoreSeason(path, wanted, at("data"), now_);
    ASSERT_TRUE(out.file) << out.sentence.toStdString();
    EXPECT_EQ(exchange::exportSeason(out.file->season()), before);
    EXPECT_FALSE(out.sentence.isEmpty()) << "says where the present file went";
}

} // namespace withy::ui
