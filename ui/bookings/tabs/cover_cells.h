// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/sheet.h"
#endif

#include <QWidget>

class QPushButton;

/// The drawings and buttons of rows that say how well something is covered. Each says in words what it shows.
namespace withy::ui {

class AnswerLabel;
class TextLabel;

/// A reach bar.
class ReachCell : public QWidget {
    Q_OBJECT

public:
    explicit ReachCell(QWidget* parent = nullptr);
    void setReach(const SheetReach& reach);

    [[nodiscard]] const SheetReach& reach() const { return reach_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    SheetReach reach_;
};

/// The small jar beside a state's words.
class JarCell : public QWidget {
public:
    explicit JarCell(QWidget* parent = nullptr);
    void setJar(const SheetJar& jar);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    SheetJar jar_;
};

/// One place stems come from: the patch's number, or the mark of the store, and its words.
class SourceRow : public QWidget {
public:
    explicit SourceRow(QWidget* parent = nullptr);
    void setSource(const SheetSource& source);

private:
    class Mark;
    Mark* mark_;
    TextLabel* words_;
};

/// What stands below a row: notes, and the ways out with their buttons.
class BelowPanel : public QWidget {
    Q_OBJECT

public:
    /// Buttons are named `name`.way.0 and so on.
    BelowPanel(const SheetBelow& below, const QString& name, QWidget* parent = nullptr);

    /// Null when there are fewer.
    [[nodiscard]] QPushButton* way(int index) const;

    [[nodiscard]] int ways() const { return static_cast<int>(buttons_.size()); }

Q_SIGNALS:
    void taken(int way);

private:
    std::vector<QPushButton*> buttons_;
};

bool operator==(const SheetBelow& a, const SheetBelow& b);

} // namespace withy::ui
