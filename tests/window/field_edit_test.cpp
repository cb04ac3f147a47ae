// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "tests/support/season_text.h"
#include "tests/window/window_fixture.h"
#include "ui/common/field_edit.h"
#include "ui/common/record_form.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QCheckBox>
#include <QColorDialog>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPointer>
#include <QPushButton>
#include <QVBoxLayout>

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

using model::TableKind;
using testing::HasSubstr;

/// A form of one booking on a window of its own.
class FieldEditTest : public WindowTest {
protected:
    void SetUp() override {
        auto season = model::sample::season();
        season.bookings.put(model::sample::booking(1, "Library roof supper"));
        season.bookings.put(model::sample::booking(2, "Chapel rota"));
        model::Client client;
        client.id = Id<model::Client>(1);
        client.name = "Marrowby Library Friends";
        season.clients.put(client);
        season.plants.put(model::sample::plant(1, "Zinnia, coral"));
        bench = std::make_unique<Workbench>(
            store::SeasonFile::create(folder_.filePath(QStringLiteral("f.withy")), season), std::nullopt);
        host = std::make_unique<QWidget>();
        auto* box = new QVBoxLayout(host.get());
        form =
            new RecordForm(*bench, TableKind::bookings,
                           {{QStringLiteral("Who and when"),
                             {"title", "client", "event_start", "event_end", "held_until", "kind"}},
                            {QStringLiteral("The flowers"), {"wishes", "must_not", "budget", "gift_share"}}});
        box->addWidget(form);
        elsewhere = new QPushButton(QStringLiteral("elsewhere"));
        box->addWidget(elsewhere);
        form->show(1);
        host->resize(900, 700);
        host->show();
        QApplication::setActiveWindow(host.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(host.get()));
    }

    FieldEdit& field(const char* name) {
        auto* found = form->field(name);
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }

    /// Selects all, types, and stays in the field.
    void typeInto(const char* name, const char* words) {
        auto* control = field(name).control();
        control->setFocus();
        QTest::keySequence(control, QKeySequence::SelectAll);
        QTest::keyClicks(control, QString::fromUtf8(words));
    }

    void enter(const char* name) { QTest::keyClick(field(name).control(), Qt::Key_Return); }

    const model::Booking& supper() { return *bench->season().bookings.find(Id<model::Booking>(1)); }

    std::string season() { return exchange::exportSeason(bench->season()); }

    std::unique_ptr<Workbench> bench;
    std::unique_ptr<QWidget> host;
    RecordForm* form = nullptr;
    QPushButton* elsewhere = nullptr;
};

} // namespace

TEST_F(FieldEditTest, EnterKeepsAndLeavingKeepsAndUndoPutsBack) {
    const auto before = season();
    typeInto("event_end", "11 sep 23:15");
    enter("event_end");
    EXPECT_EQ(supper().eventEnd, model::sample::at(2027, 9, 11, 23, 15));
    EXPECT_EQ(field("event_end").typed(), QStringLiteral("Sat 11 Sep 2027, 23:15"));
    typeInto("must_not", "lilies, dyed grass");
    elsewhere->setFocus();
    EXPECT_EQ(supper().mustNot, "lilies, dyed grass");
    EXPECT_EQ(edits::inWords(bench->undoName()), QStringLiteral("must not of Library roof supper"));
    bench->undo();
    bench->undo();
    EXPECT_EQ(season(), before);
    EXPECT_EQ(field("must_not").typed(), QString());
}

TEST_F(FieldEditTest, EscapePutsBack) {
    typeInto("title", "Something else");
    QTest::keyClick(field("title").control(), Qt::Key_Escape);
    EXPECT_EQ(field("title").typed(), QStringLiteral("Library roof supper"));
    elsewhere->setFocus();
    EXPECT_EQ(supper().title, "Library roof supper");
    EXPECT_FALSE(bench->canUndo());
}

