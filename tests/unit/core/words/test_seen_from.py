"""Who is asked to look at a thing is told from where it can be seen, in either language."""

from __future__ import annotations

import pytest

from backspan.core.findings import Message
from backspan.core.quantities import Style
from backspan.core.words import language_of, say
from backspan.core.words.names import INPUTS
from backspan.core.words.seen_from import LOOKS, SEEN_FROM


def needed(name: str) -> Message:
    return Message("need.input", (("input", name), ("place", "drops.D.rig")))


def test_both_ends_of_a_line_are_seen_from_two_places() -> None:
    assert say(needed("lifeline"), Style.US, places=False) == (
        "State lifeline. Seen from: the roof at its anchor, its upper end; the stage or the level"
        " below, its lower end."
    )
    assert "the level below, its lower end" in say(needed("rope_ends"), Style.US)
    told = say(needed("rope_ends"), Style.US, language=language_of("es"))
    assert "Se ve desde: la cubierta junto al soporte" in told


def test_nothing_is_added_where_nobody_has_to_look() -> None:
    assert say(needed("stall_load"), Style.US, places=False).endswith(".")
    assert "Seen from" not in say(needed("stall_load"), Style.US)
    named = Message("plan.pass", (("input", "lifeline"),))
    assert "Seen from" not in say(named, Style.US)


@pytest.mark.parametrize("name", SEEN_FROM)
def test_every_row_is_of_an_input(name: str) -> None:
    assert name in INPUTS


def test_the_needs_that_look_are_those_that_name_an_input() -> None:
    for one in LOOKS:
        assert one in language_of("en").sentences
        assert "{input}" in language_of("en").sentences[one]
