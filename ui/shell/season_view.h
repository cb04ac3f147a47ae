// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/backup_keeper.h"
#include "ui/shell/places.h"

#include <QTimer>
#include <QWidget>

#include <memory>
#include <vector>

class QHBoxLayout;
class QStackedWidget;

namespace withy::ui {

class BloomStrip;
class FindingsPanel;
class Rail;
class StripTable;

/// A season on screen: the rail, the bloom strip and the six places.
class SeasonView : public QWidget {
    Q_OBJECT

public:
    SeasonView(std::unique_ptr<Workbench> bench, Actions& actions, QWidget* parent = nullptr);
    ~SeasonView() override;

    [[nodiscard]] Workbench& bench() { return *bench_; }

    [[nodiscard]] Rail& rail() { return *rail_; }

    [[nodiscard]] BackupKeeper* backups() { return keeper_.get(); } ///< null when only reading

    [[nodiscard]] FindingsPanel& findings(); ///< made by now

    [[nodiscard]] BloomStrip& strip() { return *strip_; }

    [[nodiscard]] Place* current() const;

    [[nodiscard]] int placeCount() const { return static_cast<int>(places_.size()); }

    /// Makes at once what would be made while the program is idle.
    void makeAll();

    void showPlace(int index);
    /// As one stood in this file the last time; the place itself comes after the first picture.
    void lookAsLast();
    /// Where one stands, for the next time.
    void keepLook() const;
    /// Leads to the record, in whichever place it lives. False when none shows it.
    bool goTo(const model::Ref& ref);

Q_SIGNALS:
    void placeChanged(int index);
    /// Every place and page is made, with its commands.
    void complete();
    void refused(const QString& sentence);
    void said(const QString& sentence);
    void restoreWanted(const withy::store::Backup& backup);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void addPlaces();
    void addStripActions();
    void fitStrip();
    void addHiddenPlace(int index, const PlaceEntry& entry);
    Place& place(int index); ///< made by now
    void wire(int index, Place& place);
    bool makeNext();
    void makeWhileIdle();
    void keepBackups();

    std::unique_ptr<BackupKeeper> keeper_; ///< makes its last copy when the season is closed
    std::unique_ptr<Workbench> bench_;     ///< outlives the places
    Rail* rail_;
    BloomStrip* strip_;
    StripTable* stripTable_ = nullptr; ///< made when first asked for
    QStackedWidget* stack_;
    QHBoxLayout* beside_;               ///< the page, and what needs looking at
    FindingsPanel* findings_ = nullptr; ///< made when first asked for

    Actions& actions_;
    std::vector<PlaceEntry> entries_;
    std::vector<Place*> places_; ///< by entry; null: not yet
    int cameFrom_ = 0;           ///< the place of the rail that was seen last
    int next_ = 0;               ///< the place to go to after the first picture, unless one goes elsewhere
    QTimer idle_;
    bool complete_ = false;
};

} // namespace withy::ui
