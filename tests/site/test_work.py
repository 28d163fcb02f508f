"""Who stands where on a stage, stated step by step on a page."""

from __future__ import annotations

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import State
from backspan.core.model.work import WorkStep
from backspan.records.api import SiteRecord
from tests.site.bench import Browser
from tests.site.test_drop import in_service, last, state
from tests.site.test_righting import again
from tests.site.typist import fields_of, project_of

AT = "/set-up/drops/D/steps"
STEP = {
    "name": "joints raked",
    "loads.0.kind": "person",
    "loads.1.kind": "person",
    "loads.1.at": "3 ft",
    "loads.1.to": "12 ft",
    "loads.2.kind": "material",
    "loads.2.mass": "60 lb",
    "loads.2.at": "9 ft",
}


def steps(record: SiteRecord) -> tuple[WorkStep, ...]:
    """The steps that the record has of the drop."""
    rig = project_of(record).drops[0].rig
    assert rig is not None
    return rig.stages[0].work or ()


def test_a_step_is_stated_told_put_right_and_taken_off(pages: Browser, record: SiteRecord) -> None:
    assert fields_of(pages.get(AT))["loads.1.kind"] == "person"
    page = pages.post(AT, None, **STEP)
    assert "joints raked : person anywhere on the deck; person at 3'-0\" to 12'-0\"" in page.plain
    said = last(record)
    assert isinstance(said, bodies.WorkPlanned)
    (step,) = steps(record)
    assert [one.id for one in step.loads] == ["P1", "P2", "M3"]
    assert step.loads[2].mass is not None
    assert step.loads[2].mass.evidence == "label"
    again(pages, f"{AT}?of=JOINTS-RAKED")
    assert steps(record) == (step,)
    again(pages, f"{AT}?of=JOINTS-RAKED", **{"loads.2.mass": "80 lb", "loads.1.at": ""})
    (changed,) = steps(record)
    assert changed.loads[2].mass is not None
    assert changed.loads[2].mass.text == "80 lb"
    assert changed.loads[1].at is None
    again(pages, f"{AT}?of=JOINTS-RAKED", does="take off")
    assert steps(record) == ()


def test_another_step_ends_an_acceptance_and_is_told_where_a_hoist_is_overloaded(
    pages: Browser, record: SiteRecord
) -> None:
    in_service(pages, record)
    page = pages.post(AT, None, **{**STEP, "loads.2.mass": "2000 lb"})
    assert "Drop D is accepted no longer" in page.plain
    assert state(record) is State.STOPPED
    assert "In step JOINTS-RAKED the" in pages.get("/drops/D/").plain


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"name": ""}, "What is done: found nothing"),
        ({"loads.2.mass": "heavy"}, "3: mass: found 'heavy'"),
        ({"loads.2.kind": ""}, "3: who or what: found no kind"),
        ({"loads.1.at": "3"}, "2: stands or lies at: found '3'"),
        (
            {
                f"loads.{one}.{name}": ""
                for one in range(3)
                for name in ("kind", "mass", "at", "to")
            },
            "expected a person or a thing",
        ),
    ],
)
def test_a_step_that_says_too_little_is_refused(
    pages: Browser, record: SiteRecord, change: dict[str, str], told: str
) -> None:
    before = len(record.entries())
    page = pages.post(AT, None, **{**STEP, **change})
    assert page.status == 400
    assert told in page.plain
    assert len(record.entries()) == before
