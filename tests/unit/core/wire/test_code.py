import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from backspan.core.model.inherit import inherit
from backspan.core.model.order import ordered
from backspan.core.model.project import Project
from backspan.core.wire import (
    WireError,
    configuration,
    configuration_code,
    from_data,
    read_code,
    to_data,
)
from tests.unit.core.model.sample import project

ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
RIG = "drops.1.rig"
LEFT = f"{RIG}.suspension_points.1"
BEAM = f"{LEFT}.counterweighted_beam"
ROOF = "site.roofs.0"


def code(sample: Project) -> str:
    return configuration_code(sample, sample.drops[1])


def edited(path: str, value: Any) -> Project:
    """The sample with the field at a dotted path replaced."""
    data = to_data(project())
    place = data
    *steps, last = [int(step) if step.isdigit() else step for step in path.split(".")]
    for step in steps:
        place = place[step]
    assert place[last] != value
    place[last] = value
    return from_data(Project, data)


STATED: dict[str, Any] = {"value": 9.0, "tolerance": None, "evidence": None, "by": None, "at": None}
STATED |= {"document": None, "checked_by": None, "text": "", "planned": None}

CONTENT: list[tuple[str, Any]] = [
    ("drops.1.id", "D3"),
    ("drops.1.start", 2.001),
    ("drops.1.width.value", 8.1),
    ("drops.1.height", STATED),
    (f"{BEAM}.reach.value", 0.4573),
    (f"{BEAM}.reach.tolerance", 0.007),
    (f"{BEAM}.backspan.value", 3.6577),
    (f"{BEAM}.fulcrum.kind", "scaffold tower"),
    (f"{BEAM}.fulcrum.setback.value", 0.36),
    (f"{BEAM}.stack.groups.0.count.value", 7),
    (f"{BEAM}.stack.groups.1.per_row", 1),
    (f"{BEAM}.stack.groups.0.piece", "SAND"),
    (f"{BEAM}.stack.fastening.value", "wire tie"),
    (f"{BEAM}.stack.tail_gap", None),
    (f"{LEFT}.id", "M"),
    (f"{LEFT}.station", 3.6),
    (f"{LEFT}.hoist", "H-2"),
    (f"{LEFT}.rope", "W-2"),
    (f"{LEFT}.rope_length.value", 71.0),
    (f"{LEFT}.termination", "E1"),
    (f"{LEFT}.tiebacks.0.anchor", "A1"),
    (f"{LEFT}.tiebacks.1.rope", "W-2"),
    (f"{RIG}.lifelines.0.anchor", "A1"),
    (f"{RIG}.lifelines.0.station", 6.1),
    (f"{RIG}.stages.0.from_points", ["L"]),
    ("kit.hoists.1.rated_load.value", 4448.3),
    ("kit.ropes.1.diameter.value", 0.009),
    ("kit.ropes.1.kind", "natural fibre"),
    ("kit.terminations.0.efficiency", {**STATED, "value": 0.7}),
    ("kit.beams.0.length.value", 6.1),
    ("kit.beams.0.label.most_pieces.value", 21),
    ("kit.pieces.0.mass.value", 24.8),
    ("kit.pieces.0.kind", "water"),
    ("kit.stages.0.length.value", 7.4),
    (f"{ROOF}.level.value", 65.0),
    (f"{ROOF}.edges.0.end", [31.0, 0.0]),
    (f"{ROOF}.edges.0.parapet.height.value", 0.9),
    (f"{ROOF}.anchors.0.standing", "out of service"),
    (f"{ROOF}.anchors.0.uses", ["fall arrest"]),
    (f"{ROOF}.anchors.1.certified", "2026-05-02"),
    (f"{ROOF}.anchors.2.at", [6.0, 9.1]),
    (f"{ROOF}.anchors.2.inspected", None),
    (f"{ROOF}.anchors.2.rating.value", 22001.0),
]


@pytest.mark.parametrize(("path", "value"), CONTENT)
def test_a_change_of_the_rig_changes_the_code(path: str, value: Any) -> None:
    assert code(edited(path, value)) != code(project())


NOT_CONTENT: list[tuple[str, Any]] = [
    ("drops.1.name", "Second"),
    ("drops.1.also_meets", [{"rule_set": "x", "edition": "1", "readings": []}]),
    (f"{BEAM}.reach.text", "0.4572 m"),
    (f"{BEAM}.reach.evidence", "told"),
    (f"{RIG}.values_from.evidence", "told"),
    (f"{BEAM}.reach.by", "EK"),
    (f"{BEAM}.reach.at", "2026-11-23"),
    (f"{BEAM}.reach.document", "Sheet 2"),
    (f"{BEAM}.backspan.checked_by", "RT"),
    (f"{RIG}.values_from.by", "EK"),
    (f"{RIG}.values_from.at", "2026-11-25"),
    (f"{RIG}.values_from.document", None),
    ("kit.hoists.1.name", "Another name"),
    ("kit.pieces.0.name", "Another name"),
    (f"{ROOF}.name", "Another name"),
    (f"{ROOF}.edges.0.faces", None),
    (f"{ROOF}.edges.1.end", [30.0, 21.0]),
    (f"{ROOF}.obstacles", []),
    (f"{ROOF}.outline", []),
    ("site.name", "Another name"),
    ("basis.tipping.0.edition", "2026"),
    ("confirmations", []),
    ("people.0.name", "Another name"),
    ("prepared_by", None),
    ("units", "metric"),
    ("number", "T-2"),
    ("drops.0.start", 13.0),
    ("drops.0.id", "D11"),
    (f"{RIG}.stages.0.from_points", ["R", "L"]),
    (f"{ROOF}.anchors.0.uses", ["tieback", "fall arrest"]),
]


