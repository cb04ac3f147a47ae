// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

class QStackedWidget;

namespace withy::ui {

class DesignEditor;
class EraseBar;
class WallPage;

/// How each piece is made: the wall of all of them, and the bench where one is drawn.
class DesignsPlace : public Place {
    Q_OBJECT

public:
    explicit DesignsPlace(Workbench& bench, QWidget* parent = nullptr);

    void addActions(Actions& actions) override;
    bool goTo(const model::Ref& ref) override;

    [[nodiscard]] QString helpPage() const override { return QStringLiteral("designs"); }

    void enter() override;
    bool makeNext() override;
    /// The design at the bench; nothing on the wall.
    [[nodiscard]] std::optional<model::Ref> shown() const override;

    /// On the wall or at the bench.
    [[nodiscard]] std::optional<Id<model::Design>> chosen() const;
    [[nodiscard]] bool atTheBench() const;

    // Commands.
    void newDesign(QWidget* at = nullptr);
    void open(Id<model::Design> design);
    void back();
    void use(Id<model::Design> design);
    void duplicate(Id<model::Design> design);
    void erase(Id<model::Design> design);

private:
    DesignEditor& editor();
    void afterChange();
    void showNew(Id<model::Design> design);

    EraseBar* erase_;
    QStackedWidget* pages_;
    WallPage* wall_;
    DesignEditor* editor_ = nullptr; ///< made when first wanted
};

} // namespace withy::ui
