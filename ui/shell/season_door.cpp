// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/season_door.h"

#include "ui/logic/shell_wording.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/wording.h"

#include <QDir>
#include <QFileDialog>
#include <QStandardPaths>

namespace withy::ui {

namespace {

QString kinds() {
    return SeasonDoor::tr("Withy seasons (*.withy)");
}

/// A folder that is there; made when it is not.
QString folder(QStandardPaths::StandardLocation location) {
    const QString path = QStandardPaths::writableLocation(location);
    QDir().mkpath(path);
    return path;
}

/// "Wren Bank 2027.withy", or with " 2" when that is taken.
QString freeName(const QString& folder, const QString& name) {
    const QFileInfo wanted(QDir(folder).filePath(name));
    QString path = wanted.filePath();
    for (int n = 2; QFileInfo::exists(path); ++n)
        path = QDir(folder).filePath(QStringLiteral("%1 %2.withy").arg(wanted.completeBaseName()).arg(n));
    return path;
}

} // namespace

SeasonDoor::SeasonDoor(std::optional<Day> today, Opened opened, QWidget* window)
    : QObject(window), today_(today), opened_(std::move(opened)) {
    askOpen = [window](const QString& title, const QString& proposed) {
        return QFileDialog::getOpenFileName(window, title, proposed, kinds());
    };
    askSave = [window](const QString& title, const QString& proposed) {
        const QString path = QFileDialog::getSaveFileName(window, title, proposed, kinds(), nullptr,
                                                          QFileDialog::DontConfirmOverwrite);
        return path.isEmpty() || !QFileInfo(path).suffix().isEmpty() ? path : path + QStringLiteral(".withy");
    };
}

void SeasonDoor::turnDays(int days) {
    if (today_) today_ = *today_ + days;
}

void SeasonDoor::open(const QString& path) {
    if (isOpen && isOpen(path)) return; // our own lock would refuse it
    take(openSeason(path, usualBackupsFolder(), QDateTime::currentDateTimeUtc()), path);
}

void SeasonDoor::openForReading(const QString& path) {
    take(readSeason(path, usualBackupsFolder()), path);
}

void SeasonDoor::restore(const QString& path, const store::Backup& backup) {
    take(restoreSeason(path, backup, usualBackupsFolder(), QDateTime::currentDateTime()), path);
}

void SeasonDoor::take(OpenOutcome outcome, const QString& path) {
    if (outcome.file) {
        show(std::move(*outcome.file));
        if (!outcome.sentence.isEmpty()) Q_EMIT said(outcome.sentence);
        return;
    }
    NoticeBar::WayOut way;
    if (outcome.offer == OpenOutcome::Offer::read)
        way = {tr("Open it for &reading"), [this, path] { openForReading(path); }};
    if (outcome.offer == OpenOutcome::Offer::restoreBackup && outcome.backup)
        way = {tr("&Put back the copy of %1").arg(whenMade(*outcome.backup)),
               [this, path, backup = *outcome.backup] { restore(path, backup); }};
    Q_EMIT refused(outcome.sentence, way);
}

void SeasonDoor::show(store::SeasonFile file) {
    const auto ownDay = demoDay(file.season());
    auto bench = std::make_unique<Workbench>(std::move(file), ownDay ? ownDay : today_);
    bench->setPatience(aMoment);
    opened_(std::move(bench));
}

bool SeasonDoor::create(const QString& path, const model::Season& season, store::Existing existing) {
    if (mayLeave && !mayLeave()) return false;
    auto outcome = beginSeason(path, season, existing);
    if (outcome.file) {
        show(std::move(*outcome.file));
        return true;
    }
    Q_EMIT refused(outcome.sentence, {tr("&Keep it elsewhere…"), [this, season] {
                                          const auto other = askSave(tr("Where shall it be kept?"), {});
                                          if (!other.isEmpty()) create(other, season);
                                      }});
    return false;
}

void SeasonDoor::begin(const FirstAnswers& answers) {
    const QString path =
        freeName(newSeasons.isEmpty() ? folder(QStandardPaths::DocumentsLocation) : newSeasons,
                 proposedFileName(answers));
    if (create(path, firstSeason(answers))) Q_EMIT said(keptInWords(path));
}

void SeasonDoor::openDemo() {
    const QString path = QDir(folder(QStandardPaths::AppDataLocation)).filePath(tr("Demo season.withy"));
    if (!QFileInfo::exists(path)) {
        create(path, demoSeason());
        return;
    }
    open(path);
    if (!isOpen || !isOpen(path)) // damaged, or in another window
        create(freeName(QFileInfo(path).path(), QFileInfo(path).fileName()), demoSeason());
    else if (isDemo && isDemo()) // not once it was made somebody's own
        Q_EMIT said(tr("This is the demo season as it was left."),
                    {tr("&Begin it afresh"), [this, path] { beginDemoAgain(path); }});
}

void SeasonDoor::beginDemoAgain(const QString& path) {
    if (mayLeave && !mayLeave()) return;
    if (letGo && isOpen && isOpen(path)) letGo();
    create(path, demoSeason(), store::Existing::replace);
}

void SeasonDoor::askAndOpen() {
    const auto path = askOpen(tr("Open a season"), folder(QStandardPaths::DocumentsLocation));
    if (!path.isEmpty()) open(path);
}

void SeasonDoor::saveCopy(Workbench& bench) {
    const QFileInfo now(bench.path());
    const auto path = askSave(tr("Keep a copy as"), freeName(now.path(), now.fileName()));
    if (path.isEmpty()) return;
    const auto trouble = bench.saveCopy(path);
    if (trouble.isEmpty())
        Q_EMIT said(copyKeptInWords(path));
    else
        Q_EMIT refused(trouble, {});
}

} // namespace withy::ui
