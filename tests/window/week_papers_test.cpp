// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/page_walk.h"
#include "tests/window/place_fixture.h"
#include "ui/diary/diary_place.h"
#include "ui/diary/week_papers_page.h"
#include "ui/print/paper_desk.h"
#include "ui/print/paper_view.h"

#include <QFile>
#include <QRadioButton>

namespace withy::ui {

class WeekPapers : public PlaceTest {
protected:
    WeekPapersPage* open() {
        openPlace<DiaryPlace>(demoSeason());
        show("page.diary.papers");
        settle();
        return bare_->findChild<WeekPapersPage*>();
    }
};

TEST_F(WeekPapers, TheBoardIsOfTheWeekInView) {
    auto* page = open();
    ASSERT_NE(page, nullptr);
    EXPECT_EQ(page->monday(), *Day::fromYmd(2027, 9, 6)) << "the first week with work from today on";
    auto& view = page->desk().view();
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("Mon 6 Sep to Sun 12 Sep")));
    press("diary.papers.later");
    settle();
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("Mon 13 Sep to Sun 19 Sep")))
        << view.accessibleDescription().toStdString();
    press("diary.papers.earlier");
    press("diary.papers.earlier");
    settle();
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("Mon 30 Aug to Sun 5 Sep")));
}

TEST_F(WeekPapers, TheHelpersHaveASheetEach) {
    auto* page = open();
    page->desk().choose(PaperKind::helperSheet);
    settle();
    EXPECT_TRUE(page->desk().view().accessibleDescription().contains(QStringLiteral("Wilf")));
    EXPECT_TRUE(page->desk().view().accessibleDescription().contains(QStringLiteral("Whom to ask")));
}

TEST_F(WeekPapers, TheCalendarFileIsWrittenOrSaysWhyNot) {
    auto* page = open();
    const auto path = folder_.filePath(QStringLiteral("season.ics"));
    EXPECT_EQ(page->writeCalendarTo(path), QString());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto text = file.readAll();
    EXPECT_TRUE(text.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_TRUE(text.contains("SUMMARY:Library roof supper\r\n"));
    EXPECT_FALSE(page->writeCalendarTo(QStringLiteral("/no/such/folder/season.ics")).isEmpty());
}

} // namespace withy::ui
