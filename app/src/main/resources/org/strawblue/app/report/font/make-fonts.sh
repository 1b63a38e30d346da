#!/bin/sh
# Makes the two weights used on the card from the typeface's own release (npm package source-sans 3.52.0, folder TTF).
# usage: make-fonts.sh FOLDER_WITH_TTF     (needs fonttools and brotli)
# The licence reserves the original's name, so the cut-down fonts carry another.
set -e
here=$(dirname "$0")
for weight in Regular Semibold; do
  file="$here/card-$(echo $weight | tr 'RS' 'rs').ttf"
  pyftsubset "$1/SourceSans3-$weight.ttf" --output-file="$file" --layout-features=kern --no-hinting \
    --name-IDs='*' --unicodes='U+20-7E,U+A0-17F,U+218-21B,U+2BC,U+300-304,U+307,U+308,U+30A,U+30C,U+37E-3CE,U+400-45F,U+2010-2015,U+2018-201E,U+2020-2022,U+2026,U+2030,U+2032,U+2033,U+2044,U+2070-2079,U+2080-2089,U+20AC,U+2103,U+2109,U+2122,U+2126,U+2150-215E,U+2190-2193,U+2202,U+2206,U+2211,U+2212,U+221A,U+221E,U+2248,U+2260,U+2264,U+2265,U+25A0,U+25A1,U+25B2,U+25BC,U+25CB,U+25CF,U+2610,U+2611,U+2713,U+2717'
  /usr/bin/python3 - "$file" "$weight" <<'P'
import sys
from fontTools.ttLib import TTFont
path, weight = sys.argv[1:]
font = TTFont(path)
names = {1: "Strawblue Card", 2: weight, 3: "Strawblue Card " + weight, 4: "Strawblue Card " + weight,
         6: "StrawblueCard-" + weight, 16: "Strawblue Card", 17: weight}
kept = [n for n in font["name"].names if n.nameID in (0, 13, 14)]
font["name"].names = kept
for key, text in names.items():
    font["name"].setName(text, key, 3, 1, 0x409)
font.save(path)
font.flavor = "woff2"
font.save(path[:-3] + "woff2")
P
done
