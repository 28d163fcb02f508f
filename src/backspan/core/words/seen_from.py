"""From where a thing can be seen, by what is asked of it, in English; common practice, no source.

Said where a need asks somebody to look: what could not be seen from one place stays open, and is
looked at from another.
"""

from __future__ import annotations

#: Needs that ask somebody to look, for the first time or again.
LOOKS = frozenset({"need.input", "need.age", "need.witness", "need.evidence"})

_OVER_THE_EDGE = (
    "the stage below the edge, the roof beside the line held by a lifeline, or a window"
)

SEEN_FROM: dict[str, str] = {
    "rope_ends": (
        "the roof at the support, its upper end; the stage or the level below, its lower end"
    ),
    "lifeline": (
        "the roof at its anchor, its upper end; the stage or the level below, its lower end"
    ),
    "tieback": "the roof, followed by hand from the support to what it ends on",
    "end_stop": "the stage, or the level below",
    "thimble": "the roof at the support, or the stage where that hangs below it",
    "termination_kind": "the roof at the support",
    "attached": "the roof at the support",
    "ends_on": "the roof at what it ends on",
    "splices": "the roof at its anchor and then the stage, all of the line passing the grab",
    "line_softener": _OVER_THE_EDGE,
    "tieback_softener": "the roof, along the tieback",
    "lifeline_softener": _OVER_THE_EDGE,
}
