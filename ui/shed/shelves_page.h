// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/shed/shelf_rows.h"
#endif
#include "ui/common/sub_page.h"

class QBoxLayout;
class QScrollArea;
class QVBoxLayout;

namespace withy::ui {

class FreeAxis;
class RibbonDayView;
class ShelfRowView;
class TextLabel;

/// The shed's first page: what runs short first, what is free from day to day, shelf by shelf, and the ribbon
/// of one day as bars with their cuts.
class ShelvesPage : public SubPage {
    Q_OBJECT

public:
    explicit ShelvesPage(Workbench& bench, QWidget* parent = nullptr);
    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;
    [[nodiscard]] QWidget* tools() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// One kind of thing: its head, and a row for each.
    struct Shelf {
        ShelfGroup group;
        QWidget* whole;
        QVBoxLayout* rows;
        std::vector<ShelfRowView*> views;
    };

    void addShelf(QVBoxLayout& column, ShelfGroup group, const QString& head, const QString& remark);
    void dressHeads();
    /// The heads stand over the rows' columns, whatever the scroll bar takes.
    void lineUpHeads();
    void refresh();
    void showRows(Shelf& shelf, const std::vector<ShelfRow>& rows, std::optional<Day> today);
    void showNarrow();
    [[nodiscard]] QWidget* makeHeads();

    QWidget* tools_;
    QScrollArea* scroll_ = nullptr;
    FreeAxis* axis_ = nullptr;                            ///< made with the heads, so before them
    std::vector<std::pair<QWidget*, int (*)()>> columns_; ///< heads and their widths; likewise
    QWidget* heads_;
    std::vector<Shelf> shelves_;
    TextLabel* empty_;
    RibbonDayView* ribbon_;
};

} // namespace withy::ui
