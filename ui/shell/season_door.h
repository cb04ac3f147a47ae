// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/begin/first_season.h"
#include "ui/logic/season_opening.h"
#endif
#include "ui/logic/workbench.h"
#include "ui/shell/notice_bar.h"

#include <QObject>

#include <chrono>
#include <functional>
#include <memory>

namespace withy::ui {

/// Where seasons come in: opens, begins and copies them, asks for file names, and offers the way out when
/// a file cannot be had. What it opened goes to `opened`.
class SeasonDoor : public QObject {
    Q_OBJECT

public:
    using Opened = std::function<void(std::unique_ptr<Workbench>)>;
    /// Asks for a file; empty when the grower thinks better of it. Tests put their own here.
    using AskFile = std::function<QString(const QString& title, const QString& proposed)>;

    /// How long an edit of what it opens waits for the disk, a quarter of a frame: most need no more, and
    /// beyond it the window goes on.
    static constexpr std::chrono::milliseconds aMoment{4};

    SeasonDoor(std::optional<Day> today, Opened opened, QWidget* window);

    void open(const QString& path);
    /// Shows what opening `path` came to: the season, or why not and the way out.
    void take(OpenOutcome outcome, const QString& path);
    void openForReading(const QString& path);
    /// The season must be closed before.
    void restore(const QString& path, const store::Backup& backup);
    /// A file named after the place, in the documents folder; another name when that is taken.
    void begin(const FirstAnswers& answers);
    /// The demo season beside the program's own data, as it was left; the first time a fresh copy of it. The
    /// demo has a present of its own, which is its today however it is opened.
    void openDemo();
    void askAndOpen();
    void saveCopy(Workbench& bench);
    /// Midnight has passed.
    void turnDays(int days);

    /// Where new seasons go; the documents of whoever is logged in unless a test says otherwise.
    QString newSeasons;
    /// Shows the season of that path if it is open here already, and says so.
    std::function<bool(const QString& path)> isOpen;
    /// Whether the season that is open may be left; asked before a file is written for the next one.
    std::function<bool()> mayLeave;
    /// Lets go of the season that is open here, and of its file.
    std::function<void()> letGo;
    /// Whether the season that is open is still the demo, and nobody's own.
    std::function<bool()> isDemo;
    AskFile askOpen;
    AskFile askSave;

Q_SIGNALS:
    void refused(const QString& sentence, const withy::ui::NoticeBar::WayOut& way);
    void said(const QString& sentence, const withy::ui::NoticeBar::WayOut& way = {});

private:
    /// Whether it was written and shown.
    bool create(const QString& path, const model::Season& season,
                store::Existing existing = store::Existing::refuse);
    void beginDemoAgain(const QString& path);
    void show(store::SeasonFile file);

    std::optional<Day> today_;
    Opened opened_;
};

} // namespace withy::ui
