// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/weather_import.h"

#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/garden_words.h"
#include "ui/paint/spacing.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

constexpr std::size_t previewed = 6;

QString tally(const edits::WeatherImport& import) {
    return weatherReadIn(import.added + import.changed);
}

} // namespace

WeatherImport::WeatherImport(Workbench& bench, const QString& name, const std::string& text, QWidget* parent)
    : QDialog(parent)
    , bench_(bench)
    , sheet_(exchange::splitWeather(text))
    , preview_(new QTableWidget(0, 3))
    , summary_(new TextLabel(TypeRole::strong))
    , troubles_(new TextLabel(TypeRole::text, {}, Ink::osier))
    , take_(new QPushButton(tr("&Read them in"))) {
    setObjectName(QStringLiteral("garden.weather.import"));
    setWindowTitle(tr("Weather from %1").arg(name));
    const QStringList columns = QStringList{tr("not chosen")} + columnNames(sheet_);
    date_ = choice("date", tr("&Date in"), columns);
    minimum_ = choice("minimum", tr("&Lowest in"), columns);
    maximum_ = choice("maximum", tr("&Highest in"), columns);
    order_ = choice("order", tr("Date &written"),
                    {tr("year, month, day"), tr("day, month, year"), tr("month, day, year")});
    unit_ = choice("unit", tr("&Unit"), {tr("°C"), tr("°F")});
    kind_ = choice("kind", tr("These da&ys are"), {tr("measured"), tr("forecast")});
    const auto guess = exchange::guessWeather(sheet_);
    date_->setCurrentIndex(guess.date + 1);
    minimum_->setCurrentIndex(guess.minimum + 1);
    maximum_->setCurrentIndex(guess.maximum + 1);
    order_->setCurrentIndex(static_cast<int>(guess.order));
    unit_->setCurrentIndex(guess.unit == exchange::TemperatureUnit::fahrenheit ? 1 : 0);
    layOut(name);
    for (const auto& [label, box] : choices_)
        connect(box, &QComboBox::currentIndexChanged, this, &WeatherImport::show);
    connect(take_, &QPushButton::clicked, this, &WeatherImport::take);
    show();
    date_->setFocus();
}

QComboBox* WeatherImport::choice(const char* name, const QString& label, const QStringList& words) {
    auto* box = new QComboBox;
    box->addItems(words);
    box->setObjectName(QStringLiteral("garden.weather.import.%1").arg(QLatin1String(name)));
    box->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* words_ = new QLabel(label);
    words_->setBuddy(box);
    choices_.emplace_back(words_, box);
    return box;
}

void WeatherImport::layOut(const QString& name) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(pageMargin(), grid(4), pageMargin(), grid(4));
    column->setSpacing(grid(2));
    auto* head = new TextLabel(TypeRole::head, tr("Weather from %1").arg(breakable(name)));
    head->setWordWrap(true);
    column->addWidget(head);
    column->addWidget(new Rule);
    auto* cells = new QGridLayout;
    cells->setHorizontalSpacing(grid(3));
    cells->setVerticalSpacing(grid(1));
    for (int i = 0; i < static_cast<int>(choices_.size()); ++i) {
        const auto& [label, box] = choices_[static_cast<std::size_t>(i)];
        cells->addWidget(label, i / 3 * 2, i % 3);
        cells->addWidget(box, i / 3 * 2 + 1, i % 3);
    }
    column->addLayout(cells);
    preview_->setObjectName(QStringLiteral("garden.weather.import.preview"));
    preview_->setAccessibleName(tr("The first rows as they are read"));
    preview_->setHorizontalHeaderLabels({tr("Day"), tr("Lowest"), tr("Highest")});
    preview_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    preview_->setTabKeyNavigation(false);
    preview_->setShowGrid(false);
    preview_->verticalHeader()->hide();
    preview_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    onGrid(preview_, &QWidget::setMinimumHeight, 56);
    column->addWidget(preview_, 1);
    summary_->setObjectName(QStringLiteral("garden.weather.import.summary"));
    summary_->setWordWrap(true);
    troubles_->setObjectName(QStringLiteral("garden.weather.import.troubles"));
    troubles_->setWordWrap(true);
    column->addWidget(summary_);
    column->addWidget(troubles_);
    auto* cancel = new QPushButton(tr("Lea&ve it"));
    cancel->setObjectName(QStringLiteral("garden.weather.import.cancel"));
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    take_->setObjectName(QStringLiteral("garden.weather.import.take"));
    take_->setProperty("look", QStringLiteral("main"));
    take_->setDefault(true);
    auto* row = new QHBoxLayout;
    row->addStretch();
    row->addWidget(cancel);
    row->addWidget(take_);
    column->addLayout(row);
    onGrid(this, &QWidget::setMinimumWidth, 150);
}

exchange::WeatherChoice WeatherImport::chosen() const {
    exchange::WeatherChoice c;
    c.date = date_->currentIndex() - 1;
    c.minimum = minimum_->currentIndex() - 1;
    c.maximum = maximum_->currentIndex() - 1;
    c.order = static_cast<exchange::DateOrder>(order_->currentIndex());
    c.unit = unit_->currentIndex() == 1 ? exchange::TemperatureUnit::fahrenheit
                                        : exchange::TemperatureUnit::celsius;
    return c;
}

model::WeatherKind WeatherImport::kind() const {
    return kind_->currentIndex() == 1 ? model::WeatherKind::forecast : model::WeatherKind::measured;
}

void WeatherImport::show() {
    const auto choice = chosen();
    const bool whole = choice.date >= 0 && choice.minimum >= 0 && choice.maximum >= 0 &&
                       choice.minimum != choice.maximum && choice.date != choice.minimum &&
                       choice.date != choice.maximum;
    reading_ = whole ? exchange::readWeather(sheet_, choice) : exchange::WeatherReadingResult{};
    const auto import = edits::importWeather(bench_.season(), reading_.days, kind());
    summary_->setText(importSummary(sheet_, choice, reading_, import));
    const auto troubles = importTroubles(bench_.season(), sheet_, choice, reading_);
    troubles_->setText(troubles.join(QLatin1Char('\n')));
    troubles_->setVisible(!troubles.isEmpty());
    take_->setEnabled(!import.edit.empty());
    showPreview(choice);
}

void WeatherImport::showPreview(const exchange::WeatherChoice& choice) {
    const auto rows = previewRows(bench_.season(), sheet_, choice, previewed);
    preview_->setRowCount(static_cast<int>(rows.size()));
    for (int r = 0; r < preview_->rowCount(); ++r)
        for (int c = 0; c < 3; ++c) {
            auto* item = new QTableWidgetItem(rows[static_cast<std::size_t>(r)][c]);
            item->setTextAlignment(c == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                          : Qt::AlignRight | Qt::AlignVCenter);
            preview_->setItem(r, c, item);
        }
}

QString WeatherImport::summary() const {
    return summary_->text();
}

QString WeatherImport::troubles() const {
    return troubles_->text();
}

void WeatherImport::take() {
    const auto import = edits::importWeather(bench_.season(), reading_.days, kind());
    const QString why = bench_.apply(import.edit);
    if (!why.isEmpty()) {
        troubles_->setText(why);
        troubles_->show();
        return;
    }
    Q_EMIT said(tally(import));
    accept();
}

} // namespace withy::ui
