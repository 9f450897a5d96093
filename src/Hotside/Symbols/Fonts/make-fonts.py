#!/usr/bin/env python3
"""Makes the faces of "Hotside Sans" from the Regular and Bold of an open typeface.

    make-fonts.py REGULAR.ttf BOLD.ttf LICENCE.txt OUT-FOLDER

Needs fontTools and brotli. The source's licence (SIL OFL 1.1) reserves its name, so each subset is renamed inside.
A face comes as
    HotsideSans-X.ttf          for measuring and for pictures in pixels
    HotsideSans-X.woff2        Latin-1 and the sheets' signs, to be embedded in an SVG
    HotsideSans-X-Wide.woff2   all that the TTF has, embedded only where a text needs it
and narrow.txt lists the characters of the smaller one.
"""
import shutil
import sys
from pathlib import Path

from fontTools import subset
from fontTools.ttLib import TTFont

FAMILY = "Hotside Sans"

# What the sheets write beside Latin-1: dashes, quotes, ellipsis, bullet, arrows, mathematical signs, Greek letters of the trade,
# and the replacement character, which stands for whatever the face lacks.
SIGNS = [
    0x0131, 0x0152, 0x0153, 0x0394, 0x03A9, 0x03BC, 0x03C0, 0x03C1, 0x2013, 0x2014, 0x2018, 0x2019, 0x201A, 0x201C, 0x201D, 0x201E,
    0x2022, 0x2026, 0x2032, 0x2033, 0x20AC, 0x2190, 0x2191, 0x2192, 0x2193, 0x2194, 0x2212, 0x221A, 0x221E, 0x2248, 0x2260, 0x2264,
    0x2265, 0x2713, 0xFFFD,
]
LATIN1 = [*range(0x20, 0x7F), *range(0xA0, 0xAD), *range(0xAE, 0x100)]
WIDE = [*range(0x100, 0x180), *range(0x384, 0x3CF), *range(0x400, 0x460), 0x0490, 0x0491, 0x0218, 0x0219, 0x021A, 0x021B, 0x1E9E, 0x2116]


def subset_of(source, codepoints):
    font = TTFont(source, recalcTimestamp=False)
    options = subset.Options()
    options.layout_features = ["kern", "liga", "mark", "mkmk", "ccmp"]
    options.name_IDs = ["*"]
    options.hinting = False
    options.desubroutinize = True
    options.notdef_outline = True
    options.drop_tables += ["DSIG", "FFTM", "meta"]
    worker = subset.Subsetter(options)
    have = font.getBestCmap()
    worker.populate(unicodes=[c for c in codepoints if c in have])
    worker.subset(font)
    return font


def rename(font, style):
    names = font["name"]
    copyright_notice = names.getDebugName(0)
    for record in list(names.names):
        names.removeNames(record.nameID)
    postscript = FAMILY.replace(" ", "") + "-" + style
    texts = {
        0: copyright_notice, 1: FAMILY, 2: style, 3: "1.0;" + postscript, 4: f"{FAMILY} {style}", 5: "Version 1.0",
        6: postscript, 13: "SIL Open Font License 1.1", 14: "https://openfontlicense.org", 16: FAMILY, 17: style,
    }
    for number, text in texts.items():
        names.setName(text, number, 3, 1, 0x409)
    # The file's bytes must not depend on the day it is made.
    font["head"].created = font["head"].modified = 3786912000


def main(regular, bold, licence, out):
    out = Path(out)
    for source, style in ((regular, "Regular"), (bold, "Bold")):
        for codepoints, name, flavor in (
            (LATIN1 + SIGNS + WIDE, f"HotsideSans-{style}.ttf", None),
            (LATIN1 + SIGNS, f"HotsideSans-{style}.woff2", "woff2"),
            (LATIN1 + SIGNS + WIDE, f"HotsideSans-{style}-Wide.woff2", "woff2"),
        ):
            font = subset_of(source, codepoints)
            rename(font, style)
            font.flavor = flavor
            font.save(out / name)
            print(name, (out / name).stat().st_size)
    have = TTFont(out / "HotsideSans-Regular.ttf").getBestCmap()
    narrow = "".join(chr(c) for c in sorted(LATIN1 + SIGNS) if c in have)
    (out / "narrow.txt").write_text(narrow, encoding="utf-8")
    shutil.copyfile(licence, out / "OFL.txt")


if __name__ == "__main__":
    main(*sys.argv[1:])
