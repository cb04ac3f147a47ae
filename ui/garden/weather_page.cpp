// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/weather_page.h"

#include "ui/common/blocked_notice.h"
#include "ui/common/text_label.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/paint/spacing.h"

#include <QVBoxLayout>

namespace withy::ui {

namespace {

RecordPageSpec specOf(Workbench& bench) {
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
    : RecordPage(bench, specOf(bench), parent), normals_(new RecordTable(bench, normalsSpec())) {
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
    connect(normals_, &RecordTable::refused, this, &SubPage::refused);
}

bool WeatherPage::goTo(const model::Ref& ref) {
    if (ref.table != model::TableKind::monthNormals) return RecordPage::goTo(ref);
    normals_->choose(ref.id);
    return true;
}

bool WeatherPage::commit() {
    return normals_->commitEditor() && RecordPage::commit();
}

} // namespace withy::ui
