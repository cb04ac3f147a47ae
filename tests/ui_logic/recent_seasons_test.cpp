// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/recent_seasons.h"

#include <QFile>

namespace withy::ui {

class Recent : public LogicTest {
protected:
    QString made(const char* name) {
        QFile file(at(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        return at(name);
    }

    /// The file names, newest first.
    std::string words() {
        std::string all;
        for (const auto& path : recent_.there())
            all += QFileInfo(path).fileName().toStdString() + ' ';
        return all;
    }

    QSettings settings_{at("settings.ini"), QSettings::IniFormat};
    RecentSeasons recent_{settings_};
};

TEST_F(Recent, NewestFirstAndEachOnce) {
    EXPECT_EQ(words(), "");
    recent_.add(made("a"));
    recent_.add(made("b, c")); // a comma stays within its name
    recent_.add(at("a"));
    EXPECT_EQ(words(), "a b, c ");
    ASSERT_TRUE(QFile::link(at("b, c"), at("link")));
    recent_.add(at("link"));
    EXPECT_EQ(words(), "b, c a ");
    settings_.sync();
    QSettings again(at("settings.ini"), QSettings::IniFormat);
    EXPECT_EQ(RecentSeasons(again).there().size(), 2);
}

TEST_F(Recent, OneThatIsGoneComesBackWithItsDisk) {
    recent_.add(made("a"));
    recent_.add(made("b"));
    QFile::remove(at("a"));
    EXPECT_EQ(words(), "b ");
    made("a");
    EXPECT_EQ(words(), "b a ");
}

TEST_F(Recent, TenAtMost) {
    for (char name = 'a'; name <= 'n'; ++name)
        recent_.add(made(std::string(1, name).c_str()));
    EXPECT_EQ(words(), "n m l k j i h g f e ");
}

TEST_F(Recent, SettingsOfAnotherShapeDoNoHarm) {
    settings_.setValue(QStringLiteral("recentSeasons"), 7.5);
    EXPECT_LE(recent_.there().size(), 1);
    recent_.add(made("a"));
    EXPECT_EQ(recent_.there().front(), at("a"));
}

} // namespace withy::ui
