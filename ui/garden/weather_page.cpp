// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/weather_page.h"

#include "ui/common/blocked_notice.h"
#include "ui/common/text_label.h"
#include "ui/garden/weather_import.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/table_files.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

/// A century of days, with a dozen columns each, is half of this: more would only hold the window up.
constexpr qint64 mostStationBytes = 4'000'000;

RecordPageSpec weatherSpec(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "garden.weather";
    spec.name = WeatherPage::tr("Weather by day");
    spec.emptyWords =
        WeatherPage::tr("No weather yet. Paste days with their least and most from a spreadsheet.");
    spec.newWords = WeatherPage::tr("&New day");
    spec.answer = [&bench] { return weatherAnswer(bench.season()); };
    spec.table.kind = model::TableKind::weather;
    spec.table.columns = {"date", "min_celsius", "max_celsius", "kind"};
    spec.table.sortField = "date";
    spec.table.newestFirst = true;
    return spec;
}

RecordTableSpec normalsSpec() {
    RecordTableSpec spec;
    spec.kind = model::TableKind::monthNormals;
    spec.columns = {"month", "min_celsius", "max_celsius"};
    spec.sortField = "month";
    return spec;
}

} // namespace

WeatherPage::WeatherPage(Workbench& bench, QWidget* parent)
    : RecordPage(bench, weatherSpec(bench), parent), normals_(new RecordTable(bench, normalsSpec())) {
    normals_->setObjectName(QStringLiteral("garden.weather.normals"));
    normals_->setAccessibleName(tr("What each month usually brings"));
    normals_->setEmptyWords(tr("None yet. The nearest weather station publishes all twelve."));
    normals_->growWithRows(13);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(1));
    column->addWidget(new TextLabel(TypeRole::head, tr("A usual year")));
    column->addWidget(new Rule);
    column->addWidget(normals_);
    auto* caption = new TextLabel(TypeRole::caption,
                                  tr("Stands in where a day has neither a measured nor a forecast figure."),
                                  Ink::caption);
    caption->setWordWrap(true);
    column->addWidget(caption);
    addBeside(box);
    auto* file = new QPushButton(tr("From a station's &file…"));
    file->setObjectName(QStringLiteral("garden.weather.import_button"));
    connect(file, &QPushButton::clicked, this, &WeatherPage::chooseFile);
    auto* copied = new QPushButton(tr("P&aste days"));
    copied->setObjectName(QStringLiteral("garden.weather.paste_button"));
    copied->setToolTip(tr("Rows copied from a spreadsheet, in any order of columns"));
    connect(copied, &QPushButton::clicked, this, &WeatherPage::pasteStation);
    addTool(copied);
    addTool(file);
    connect(normals_, &RecordTable::refused, this, &SubPage::refused);
}

bool WeatherPage::goTo(const model::Ref& ref) {
    if (ref.table != model::TableKind::monthNormals) return RecordPage::goTo(ref);
    normals_->choose(ref.id);
    return true;
}

void WeatherPage::addActions(Actions& actions) {
    RecordPage::addActions(actions);
    actions.add({"garden.weather.file",
                 tr("Weather from a &station's file…"),
                 {},
                 tr("A table of days with their lowest and highest")},
                [this] {
                    Q_EMIT wanted();
                    chooseFile();
                });
    actions.add({"garden.weather.copied",
                 tr("Weather as copied from a sprea&dsheet"),
                 {},
                 tr("What lies on the clipboard; says first what it holds")},
                [this] {
                    Q_EMIT wanted();
                    pasteStation();
                });
}

void WeatherPage::chooseFile() {
    auto* choose = new QFileDialog(this, tr("A weather station's file"), {},
                                   tr("Tables of text (*.csv *.txt *.tsv);;All files (*)"));
    choose->setObjectName(QStringLiteral("garden.weather.file"));
    choose->setAttribute(Qt::WA_DeleteOnClose);
    choose->setFileMode(QFileDialog::ExistingFile);
    connect(choose, &QFileDialog::fileSelected, this, &WeatherPage::readFile);
    choose->open();
}

void WeatherPage::readFile(const QString& path) {
    QFile file(path);
    const QString name = QFileInfo(path).fileName();
    if (!file.open(QIODevice::ReadOnly))
        Q_EMIT refused(weatherUnreadable(name, file.errorString()));
    else if (file.size() > mostStationBytes)
        Q_EMIT refused(weatherTooLarge(name));
    else
        openImport(name, stationText(file.readAll()));
}

void WeatherPage::pasteStation() {
    const QString copied = QApplication::clipboard()->text();
    if (copied.trimmed().isEmpty())
        Q_EMIT refused(tr("Nothing is copied. Copy the days from the spreadsheet first."));
    else
        openImport(tr("what was copied"), copied.toStdString());
}

void WeatherPage::openImport(const QString& name, const std::string& text) {
    auto* import = new WeatherImport(bench_, name, text, this);
    import->setAttribute(Qt::WA_DeleteOnClose);
    connect(import, &WeatherImport::said, this, &SubPage::said);
    import->open();
}

bool WeatherPage::commit() {
    return normals_->commitEditor() && RecordPage::commit();
}

} // namespace withy::ui
