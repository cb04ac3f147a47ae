// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/walk_changes.h"

#include "core/plan/forecast_plan.h"
#include "ui/common/figure.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/paint/spacing.h"

#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr std::size_t mostRows = 8;

struct Change {
    QString patch;
    QColor bloom;
    std::int64_t before = 0;
    std::int64_t now = 0;

    [[nodiscard]] std::int64_t size() const { return std::abs(now - before); }
};

std::vector<Change> changesOf(const Workbench& bench, Day day, const WalkExpectations& expected) {
    std::vector<Change> changes;
    const auto& season = bench.season();
    for (const auto& patch : season.patches) {
        const auto e = expected.find(patch.id);
        const auto now = likelyThisWeek(bench.plan(), patch.id, day);
        if (e == expected.end() || !now || !edits::walkOf(season, patch.id, day)) continue;
        if (e->second.week == 0 && *now == 0) continue; // out of its days: said in words
        const auto* plant = season.plants.find(patch.plant);
        changes.push_back({text(patch.label),
                           plant && plant->colour1 ? Palette::bloom(*plant->colour1) : QColor(),
                           e->second.week, *now});
    }
    std::stable_sort(changes.begin(), changes.end(),
                     [](const Change& a, const Change& b) { return a.size() > b.size(); });
    return changes;
}

} // namespace

/// A dashed bar for what was expected, a solid one for what is likely now.
class WalkChanges::Bars : public QWidget {
public:
    explicit Bars(QWidget* parent) : QWidget(parent) {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }

    void setChanges(std::vector<Change> changes) {
        changes_ = std::move(changes);
        QStringList words;
        for (const auto& c : changes_)
            words << changeWords(c.patch, c.before, c.now);
        setAccessibleName(words.join(QLatin1Char(' ')));
        setToolTip(words.join(QLatin1Char('\n')));
        updateGeometry();
        update();
    }

    [[nodiscard]] QSize sizeHint() const override {
        return {grid(40), static_cast<int>(changes_.size()) * rowHeight()};
    }

    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter p(this);
        p.setRenderHint(QPainter::Antialiasing);
        std::int64_t most = 1;
        for (const auto& c : changes_)
            most = std::max({most, c.before, c.now});
        QRect row(0, 0, width(), rowHeight());
        for (const auto& c : changes_) {
            paintRow(p, row, c, static_cast<double>(most));
            row.translate(0, rowHeight());
        }
    }

private:
    static int lineHeight() { return QFontMetrics(typeFont(TypeRole::text)).height(); }

    static int rowHeight() { return lineHeight() + 2 * grid(4) + grid(4); }

    static void paintRow(QPainter& p, const QRect& row, const Change& c, double most) {
        const auto& palette = currentPalette();
        const QFont font = typeFont(TypeRole::text);
        const QFont strong = typeFont(TypeRole::strong);
        const QRect head(row.left(), row.top(), row.width(), lineHeight());
        p.setFont(font);
        p.setPen(palette.of(Role::ink));
        p.drawText(head, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                   QFontMetrics(font).elidedText(c.patch, Qt::ElideRight, head.width()));
        const double room = std::max(10, row.width() - grid(18));
        const double high = grid(3.5);
        QRectF was(row.left() + 0.5, head.bottom() + grid(1) + 0.5,
                   room * static_cast<double>(c.before) / most, high);
        QRectF now = was.translated(0, high + grid(1));
        now.setWidth(std::max(1.0, room * static_cast<double>(c.now) / most));
        p.setPen(QPen(palette.of(Role::edge), hairline, Qt::DashLine));
        p.drawRect(was);
        const QColor bloom = c.bloom.isValid() ? c.bloom : palette.of(Role::ink2);
        p.setPen(QPen(palette.bloomEdge(bloom), hairline));
        p.setBrush(bloom);
        p.drawRect(now);
        p.setBrush(Qt::NoBrush);
        p.setPen(palette.of(Role::ink3));
        p.setFont(typeFont(TypeRole::caption));
        p.drawText(QRectF(was.right() + grid(1.5), was.top(), grid(18), high),
                   Qt::AlignLeft | Qt::AlignVCenter, WalkChanges::tr("was %1").arg(whole(c.before)));
        p.setPen(palette.of(Role::ink));
        p.setFont(strong);
        p.drawText(QRectF(now.right() + grid(1.5), now.top() - 2, grid(18), high + 4),
                   Qt::AlignLeft | Qt::AlignVCenter, whole(c.now));
    }

    std::vector<Change> changes_;
};

