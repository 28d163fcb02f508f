import math
from pathlib import Path

import pytest
import yaml

from backspan.core.errors import BackspanError
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam, Fastening
from backspan.exchange.parse import Problem, ProjectError, parse_confirmations, parse_project
from tests.unit.exchange.sample import SAMPLE, changed, line_of


def parsed(*replacements: tuple[str, str]) -> Project:
    return parse_project(changed(*replacements), "roof.yaml")


def left_beam(project: Project) -> CounterweightedBeam:
    rig = project.drops[0].rig
    assert rig is not None
    beam = rig.suspension_points[0].counterweighted_beam
    assert beam is not None
    return beam


def problems(*replacements: tuple[str, str]) -> tuple[Problem, ...]:
    """All problems of a changed sample."""
    with pytest.raises(ProjectError, match=r"^roof\.yaml:") as caught:
        parsed(*replacements)
    return caught.value.problems


def blocks(*replacements: tuple[str, str]) -> list[str]:
    """The problems of a changed sample, as they are printed."""
    return [str(problem) for problem in problems(*replacements)]


def test_the_sample_is_read_in_si_with_its_text_and_evidence() -> None:
    beam = left_beam(parsed())
    assert beam.reach == StatedValue(
        0.4572,
        tolerance=0.00635,
        evidence=Evidence.MEASURED,
        by="MT",
        at="2026-11-25 07:30",
        text="18 in",
    )
    assert beam.stack.fastening is not None
    assert beam.stack.fastening.value is Fastening.LOCKED_PIN
    assert beam.stack.groups[0].count.value == 16
    assert math.isclose(parsed().site.north, math.radians(20))


def test_lists_come_in_the_order_of_their_ids() -> None:
    project = parsed()
    assert [drop.id for drop in project.drops] == ["D", "E"]
    anchors = [anchor.id for anchor in project.site.roofs[0].anchors]
    assert anchors == ["A1", "A2", "A3", "A4", "A5", "AE", "AF", "AG", "AH"]


def test_a_long_form_keeps_the_text_of_its_value() -> None:
    assert parsed().kit.pieces[0].mass.text == "55 lb"


MISTAKES = yaml.safe_load(Path(__file__).with_name("mistakes.yaml").read_text(encoding="utf-8"))


@pytest.mark.parametrize("mistake", MISTAKES, ids=[one["write"][:40] for one in MISTAKES])
def test_one_mistake_is_one_problem(mistake: dict[str, str]) -> None:
    (problem,) = problems((mistake["where"], mistake["write"]))
    assert problem.path.endswith(mistake.get("path", ""))
    assert problem.found.startswith(mistake["found"])
    assert problem.expected.startswith(mistake.get("expected", ""))


@pytest.mark.parametrize(
    ("replacement", "fragment"),
    [
        (("station: 1 ft", "station: 14"), "station: 14"),
        (("reach: {value", "reech: {value"), "reech"),
        (("kind: pad", "kind: stnd"), "stnd"),
        (("anchor: A1", "anchor: A7"), "anchor: A7"),
        (("inspected: 2026-03-03", "inspected: soon"), "soon"),
        (("count: 16", "count: 0.5"), "count: 0.5"),
        (("start: 30 ft", "start: -1 ft"), "start: -1 ft"),
    ],
)
def test_the_line_is_the_line_of_the_mistake(replacement: tuple[str, str], fragment: str) -> None:
    line = line_of(fragment, changed(replacement))
    assert [block.split("  ")[0].rsplit(":", 1)[0] for block in blocks(replacement)] == [
        f"roof.yaml:{line}"
    ]


def test_the_same_anchor_id_twice_names_both_lines() -> None:
    twice = ("- {id: A1,", "- {id: A5,")
    first, second = line_of("- id: A5"), line_of("- {id: A1")
    doubled = next(block for block in blocks(twice) if "second time" in block)
    assert doubled.startswith(f"roof.yaml:{second}:16  site.roofs[ROOF].anchors[A5].id")
    assert doubled.endswith(f"the first stands in line {first}")


MANY = (
    ("number: T-100", "nmber: T-100"),
    ("level: {value: 130 ft", "level: {value: 130"),
    ("uses: [tieback, fall arrest]", "uses: [tieback, fal arrest]"),
    ("inspected: 2026-03-03", "inspected: 2026-03-34"),
    ("name: P. Ennis, role: owner's engineer", "name: P. Ennis"),
    ("width: 24 ft", "width: 0 ft"),
    ("from_points: [L, R]", "from_points: [L, Q]"),
    ("rope: W-1\n", "rope: W9\n"),
    ("count: 16", "count: 1.5"),
)


def test_all_problems_are_told_at_once_in_the_order_of_the_file() -> None:
    found = blocks(*MANY)
    assert len(found) == len(MANY)
    lines = [int(block.split(":")[1]) for block in found]
    assert lines == sorted(lines)