TEST_F(FieldEditTest, BadInputSaysItsSentenceWhileTypingAndLosesNothing) {
    const auto before = season();
    typeInto("held_until", "31 sep");
    EXPECT_TRUE(QTest::qWaitFor([&] { return !field("held_until").sentence().isEmpty(); }, 3000));
    EXPECT_THAT(field("held_until").sentence().toStdString(), HasSubstr("There is no 31 sep"));
    EXPECT_EQ(field("held_until").control()->accessibleDescription(), field("held_until").sentence());
    elsewhere->setFocus();
    EXPECT_EQ(field("held_until").typed(), QStringLiteral("31 sep"));
    EXPECT_TRUE(field("held_until").isDirty());
    EXPECT_EQ(season(), before);
    // A change elsewhere in the record does not sweep it away.
    typeInto("budget", "90");
    enter("budget");
    EXPECT_EQ(supper().budget, Money{9000});
    EXPECT_EQ(field("held_until").typed(), QStringLiteral("31 sep"));
    typeInto("held_until", "30 sep");
    enter("held_until");
    EXPECT_EQ(field("held_until").sentence(), QString());
    EXPECT_EQ(supper().heldUntil, Day::fromYmd(2027, 9, 30));
}

TEST_F(FieldEditTest, RulesBetweenFieldsAreSaidBesideTheField) {
    typeInto("event_end", "11 sep 10:00");
    enter("event_end");
    EXPECT_EQ(field("event_end").sentence().toStdString(),
              "Sat 11 Sep, 10:00 is before the start, Sat 11 Sep, 18:30. Give a later end.");
    EXPECT_FALSE(bench->canUndo());
}

TEST_F(FieldEditTest, NothingIsLostWhenTheWindowClosesMidField) {
    typeInto("wishes", "like the hedge");
    EXPECT_TRUE(commitFocusedField(host.get()));
    EXPECT_EQ(supper().wishes, "like the hedge");
    typeInto("budget", "about ninety");
    EXPECT_FALSE(commitFocusedField(host.get()));
    EXPECT_EQ(field("budget").typed(), QStringLiteral("about ninety"));
    EXPECT_TRUE(field("budget").control()->hasFocus());
}

TEST_F(FieldEditTest, AnotherRecordTakesNothingOver) {
    typeInto("title", "Library supper");
    form->show(2);
    EXPECT_EQ(supper().title, "Library supper"); // it was typed for the first
    EXPECT_EQ(field("title").typed(), QStringLiteral("Chapel rota"));
    form->show(std::nullopt);
    EXPECT_EQ(field("title").typed(), QString());
    EXPECT_FALSE(field("title").control()->isEnabled());
    form->show(2);
    bench->apply(edits::eraseRecords(bench->season(), {{TableKind::bookings, 2}}));
    EXPECT_FALSE(field("title").control()->isEnabled());
}

TEST_F(FieldEditTest, OddTextIsKeptAndShownAsTyped) {
    auto* wishes = qobject_cast<QPlainTextEdit*>(field("wishes").control());
    ASSERT_NE(wishes, nullptr);
    for (const QString& odd :
         {QStringLiteral("<b>bold</b> & <img src=x> %1 \\n"), QStringLiteral("🌻🌾 👩‍🌾"),
          QStringLiteral("عيد ميلاد سعيد"), QString(10000, QLatin1Char('x'))}) {
        wishes->setFocus();
        wishes->setPlainText(odd); // pasted: the test library types Latin letters only
        EXPECT_TRUE(field("wishes").commit());
        EXPECT_EQ(text(supper().wishes), odd);
        EXPECT_EQ(wishes->toPlainText(), odd);
    }
    wishes->setPlainText(QString(10001, QLatin1Char('x')));
    EXPECT_FALSE(field("wishes").commit());
    EXPECT_EQ(field("wishes").sentence().toStdString(), "It is 10,001 characters long. Keep it to 10,000.");
    EXPECT_EQ(wishes->toPlainText().size(), 10001);
    field("wishes").putBack();
    auto* title = qobject_cast<QLineEdit*>(field("title").control());
    title->setText(QStringLiteral("<i>Réunion</i> & co"));
    EXPECT_TRUE(field("title").commit());
    EXPECT_EQ(title->text(), QStringLiteral("<i>Réunion</i> & co"));
    title->setText(QString(201, QLatin1Char('x')));
    EXPECT_FALSE(field("title").commit());
    EXPECT_THAT(field("title").sentence().toStdString(), HasSubstr("Keep it to 200"));
}

