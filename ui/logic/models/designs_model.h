// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/design_bloom.h"
#include "ui/logic/models/design_words.h"
#endif
#include "ui/logic/workbench.h"

#include <QAbstractListModel>

namespace withy::ui {

/// The designs as they stand on the wall's shelves: by group, then in the order they were made.
class DesignsModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        IdRole = Qt::UserRole + 1,
        GroupRole,   ///< int of DesignGroup
        CaptionRole, ///< "10 stems, £9.50"; "from 30 May" of what is not in bloom
        InBloomRole, ///< bool: can be made in the week looked at
    };

    explicit DesignsModel(Workbench& bench, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    /// The accessible text is a whole sentence: "Supper jar, for tables, 10 stems, £9.50".
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

    /// Blank: all groups.
    void setGroup(std::optional<DesignGroup> group);
    /// Only what can be made in the week.
    void setInBloomOnly(bool on);
    /// The week looked at: today's; blank: no day is today, and everything counts as in bloom.
    [[nodiscard]] std::optional<Day> monday() const;

    [[nodiscard]] const DesignBlooms& blooms() const { return blooms_; }

    /// Names with these words anywhere in them, in any case; blank: all.
    void setWords(const QString& words);
    [[nodiscard]] int rowOf(Id<model::Design> design) const; ///< -1 when it is not shown
    [[nodiscard]] int total() const;                         ///< whatever is shown of them

private:
    void refresh();
    void replanned();
    [[nodiscard]] bool bloomsStand() const;
    [[nodiscard]] DesignBlooms bloomsNow();
    [[nodiscard]] DesignBloom bloomOf(Id<model::Design> design) const;
    [[nodiscard]] std::vector<Id<model::Design>> wanted() const;

    Workbench& bench_;
    std::optional<DesignGroup> group_;
    QString words_;
    bool inBloomOnly_ = false;
    std::optional<Day> week_; ///< with what follows: what blooms_ were reckoned from
    std::shared_ptr<const plan::ForecastPlan> garden_;
    model::Season reckoned_;
    DesignBlooms blooms_;
    std::vector<Id<model::Design>> shown_;
};

} // namespace withy::ui
