// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>
#include <QStyleOption>

namespace withy::ui {

/// Draws the window's controls in Withy's colours, over Qt's Fusion for what it leaves alone. A style of our
/// own instead of a style sheet: a sheet matches its rules against every part of a page before it is first
/// seen, which was a third of the time to start (docs/decisions/007).
class WithyStyle : public QProxyStyle {
public:
    WithyStyle();

    using QProxyStyle::polish;
    using QProxyStyle::unpolish;
    void polish(QWidget* widget) override;

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;

    [[nodiscard]] QRect subElementRect(SubElement element, const QStyleOption* option,
                                       const QWidget* widget) const override;
    [[nodiscard]] QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                                       SubControl part, const QWidget* widget) const override;
    [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                         const QWidget* widget) const override;
    [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option,
                                  const QWidget* widget) const override;
    [[nodiscard]] QIcon standardIcon(StandardPixmap standard, const QStyleOption* option,
                                     const QWidget* widget) const override;
    [[nodiscard]] int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                                QStyleHintReturn* more) const override;

private:
    void drawButton(const QStyleOptionButton& option, QPainter& painter, const QWidget* widget) const;
    void drawToolButton(const QStyleOptionToolButton& option, QPainter& painter, const QWidget* widget) const;
    void drawTicked(ControlElement element, const QStyleOption* option, QPainter* painter,
                    const QWidget* widget) const;
};

} // namespace withy::ui
