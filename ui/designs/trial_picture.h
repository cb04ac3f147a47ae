// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace withy::ui {

class TextLabel;

/// The picture of a real trial, kept beside the drawing. The season remembers the file's name; the picture
/// itself stays where it is, best in the season's own folder.
class TrialPicture : public QWidget {
    Q_OBJECT

public:
    explicit TrialPicture(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);

    /// As if the file had been picked in the dialog.
    void choose(const QString& file);

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void ask();
    void keep(const std::string& name);
    void refresh();
    void showImage(const QString& file);

    Workbench& bench_;
    std::optional<Id<model::Design>> design_;
    QLabel* image_;
    TextLabel* words_;
    QPushButton* choose_;
    QPushButton* away_;
    QString shown_; ///< file the image was read from
};

} // namespace withy::ui
