"""The work on a stage, step by step: who stands where, what lies where, when all ride down."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.ledger import bodies
from backspan.core.model.in_place import in_place
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.stages import HungStage
from backspan.core.model.work import LoadKind, PlacedLoad, WorkStep
from backspan.core.quantities import LENGTH, MASS, display
from backspan.exchange.written import part_data
from backspan.web.asking import PLATE, Ask, ProblemsError, ask, part, said
from backspan.web.describing import describe, form_page, id_for, statement, the_project
from backspan.web.pages.common import FormError, go_on, named_of, refuse_unseen, state_of, the_drop
from backspan.web.righting import as_it_stands, put_right

#: Rows for people and things in one step: those on the form at once, and all.
_AT_ONCE, _ROWS = 3, 8


def page(request: HttpRequest, name: str) -> HttpResponse:
    """The steps of the work of a drop's stage, one more, or one of them put right or taken off."""
    project, state = the_project(request), state_of(request)
    drop = the_drop(state, name)
    hung = _stage(drop)
    steps = hung.work or ()
    of = named_of(request, steps)
    asks = tuple(_asks(drop))
    stands = {} if of is None else part_data(of)
    if of is not None:
        asks = as_it_stands(asks, stands, project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        refuse_unseen(request, state, name)
        if of is not None and request.POST.get("does") == "take off":
            there = tuple(one for one in steps if one is not of)
        elif of is not None:
            data = put_right(sent, stands, statement(request), project.units)
            there = in_place(steps, _read(data, sent))
        else:
            data = said(sent, statement(request))
            data["id"] = id_for(str(data.get("name", "")), [one.id for one in steps])
            there = (*steps, _read(data, sent))
        describe(request, [bodies.WorkPlanned(name, hung.stage, there)])
        return go_on("set-up-work", name)

    rows = [{"step": one, "loads": [_told(load, project) for load in one.loads]} for one in steps]
    return form_page(
        request, "set_up/work.html", asks, act, drop=drop, stage=hung.stage, steps_of=rows, of=of
    )


def _stage(drop: Drop) -> HungStage:
    """The stage of a drop. Raises FormError where none hangs there."""
    stages = () if drop.rig is None else drop.rig.stages
    if not stages:
        raise FormError(f"found no stage at drop {drop.id}, expected its rig to be set up first")
    return stages[0]


def _asks(drop: Drop) -> Iterator[Ask]:
    yield ask(WorkStep, "name", "What is done", needed=True, like="such as joints raked, last ride")
    rig = drop.rig
    people = 0 if rig is None or rig.riders is None else rig.riders.value
    for row in range(_ROWS):
        around, told = f"loads.{row}", f"{row + 1}"
        more = row >= _AT_ONCE and row > people
        kind = ask(WorkStep, f"{around}.kind", f"{told}: who or what", needed=False, more=more)
        yield replace(kind, value=str(LoadKind.PERSON) if row < people else "")
        yield ask(
            WorkStep,
            f"{around}.mass",
            f"{told}: mass",
            evidence=PLATE,
            like="a person left blank weighs what is planned with",
            more=more,
        )
        for name, words in (("at", "stands or lies at"), ("to", "and goes to")):
            yield ask(
                WorkStep,
                f"{around}.{name}",
                f"{told}: {words}",
                like=_LIKE[name],
                more=more,
            )


_LIKE = {
    "at": "from the left stirrup; left blank, anywhere",
    "to": "of a person left blank, anywhere; the same place if they stay",
}


def _read(data: dict[str, Any], sent: tuple[Ask, ...]) -> WorkStep:
    """The step that was written. Raises ProblemsError with all that is wrong with it."""
    loads = [_named(number, one) for number, one in enumerate(data.get("loads", []), 1)]
    wrong = [] if loads else ["Who or what: found nothing, expected a person or a thing"]
    wrong += [] if data.get("name") else ["What is done: found nothing, expected a text"]
    try:
        found = part(WorkStep, {**data, "loads": loads}, tuple(_as_told(sent, loads)))
    except ProblemsError as error:
        raise ProblemsError([*wrong, *error.problems]) from error
    if wrong:
        raise ProblemsError(wrong)
    return found


def _as_told(sent: tuple[Ask, ...], loads: list[dict[str, Any]]) -> Iterator[Ask]:
    """The questions as the path of a problem has them: a row by the id of what is in it."""
    filled = sorted({int(one.name.split(".")[1]) for one in sent if "." in one.name and one.value})
    ids = {row: str(load["id"]) for row, load in zip(filled, loads, strict=False)}
    for one in sent:
        around, _, rest = one.name.partition(".")
        row, _, field = rest.partition(".")
        named = ids.get(int(row)) if row else None
        yield one if named is None else replace(one, name=f"{around}.{named}.{field}")


def _named(number: int, one: dict[str, Any]) -> dict[str, Any]:
    kind = str(one.get("kind", ""))
    return {"id": f"{kind[:1].upper() or 'X'}{number}", **one}


def _told(load: PlacedLoad, project: Project) -> str:
    """A load as the page tells it."""
    style = project.units
    parts = [str(load.kind)]
    if load.mass is not None:
        parts.append(display(load.mass.value, MASS, style))
    if load.at is None:
        parts.append("anywhere on the deck")
    else:
        parts.append(f"at {display(load.at, LENGTH, style)}")
        if load.to is not None:
            parts.append(f"to {display(load.to, LENGTH, style)}")
        elif load.kind is LoadKind.PERSON:
            parts.append("and anywhere they walk")
    return " ".join(parts)
