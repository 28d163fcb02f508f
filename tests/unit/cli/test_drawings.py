"""A drawing on the command line: its size told, shown first, stated with a flag, all or nothing."""

from __future__ import annotations

from pathlib import Path

import pytest

from backspan.core.ledger.fold import fold
from backspan.core.model.evidence import Evidence
from backspan.core.model.project import Project
from backspan.records.api import open_record
from tests.unit.cli.conftest import DEMO, ON, Ran, Run
from tests.unit.exchange.drawings_in.drawing import content, made

#: The main roof of the demo, and inside of the place where its second anchor stands.
ROOF = [(0, 0), (120, 0), (120, 60), (0, 60)]
TOO_SHORT = [(0, 0), (95, 0), (95, 60), (0, 60)]


@pytest.fixture
def record(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """A record of the demo building on its own day."""
    monkeypatch.delenv("DATABASE_URL", raising=False)
    monkeypatch.setattr("backspan.cli.import_command.now", lambda: f"{ON}T12:00:00+00:00")
    folder = str(tmp_path / "record")
    assert run("import", DEMO, "--into", folder, "--by", "MARLOW").status == 0
    return folder


@pytest.fixture
def file(tmp_path: Path) -> str:
    """A drawing of the main roof with two new anchors and an outline that is too short."""
    return drawn(tmp_path, ("A90", 30.0), ("A91", 40.0))


def drawn(folder: Path, *anchors: tuple[str, float], units: int = 2) -> str:
    document = made(units)
    space = document.modelspace()
    for layer, corners in (("ROOF", ROOF), ("SHORT", TOO_SHORT)):
        space.add_lwpolyline(corners, close=True, dxfattribs={"layer": layer})
    space.add_point((1, 1))
    document.blocks.new("EYE")
    for mark, x in anchors:
        one = space.add_blockref("EYE", (x, 30))
        for tag, text in (("MARK", mark), ("KIND", "eye bolt"), ("SHEET", "R-2")):
            one.add_attrib(tag, text, (x, 30))
    path = folder / "roof.dxf"
    path.write_bytes(content(document))
    return str(path)


def project(record: str) -> tuple[int, Project]:
    with open_record(Path(record)) as site:
        entries = site.entries()
    return len(entries), fold(entries).project


def anchors(run: Run, record: str, file: str, *more: str) -> Ran:
    rest = ("--roof", "MAIN", "--into", record, "--by", "MARLOW", *more)
    asked = ("--what", "anchors", "--block", "EYE", "--id-attribute", "MARK")
    return run("import", file, *asked, *rest)


def outline(run: Run, file: str, layer: str, *more: str) -> Ran:
    return run("import", file, "--what", "outline", "--layer", layer, *more)


def plain(text: str) -> str:
    return " ".join(text.split())


def test_anchors_are_shown_and_then_stated_as_read_from_the_drawing(
    run: Run, record: str, file: str
) -> None:
    before, _ = project(record)
    ran = anchors(run, record, file)
    assert (ran.status, ran.err) == (0, "")
    said = plain(ran.out)
    assert "roof.dxf is 120 ft by 60 ft or 36.576 m by 18.288 m overall, in ft" in said
    assert "1 x POINT: not read, left out" in said
    assert "Attributes left out: SHEET (2)." in said
    assert "2 anchors would be stated by J. Marlow" in said
    assert project(record)[0] == before
    ran = anchors(run, record, file, "--state")
    assert (ran.status, ran.err) == (0, "")
    assert "2 anchors stated by J. Marlow" in ran.out
    after, site = project(record)
    assert after == before + 2
    new = next(one for one in site.site.roofs[0].anchors if one.id == "A91")
    assert new.at == pytest.approx((40 * 0.3048, 30 * 0.3048), abs=1e-9)
    assert new.kind == "eye bolt"


def test_the_evidence_is_the_drawing_unless_another_is_said(
    run: Run, record: str, tmp_path: Path
) -> None:
    document = made()
    document.modelspace().add_line((0, 0), (120, 0))
    document.blocks.new("EYE")
    one = document.modelspace().add_blockref("EYE", (30, 30))
    for tag, text in (("MARK", "A90"), ("RATING", "5000 lb")):
        one.add_attrib(tag, text, (30, 30))
    path = tmp_path / "roof.dxf"
    path.write_bytes(content(document))
    assert anchors(run, record, str(path), "--state").status == 0
    _, site = project(record)
    new = next(one for one in site.site.roofs[0].anchors if one.id == "A90")
    assert new.kind == "EYE"
    assert new.rating is not None
    assert (new.rating.evidence, new.rating.document) == (Evidence.DRAWING, "roof.dxf")


def test_an_anchor_that_the_site_has_or_that_stands_off_the_roof_is_told_at_its_block(
    run: Run, record: str, tmp_path: Path
) -> None:
    before, _ = project(record)
    ran = anchors(run, record, drawn(tmp_path, ("A01", 30.0), ("A92", 130.0)), "--state")
    assert (ran.status, ran.out) == (2, "")
    assert "block EYE at 30, 30 (ft) (id): found 'A01', which is an anchor of" in plain(ran.err)
    assert "block EYE at 130, 30 (ft) (y): found a place outside main roof" in plain(ran.err)
    assert project(record)[0] == before


def test_an_outline_is_shown_without_a_record(run: Run, file: str) -> None:
    ran = outline(run, file, "ROOF")
    assert (ran.status, ran.err) == (0, "")
    rows = [line.split() for line in ran.out.splitlines()]
    assert {one[0]: one[1] for one in rows if one and one[0] in {"N", "E", "S", "W"}} == {
        "S": "120'-0\"",
        "N": "120'-0\"",
        "W": "60'-0\"",
        "E": "60'-0\"",
    }


def test_an_outline_is_stated_with_the_parapets_that_were_there(
    run: Run, record: str, file: str
) -> None:
    before, old = project(record)
    into = ("--roof", "MAIN", "--into", record, "--by", "MARLOW")
    ran = outline(run, file, "ROOF", *into)
    assert "would be stated by J. Marlow" in plain(ran.out)
    assert project(record) == (before, old)
    ran = outline(run, file, "ROOF", *into, "--state")
    assert (ran.status, ran.err) == (0, "")
    after, site = project(record)
    assert after == before + 1
    walls = {one.id: one.parapet for one in old.site.roofs[0].edges}
    roof = site.site.roofs[0]
    assert {one.id: one.parapet for one in roof.edges} == {**walls, "E": None}
    assert roof.anchors == old.site.roofs[0].anchors
    assert site.drops == old.drops


def test_an_outline_without_what_stands_on_the_roof_is_refused(
    run: Run, record: str, file: str
) -> None:
    before, _ = project(record)
    into = ("--roof", "MAIN", "--into", record, "--by", "MARLOW", "--state")
    ran = outline(run, file, "SHORT", *into)
    assert (ran.status, ran.out) == (2, "")
    assert "found anchor A02 at 97, 21 (ft), outside the outline" in plain(ran.err)
    ran = outline(run, file, "ROOF", "--roof", "MAIM", *into[2:])
    assert "found no roof 'MAIM'; expected one of its roofs: MAIN" in plain(ran.err)
    assert project(record)[0] == before


def test_units_are_said_where_the_drawing_does_not(run: Run, tmp_path: Path) -> None:
    file = drawn(tmp_path, units=0)
    ran = outline(run, file, "ROOF")
    assert (ran.status, ran.out) == (2, "")
    assert "found no units ($INSUNITS is 0)" in plain(ran.err)
    ran = outline(run, file, "ROOF", "--units", "ft")
    assert ran.status == 0
    assert "in ft (you said so)" in plain(ran.out)


@pytest.mark.parametrize(
    ("options", "told"),
    [
        ((), "a drawing does not say what to take of it"),
        (("--what", "drops"), "a drawing does not say what to take of it"),
        (("--what", "outline"), "an outline is of a layer: add --layer"),
        (("--what", "outline", "--layer", "A", "--block", "B"), "and no --block"),
        (("--what", "outline", "--layer", "A", "--state"), "add --into with its folder"),
        (("--what", "outline", "--layer", "A", "--into", "x"), "add --roof with its id"),
        (("--what", "outline", "--layer", "A", "--document", "x"), "are for anchors and drops"),
        (("--what", "anchors", "--block", "B"), "--id-attribute with the tag of its mark"),
        (("--what", "anchors", "--block", "B", "--id-attribute", "M"), "add --into and --roof"),
    ],
)
def test_options_that_do_not_go_together_are_told(
    run: Run, file: str, options: tuple[str, ...], told: str
) -> None:
    ran = run("import", file, *options)
    assert (ran.status, ran.out) == (2, "")
    assert told in plain(ran.err)


def test_options_of_a_drawing_are_for_drawings(run: Run, record: str) -> None:
    ran = run("import", DEMO, "--into", record, "--by", "MARLOW", "--layer", "ROOF")
    assert ran.status == 2
    assert "found no drawing by its name, expected .dxf" in plain(ran.err)
    assert "Missing option '--into'" in run("import", DEMO, "--by", "MARLOW").err
    assert run("import", "no-such.dxf", "--what", "outline", "--layer", "A").status == 2
