"""What lies under a plan as its page shows it: only what a third length has confirmed.

The plan holds no line of it: an image of its own is asked for once and kept by the browser, so no
act sends it again and the page is there before it.
"""

from __future__ import annotations

from dataclasses import dataclass
from urllib.parse import urlencode

from django.urls import reverse
from django.utils.html import format_html
from django.utils.safestring import SafeString

from backspan.core.errors import BackspanError
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.underlays import underlay_of
from backspan.core.model.laid import Laid
from backspan.core.model.project import Project
from backspan.core.model.site import Point
from backspan.core.model.underlay import Underlay, laid_under
from backspan.drawings.surface import Surface
from backspan.drawings.under import Window, matrix
from backspan.web.plan.under_picked import Answered, answered, check_of
from backspan.web.workbench import DayState

#: How thick its lines are on the sheet: less than anything that is stated.
PEN = 0.13
#: The layer that shows it or not.
LAYER = ("underlay", "drawing under it")


@dataclass(frozen=True, slots=True)
class Lying:
    """What the record says lies under a roof, and how; `wrong` where it is not confirmed."""

    entry: Entry
    underlay: Underlay
    laid: Laid | None = None
    answered: Answered | None = None
    wrong: str = ""

    @property
    def by(self) -> str:
        """Who confirmed it."""
        signer = self.entry.envelope.signer
        return f"{signer.name}, {signer.role}"

    @property
    def at(self) -> str:
        """When it was confirmed."""
        return self.entry.envelope.at[:16].replace("T", " ")


def lying_under(state: DayState, project: Project, roof: str) -> Lying | None:
    """What lies under a roof, its third length held against the tape anew."""
    found = underlay_of(state.folded, roof)
    if found is None:
        return None
    entry, underlay = found
    try:
        laid, check = laid_under(underlay), check_of(underlay)
    except BackspanError as error:
        return Lying(entry, underlay, wrong=str(error))
    told = answered(check, project)
    if not laid.confirmed:
        return Lying(entry, underlay, answered=told, wrong=told.text)
    return Lying(entry, underlay, laid, told)


def on_surface(laid: Laid, surface: Surface, at: Point) -> Point:
    """Where a point of what was laid lies on the sheet, y down.

    Raises NotConfirmedError before it is confirmed.
    """
    x, y = surface.frame.to_paper(laid.on_roof(at))
    return x, surface.height - y


def window_of(surface: Surface) -> Window:
    """What of a drawing is sent: the sheet of the roof, and as much all round it."""
    wide, high = surface.width, surface.height
    return Window(-wide, -high, 3 * wide, 3 * high)


def under_group(lying: Lying | None, surface: Surface, roof: str) -> SafeString:
    """The group under a plan; empty where nothing lies there that was confirmed."""
    if lying is None or lying.laid is None:
        return SafeString("")
    laid, under = lying.laid, lying.underlay
    if under.size is not None:
        across, down = under.size
        return format_html(
            '<g data-part="underlay"><image href="{}" width="{}" height="{}" opacity="0.6"'
            ' preserveAspectRatio="none" transform="{}"/></g>',
            reverse("evidence", args=[under.file]),
            across,
            down,
            matrix(lambda at: on_surface(laid, surface, at)),
        )
    window = window_of(surface)
    # What the sheet is asked for by: another entry or another sheet is another address.
    asked = urlencode({"entry": lying.entry.hash[:12], "sheet": f"{window.box} {surface.frame}"})
    return format_html(
        '<g data-part="underlay"><image href="{}?{}" x="{}" y="{}" width="{}" height="{}"/></g>',
        reverse("plan-under-svg", args=[roof]),
        asked,
        *(f"{one:.3f}" for one in (window.left, window.top, window.width, window.height)),
    )
