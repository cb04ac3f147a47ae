// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/tally_rows.h"
#endif

#include <QWidget>

class QLineEdit;
class QMenu;
class QPushButton;

namespace withy::ui {

class BloomDot;
class TextLabel;

/// One plant and patch of the tally, with keys for wet hands: minus, the count itself, plus, ten more, a
/// bunch. The count is a field: digits go into it, Enter keeps them and goes on.
class TallyRowView : public QWidget {
    Q_OBJECT

public:
    explicit TallyRowView(QWidget* parent = nullptr);

    /// `throwing`: the keys count what was thrown away.
    void showRow(const TallyRow& row, bool throwing);
    void setChosen(bool chosen);
    /// The keyboard comes to the count.
    void take();
    /// What stands in the field and was not kept yet.
    [[nodiscard]] bool isTyping() const;
    [[nodiscard]] QString typed() const;
    void putBack();
    /// The sentence of what was refused stands elsewhere; the field keeps what was typed.
    void setWrong(bool wrong);

    [[nodiscard]] const TallyRow& row() const { return row_; }

    [[nodiscard]] QLineEdit& count() const { return *count_; }

    /// Its controls in the order of Tab.
    [[nodiscard]] std::vector<QWidget*> tabOrder() const;

Q_SIGNALS:
    void chosen();
    void added(qint64 stems);
    /// What is in the field should be kept; `goOn`: rows to go on by afterwards.
    void kept(int goOn);
    void standInAsked(qint64 slot);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    QWidget* makeWords();
    QWidget* makeCount();
    QPushButton* makeKey(const char* name, qint64 by);
    bool handleKey(int key);
    [[nodiscard]] qint64 middleStep() const;
    void nameKeys();
    void showOffers();
    void dress();

    TallyRow row_;
    bool throwing_ = false;
    bool chosen_ = false;
    BloomDot* dot_;
    TextLabel* name_;
    TextLabel* place_;
    TextLabel* stage_;
    TextLabel* remark_;
    QPushButton* standIn_;
    QMenu* offers_;
    QPushButton* less_;
    QLineEdit* count_;
    TextLabel* against_;
    QPushButton* more_;
    QPushButton* ten_;
    QPushButton* bunch_;
};

} // namespace withy::ui
