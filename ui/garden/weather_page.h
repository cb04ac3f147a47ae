// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

/// Measured and forecast days, and beside them what each month usually brings.
class WeatherPage : public RecordPage {
    Q_OBJECT

public:
    explicit WeatherPage(Workbench& bench, QWidget* parent = nullptr);
    bool goTo(const model::Ref& ref) override;
    bool commit() override;
    void addActions(Actions& actions) override;
    /// Reads a text as a station's rows; shown before anything is taken.
    void openImport(const QString& name, const std::string& text);

private:
    void chooseFile();
    void pasteStation();
    void readFile(const QString& path);

    RecordTable* normals_;
};

} // namespace withy::ui
