// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

class CatalogueField;
class SwatchRow;

/// Every plant of the season, found by typing; beside it its facts with where each comes from, its
/// cautions and colours. Plants are taken from the catalogue by typing, or made new.
class PlantsPage : public RecordPage {
    Q_OBJECT

public:
    explicit PlantsPage(Workbench& bench, QWidget* parent = nullptr);
    void addActions(Actions& actions) override;

private:
    void showPlant(std::optional<std::int64_t> id);
    void showBases();
    void take(Id<model::Plant> inCatalogue);
    void makeNew(const QString& name);
    void duplicate();

    CatalogueField* catalogue_;
    TextLabel* name_;
    TextLabel* botanical_;
    SwatchRow* swatches_;
    QWidget* cautions_;
    QPushButton* duplicate_;
};

} // namespace withy::ui