WalkChanges::WalkChanges(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , bars_(new Bars(this))
    , nothing_(new TextLabel(TypeRole::text, tr("Nothing yet. It moves as you type."), Ink::second))
    , more_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , outside_(new TextLabel(TypeRole::text, {}, Ink::second))
    , workingHead_(new TextLabel(TypeRole::strong))
    , working_(new WorkingPanel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(grid(4), 0, grid(1), grid(2));
    column->setSpacing(grid(1));
    column->addWidget(new TextLabel(TypeRole::head, tr("What this walk changes")));
    auto* caption =
        new TextLabel(TypeRole::caption, tr("Likely stems within the week of the walk."), Ink::caption);
    caption->setWordWrap(true);
    column->addWidget(caption);
    column->addWidget(new Rule);
    nothing_->setWordWrap(true);
    column->addWidget(nothing_);
    column->addWidget(bars_);
    column->addWidget(more_);
    outside_->setObjectName(QStringLiteral("garden.walk_entry.outside"));
    outside_->setWordWrap(true);
    column->addWidget(outside_);
    column->addSpacing(grid(2));
    workingHead_->setWordWrap(true);
    workingHead_->setObjectName(QStringLiteral("garden.walk_entry.working_head"));
    column->addWidget(workingHead_);
    working_->setObjectName(QStringLiteral("garden.walk_entry.working"));
    column->addWidget(working_);
    column->addStretch(1);
}

void WalkChanges::show(Day day, const WalkExpectations& expected, std::optional<Id<model::Patch>> inHand) {
    auto changes = changesOf(bench_, day, expected);
    const auto all = changes.size();
    if (all > mostRows) changes.resize(mostRows);
    const QString standing = walkOutOfDays(bench_.season(), bench_.plan(), day, expected);
    outside_->setText(breakable(standing));
    outside_->setVisible(!standing.isEmpty());
    nothing_->setVisible(all == 0 && standing.isEmpty());
    bars_->setVisible(all > 0);
    more_->setVisible(all > mostRows);
    more_->setText(moreMovedLess(static_cast<int>(all > mostRows ? all - mostRows : 0)));
    bars_->setChanges(std::move(changes));
    showWorking(inHand);
}

void WalkChanges::showWorking(std::optional<Id<model::Patch>> inHand) {
    const auto* patch = inHand ? bench_.season().patches.find(*inHand) : nullptr;
    const auto& garden = bench_.plan().garden;
    const plan::PatchOutlook* outlook = nullptr;
    if (patch && garden)
        if (const auto found = garden->patches.find(patch->id); found != garden->patches.end())
            outlook = &found->second;
    const bool there = outlook && outlook->forecast;
    workingHead_->setVisible(patch != nullptr);
    working_->setVisible(there);
    if (!patch) return;
    workingHead_->setText(
        breakable(there ? tr("How the walks count at %1").arg(text(patch->label))
                        : tr("%1 has no forecast yet: it wants its usual first and last cut, and "
                             "how many stems.")
                              .arg(text(patch->label))));
    if (!there) return;
    FigureFacts facts;
    facts.figure = whole(std::llround(outlook->forecast->expected));
    facts.working = outlook->forecast->working;
    facts.units = bench_.season().theSettings().units;
    working_->setFacts(facts);
}

} // namespace withy::ui
