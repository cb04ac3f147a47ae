// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>

#include <vector>

namespace withy::ui {

/// Things side by side, going on in the next line when the width is used up. Owns its items.
class FlowRow : public QLayout {
public:
    explicit FlowRow(QWidget* parent = nullptr);
    ~FlowRow() override;
    void addItem(QLayoutItem* item) override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] int count() const override;

    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }

    [[nodiscard]] int heightForWidth(int width) const override { return place({0, 0, width, 0}, false); }

private:
    int place(const QRect& rect, bool move) const;

    std::vector<QLayoutItem*> items_;
};

} // namespace withy::ui
