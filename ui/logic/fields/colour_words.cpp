// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/colour_difference.h"
#include "ui/logic/fields/colour_reading.h"

#include <QCoreApplication>
#include <QHash>

#include <array>

/// What a colour is called, and which colour a name means. Two published lists:
/// K. L. Kelly, D. B. Judd, "Color: Universal Language and Dictionary of Names", NBS Special Publication 440
/// (1976): the ISCC-NBS names and the centres of what they mean, in sRGB as the NBS/ISCC Centroids dictionary
/// by A. Jaffer gives them (without the near-blacks and most of the greyish, which no flower is called by);
/// and CSS Color Module Level 4 (W3C), section 6.1, for plain words that list has not.
namespace withy::ui {

namespace {

struct NamedColour {
    const char* name;
    Colour colour;
};

consteval Colour rgb(unsigned hex) {
    return {static_cast<std::uint8_t>(hex >> 16U), static_cast<std::uint8_t>(hex >> 8U & 0xffU),
            static_cast<std::uint8_t>(hex & 0xffU)};
}

#define NAMED(word, hex)                                                                                     \
    NamedColour {                                                                                            \
        QT_TRANSLATE_NOOP("ColourWords", word), rgb(hex)                                                     \
    }

constexpr std::array publishedColours{
    // ISCC-NBS
    NAMED("vivid pink", 0xffb5baU),
    NAMED("strong pink", 0xea9399U),
    NAMED("deep pink", 0xe4717aU),
    NAMED("light pink", 0xf9cccaU),
    NAMED("moderate pink", 0xdea5a4U),
    NAMED("dark pink", 0xc08081U),
    NAMED("pale pink", 0xead8d7U),
    NAMED("greyish pink", 0xc4aeadU),
    NAMED("pinkish white", 0xeae3e1U),
    NAMED("vivid red", 0xbe0032U),
    NAMED("strong red", 0xbc3f4aU),
    NAMED("deep red", 0x841b2dU),
    NAMED("very deep red", 0x5c0923U),
    NAMED("moderate red", 0xab4e52U),
    NAMED("dark red", 0x722f37U),
    NAMED("very dark red", 0x3f1728U),
    NAMED("greyish red", 0x905d5dU),
    NAMED("strong yellowish pink", 0xf99379U),
    NAMED("deep yellowish pink", 0xe66721U),
    NAMED("light yellowish pink", 0xf4c2c2U),
    NAMED("dark yellowish pink", 0xc48379U),
    NAMED("pale yellowish pink", 0xecd5c5U),
    NAMED("brownish pink", 0xc2ac99U),
    NAMED("vivid reddish orange", 0xe25822U),
    NAMED("strong reddish orange", 0xd9603bU),
    NAMED("deep reddish orange", 0xaa381eU),
    NAMED("moderate reddish orange", 0xcb6d51U),
    NAMED("dark reddish orange", 0x9e4732U),
    NAMED("strong reddish brown", 0x882d17U),
    NAMED("light reddish brown", 0xa87c6dU),
    NAMED("moderate reddish brown", 0x79443bU),
    NAMED("dark reddish brown", 0x3e1d1eU),
    NAMED("vivid orange", 0xf38400U),
    NAMED("brilliant orange", 0xfd943fU),
    NAMED("strong orange", 0xed872dU),
    NAMED("deep orange", 0xbe6516U),
    NAMED("light orange", 0xfab57fU),
    NAMED("moderate orange", 0xd99058U),
    NAMED("brownish orange", 0xae6938U),
    NAMED("strong brown", 0x80461bU),
    NAMED("deep brown", 0x593319U),
    NAMED("light brown", 0xa67b5bU),
    NAMED("moderate brown", 0x6f4e37U),
    NAMED("dark brown", 0x422518U),
    NAMED("vivid orange yellow", 0xf6a600U),
    NAMED("brilliant orange yellow", 0xffc14fU),
    NAMED("strong orange yellow", 0xeaa221U),
    NAMED("deep orange yellow", 0xc98500U),
    NAMED("light orange yellow", 0xfbc97fU),
    NAMED("moderate orange yellow", 0xe3a857U),
    NAMED("dark orange yellow", 0xbe8a3dU),
    NAMED("pale orange yellow", 0xfad6a5U),
    NAMED("strong yellowish brown", 0x996515U),
    NAMED("light yellowish brown", 0xc19a6bU),
    NAMED("moderate yellowish brown", 0x826644U),
    NAMED("vivid yellow", 0xf3c300U),
    NAMED("brilliant yellow", 0xfada5eU),
    NAMED("strong yellow", 0xd4af37U),
    NAMED("deep yellow", 0xaf8d13U),
    NAMED("light yellow", 0xf8de7eU),
    NAMED("moderate yellow", 0xc9ae5dU),
    NAMED("dark yellow", 0xab9144U),
    NAMED("pale yellow", 0xf3e5abU),
    NAMED("light olive brown", 0x967117U),
    NAMED("vivid greenish yellow", 0xdcd300U),
    NAMED("brilliant greenish yellow", 0xe9e450U),
    NAMED("strong greenish yellow", 0xbeb72eU),
    NAMED("light greenish yellow", 0xeae679U),
    NAMED("moderate greenish yellow", 0xb9b459U),
    NAMED("pale greenish yellow", 0xebe8a4U),
    NAMED("light olive", 0x867e36U),
    NAMED("moderate olive", 0x665d1eU),
    NAMED("strong yellow green", 0x7e9f2eU),
    NAMED("brilliant yellow green", 0xbdda57U),
    NAMED("light yellow green", 0xc9dc89U),
    NAMED("moderate yellow green", 0x8a9a5bU),
    NAMED("pale yellow green", 0xdadfb7U),
    NAMED("greyish yellow green", 0x8f9779U),
    NAMED("strong olive green", 0x404f00U),
    NAMED("moderate olive green", 0x4a5d23U),
    NAMED("strong yellowish green", 0x44944aU),
    NAMED("light yellowish green", 0x93c592U),
    NAMED("moderate yellowish green", 0x679267U),
    NAMED("dark yellowish green", 0x355e3bU),
    NAMED("strong green", 0x007959U),
    NAMED("light green", 0x6aab8eU),
    NAMED("moderate green", 0x3b7861U),
    NAMED("dark green", 0x1b4d3eU),
    NAMED("pale green", 0x8da399U),
    NAMED("greyish green", 0x5e716aU),
    NAMED("light bluish green", 0x66ada4U),
    NAMED("moderate bluish green", 0x317873U),
    NAMED("vivid blue", 0x00a1c2U),
    NAMED("brilliant blue", 0x4997d0U),
    NAMED("strong blue", 0x0067a5U),
    NAMED("deep blue", 0x00416aU),
    NAMED("very light blue", 0xa1caf1U),
    NAMED("light blue", 0x70a3ccU),
    NAMED("moderate blue", 0x436b95U),
    NAMED("pale blue", 0x91a3b0U),
    NAMED("very pale blue", 0xbcd4e6U),
    NAMED("greyish blue", 0x536878U),
    NAMED("vivid purplish blue", 0x30267aU),
    NAMED("brilliant purplish blue", 0x6c79b8U),
    NAMED("strong purplish blue", 0x545aa7U),
    NAMED("light purplish blue", 0x8791bfU),
    NAMED("very light purplish blue", 0xb3bce2U),
    NAMED("moderate purplish blue", 0x4e5180U),
    NAMED("pale purplish blue", 0x8c92acU),
    NAMED("vivid violet", 0x9065caU),
    NAMED("brilliant violet", 0x7e73b8U),
    NAMED("strong violet", 0x604e97U),
    NAMED("light violet", 0x8c82b6U),
    NAMED("moderate violet", 0x604e81U),
    NAMED("pale violet", 0x9690abU),
    NAMED("vivid purple", 0x9a4eaeU),
    NAMED("brilliant purple", 0xd399e6U),
    NAMED("strong purple", 0x875692U),
    NAMED("deep purple", 0x602f6bU),
    NAMED("light purple", 0xb695c0U),
    NAMED("very light purple", 0xd5badbU),
    NAMED("moderate purple", 0x86608eU),
    NAMED("dark purple", 0x563c5cU),
    NAMED("pale purple", 0xaa98a9U),
    NAMED("vivid reddish purple", 0x870074U),
    NAMED("strong reddish purple", 0x9e4f88U),
    NAMED("deep reddish purple", 0x702963U),
    NAMED("light reddish purple", 0xb784a7U),
    NAMED("moderate reddish purple", 0x915c83U),
    NAMED("dark reddish purple", 0x5d3954U),
    NAMED("pale reddish purple", 0xaa8a9eU),
    NAMED("brilliant purplish pink", 0xffc8d6U),
    NAMED("strong purplish pink", 0xe68facU),
    NAMED("deep purplish pink", 0xde6fa1U),
    NAMED("light purplish pink", 0xefbbccU),
    NAMED("moderate purplish pink", 0xd597aeU),
    NAMED("dark purplish pink", 0xc17e91U),
    NAMED("pale purplish pink", 0xe8ccd7U),
    NAMED("vivid purplish red", 0xce4676U),
    NAMED("strong purplish red", 0xb3446cU),
    NAMED("deep purplish red", 0x78184aU),
    NAMED("moderate purplish red", 0xa8516eU),
    NAMED("dark purplish red", 0x673147U),
    NAMED("very dark purplish red", 0x38152cU),
    NAMED("greyish purplish red", 0x915f6dU),
    NAMED("light grey", 0xb9b8b5U),
    NAMED("medium grey", 0x848482U),
    NAMED("dark grey", 0x555555U),
    NAMED("black", 0x222222U),
    // CSS
    NAMED("white", 0xffffffU),
    NAMED("ivory", 0xfffff0U),
    NAMED("linen", 0xfaf0e6U),
    NAMED("beige", 0xf5f5dcU),
    NAMED("old lace", 0xfdf5e6U),
    NAMED("coral", 0xff7f50U),
    NAMED("salmon", 0xfa8072U),
    NAMED("crimson", 0xdc143cU),
    NAMED("gold", 0xffd700U),
    NAMED("plum", 0xdda0ddU),
    NAMED("orchid", 0xda70d6U),
    NAMED("lavender", 0xe6e6faU),
    NAMED("indigo", 0x4b0082U),
    NAMED("navy", 0x000080U),
    NAMED("teal", 0x008080U),
    NAMED("turquoise", 0x40e0d0U),
    NAMED("cornflower blue", 0x6495edU),
    NAMED("sky blue", 0x87ceebU),
    NAMED("maroon", 0x800000U),
};

#undef NAMED

/// Which of the words comes nearest; kept, since a long table asks for the same few again and again.
std::size_t nearest(Colour colour) {
    thread_local QHash<quint32, std::size_t> known;
    const quint32 key = quint32{colour.red} << 16U | quint32{colour.green} << 8U | quint32{colour.blue};
    if (const auto found = known.constFind(key); found != known.constEnd()) return *found;
    static const auto labs = [] {
        std::array<Lab, publishedColours.size()> all;
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i] = labOf(publishedColours[i].colour);
        return all;
    }();
    const Lab lab = labOf(colour);
    std::size_t best = 0;
    double least = colourDifference(lab, labs[0]);
    for (std::size_t i = 1; i < labs.size(); ++i) {
        const double away = colourDifference(lab, labs[i]);
        if (away >= least) continue;
        least = away;
        best = i;
    }
    known.insert(key, best);
    return best;
}

QString worded(const char* name) {
    return QCoreApplication::translate("ColourWords", name);
}

} // namespace

QString nearestColourWord(Colour colour) {
    return worded(publishedColours[nearest(colour)].name);
}

std::optional<Colour> publishedColour(const QString& word) {
    for (const auto& named : publishedColours) {
        if (word == QLatin1String(named.name) || word == worded(named.name).toLower()) return named.colour;
    }
    return std::nullopt;
}

} // namespace withy::ui