TEST_F(FieldEditTest, LongTextGrowsToSixLines) {
    auto* wishes = qobject_cast<QPlainTextEdit*>(field("wishes").control());
    const int one = wishes->height();
    wishes->setPlainText(QStringLiteral("a\nb\nc"));
    QApplication::processEvents();
    EXPECT_GT(wishes->height(), 2 * wishes->fontMetrics().lineSpacing());
    wishes->setPlainText(QStringLiteral("a\n").repeated(50));
    QApplication::processEvents();
    EXPECT_LT(wishes->height(), 8 * wishes->fontMetrics().lineSpacing());
    field("wishes").putBack();
    QApplication::processEvents();
    EXPECT_EQ(wishes->height(), one);
}

TEST_F(FieldEditTest, AReferenceIsCompletedOrMadeInPlace) {
    auto* client = qobject_cast<QLineEdit*>(field("client").control());
    client->setFocus();
    QTest::keyClicks(client, QStringLiteral("library"));
    auto* completer = client->findChild<QCompleter*>();
    ASSERT_NE(completer, nullptr);
    ASSERT_TRUE(completer->popup()->isVisible());
    EXPECT_EQ(completer->popup()->model()->rowCount(), 2); // the friends, and to make a new one
    QTest::keyClick(completer->popup(), Qt::Key_Down);
    QTest::keyClick(completer->popup(), Qt::Key_Return);
    EXPECT_EQ(supper().client, Id<model::Client>(1));
    typeInto("client", "Mrs T. Askew");
    completer->popup()->hide();
    enter("client");
    EXPECT_THAT(field("client").sentence().toStdString(), HasSubstr("Ctrl+Enter makes one"));
    EXPECT_EQ(supper().client, Id<model::Client>(1));
    QTest::keyClick(client, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(bench->season().clients.size(), 2u);
    EXPECT_EQ(supper().client, Id<model::Client>(2));
    bench->undo(); // one step: the client goes and the booking has the first again
    EXPECT_EQ(bench->season().clients.size(), 1u);
    EXPECT_EQ(supper().client, Id<model::Client>(1));
    EXPECT_EQ(client->text(), QStringLiteral("Marrowby Library Friends"));
    typeInto("client", "");
    QTest::keyClick(client, Qt::Key_Delete);
    elsewhere->setFocus();
    EXPECT_FALSE(supper().client);
}

TEST_F(FieldEditTest, ColoursTicksAndWords) {
    FieldEdit colour(*bench, TableKind::plants, "colour_1");
    FieldEdit focal(*bench, TableKind::plants, "focal");
    FieldEdit shape(*bench, TableKind::plants, "shape");
    colour.show(1);
    focal.show(1);
    shape.show(1);
    colour.setTyped(QStringLiteral("no colour at all"));
    EXPECT_FALSE(colour.commit());
    EXPECT_THAT(colour.sentence().toStdString(), HasSubstr("is not a colour"));
    colour.setTyped(QStringLiteral("coral"));
    EXPECT_TRUE(colour.commit());
    EXPECT_EQ(colour.typed(), QStringLiteral("#ff7f50"));
    auto* line = qobject_cast<QLineEdit*>(colour.control());
    EXPECT_EQ(line->text(), QStringLiteral("coral")) << "a name while nobody types";
    QFocusEvent in(QEvent::FocusIn);
    QApplication::sendEvent(line, &in);
    EXPECT_EQ(line->text(), QStringLiteral("#ff7f50")) << "and exactly what it is while one does";
    line->setText(QStringLiteral("#673147"));
    QFocusEvent out(QEvent::FocusOut);
    QApplication::sendEvent(line, &out);
    EXPECT_EQ(line->text(), QStringLiteral("dark purplish red"));
    EXPECT_EQ(bench->season().plants.begin()->colour1, Colour::parse("#673147"));
    focal.control()->setEnabled(true);
    qobject_cast<QCheckBox*>(focal.control())->click();
    EXPECT_TRUE(bench->season().plants.begin()->focal);
    auto* box = qobject_cast<QComboBox*>(shape.control());
    box->setCurrentIndex(box->findText(QStringLiteral("globe")));
    Q_EMIT box->activated(box->currentIndex());
    EXPECT_EQ(bench->season().plants.begin()->shape, model::BloomShape::globe);
}

TEST_F(FieldEditTest, EveryFieldHasANameAndALabelForIt) {
    for (auto* edit : form->findChildren<FieldEdit*>()) {
        auto* face = QAccessible::queryAccessibleInterface(edit->control());
        ASSERT_NE(face, nullptr);
        // On Unix Qt gives a combo box its value as its name; screen readers go by the label's relation.
        if (!qobject_cast<QComboBox*>(edit->control())) {
            EXPECT_EQ(face->text(QAccessible::Name), edit->label());
        }
        EXPECT_EQ(edit->control()->accessibleName(), edit->label());
        EXPECT_TRUE(edit->objectName().startsWith(QStringLiteral("booking.")));
        EXPECT_NE(edit->control()->focusPolicy(), Qt::NoFocus);
    }
    EXPECT_EQ(field("must_not").label(), QStringLiteral("Must not"));
}

TEST_F(FieldEditTest, WideWindowsTakeTwoColumns) {
    host->resize(1300, 700);
    QApplication::processEvents();
    EXPECT_GT(field("wishes").mapTo(host.get(), QPoint()).x(),
              field("title").mapTo(host.get(), QPoint()).x());
    host->resize(600, 700);
    QApplication::processEvents();
    EXPECT_EQ(field("wishes").mapTo(host.get(), QPoint()).x(),
              field("title").mapTo(host.get(), QPoint()).x());
}

TEST_F(FieldEditTest, InASeasonOpenForReadingNothingIsChanged) {
    host.reset();
    bench.reset();
    Workbench reading(
        store::SeasonFile::open(folder_.filePath(QStringLiteral("f.withy")), store::SeasonFile::Mode::read),
        std::nullopt);
    FieldEdit kind(reading, TableKind::bookings, "kind");
    FieldEdit focal(reading, TableKind::plants, "focal");
    FieldEdit title(reading, TableKind::bookings, "title");
    for (auto* edit : {&kind, &focal, &title})
        edit->show(1);
    EXPECT_FALSE(kind.control()->isEnabled());
    EXPECT_FALSE(focal.control()->isEnabled());
    EXPECT_TRUE(title.control()->isEnabled()) << "to be read and copied";
    EXPECT_TRUE(qobject_cast<QLineEdit*>(title.control())->isReadOnly());
}

TEST_F(FieldEditTest, TheColourChooserWaitsForNobodyAndGoesWithItsField) {
    auto colour = std::make_unique<FieldEdit>(*bench, TableKind::plants, "colour_1");
    colour->show(1);
    colour->QWidget::show();
    const auto chooser = [&] {
        QTest::keyClick(colour->control(), Qt::Key_Down, Qt::AltModifier);
        return QPointer(colour->findChild<QColorDialog*>(QStringLiteral("colour.chooser")));
    };
    auto open = chooser();
    ASSERT_TRUE(open);
    open->setCurrentColor(QColor(QStringLiteral("#6b1f3a")));
    open->accept();
    EXPECT_EQ(bench->season().plants.begin()->colour1, Colour::parse("#6b1f3a"));
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    open = chooser();
    ASSERT_TRUE(open);
    colour.reset(); // as a row does that is laid anew
    EXPECT_FALSE(open);
}

} // namespace withy::ui
