// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/welcome_page.h"

#include "ui/common/demo_jar.h"
#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/begin/known_places.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"
#include "ui/shell/light_chart.h"

#include <QCompleter>
#include <QDateEdit>
#include <QFileInfo>
#include <QGridLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QThread>
#include <QVBoxLayout>

#include <memory>

namespace withy::ui {

namespace {

QLineEdit* field(const char* name, const QString& accessible) {
    auto* edit = new QLineEdit;
    edit->setObjectName(QLatin1String(name));
    edit->setAccessibleName(accessible);
    return edit;
}

QDateEdit* dateField(const char* name, const QString& accessible, QDate day) {
    auto* edit = new QDateEdit(day);
    edit->setObjectName(QLatin1String(name));
    edit->setAccessibleName(accessible);
    edit->setDisplayFormat(QStringLiteral("d MMMM yyyy"));
    edit->setButtonSymbols(QAbstractSpinBox::NoButtons);
    return edit;
}

/// A caption over its field, its buddy.
void put(QGridLayout* fields, int row, int column, const QString& caption, QWidget* control, int span = 1) {
    auto* label = new TextLabel(TypeRole::caption, caption, Ink::second);
    label->setBuddy(control);
    label->setContentsMargins(0, row > 0 ? grid(3) : grid(2), 0, 0);
    fields->addWidget(label, row * 2, column, 1, span);
    fields->addWidget(control, row * 2 + 1, column, 1, span, Qt::Alignment());
}

QCompleter* completer(const QStringList& words, QObject* parent) {
    auto* c = new QCompleter(words, parent);
    c->setCaseSensitivity(Qt::CaseInsensitive);
    c->setFilterMode(Qt::MatchContains);
    return c;
}

} // namespace

WelcomePage::WelcomePage(QDate today, const QLocale& locale, QWidget* parent)
    : QScrollArea(parent), today_(today), proposed_(proposedAnswers(locale, today)) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    auto* page = new QWidget;
    columns_ = new QBoxLayout(QBoxLayout::LeftToRight, page);
    columns_->setContentsMargins(grid(12), grid(10), grid(12), grid(8));
    columns_->setSpacing(grid(16));
    columns_->addWidget(makeQuestions(), 1);
    columns_->addWidget(makeOther(), 1);
    setWidget(page);
    wire();
    showLight();
}

