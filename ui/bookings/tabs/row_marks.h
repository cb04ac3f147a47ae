// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/sheet.h"
#include "ui/logic/models/stem_rows.h"

#include <QWidget>

/// The small drawings of a sheet's rows. Each says in words what it shows, so none is told by colour alone.
namespace withy::ui {

/// Before a row: a plant's bloom colour, the heavy edge of a step, the thread of what waits in water, the
/// block of what cannot move.
class RowMark : public QWidget {
public:
    explicit RowMark(QWidget* parent = nullptr);
    void showRow(const SheetRow& row);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    RowLook look_ = RowLook::body;
    bool dotted_ = false;
    std::optional<Colour> dot_;
};

/// Behind the hours that are taken: a wide hatch.
class BusyBack : public QWidget {
public:
    explicit BusyBack(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

/// The stems of all plants side by side in their bloom colours, as wide as their share.
class ShareBar : public QWidget {
public:
    explicit ShareBar(QWidget* parent = nullptr);
    void setShares(std::vector<StemShare> shares);

    [[nodiscard]] const std::vector<StemShare>& shares() const { return shares_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] QRectF part(std::size_t i) const;

    std::vector<StemShare> shares_;
};

} // namespace withy::ui