@pytest.mark.parametrize(("path", "value"), NOT_CONTENT)
def test_words_people_and_other_drops_do_not_change_the_code(path: str, value: Any) -> None:
    assert code(edited(path, value)) == code(project())


CHANGES: list[Callable[[Project], Project]] = [
    ordered,
    inherit,
    lambda sample: replace(
        sample, kit=replace(sample.kit, hoists=(*sample.kit.hoists, sample.kit.hoists[0]))
    ),
    lambda sample: replace(sample, drops=(sample.drops[0], sample.drops[1])),
]


@pytest.mark.parametrize("change", CHANGES)
def test_order_and_filled_in_evidence_do_not_change_the_code(
    change: Callable[[Project], Project],
) -> None:
    sample = change(project())
    drop = next(drop for drop in sample.drops if drop.id == "D2")
    assert configuration_code(sample, drop) == code(project())


def test_who_rides_does_not_matter_but_how_many_lines_one_person_has_does() -> None:
    swapped = edited(f"{RIG}.lifelines.0.worker", "XX")
    assert code(swapped) == code(project())
    assert code(edited(f"{RIG}.lifelines.0.worker", "PE")) != code(project())
    assert code(edited(f"{RIG}.lifelines.0.worker", None)) != code(project())


def test_kit_and_anchors_that_the_rig_does_not_use_are_left_out() -> None:
    sample = edited(f"{RIG}.lifelines.1.anchor", "A1")
    content = configuration(sample, sample.drops[1])
    assert sorted(content["anchors"]) == ["A1", "A2"]
    first = project()
    assert configuration(first, first.drops[0])["kit"] == {}


def test_a_drop_without_a_rig_has_a_code_of_its_own() -> None:
    sample = project()
    bare = configuration_code(sample, sample.drops[0])
    assert re.fullmatch(f"[{ALPHABET}]{{4}}-[{ALPHABET}]{{4}}-[{ALPHABET}]", bare)
    assert bare != code(sample)


def test_the_code_of_the_sample_stays_what_it_is() -> None:
    # Acceptances name a configuration by this code: a change of it voids every one of them.
    assert code(project()) == "0J8Y-19SG-5"


ABSENT = [
    (f"{LEFT}.hoist", "hoist"),
    (f"{LEFT}.rope", "rope"),
    (f"{BEAM}.beam", "beam"),
    (f"{BEAM}.stack.groups.0.piece", "piece"),
    (f"{RIG}.stages.0.stage", "stage"),
    (f"{RIG}.lifelines.0.anchor", "anchor"),
    ("drops.1.roof", "roof"),
    ("drops.1.edge", "edge"),
]


@pytest.mark.parametrize(("path", "kind"), ABSENT)
def test_a_rig_that_names_what_is_not_there_has_no_code(path: str, kind: str) -> None:
    with pytest.raises(WireError, match=f"the {kind} 'Q9'"):
        code(edited(path, "Q9"))


def test_a_code_is_read_as_people_write_it() -> None:
    proper = code(project())
    for typed in (proper, proper.lower(), proper.replace("-", ""), proper.replace("-", " ")):
        assert read_code(typed) == proper


def test_letters_that_look_like_digits_are_read_as_digits() -> None:
    sample = project()
    codes = (
        configuration_code(sample, replace(sample.drops[0], start=float(n))) for n in range(200)
    )
    proper = next(one for one in codes if "0" in one and "1" in one)
    assert read_code(proper.replace("0", "O").replace("1", "I")) == proper
    assert read_code(proper.replace("0", "o").replace("1", "l")) == proper


def test_every_single_wrong_character_is_noticed() -> None:
    proper = code(project()).replace("-", "")
    for place, right in enumerate(proper):
        for wrong in ALPHABET.replace(right, ""):
            with pytest.raises(WireError, match="last character does not fit"):
                read_code(proper[:place] + wrong + proper[place + 1 :])


def test_every_swap_of_two_characters_is_noticed() -> None:
    proper = code(project()).replace("-", "")
    for first in range(len(proper)):
        for second in range(first + 1, len(proper)):
            characters = list(proper)
            if characters[first] != characters[second]:
                characters[first], characters[second] = characters[second], characters[first]
                with pytest.raises(WireError, match="last character does not fit"):
                    read_code("".join(characters))


@pytest.mark.parametrize("typed", ["", "7K3M", "7K3M-9QXT-BB", "7K3M-9QXU-B", "7K3M_9QXT_B"])
def test_what_is_no_code_is_refused(typed: str) -> None:
    with pytest.raises(WireError, match="expected a configuration code such as"):
        read_code(typed)
