"""Which line of its kind an entry has, and what stands in it besides the body's own texts."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any

from backspan.core.ledger import bodies
from backspan.core.ledger.document import drop_of
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.places_in_words import input_at, is_written
from backspan.core.words import Language

_NOT_STATED, _NONE = "not stated", "none"
#: Digits of a number that nobody wrote down as a text.
_DIGITS = 10
#: Of a hash, as errors print it.
_SHOWN = 12


@dataclass(frozen=True, slots=True)
class Case:
    """The values of a line, and the name of its case; none for the plain line of a kind."""

    values: Mapping[str, str]
    name: str = ""


def listed(names: Iterable[str]) -> str:
    """Names one after the other."""
    return ", ".join(names)


def plain(_body: Any, _entry: Entry, _language: Language) -> Case:
    """The line of a body whose own texts are all that it holds."""
    return Case({})


def _site(body: bodies.SiteDescribed, _entry: Entry, _language: Language) -> Case:
    return Case({"name": body.project.site.name, "place": body.project.site.place})


def _drop(body: bodies.DropDescribed, _entry: Entry, _language: Language) -> Case:
    return Case({"roof": body.drop.roof, "edge": body.drop.edge})


def _anchor(body: bodies.AnchorRegistered, _entry: Entry, language: Language) -> Case:
    return Case({"anchor": body.anchor.id, "standing": language.word(body.anchor.standing)})


def _inspected(body: bodies.AnchorInspected, _entry: Entry, language: Language) -> Case:
    standing = {"standing": language.word(body.standing)}
    return Case(standing, "certified" if body.certified else "")


def _plan(body: bodies.PlanReceived, _entry: Entry, language: Language) -> Case:
    contractor, drawing = {"contractor": body.plan.contractor}, body.plan.drawing
    if not drawing:
        return Case(contractor)
    if body.plan.revision:
        drawing = language.phrase("record-revision", drawing=drawing, revision=body.plan.revision)
    return Case({**contractor, "drawing": drawing}, "drawing")


def _unit(
    body: bodies.UnitRegistered | bodies.UnitLookedAt, _entry: Entry, language: Language
) -> Case:
    unit = body.unit
    condition = _NOT_STATED if unit.condition is None else unit.condition.value
    return Case(
        {
            "kind": language.word(unit.kind),
            "unit": unit.id,
            "of": unit.of,
            "condition": language.word(condition),
        }
    )


def _exchanged(body: bodies.UnitExchanged, _entry: Entry, _language: Language) -> Case:
    return Case({"path": "/".join(body.path)})


def _rig(body: bodies.RigSetUp, _entry: Entry, language: Language) -> Case:
    points = listed(one.id for one in body.rig.suspension_points)
    return Case({"points": points or language.word(_NONE)})


def _found(
    body: bodies.NumberFound | bodies.CountFound | bodies.WordFound,
    _entry: Entry,
    language: Language,
) -> Case:
    found, named = body.found, input_at(body.path, language)
    match body:
        case bodies.NumberFound():
            value = _number(body, language)
        case bodies.CountFound():
            value = str(body.found.value)
        case bodies.WordFound():
            value = language.word(body.found.value)
    return Case(
        {
            "path": "/".join(body.path if drop_of(body.path) is None else body.path[2:]),
            "value": value,
            "evidence": language.word(found.evidence or _NOT_STATED),
            "input": named or "",
        },
        "named" if named else "",
    )


def _number(body: bodies.NumberFound, language: Language) -> str:
    """A number as it was written, with the number itself unless that surely is the same."""
    value, text = body.found.value, body.found.text
    if is_written(text, body.path, value=value):
        return text
    number = language.phrase("record-si", value=f"{value:.{_DIGITS}g}")
    return language.phrase("record-written", number=number, text=text) if text else number


def _connected(body: bodies.LineConnected, entry: Entry, language: Language) -> Case:
    second = body.second or language.phrase("record-by-unknown")
    return Case({"signer": entry.envelope.signer.person, "second": second})


def _taken(body: bodies.TopicTakenOver, _entry: Entry, language: Language) -> Case:
    taken = body.taken
    return Case(
        {
            "topics": listed(language.word(one) for one in taken.topics),
            "person": taken.by,
            "document": taken.document,
            "until": taken.until,
        }
    )


def _limits(body: bodies.LimitsSigned, _entry: Entry, language: Language) -> Case:
    limits, document = body.limits, body.limits.document
    if limits.revision:
        document = language.phrase("record-revision", drawing=document, revision=limits.revision)
    return Case({"person": limits.by, "document": document, "until": limits.until})


def _work(body: bodies.WorkPlanned, _entry: Entry, _language: Language) -> Case:
    return Case({"steps": listed(one.name or one.id for one in body.steps)})


def _permitted(body: bodies.UsePermitted, _entry: Entry, _language: Language) -> Case:
    leaning = {"documents": listed(body.taken_over)}
    return Case(leaning, "leaning" if body.taken_over else "")


def _underlay(body: bodies.UnderlayLaid, _entry: Entry, _language: Language) -> Case:
    under = body.underlay
    off = f"{1000 * under.difference:+.0f} mm"
    values = {"name": under.name, "places": listed(under.places), "taped": under.taped.text or ""}
    return Case({**values, "off": off}, "picture" if under.is_picture else "")


def _corrected(body: bodies.Corrected, _entry: Entry, _language: Language) -> Case:
    return Case({"entry": body.entry[:_SHOWN]})


def _when(name: str, applies: Callable[[Any], bool]) -> Callable[[Any, Entry, Language], Case]:
    """The case of a kind that holds where something of the body does."""
    return lambda body, _entry, _language: Case({}, name if applies(body) else "")


#: Kinds whose line is more than the body's own texts; Any, as each takes the record it stands by.
CASES: Mapping[type[Body], Callable[[Any, Entry, Language], Case]] = MappingProxyType(
    {
        bodies.SiteDescribed: _site,
        bodies.DropDescribed: _drop,
        bodies.AnchorRegistered: _anchor,
        bodies.AnchorInspected: _inspected,
        bodies.PlanReceived: _plan,
        bodies.UnitRegistered: _unit,
        bodies.UnitLookedAt: _unit,
        bodies.UnitExchanged: _exchanged,
        bodies.RigSetUp: _rig,
        bodies.WorkPlanned: _work,
        bodies.NumberFound: _found,
        bodies.CountFound: _found,
        bodies.WordFound: _found,
        bodies.LineConnected: _connected,
        bodies.TopicTakenOver: _taken,
        bodies.LimitsSigned: _limits,
        bodies.DeficiencyRaised: _when("forbids", lambda body: body.forbids_use),
        bodies.DeficiencyReinspected: _when("mended", lambda body: body.mended),
        bodies.ConcernClosed: _when("none", lambda body: not body.test.strip()),
        bodies.UsePermitted: _permitted,
        bodies.ShiftChecked: _when("fit", lambda body: body.fit),
        bodies.UnderlayLaid: _underlay,
        bodies.Corrected: _corrected,
    }
)
