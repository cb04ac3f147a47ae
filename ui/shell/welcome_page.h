// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/begin/first_season.h"
#endif

#include <QScrollArea>

class QBoxLayout;
class QCompleter;
class QDateEdit;
class QLayout;
class QLineEdit;
class QListWidget;
class QPushButton;
class QThread;

namespace withy::ui {

class LightChart;
class Segments;
class TextLabel;

/// The first page: where do you grow, what do you grow, and a season is there. Or look at a full one.
class WelcomePage : public QScrollArea {
    Q_OBJECT

public:
    /// `today` and the computer's locale make the proposals.
    WelcomePage(QDate today, const QLocale& locale, QWidget* parent = nullptr);
    ~WelcomePage() override;

    /// Seasons opened lately, newest first; shown as buttons.
    void setRecent(const QStringList& paths);
    void begin();
    [[nodiscard]] FirstAnswers answers() const;

Q_SIGNALS:
    void beginSeason(const withy::ui::FirstAnswers& answers);
    void openDemo();
    void openFile();
    void openRecent(const QString& path);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void readNames();
    QWidget* makeQuestions();
    QWidget* makeOther();
    /// The way to the demo season, its jar before it.
    QLayout* makeDemo();
    void addPlants(QBoxLayout* column);
    void wire();
    void usePlace(const QString& words);
    void takeNear();
    void sayNear(const QString& sentence);
    void showLight();
    void addPlant(const QString& name);
    void check();

    QDate today_;
    FirstAnswers proposed_;
    QStringList names_;          ///< of the catalogue, once read
    QThread* reading_ = nullptr; ///< reads it
    std::string zoneRule_;
    bool datesTyped_ = false;
    QBoxLayout* columns_;
    QLineEdit* place_;
    QLineEdit* latitude_;
    QLineEdit* longitude_;
    QLineEdit* near_;
    TextLabel* nearTrouble_ = nullptr;
    QDateEdit* first_;
    QDateEdit* last_;
    Segments* units_;
    QLineEdit* currency_;
    Segments* paper_;
    QLineEdit* plant_;
    QListWidget* grows_;
    TextLabel* trouble_;
    QPushButton* begin_;
    LightChart* light_;
    QBoxLayout* recent_;
};

} // namespace withy::ui
