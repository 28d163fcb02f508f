"""A QR code as a drawing: plain text that any phone reads, and no address that it would open."""

from __future__ import annotations

import io

from backspan.papers.stamp_part import Stamp

#: Digits of the head in the code: enough to tell heads apart, few enough for a coarse code.
QR_HEAD_DIGITS = 16
#: Millimetres a module: read at arm's length from a tag in the rain.
_MODULE = 0.9


def qr_text(site: str, stamp: Stamp) -> str:
    """What the code of a tag says, a line each: site, drop, configuration, place, head."""
    (codes,) = stamp.codes
    return "\n".join(
        (
            site,
            f"drop {codes.drop}",
            f"configuration {codes.configuration}",
            f"entry {stamp.place}",
            f"head {stamp.head[:QR_HEAD_DIGITS]}",
        )
    )


def qr_svg(text: str) -> str:
    """The code of a text as SVG, black on white, the same for the same text."""
    import segno

    out = io.BytesIO()
    code = segno.make(text, error="m", micro=False)
    code.save(out, kind="svg", scale=_MODULE, unit="mm", dark="#000", light="#fff", nl=False)
    return out.getvalue().decode("utf-8")
