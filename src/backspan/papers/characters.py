"""Characters that the fonts of the papers lack are shown by their number, never left out."""

from __future__ import annotations

import unicodedata
from typing import Any

# What Source Sans Pro (regular, semibold and bold) or DejaVu Sans Mono can show, by code point:
# read from the character maps of the font files. A test sets every one of them.
_COVERED = (
    "20-7E A0-AC AE-1C3 1CD-1E3 1E6-1F0 1F4-1F6 1F8-1F9 1FC-221 224-241 243-245 24C-24D 250-2B9 "
    "2BB-2C1 2C6-2D3 2D6-2DE 2E0-2E9 2EE 2F3 374-377 37A-37F 384-38A 38C 38E-3A1 3A3-3CE 3D0-3E1 "
    "3F0-45F 462-463 472-475 490-49B 4A0-4A5 4AA-4B3 4B6-4B7 4BA-4BB 4C0-4C4 4C7-4C8 4CB-4CC "
    "4CF-4F9 510-511 51A-51D 531-556 559-55F 561-587 589-58A 606-607 609-60A 60C 61B 61F 621-63A "
    "640-64A 660-66D 674 679-67B 67E-680 683-684 686-687 691 698 6A4 6A9 6AF 6BE 6CC 6F0-6F9 E3F "
    "E81-E82 E84 E87-E88 E8A E8D E94-E97 E99-E9F EA1-EA3 EA5 EA7 EAA-EAB EAD-EB0 EB2-EB3 "
    "10D0-10FC 1D02 1D08-1D09 1D14 1D16-1D17 1D1D-1D1F 1D2C-1D2E 1D30-1D3C 1D3E-1D5B 1D62-1D65 "
    "1D77-1D78 1D7B 1D85 1D9B-1DB7 1DB9-1DBF 1E00-1E13 1E16-1E2D 1E30-1E4D 1E52-1E63 1E68-1E79 "
    "1E7C-1E99 1E9B 1E9E-1EF9 1F00-1F15 1F18-1F1D 1F20-1F45 1F48-1F4D 1F50-1F57 1F59 1F5B 1F5D "
    "1F5F-1F7D 1F80-1FB4 1FB6-1FC4 1FC6-1FD3 1FD6-1FDB 1FDD-1FEF 1FF2-1FF4 1FF6-1FFE 2010-2023 "
    "2026 2030-2037 2039-203A 203C-203F 2044-2049 204B 2070-2071 2074-208E 2090-209C 20A0-20B5 "
    "20B8-20BA 20BD 2102 2105 210D-210F 2113 2115-2117 2119-211A 211D 2120 2122 2124 2126 "
    "212A-212B 212E 2148 2150-215F 2189 2190-2213 2215 2217-2220 2223 2227-222D 2234-223D "
    "2241-2269 226D-228B 228D-22A5 22B2-22B5 22B8 22C2-22C6 22CD-22D1 22DA-22E9 22EF 2300-2306 "
    "2308-2315 2318-2319 231C-2321 2325-2328 232B 2335-237A 237D 2380-2383 2388-238B 2395 "
    "239B-23AE 23CE-23CF 2423 2500-262F 2638-268B 2690-269C 26A0-26A1 26B0-26B1 2701-2704 "
    "2706-2709 270C-2727 2729-274B 274D 274F-2752 2756 2758-275E 2761-2775 2794 2798-27AF "
    "27B1-27BE 27C2 27C5-27C6 27DC 27E0 27E6-27EB 27F5-27F7 2987-2988 2997-2998 29EB 29FA-29FB "
    "2A00 2A2F 2A6A-2A6B 2B05-2B0D 2B12-2B1A 2C64 2C6D-2C70 2C75-2C77 2C79-2C7A 2C7C-2C7F 2E18 "
    "2E1F 2E22-2E25 2E2E 2E3A-2E3B A708-A716 A71B-A71F A722-A727 A789-A78E A790-A791 A7AA "
    "A7F8-A7F9 FB00-FB04 FB52-FB81 FB8A-FB95 FB9E-FB9F FBAA-FBAD FBE8-FBE9 FBFC-FBFF FE70-FE74 "
    "FE76-FEFC FFFC-FFFD 1D55A 1D670-1D6A3 1D7F6-1D7FF 1F16A-1F16B"
)


def _read(ranges: str) -> frozenset[str]:
    ends = (one.partition("-") for one in ranges.split())
    return frozenset(
        chr(code)
        for first, _, last in ends
        for code in range(int(first, 16), int(last or first, 16) + 1)
    )


#: Every character that can be printed.
COVERED = _read(_COVERED)


def printable(text: str) -> str:
    """`text` with each character that no font of the papers has as its number: [U+4E2D].

    Any white space becomes a plain space, and an accent is joined to its letter where the two
    have a character of their own.
    """
    if text.isascii() and text.isprintable():
        return text
    shown = unicodedata.normalize("NFC", text)
    for letter in sorted(set(shown) - COVERED):
        shown = shown.replace(letter, " " if letter.isspace() else f"[U+{ord(letter):04X}]")
    return shown


def all_printable(data: Any) -> Any:
    """Plain data with every text in it made printable; keys stay."""
    match data:
        case str():
            return printable(data)
        case list():
            return [all_printable(one) for one in data]
        case dict():
            return {key: all_printable(one) for key, one in data.items()}
        case _:
            return data
