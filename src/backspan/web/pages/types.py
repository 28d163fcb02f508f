"""The kit: kinds of things with what their plates and papers say, and the things by their tags."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, replace
from enum import StrEnum
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.model.evidence import Statement
from backspan.core.model.in_place import in_place
from backspan.core.model.inherit import said_by, with_statements
from backspan.core.model.kit import (
    Beam,
    Connector,
    Hoist,
    Kit,
    Lanyard,
    Piece,
    Rope,
    Stage,
    Termination,
)
from backspan.core.model.project import Project
from backspan.core.model.units import Unit, UnitKind
from backspan.exchange.written import part_data
from backspan.web.asking import (
    PAPER,
    PLATE,
    Ask,
    ProblemsError,
    ask,
    every,
    filled_in,
    part,
    said,
)
from backspan.web.describing import describe, described, form_page, id_for, statement, the_project
from backspan.web.pages.common import FormError, go_on, named_of
from backspan.web.righting import as_it_stands, put_right

#: Each kind of thing: the list of the kit that its types stand in, its record, its usual evidence.
KINDS: dict[str, tuple[str, type[Any], Any]] = {
    "hoist": ("hoists", Hoist, PLATE),
    "rope": ("ropes", Rope, PAPER),
    "termination": ("terminations", Termination, PAPER),
    "connector": ("connectors", Connector, PLATE),
    "beam": ("beams", Beam, PLATE),
    "piece": ("pieces", Piece, PLATE),
    "stage": ("stages", Stage, PLATE),
    "lanyard": ("lanyards", Lanyard, PLATE),
}
_TITLES = {
    "hoist": "Hoists",
    "rope": "Ropes",
    "termination": "Rope ends",
    "connector": "Shackles, links, hooks",
    "beam": "Beams",
    "piece": "Counterweight pieces",
    "stage": "Stages",
    "lanyard": "Lanyards with their grabs",
}
_ONE = {
    "termination": "rope end",
    "connector": "shackle, link or hook",
    "piece": "counterweight piece",
}


def kinds(request: HttpRequest) -> HttpResponse:
    """All kinds of things there are, by what they are."""
    project = the_project(request)
    rows = [
        {
            "kind": kind,
            "title": _TITLES[kind],
            "one": _ONE.get(kind, kind),
            "types": [_told(one) for one in getattr(project.kit, names)],
        }
        for kind, (names, _, _) in KINDS.items()
    ]
    return form_page(request, "set_up/kinds.html", (), lambda _: go_on("set-up-kinds"), rows=rows)


def kind_page(request: HttpRequest, kind: str) -> HttpResponse:
    """One more kind of hoist, rope, beam...: its name and what its plate or paper says."""
    if kind not in KINDS:
        raise FormError(f"found {quoted(kind)}, expected one of: {' | '.join(KINDS)}")
    project = the_project(request)
    names, cls, evidence = KINDS[kind]
    there = getattr(project.kit, names)
    like = next((one for one in there if one.id == request.GET.get("like")), None)
    of = named_of(request, there)
    asks = (*every(cls, evidence), Ask("document", "Paper that says so", more=True))
    if of is not None:
        asks = as_it_stands(asks, part_data(of), project.units)
    elif like is not None:
        asks = filled_in(asks, part_data(like), project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        written, by = [one for one in sent if one.name != "document"], _paper(request, sent)
        if of is None:
            data = said(written, by)
            data["id"] = id_for(str(data.get("name", "")), _taken(project.kit))
        else:
            data = put_right(written, part_data(of), by, project.units)
        new, says = part(cls, data, sent), Statement(evidence=evidence[0], **by)
        new = replace(new, values_from=says) if of is None else _read_again(project, of, new, says)
        added: dict[str, Any] = {names: (*there, new) if of is None else in_place(there, new)}
        kit = replace(project.kit, **added)
        describe(request, [described(replace(project, kit=kit))])
        return go_on("set-up-kinds")

    title = _ONE.get(kind, kind)
    return form_page(request, "set_up/kind.html", asks, act, title=title, kind=kind, of=of)


def _read_again(project: Project, of: Any, new: Any, says: Statement) -> Any:
    """A kind as it was put right: a word of its plate that is another now is from who says so.

    A word says not itself who read it, so the kind does. What its other values rested on they then
    state each for itself. A word that nobody answers for is from who lets it stand.
    """
    words = [one.name for one in fields(new) if isinstance(getattr(new, one.name), StrEnum)]
    around = said_by(project.kit.values_from, project.values_from)
    known = said_by(of.values_from, around) is not None
    if known and all(getattr(of, word) == getattr(new, word) for word in words):
        return new
    return replace(with_statements(new, around), values_from=says)


def units(request: HttpRequest) -> HttpResponse:
    """The very things, by their tags: several of one kind at once."""
    project = the_project(request)
    of = named_of(request, project.kit.units)
    asks = _of_units(project)
    if of is not None:
        asks = as_it_stands(_of_one(asks), _one_data(of), project.units)

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        if of is None:
            _register(request, project, sent)
        else:
            data = put_right(sent, _one_data(of), statement(request), project.units)
            kind, _, type_ = str(data.pop("of", "")).partition("|")
            unit = part(Unit, {**data, "kind": kind, "of": type_}, sent)
            describe(request, [bodies.UnitRegistered(unit)])
        return go_on("set-up-units")

    return form_page(request, "set_up/units.html", asks, act, units=project.kit.units, of=of)


def _of_one(asks: tuple[Ask, ...]) -> tuple[Ask, ...]:
    """What can be put right of one thing: not its tag, nor its tests, of which each is stated."""
    return tuple(one for one in asks if one.name != "tags" and not one.name.startswith("tests."))


def _one_data(of: Unit) -> dict[str, Any]:
    """A thing as its form asks for it: its kind and type in one."""
    return {**part_data(of), "of": f"{of.kind}|{of.of}"}


def _of_units(project: Project) -> tuple[Ask, ...]:
    choices = tuple(
        (f"{kind}|{one.id}", f"{_ONE.get(kind, kind)}: {one.name}")
        for kind, (names, _, _) in KINDS.items()
        if kind in set(UnitKind)
        for one in getattr(project.kit, names)
    )
    return (
        Ask("of", "What they are", words=choices, needed=True),
        Ask("tags", "Their tags", like="such as H-1, H-2; of pieces one for the lot", needed=True),
        ask(Unit, "serial", "Serial number, of one thing", more=True),
        ask(Unit, "count", "How many pieces the lot has", more=True, evidence=PLATE),
        *(
            ask(Unit, f"tests.0.{one}", f"Test: {label}", more=True, needed=False)
            for one, label in (
                ("what", "what was tested"),
                ("of", "what it tried"),
                ("found", "how it ended"),
                ("by", "by whom"),
                ("at", "on"),
                ("until", "counts until"),
                ("document", "paper"),
            )
        ),
    )


def _register(request: HttpRequest, project: Project, sent: tuple[Ask, ...]) -> None:
    text = {one.name: one.value for one in sent}
    kind, _, of = text["of"].partition("|")
    tags = [one.strip() for one in text["tags"].split(",") if one.strip()]
    data = said([one for one in sent if one.name not in {"of", "tags"}], statement(request))
    wrong: list[str] = []
    if not of:
        wrong.append("What they are: found nothing, expected a kind of thing")
    if not tags:
        wrong.append("Their tags: found nothing, expected one at least, such as H-1")
    if "serial" in data and len(tags) > 1:
        wrong.append("Serial number: found one for several things, expected one thing at a time")
    new: list[Unit] = []
    there = _taken(project.kit)
    for tag in tags:
        if tag in there:
            wrong.append(f"Their tags: found {quoted(tag)} a second time, expected one of its own")
        there.add(tag)
        try:
            new.append(
                part(Unit, {**data, "id": tag, "kind": kind or "hoist", "of": of or "-"}, sent)
            )
        except ProblemsError as error:
            wrong.extend(error.problems)
    if wrong:
        raise ProblemsError(dict.fromkeys(wrong))
    describe(request, [bodies.UnitRegistered(one) for one in new])


def _paper(request: HttpRequest, sent: tuple[Ask, ...]) -> dict[str, str]:
    document = next((one.value for one in sent if one.name == "document"), "")
    return {**statement(request), **({"document": document} if document else {})}


def _taken(kit: Kit) -> set[str]:
    types = [one.id for names, _, _ in KINDS.values() for one in getattr(kit, names)]
    return {*types, *(one.id for one in kit.units)}


def _told(one: Any) -> dict[str, Any]:
    """A kind of thing with what its plate says, in the words it was written in."""
    plate = ", ".join(_plate(part_data(one)))
    return {"id": one.id, "name": one.name, "plate": plate}


def _plate(data: dict[str, Any]) -> Iterator[str]:
    for name, value in data.items():
        if name in {"id", "name", "values_from"} or isinstance(value, list):
            continue
        if isinstance(value, dict) and "value" not in value:
            yield from _plate(value)
        else:
            said = value["value"] if isinstance(value, dict) else value
            yield f"{name.replace('_', ' ')} {said}"