QWidget* WelcomePage::makeQuestions() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(2));
    column->addWidget(new TextLabel(TypeRole::title, tr("Where do you grow?")));
    auto* answer = new TextLabel(
        TypeRole::answer, tr("A few answers, and the light is known. All of them can be changed later."),
        Ink::second);
    answer->setWordWrap(true);
    column->addWidget(answer);
    place_ = field("first.place", tr("What you call the place"));
    latitude_ = field("first.latitude", tr("Latitude"));
    latitude_->setPlaceholderText(tr("52.4 N"));
    longitude_ = field("first.longitude", tr("Longitude"));
    longitude_->setPlaceholderText(tr("2.7 W"));
    near_ = field("first.near", tr("A region near you"));
    near_->setPlaceholderText(tr("type a county or region"));
    QStringList places;
    for (const auto& p : knownPlaces())
        places << p.words();
    near_->setCompleter(completer(places, near_));
    first_ = dateField("first.first", tr("First thing to cut"), proposed_.first);
    last_ = dateField("first.last", tr("Last thing to cut"), proposed_.last);
    units_ = new Segments(tr("Measured in"), {tr("mm, litres, °C"), tr("inches, US fl oz, °F")});
    units_->setObjectName(QStringLiteral("first.units"));
    units_->setCurrent(proposed_.units == model::UnitSystem::metric ? 0 : 1);
    currency_ = field("first.currency", tr("Money"));
    currency_->setText(proposed_.currency);
    currency_->setMaxLength(3);
    paper_ = new Segments(tr("Paper in the printer"), {tr("A4"), tr("Letter")});
    paper_->setObjectName(QStringLiteral("first.paper"));
    paper_->setCurrent(proposed_.paper == model::PaperSize::a4 ? 0 : 1);
    auto* fields = new QGridLayout;
    fields->setHorizontalSpacing(grid(4));
    fields->setVerticalSpacing(grid(1));
    put(fields, 0, 0, tr("What you call the &place"), place_, 3);
    put(fields, 1, 0, tr("A &region near you, or"), near_);
    put(fields, 1, 1, tr("&Latitude"), latitude_);
    put(fields, 1, 2, tr("L&ongitude"), longitude_);
    put(fields, 3, 0, tr("&First thing to cut"), first_);
    put(fields, 3, 1, tr("L&ast thing to cut"), last_, 2);
    put(fields, 4, 0, tr("Measured in"), units_);
    put(fields, 4, 1, tr("&Money"), currency_);
    put(fields, 4, 2, tr("Paper in the printer"), paper_);
    auto* near =
        new TextLabel(TypeRole::caption,
                      tr("To the nearest half degree is enough. It stays on this computer."), Ink::caption);
    near->setWordWrap(true);
    nearTrouble_ = new TextLabel(TypeRole::caption, {}, Ink::osier);
    nearTrouble_->setObjectName(QStringLiteral("first.near_trouble"));
    nearTrouble_->setWordWrap(true);
    nearTrouble_->hide();
    auto* below = new QVBoxLayout;
    below->addWidget(nearTrouble_);
    below->addWidget(near);
    fields->addLayout(below, 4, 0, 1, 3); // below the row of degrees
    column->addLayout(fields);
    addPlants(column);
    trouble_ = new TextLabel(TypeRole::text, {}, Ink::osier);
    trouble_->setObjectName(QStringLiteral("first.trouble"));
    trouble_->setWordWrap(true);
    trouble_->hide();
    column->addWidget(trouble_);
    begin_ = new QPushButton(tr("&Begin season %1").arg(proposed_.last.year()));
    begin_->setObjectName(QStringLiteral("first.begin"));
    begin_->setProperty("look", QStringLiteral("main"));
    begin_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    column->addSpacing(grid(4));
    column->addWidget(begin_);
    column->addStretch(1);
    return side;
}

void WelcomePage::addPlants(QBoxLayout* column) {
    auto* head = new TextLabel(TypeRole::head, tr("What do you grow?"));
    head->setContentsMargins(0, grid(4), 0, 0);
    column->addWidget(head);
    plant_ = field("first.plant", tr("Add a plant you grow"));
    plant_->setPlaceholderText(tr("type a name and press Enter; skip it if you like"));
    column->addWidget(plant_);
    grows_ = new QListWidget;
    grows_->setObjectName(QStringLiteral("first.grows"));
    grows_->setAccessibleName(tr("Plants you grow; Delete takes one out"));
    grows_->setFlow(QListView::LeftToRight);
    grows_->setWrapping(true);
    grows_->setResizeMode(QListView::Adjust);
    grows_->setSpacing(grid(0.5));
    grows_->setFixedHeight(grid(20));
    grows_->hide();
    column->addWidget(grows_);
}

QWidget* WelcomePage::makeOther() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(2));
    column->addWidget(new TextLabel(TypeRole::strong, tr("The light there")));
    light_ = new LightChart;
    light_->setObjectName(QStringLiteral("first.light"));
    column->addWidget(light_);
    column->addWidget(new Rule(Rule::Kind::hair));
    column->addLayout(makeDemo());
    recent_ = new QVBoxLayout;
    column->addLayout(recent_);
    column->addStretch(1);
    return side;
}

