"""The first pages of a site: what it is called, on which basis it is judged, who is there."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse

from backspan.core.model.in_place import in_place
from backspan.core.model.people import Person
from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.review.basis import PRACTICE
from backspan.core.rules.selected import RuleLibrary
from backspan.exchange.parse import ProjectError, parse_project
from backspan.exchange.written import part_data
from backspan.web.application import workbench_of
from backspan.web.asking import Ask, ProblemsError, part, said, told
from backspan.web.describing import (
    describe,
    described,
    form_page,
    id_for,
    roles,
    signer_as,
    the_project,
)
from backspan.web.pages.common import go_on, named_of, state_of
from backspan.web.pages.speaker import speaks
from backspan.web.righting import as_it_stands

#: What a site is held against where nobody chose otherwise, with its edition after the bar.
_USUAL = "us-osha-1926-subpart-l|1996"
_OTHER = "another-role"


def page(request: HttpRequest) -> HttpResponse:
    """The site and the engineer who sets it up, who signs it: nobody else is there yet."""
    if state_of(request).project is not None:
        return go_on("set-up-site")
    bench = workbench_of(request)
    asks = (*_of_site(bench.library), *_of_person(bench.library, around="me."))
    asks = _with(
        asks, {"name": bench.record.site, "units": Style.US, "me.role": "owner's engineer"}
    )
    return form_page(
        request,
        "set_up/first.html",
        asks,
        lambda sent: _begin(request, sent),
    )


def site(request: HttpRequest) -> HttpResponse:
    """What the site is called and held against, changed."""
    project, bench = the_project(request), workbench_of(request)
    chosen = tuple(_key(one.rule_set, one.edition) for one in project.basis.tipping)
    asks = _with(
        _of_site(bench.library),
        {"name": project.site.name, "place": project.site.place, "units": project.units},
        chosen,
    )

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        new = _read(sent, project.people[0], bench.library)
        changed = replace(
            project,
            units=new.units,
            basis=replace(project.basis, tipping=new.basis.tipping),
            site=replace(project.site, name=new.site.name, place=new.site.place),
        )
        describe(request, [described(changed)])
        return go_on("set-up-site")

    return form_page(request, "set_up/site.html", asks, act)


def people(request: HttpRequest) -> HttpResponse:
    """Who is there, and one more of them."""
    project, bench = the_project(request), workbench_of(request)
    asks, there = _of_person(bench.library), project.people
    of = named_of(request, there)
    if of is not None:
        asks = as_it_stands(asks, part_data(of))

    def act(sent: tuple[Ask, ...]) -> HttpResponse:
        one = _person(sent, "", [one.id for one in there], of)
        changed = (*there, one) if of is None else in_place(there, one)
        describe(request, [described(replace(project, people=changed))])
        return go_on("set-up-people")

    return form_page(request, "set_up/people.html", asks, act, people=there, of=of)


def _begin(request: HttpRequest, sent: tuple[Ask, ...]) -> HttpResponse:
    bench = workbench_of(request)
    wrong: list[str] = []
    me, project = Person("ME", "-", "-"), None
    try:
        me = _person(sent, "me.", ())
    except ProblemsError as error:
        wrong.extend(error.problems)
    try:
        project = _read(sent, me, bench.library)
    except ProblemsError as error:
        wrong.extend(error.problems)
    if wrong or project is None:
        raise ProblemsError(wrong)
    describe(request, [described(project)], signer_as(me))
    return speaks(go_on("set-up-roofs"), me.id)


def _read(sent: Sequence[Ask], one: Person, library: RuleLibrary) -> Project:
    """The site that was written, with one person. Raises ProblemsError with all that is wrong."""
    data: dict[str, Any] = said([ask for ask in sent if not ask.name.startswith(("me.", "basis"))])
    chosen = next(ask.values for ask in sent if ask.name == "basis")
    wrong = [] if chosen else ["Held against: found no rule set, expected at least one"]
    pairs = [key.partition("|") for key in chosen or (_USUAL,)]
    rules = [{"rule_set": name, "edition": edition} for name, _, edition in pairs]
    text = {
        "format": "1",
        "site": {name: data[name] for name in ("name", "place") if name in data} | {"roofs": []},
        "basis": {"tipping": rules},
        "people": [{"id": one.id, "name": one.name, "role": one.role}],
        **({"units": data["units"]} if "units" in data else {}),
    }
    try:
        found = replace(parse_project(json.dumps(text), "form", library), people=(one,))
    except ProjectError as error:
        named = {"name": "site.name", "place": "site.place", "basis": "basis.tipping"}
        asks = [replace(ask, name=named.get(ask.name, ask.name)) for ask in sent]
        raise ProblemsError((*wrong, *told(error, asks))) from error
    if wrong:
        raise ProblemsError(wrong)
    return found


def _person(
    sent: Sequence[Ask], around: str, taken: Sequence[str], of: Person | None = None
) -> Person:
    asks = [
        replace(one, name=one.name.removeprefix(around))
        for one in sent
        if one.name.startswith(around)
    ]
    data = said(asks)
    other = data.pop(_OTHER, None)
    if other is not None:
        data["role"] = other
    last = str(data.get("name", "")).split()[-1:]
    own = id_for(" ".join(last), taken) if of is None else of.id
    return part(Person, {"id": own, **data}, asks)


def _of_site(library: RuleLibrary) -> tuple[Ask, ...]:
    sets = tuple(
        (_key(one.id, one.edition), f"{one.title} ({one.edition})")
        for one in sorted(library.rule_sets, key=lambda one: _key(one.id, one.edition) != _USUAL)
        if one.id != PRACTICE.rule_set
    )
    return (
        Ask("name", "What the site is called", needed=True),
        Ask("place", "Where it stands", like="street and town", needed=True),
        Ask(
            "units",
            "Units shown",
            words=(("us", "feet, inches, pounds"), ("metric", "metres, kilonewtons")),
            needed=True,
        ),
        Ask("basis", "Held against", words=sets, many=True, needed=True, values=(_USUAL,)),
    )


def _of_person(library: RuleLibrary, around: str = "") -> tuple[Ask, ...]:
    known = tuple((one, one) for one in roles(library))
    return (
        Ask(f"{around}name", "Name", needed=True),
        Ask(f"{around}role", "Role", words=known, needed=True),
        Ask(f"{around}employer", "Employer"),
        Ask(f"{around}card", "Card or licence number"),
        Ask(f"{around}{_OTHER}", "Another role, in its place", like="such as rigger", more=True),
    )


def _with(
    asks: Sequence[Ask], values: dict[str, str], chosen: tuple[str, ...] = (_USUAL,)
) -> tuple[Ask, ...]:
    return tuple(
        replace(one, value=str(values.get(one.name, one.value)), values=chosen if one.many else ())
        for one in asks
    )


def _key(name: str, edition: str) -> str:
    return f"{name}|{edition}"
