// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/settings_page.h"

#include "ui/common/when_seen.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/setting_basis.h"
#include "ui/paint/spacing.h"

#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

std::vector<FormGroup> settingGroups() {
    return {{SettingsPage::tr("The season"), {"season_name", "first_day", "last_day"}},
            {SettingsPage::tr("The place"), {"place_name", "latitude", "longitude", "zone_rule"}},
            {SettingsPage::tr("Money and paper"),
             {"currency", "tax_rate", "tax_rate_date", "labour_rate", "travel_rate", "deposit_share",
              "balance_days", "quote_days", "paper", "units", "terms"}},
            {SettingsPage::tr("Spare and promises"),
             {"spare_rule", "spare_percent", "spare_confidence", "promise_level"}},
            {SettingsPage::tr("Temperatures"),
             {"store_celsius", "bench_celsius", "van_celsius", "venue_celsius", "heat_limit_celsius"}},
            {SettingsPage::tr("The working day"),
             {"work_from", "work_to", "recut_mm", "bucket_hours", "cool_buckets", "lifting_limit_kg"}}};
}

} // namespace

SettingsPage::SettingsPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent), form_(new RecordForm(bench, model::TableKind::settings, settingGroups())) {
    form_->setObjectName(QStringLiteral("season.settings.form"));
    form_->show(1);
    auto* inside = new QWidget;
    auto* margin = new QVBoxLayout(inside);
    margin->setContentsMargins(0, 0, grid(3), grid(4));
    margin->addWidget(form_);
    margin->addStretch();
    auto* scroller = new QScrollArea;
    scroller->setWidgetResizable(true);
    scroller->setFrameShape(QFrame::NoFrame);
    scroller->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroller->setFocusPolicy(Qt::NoFocus);
    scroller->setWidget(inside);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(scroller);
    connect(form_, &RecordForm::refused, this, &SubPage::refused);
    auto* seen = new WhenSeen(this, [this] {
        showBases();
        Q_EMIT answerChanged();
    });
    connect(&bench, &Workbench::changed, seen, &WhenSeen::ask);
    showBases();
}

Answer SettingsPage::answer() const {
    return settingsAnswer(bench_.season());
}

bool SettingsPage::goTo(const model::Ref& ref) {
    return ref.table == model::TableKind::settings;
}

void SettingsPage::enter() {
    if (auto* first = form_->field("season_name")) first->control()->setFocus();
}

bool SettingsPage::commit() {
    return form_->commit();
}

void SettingsPage::showBases() {
    const auto& settings = bench_.season().theSettings();
    for (const auto& field : model::tableInfo(model::TableKind::settings).fields) {
        const std::string name(field.name);
        if (auto* edit = form_->field(name.c_str())) edit->setCaption(settingBasis(settings, field.name));
    }
}

} // namespace withy::ui
