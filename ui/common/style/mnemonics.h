// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace withy::ui {

/// The letters that work together with Alt: underlined while it is held, and else not, so that a page of
/// words is not a page of lines.
class Mnemonics : public QObject {
public:
    static bool areShown();
    /// For drawing words with: Qt::TextShowMnemonic or Qt::TextHideMnemonic.
    static int textFlag();
    /// From now on keys of the whole program are heard. Once is enough.
    static void watch();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    using QObject::QObject;
    void show(bool shown);
};

} // namespace withy::ui
