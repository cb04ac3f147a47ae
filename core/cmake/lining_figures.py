#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""lining_figures.py IN.ttf OUT.ttf: the same font with its lining figures in place of the old-style ones.

Qt 6.4 cannot ask a font for a feature ("lnum"), so the figures are exchanged where letters are looked up. The
family gets " Lining" behind its name, so that nobody takes it for the original.
"""

import sys

from fontTools.ttLib import TTFont


def lining(font):
    table = font["GSUB"].table
    lookups = {i for record in table.FeatureList.FeatureRecord if record.FeatureTag == "lnum"
               for i in record.Feature.LookupListIndex}
    mapping = {}
    for i in sorted(lookups):
        for subtable in table.LookupList.Lookup[i].SubTable:
            mapping.update(getattr(subtable, "ExtSubTable", subtable).mapping)
    return mapping


def main(source, target):
    font = TTFont(source)
    mapping = lining(font)
    if not all(font.getBestCmap()[figure] in mapping for figure in range(ord("0"), ord("9") + 1)):
        sys.exit(f"{source} has no lining figures")
    for table in font["cmap"].tables:
        for figure in range(ord("0"), ord("9") + 1):
            if figure in table.cmap:
                swung = table.cmap[figure]
                table.cmap[figure] = mapping.get(swung, swung)  # tables may share one map, done already
    for name in font["name"].names:
        if name.nameID in (1, 3, 4, 16):
            name.string = name.toUnicode().replace("Vollkorn", "Vollkorn Lining")
        if name.nameID == 6:
            name.string = name.toUnicode().replace("Vollkorn", "VollkornLining")
    font.save(target)


main(*sys.argv[1:])