def test_a_name_is_not_called_absent_where_its_list_could_not_be_read() -> None:
    for replacement in (
        ("  hoists:", "  hoist:"),
        ("{id: H, name: hoist,", "{name: hoist,"),
        ("{id: H, name: hoist,", "{id: H 1, name: hoist,"),
        ("\nkit:\n", "\nkid:\n"),
    ):
        assert not [block for block in blocks(replacement) if "the hoist 'H" in block]


def test_a_missing_part_does_not_hide_a_name_that_leads_nowhere() -> None:
    without_basis = (
        'basis:\n  tipping: [{rule_set: us-osha-1926-subpart-l, edition: "1996"}]\n',
        "",
    )
    found = blocks(without_basis, ("anchor: A1", "anchor: A7"))
    assert len(found) == 2
    assert found[0].startswith("roof.yaml:2:1\n    found no basis\n    expected basis: a record")


def test_a_merge_key_hides_nothing() -> None:
    found = blocks(("people:\n", "<<: {a: b}\npeople:\n"), ("anchor: A1", "anchor: A7"))
    assert len(found) == 2


def test_only_the_first_twelve_problems_are_printed() -> None:
    stations = "".join(f"        - {{id: X{n}, anchor: A{n + 50}}}\n" for n in range(20))
    with pytest.raises(ProjectError, match=r"and 8 more$") as caught:
        parsed(("      lifelines:\n", f"      lifelines:\n{stations}"))
    assert len(caught.value.problems) == 20
    assert str(caught.value).count("found") == 12


@pytest.mark.parametrize("written", ["2", "0", "1.0", "one"])
def test_another_format_is_refused_before_anything_else(written: str) -> None:
    (block,) = blocks(("format: 1", f"format: {written}"), ("station: 1 ft", "station: 12"))
    assert block == (
        f"roof.yaml:2:9  format\n    found {written!r}\n    expected format: 1, "
        "the only one that this version of the program reads"
    )


def test_a_file_without_format_says_so() -> None:
    (block,) = blocks(("format: 1\n", ""))
    assert "found no format\n    expected format: a whole number" in block


def test_almost_nothing_tells_all_that_is_missing() -> None:
    with pytest.raises(ProjectError, match="found no site") as caught:
        parse_project("format: 1\n", "a.yaml")
    assert [problem.found for problem in caught.value.problems] == ["no site", "no basis"]


def problems_of(text: str) -> tuple[Problem, ...]:
    try:
        parse_project(text, "cut.yaml")
    except ProjectError as error:
        return error.problems
    return ()


@pytest.mark.parametrize("length", range(0, len(SAMPLE), 37))
def test_a_file_cut_short_anywhere_is_refused_with_a_place_in_it_or_sound(length: int) -> None:
    text = SAMPLE[:length]
    lines = text.count("\n") + 1
    assert all(1 <= problem.line <= lines for problem in problems_of(text))
    # The sample is only sound once its basis is there.
    assert problems_of(text) or "basis:" in text


def test_a_file_cut_short_inside_a_record_is_refused_where_it_ends() -> None:
    cut = SAMPLE[: SAMPLE.index("label: {most") + 30]
    (problem,) = problems_of(cut)
    assert problem.line == line_of("label: {most")
    assert problem.expected == "the closing }; the file may be cut short"


def test_the_error_is_one_of_ours_and_a_value_error() -> None:
    assert issubclass(ProjectError, BackspanError)
    assert issubclass(ProjectError, ValueError)


def test_a_very_long_text_is_cut_in_the_message() -> None:
    (block,) = blocks(("station: 1 ft", f"station: {'9' * 5000}"))
    assert len(block) < 400


CONFIRMATION = (
    "confirmations:\n"
    "  - {rule_set: eu-en-1808, edition: '2015', value: tipping.x, by: EK, at: 2026-11-01,\n"
    "     copy_seen: office copy 3}\n"
)


def test_confirmations_are_read_with_or_without_people() -> None:
    (alone,) = parse_confirmations(CONFIRMATION, "c.yaml")
    people = "people: [{id: EK, name: E. Kestrel, role: engineer}]\n"
    assert parse_confirmations(CONFIRMATION + people, "c.yaml") == (alone,)
    assert (alone.by, alone.at, alone.copy_seen) == ("EK", "2026-11-01", "office copy 3")


def test_confirmations_by_nobody_listed_or_with_a_bad_date_are_refused() -> None:
    people = "people: [{id: RT, name: R. Tern, role: engineer}]\n"
    text = CONFIRMATION.replace("2026-11-01", "2026-11-31") + people
    with pytest.raises(ProjectError, match="found the person 'EK', which is not there") as caught:
        parse_confirmations(text, "c.yaml")
    assert [problem.line for problem in caught.value.problems] == [2, 2]
    with pytest.raises(ProjectError, match="found the unknown key 'site'"):
        parse_confirmations(CONFIRMATION + "site: x\n", "c.yaml")
