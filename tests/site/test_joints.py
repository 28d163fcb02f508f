"""Joints of a beam found on the roof: one more stated, one that is not there told so, by forms."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from backspan.core.findings import Verdict
from backspan.core.ledger import bodies
from backspan.core.ledger.fold import fold
from backspan.core.model.beams import BeamSplice
from backspan.core.model.evidence import Evidence
from backspan.core.review import review
from backspan.records.api import SiteRecord
from backspan.records.store import Statement
from tests.site.bench import IMPORTER, NOON, Browser, browser, made
from tests.unit.core.rigs import LIBRARY, ON, PROJECT
from tests.unit.core.words.lacking_beams import JOINED

AT = "/drops/D/joints"
BEAM = "drops/D/rig/suspension_points/L/counterweighted_beam"
FORM = {"point": "L", "from_tail": "12'-6\""}


@pytest.fixture
def joined(tmp_path: Path) -> tuple[Browser, SiteRecord]:
    """A workbench of the rig whose left beam has a joint by the plan, and who speaks."""
    record = made(tmp_path / "joined", JOINED)
    one = browser(record)
    one.post("/speaker", person="MT")
    return one, record


def joints(record: SiteRecord) -> tuple[BeamSplice, ...]:
    """The joints of the left beam as they are listed now."""
    rig = fold(record.entries()).project.drops[0].rig
    assert rig is not None
    support = rig.suspension_points[0].counterweighted_beam
    assert support is not None
    return support.splices


def answers(record: SiteRecord, check: str) -> dict[str, Verdict]:
    """The answers of a check to each question on the left beam and its joints."""
    found = review(fold(record.entries()).project, "D", LIBRARY, on=ON, compared=False)
    return {
        f"{one.subject} {one.question}": one.verdict
        for one in found.findings
        if one.check == check and one.subject.startswith("D/L")
    }


def test_a_joint_more_is_one_entry_and_a_blank_to_look_at(
    joined: tuple[Browser, SiteRecord],
) -> None:
    pages, record = joined
    before = len(record.entries())
    to = pages.leads(f"{AT}/more", AT, **FORM)
    assert to == f"{AT}#L-J2"
    (entry,) = record.entries()[before:]
    said = entry.body
    assert isinstance(said, bodies.NumberFound)
    assert (said.found.text, said.found.by, said.found.evidence) == (
        *(FORM["from_tail"], "MT"),
        Evidence.MEASURED,
    )
    one = joints(record)[1]
    assert (one.id, one.pins, one.order, one.marks) == ("J2", None, None, None)
    assert one.from_tail is not None
    assert one.from_tail.value == pytest.approx(150 * 0.0254)
    found = answers(record, "beam-seen")
    assert {found[f"D/L/J2 beam-{name}"] for name in ("pins", "order", "marks")} == {
        Verdict.MISSING
    }
    page = pages.get(AT).text
    assert 'id="L-J2"' in page
    blank = re.findall(r'<div class="value known-not-stated">.*?<b>(.*?)</b>', page, re.DOTALL)
    assert blank.count("L, J2") == 5
    assert f"{BEAM}/splices/J2/pins" in pages.get("/drops/D/").text


def test_a_joint_under_the_stack_that_nobody_planned_stops_the_drop(
    joined: tuple[Browser, SiteRecord],
) -> None:
    pages, record = joined
    pages.post(f"{AT}/more", AT, point="L", from_tail="5 ft")
    assert answers(record, "splice-clear")["D/L/J2 splice-clear"] is Verdict.FAIL
    assert "fail" in pages.get("/drops/D/").plain


def test_a_joint_of_a_beam_of_one_piece_asks_which_of_the_two_is_so(
    pages: Browser, record: SiteRecord
) -> None:
    pages.post(f"{AT}/more", AT, **FORM)
    assert answers(record, "beam-seen")["D/L beam-joined"] is Verdict.MISSING
    pages.post("/drops/D/state", AT, path=f"{BEAM}/joined", value="sections joined")
    assert answers(record, "beam-seen")["D/L beam-joined"] is Verdict.PASS


def test_a_planned_joint_that_is_not_there_is_one_tap_and_asks_no_more(
    joined: tuple[Browser, SiteRecord],
) -> None:
    pages, record = joined
    before, codes = len(record.entries()), fold(record.entries()).codes("D")
    there, said = f"{BEAM}/splices/J1/there", {"from": "joints", "item": "x"}
    to = pages.leads("/drops/D/state", AT, path=there, value="no joint there", **said)
    assert to == f"{AT}#x"
    assert len(record.entries()) == before + 1
    (one,) = joints(record)
    assert one.absent
    found = answers(record, "beam-seen")
    assert found["D/L/J1 beam-joint-there"] is Verdict.PASS
    assert "D/L/J1 beam-pins" not in found
    # A beam of sections without any joint is no answer; it is one once somebody says one piece.
    assert answers(record, "splice-clear") == {"D/L splices": Verdict.MISSING}
    pages.post("/drops/D/state", AT, path=f"{BEAM}/joined", value="one piece")
    assert answers(record, "splice-clear") == {}
    assert answers(record, "beam-seen")["D/L beam-joined"] is Verdict.PASS
    assert "nothing is asked of it" in pages.get(AT).plain
    after = fold(record.entries()).codes("D")
    assert codes is not None
    assert after is not None
    assert after[0] != codes[0]


def test_what_is_seen_of_a_joint_that_is_not_there_is_open_until_one_of_the_two_is_said(
    joined: tuple[Browser, SiteRecord],
) -> None:
    pages, record = joined
    there, pins = f"{BEAM}/splices/J1/there", f"{BEAM}/splices/J1/pins"
    pages.post("/drops/D/state", AT, path=there, value="no joint there")
    pages.post("/drops/D/state", AT, path=pins, value="all in and locked")
    found = answers(record, "beam-seen")
    assert found["D/L/J1 beam-joint-there"] is Verdict.MISSING
    assert found["D/L/J1 beam-order"] is Verdict.MISSING
    assert "D/L/J1 splice-clear" in answers(record, "splice-clear")
    pages.post("/drops/D/state", AT, path=there, value="joint there")
    assert answers(record, "beam-seen")["D/L/J1 beam-joint-there"] is Verdict.PASS


@pytest.mark.parametrize(
    ("form", "telling"),
    [
        ({"point": "L", "from_tail": "12"}, "a length is wanted"),
        ({"point": "L", "from_tail": ""}, "The joint from the tail"),
        ({"point": "L", "from_tail": "-1 ft"}, "more than zero"),
        ({"point": "L", "from_tail": "40 ft"}, "expected less than the beam is long, 18'-0\""),
        ({"point": "X", "from_tail": "9 ft"}, "expected one of: L, R"),
    ],
)
def test_what_is_no_joint_of_a_beam_writes_nothing(
    pages: Browser, record: SiteRecord, form: dict[str, str], telling: str
) -> None:
    before = len(record.entries())
    answer = pages.post(f"{AT}/more", AT, **form)
    assert answer.status == 400
    assert telling in answer.plain
    assert len(record.entries()) == before


def test_a_joint_that_somebody_else_stated_since_is_seen_first(
    joined: tuple[Browser, SiteRecord],
) -> None:
    pages, record = joined
    place = str(len(record.entries()))
    other = browser(record)
    other.post("/speaker", person="QP")
    other.post("/drops/D/state", AT, path=f"{BEAM}/reach", value="1'-6\"")
    assert pages.post(f"{AT}/more", AT, place=place, **FORM).status == 200
    answer = other.post(f"{AT}/more", AT, place=place, **FORM)
    assert answer.status == 400
    assert "Nothing was written" in answer.plain
    assert [one.id for one in joints(record)] == ["J1", "J2"]


def test_nobody_states_a_joint_without_a_name(record: SiteRecord) -> None:
    before = len(record.entries())
    answer = browser(record).post(f"{AT}/more", AT, **FORM)
    assert answer.status != 200 or "Say who" in answer.plain
    assert len(record.entries()) == before


def test_a_joint_that_was_stated_by_mistake_can_be_taken_back(
    joined: tuple[Browser, SiteRecord],
) -> None:
    pages, record = joined
    pages.post(f"{AT}/more", AT, **FORM)
    wrong = record.entries()[-1]
    record.say([Statement(bodies.Corrected(wrong.hash, "other beam"), IMPORTER)], at=AGO)
    assert [one.id for one in joints(record)] == ["J1"]
    assert pages.get(AT).status == 200


AGO = NOON.isoformat()


def test_a_drop_without_a_beam_has_no_joints_to_ask_after(pages: Browser) -> None:
    assert f'href="{AT}"' in pages.get("/drops/D/").text
    assert PROJECT.drops[0].rig is not None
    assert pages.get("/drops/NONE/joints").status == 400