QLayout* WelcomePage::makeDemo() {
    auto* across = new QHBoxLayout;
    across->setSpacing(grid(6));
    auto* jar = new DemoJar;
    jar->setObjectName(QStringLiteral("first.jar"));
    fixedOnGrid(jar, 52, 48);
    across->addWidget(jar, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout;
    column->setSpacing(grid(2));
    across->addLayout(column, 1);
    column->addWidget(new TextLabel(TypeRole::head, tr("Or look at a full one first")));
    auto* words =
        new TextLabel(TypeRole::text,
                      tr("The demo season is a year at an invented place: patches, designs and bookings. "
                         "Change anything in it. It is a copy, and your own season is never touched."),
                      Ink::second);
    words->setWordWrap(true);
    column->addWidget(words);
    auto* demo = new QPushButton(tr("Open the &demo season"));
    demo->setObjectName(QStringLiteral("first.demo"));
    auto* open = new QPushButton(tr("Open a season &file…"));
    open->setObjectName(QStringLiteral("first.open"));
    auto* row = new QHBoxLayout;
    row->addWidget(demo);
    row->addWidget(open);
    row->addStretch(1);
    column->addLayout(row);
    column->addStretch(1);
    connect(demo, &QPushButton::clicked, this, &WelcomePage::openDemo);
    connect(open, &QPushButton::clicked, this, &WelcomePage::openFile);
    return across;
}

void WelcomePage::wire() {
    connect(near_, &QLineEdit::textChanged, this, &WelcomePage::usePlace); // as soon as it is one
    connect(near_, &QLineEdit::textEdited, this, [this] { sayNear({}); });
    connect(near_, &QLineEdit::editingFinished, this, &WelcomePage::takeNear);
    connect(near_->completer(), qOverload<const QString&>(&QCompleter::activated), this,
            &WelcomePage::usePlace);
    for (auto* edit : {latitude_, longitude_}) {
        connect(edit, &QLineEdit::textEdited, this, [this] { zoneRule_.clear(); });
        connect(edit, &QLineEdit::textChanged, this, &WelcomePage::showLight);
    }
    for (auto* edit : {first_, last_}) {
        connect(edit, &QDateEdit::dateChanged, this, [this] {
            datesTyped_ = true;
            showLight();
        });
    }
    connect(plant_, &QLineEdit::returnPressed, this, [this] { addPlant(plant_->text()); });
    const auto takeOut = [this](QListWidgetItem* item) {
        delete item;
        grows_->setVisible(grows_->count() > 0);
        if (grows_->count() == 0) plant_->setFocus();
    };
    connect(grows_, &QListWidget::itemActivated, this, takeOut);
    connect(new QShortcut(QKeySequence::Delete, grows_, nullptr, nullptr, Qt::WidgetShortcut),
            &QShortcut::activated, this, [this, takeOut] { takeOut(grows_->currentItem()); });
    connect(begin_, &QPushButton::clicked, this, &WelcomePage::check);
}

/// Enter, or leaving the field, takes the only place that holds what was typed.
void WelcomePage::takeNear() {
    const QString typed = near_->text().trimmed();
    if (typed.isEmpty() || placeOf(typed)) return sayNear({});
    const auto matches = placesWith(typed);
    if (matches.size() == 1) {
        near_->setText(matches.front());
        return sayNear({});
    }
    sayNear(nearTrouble(typed, static_cast<int>(matches.size())));
}

void WelcomePage::sayNear(const QString& sentence) {
    nearTrouble_->setText(sentence);
    nearTrouble_->setVisible(!sentence.isEmpty());
    near_->setAccessibleDescription(sentence);
}

void WelcomePage::usePlace(const QString& words) {
    const auto* place = placeOf(words);
    if (!place) return;
    const QSignalBlocker x(latitude_); // the light is drawn once, at the end
    const QSignalBlocker y(longitude_);
    latitude_->setText(QStringLiteral("%1 %2")
                           .arg(std::abs(place->latitude))
                           .arg(place->latitude < 0 ? QLatin1Char('S') : QLatin1Char('N')));
    longitude_->setText(QStringLiteral("%1 %2")
                            .arg(std::abs(place->longitude))
                            .arg(place->longitude < 0 ? QLatin1Char('W') : QLatin1Char('E')));
    zoneRule_ = place->zoneRule;
    if (!datesTyped_) {
        const auto [from, to] = proposedDates(place->latitude, today_);
        const QSignalBlocker a(first_);
        const QSignalBlocker b(last_);
        first_->setDate(from);
        last_->setDate(to);
    }
    showLight();
}

void WelcomePage::showLight() {
    const auto a = answers();
    trouble_->hide();
    begin_->setText(tr("&Begin season %1").arg(a.last.year()));
    if (troubleWith(a)) return light_->setPlace(std::nullopt);
    const auto s = settingsOf(a);
    light_->setPlace(LightChart::Place{
        {s.latitude, s.longitude}, Zone::fromPosix(s.zoneRule).value_or(Zone::utc()), s.firstDay, s.lastDay});
}

void WelcomePage::addPlant(const QString& name) {
    if (names_.isEmpty()) names_ = catalogueNames(); // typed before it was read
    const auto at = names_.indexOf(
        QRegularExpression(QRegularExpression::anchoredPattern(QRegularExpression::escape(name.trimmed())),
                           QRegularExpression::CaseInsensitiveOption));
    if (at < 0) return;
    if (grows_->findItems(names_[at], Qt::MatchExactly).isEmpty()) grows_->addItem(names_[at]);
    grows_->show();
    plant_->clear();
}

FirstAnswers WelcomePage::answers() const {
    FirstAnswers a;
    a.place = place_->text();
    a.latitude = latitude_->text();
    a.longitude = longitude_->text();
    a.zoneRule = zoneRule_;
    a.first = first_->date();
    a.last = last_->date();
    a.units = units_->current() == 0 ? model::UnitSystem::metric : model::UnitSystem::imperial;
    a.currency = currency_->text();
    a.paper = paper_->current() == 0 ? model::PaperSize::a4 : model::PaperSize::letter;
    for (int i = 0; i < grows_->count(); ++i)
        a.grows.push_back(utf8(grows_->item(i)->text()));
    return a;
}

void WelcomePage::check() {
    const auto a = answers();
    if (const auto trouble = troubleWith(a)) {
        const bool degrees =
            trouble->field == QStringLiteral("latitude") || trouble->field == QStringLiteral("longitude");
        if (degrees && latitude_->text().trimmed().isEmpty() && longitude_->text().trimmed().isEmpty()) {
            // Nobody thinks in degrees: the region is asked for first, where it is typed.
            takeNear();
            usePlace(near_->text()); // known before, and its degrees taken out since
            if (!latitude_->text().isEmpty()) return check();
            if (nearTrouble_->text().isEmpty()) sayNear(nearTrouble(near_->text().trimmed(), 0));
            return near_->setFocus();
        }
        trouble_->setText(trouble->sentence);
        trouble_->show();
        if (auto* wrong = findChild<QWidget*>(QStringLiteral("first.") + trouble->field)) wrong->setFocus();
        return;
    }
    Q_EMIT beginSeason(a);
}

void WelcomePage::begin() {
    if (!reading_) readNames();
    place_->setFocus();
}

/// Aside, while the place is being typed.
void WelcomePage::readNames() {
    const auto names = std::make_shared<QStringList>();
    reading_ = QThread::create([names] { *names = catalogueNames(); });
    reading_->setParent(this);
    connect(reading_, &QThread::finished, this, [this, names] {
        names_ = *names;
        plant_->setCompleter(completer(names_, plant_));
        connect(plant_->completer(), qOverload<const QString&>(&QCompleter::activated), this,
                &WelcomePage::addPlant,
                Qt::QueuedConnection); // after the completer has written the name into the field
    });
    reading_->start();
}

WelcomePage::~WelcomePage() {
    if (reading_) reading_->wait();
}

void WelcomePage::setRecent(const QStringList& paths) {
    clearLayout(*recent_);
    if (paths.isEmpty()) return;
    recent_->addWidget(new TextLabel(TypeRole::strong, tr("Opened lately")));
    for (int i = 0; i < paths.size(); ++i) {
        auto* button = new QPushButton(asTyped(QFileInfo(paths[i]).completeBaseName()));
        button->setObjectName(QStringLiteral("first.recent.%1").arg(i));
        button->setProperty("look", QStringLiteral("link"));
        button->setToolTip(paths[i]);
        button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        connect(button, &QPushButton::clicked, this, [this, path = paths[i]] { Q_EMIT openRecent(path); });
        recent_->addWidget(button);
    }
}

void WelcomePage::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    columns_->setDirection(width() < grid(250) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

} // namespace withy::ui
