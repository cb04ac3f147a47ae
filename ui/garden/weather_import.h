// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#ifndef Q_MOC_RUN
#include "ui/logic/weather_words.h"
#endif

#include <QDialog>

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace withy::ui {

class TextLabel;

/// Any station's file, or what was copied from a spreadsheet: which columns, which unit, which order of the
/// date; below it the first rows as they would be read and what is wrong with the whole. Then one edit.
class WeatherImport : public QDialog {
    Q_OBJECT

public:
    WeatherImport(Workbench& bench, const QString& name, const std::string& text, QWidget* parent);

    [[nodiscard]] QString summary() const;
    [[nodiscard]] QString troubles() const;

Q_SIGNALS:
    void said(const QString& sentence);

private:
    QComboBox* choice(const char* name, const QString& label, const QStringList& words);
    void layOut(const QString& name);
    [[nodiscard]] exchange::WeatherChoice chosen() const;
    [[nodiscard]] model::WeatherKind kind() const;
    void show();
    void showPreview(const exchange::WeatherChoice& choice);
    void take();

    Workbench& bench_;
    exchange::WeatherSheet sheet_;
    exchange::WeatherReadingResult reading_;
    std::vector<std::pair<QLabel*, QComboBox*>> choices_;
    QComboBox* date_;
    QComboBox* minimum_;
    QComboBox* maximum_;
    QComboBox* order_;
    QComboBox* unit_;
    QComboBox* kind_;
    QTableWidget* preview_;
    TextLabel* summary_;
    TextLabel* troubles_;
    QPushButton* take_;
};

} // namespace withy::ui
