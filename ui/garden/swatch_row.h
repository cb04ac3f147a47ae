// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/model/garden.h"
#endif

#include <QWidget>

#include <vector>

namespace withy::ui {

/// A plant's bloom colours as discs, each with the edge that lets it show on paper.
class SwatchRow : public QWidget {
    Q_OBJECT

public:
    explicit SwatchRow(QWidget* parent = nullptr);
    void show(const model::Plant& plant);
    using QWidget::show;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<Colour> colours_;
};

} // namespace withy::ui
