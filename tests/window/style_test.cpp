// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style.h"

#include "tests/window/page_walk.h"
#include "tests/window/window_fixture.h"
#include "ui/bookings/brief_tab.h"
#include "ui/common/field_edit.h"
#include "ui/common/style/looks.h"
#include "ui/common/style/mnemonics.h"
#include "ui/shell/strip/bloom_strip.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace withy::ui {

namespace {

class StyleTest : public WindowTest {
protected:
    void TearDown() override { applyStyle(Theme::light, 10.5); }
};

/// How many pixels of the widget's picture are of that colour.
int pixelsOf(QWidget& widget, Role role) {
    const QImage picture = widget.grab().toImage();
    const QRgb wanted = currentPalette().of(role).rgb();
    int count = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            count += picture.pixel(x, y) == wanted;
    return count;
}

class PaintCount : public QObject {
public:
    bool eventFilter(QObject*, QEvent* event) override {
        count += event->type() == QEvent::Paint ? 1 : 0;
        return false;
    }

    int count = 0;
};

} // namespace

TEST_F(StyleTest, EveryLookAPageAsksForIsOneOfTheTable) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    int looks = 0;
    for (const auto* w : window_->findChildren<QWidget*>()) {
        const auto look = w->property("look");
        if (!look.isValid() || look.toString().isEmpty()) continue;
        ++looks;
        EXPECT_NE(lookOf(w), Look::plain)
            << w->metaObject()->className() << " asks for " << look.toString().toStdString();
    }
    EXPECT_GT(looks, 100);
}

TEST_F(StyleTest, ControlsGrowWithTheText) {
    const auto heights = [](double points) {
        applyStyle(Theme::light, points);
        QPushButton button(QStringLiteral("Keep"));
        QLineEdit field;
        QCheckBox box(QStringLiteral("Kept"));
        for (QWidget* w : std::initializer_list<QWidget*>{&button, &field, &box})
            w->ensurePolished();
        return std::array{button.sizeHint().height(), field.sizeHint().height(), box.sizeHint().height()};
    };
    const auto usual = heights(10.5);
    const auto large = heights(15.75);
    for (std::size_t i = 0; i < usual.size(); ++i)
        EXPECT_GT(large[i], 1.25 * usual[i]) << "control " << i;
}

TEST_F(StyleTest, AFieldIsPlainTextUntilOneGoesToItAndSaysWhenItIsWrong) {
    applyStyle(Theme::light, 10.5);
    QWidget window;
    QPushButton other(QStringLiteral("Other"), &window);
    QLineEdit field(&window);
    field.setProperty("look", QStringLiteral("field"));
    field.setGeometry(0, 40, 200, 32);
    window.resize(220, 100);
    window.show();
    QApplication::setActiveWindow(&window);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    other.setFocus();
    EXPECT_EQ(pixelsOf(field, Role::sheet), 0);
    EXPECT_EQ(pixelsOf(field, Role::edge), 0);
    field.setFocus();
    EXPECT_GT(pixelsOf(field, Role::sheet), 100);
    EXPECT_GT(pixelsOf(field, Role::green), 100);
}

TEST_F(StyleTest, AFieldInUseIsPaintedAnewWhenWhatIsTypedIsWrong) {
    applyStyle(Theme::light, 10.5);
    Workbench bench(store::SeasonFile::create(folder_.filePath(QStringLiteral("wrong.withy")), demoSeason()),
                    std::nullopt);
    FieldEdit budget(bench, model::TableKind::bookings, "budget");
    budget.show(bench.season().bookings.begin()->id.value);
    budget.QWidget::show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&budget));
    budget.control()->clearFocus();
    budget.setTyped(QStringLiteral("about ninety"));
    QApplication::processEvents();
    EXPECT_EQ(pixelsOf(*budget.control(), Role::osier), 0);
    PaintCount paints;
    budget.control()->installEventFilter(&paints);
    EXPECT_FALSE(budget.commit());
    QApplication::processEvents();
    EXPECT_GT(paints.count, 0);
    EXPECT_GT(pixelsOf(*budget.control(), Role::osier), 20);
}

TEST_F(StyleTest, PicturesTakeTheInkOfAnotherTheme) {
    open(demoSeason(), Day::fromYmd(2027, 9, 6));
    const auto picture = [this](const char* words) {
        for (const auto* label : window_->findChildren<QLabel*>())
            if (label->accessibleName() == QLatin1String(words)) return label->pixmap().toImage();
        return QImage();
    };
    auto* back = find<QPushButton>("designs.back");
    const auto caution = picture("Caution");
    const auto arrow = back->icon().pixmap(16).toImage();
    ASSERT_FALSE(caution.isNull());
    applyStyle(Theme::dark, 10.5);
    EXPECT_TRUE(picture("Caution") != caution);
    EXPECT_TRUE(back->icon().pixmap(16).toImage() != arrow);
}

TEST_F(StyleTest, AnotherThemeReachesWhatIsOnScreenAlready) {
    applyStyle(Theme::light, 10.5);
    QPushButton button(QStringLiteral("Keep"));
    button.setProperty("look", QStringLiteral("main"));
    button.show();
    const QRgb light = currentPalette().of(Role::green).rgb();
    ASSERT_GT(pixelsOf(button, Role::green), 100);
    applyStyle(Theme::dark, 10.5);
    ASSERT_NE(currentPalette().of(Role::green).rgb(), light);
    EXPECT_GT(pixelsOf(button, Role::green), 100);
}

TEST_F(StyleTest, TheFirstPictureWaitsForNoPageAndTheRestComesByItself) {
    auto file = store::SeasonFile::create(folder_.filePath(QStringLiteral("start.withy")), demoSeason());
    MainWindow window(Day::fromYmd(2027, 9, 6));
    window.showSeason(std::make_unique<Workbench>(std::move(file), Day::fromYmd(2027, 9, 6)));
    EXPECT_FALSE(window.findChild<BriefTab*>()) << "made before anything was seen";
    EXPECT_FALSE(window.bench().planIsCurrent());
    EXPECT_FALSE(window.bench().bookingsAreCurrent()) << "no plan is there yet";
    window.show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.findChild<BriefTab*>() != nullptr; }, 10000));
    EXPECT_TRUE(QTest::qWaitFor([&] { return window.bench().planIsCurrent(); }, 20000));
    EXPECT_FALSE(window.view()->strip().figures().bands.empty());
    bool complete = false;
    QObject::connect(window.view(), &SeasonView::complete, [&] { complete = true; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return complete; }, 30000));
}

/// As painted: a line under the letter while Alt is held, and only then.
TEST_F(StyleTest, LettersOfAltAreUnderlinedWhileItIsHeld) {
    QPushButton button(QStringLiteral("&Keep"));
    button.resize(200, 40);
    button.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&button));
    const auto picture = [&] { return button.grab().toImage(); };
    const auto plain = picture();
    QTest::keyPress(&button, Qt::Key_Alt);
    EXPECT_TRUE(Mnemonics::areShown());
    EXPECT_NE(picture(), plain);
    QTest::keyRelease(&button, Qt::Key_Alt);
    EXPECT_FALSE(Mnemonics::areShown());
    EXPECT_EQ(picture(), plain);
}

} // namespace withy::ui
