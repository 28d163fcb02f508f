"""Anchors out of the drawing that lies under a plan: a block is one, where it lies on the roof."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace

from backspan.core.errors import quoted
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.core.model.site import Anchor
from backspan.core.model.underlay import Underlay
from backspan.exchange.drawings_in import anchor_table, anchors_of
from backspan.exchange.tables import Told, What, stated
from backspan.records.evidence import EvidenceFolder
from backspan.web.pages.common import FormError
from backspan.web.plan.under_file import given
from backspan.web.plan.under_shown import Lying

#: Of a hash, as papers print it.
_SHOWN = 12


@dataclass(frozen=True, slots=True)
class Choices:
    """The blocks of a drawing and the attributes they have, each with how often it is there."""

    blocks: tuple[tuple[str, int], ...]
    attributes: tuple[tuple[str, int], ...]


def choices_of(evidence: EvidenceFolder, underlay: Underlay) -> Choices | None:
    """What anchors may be made of; None of a picture. Raises as reading the drawing does."""
    found = given(evidence, underlay.file, underlay.name, underlay.unit or "")
    if found.drawn is None:
        return None
    blocks = Counter(one.block for one in found.drawn.blocks)
    tags = Counter(tag for one in found.drawn.blocks for tag in one.attributes)
    return Choices(tuple(blocks.most_common()), tuple(tags.most_common()))


def document_of(underlay: Underlay) -> str:
    """How what was read from a drawing names it: its file and the beginning of its hash."""
    return f"{underlay.name}, {underlay.file[:_SHOWN]}"


@dataclass(frozen=True, slots=True)
class Chosen:
    """Which blocks are anchors, and which of their attributes is the mark; who says so, when."""

    block: str
    attribute: str
    by: str
    at: str
    today: str


def anchors_under(
    evidence: EvidenceFolder, lying: Lying, project: Project, roof: str, chosen: Chosen
) -> tuple[Anchor, ...]:
    """The anchors that a drawing under a roof would place.

    Raises DrawingError or TableError with every problem, FormError for what is not confirmed or no
    drawing.
    """
    underlay, laid = lying.underlay, lying.laid
    if laid is None:
        raise FormError(f"{lying.wrong}; expected a drawing that was confirmed")
    found = given(evidence, underlay.file, underlay.name, underlay.unit or "")
    if found.drawn is None:
        raise FormError(f"found the picture {quoted(underlay.name)}, expected a drawing")
    there = anchors_of(found.drawn, chosen.block, chosen.attribute)
    on_roof = [replace(one, at=laid.on_roof(one.at)) for one in there]
    table = anchor_table(on_roof, underlay.name, block=chosen.block)
    told = Told(chosen.by, chosen.at, Evidence.DRAWING, document_of(underlay))
    rows = stated(table, What.ANCHORS, project, roof, told, today=chosen.today)
    return tuple(one for one in rows if isinstance(one, Anchor))
