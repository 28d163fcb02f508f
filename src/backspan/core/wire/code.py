"""The configuration code: a short name for the exact content of one drop's rig."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import fields, is_dataclass
from enum import StrEnum
from functools import cache
from typing import Any

from backspan.core.model.beams import BeamSplice
from backspan.core.model.evidence import StatedValue
from backspan.core.model.kit import Kit
from backspan.core.model.order import in_order
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop, Lifeline, Rig, Tieback
from backspan.core.model.site import Anchor, Roof
from backspan.core.wire.canonical import canonical
from backspan.core.wire.errors import WireError
from backspan.core.wire.hints import default_of

#: Crockford's base 32 (from memory): no I, L, O or U, which are misread or misheard.
_ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_MISREAD = str.maketrans({"O": "0", "I": "1", "L": "1", "-": None, " ": None})
_LENGTH = 8
_FORMAT = 1
#: Words that are only shown, who said so, and what was found of a thing on a day: a change of them
#: is no change of the rig.
_NOT_CONTENT = frozenset(
    {
        *("name", "faces", "values_from", "also_meets", "plan", "worker", "rig", "moved_from"),
        *("found", "rope_ends", "power", "rescue", "thimble", "end_stop"),
        *("softener", "taut", "tightened", "pin"),
        *("grab", "grab_height", "tied_to", "swing", "harness", "hooks", "low_end"),
    }
)
#: The same of one record, whose names are content elsewhere: where a beam is joined is.
_NOT_CONTENT_OF: Mapping[type, frozenset[str]] = {
    Lifeline: frozenset({"splices"}),
    BeamSplice: frozenset({"there", "pins", "order", "marks"}),
}

#: Kinds of kit that rigs did not name from the first: without one the code is what it was.
_LATER = frozenset({"connector", "lanyard"})


def configuration_code(project: Project, drop: Drop) -> str:
    """The code of `drop` as it is rigged, such as "7K3M-9QXT-B".

    The last character checks the others. These are 40 bits of the SHA-256 of `configuration`:
    enough to tell the rigs of a site apart, not a seal against a forger.
    Raises WireError where the drop or its rig names something that `project` does not hold.
    """
    digest = hashlib.sha256(canonical(configuration(project, drop))).digest()
    number = int.from_bytes(digest[:5], "big")
    shifts = range(5 * (_LENGTH - 1), -1, -5)
    body = "".join(_ALPHABET[(number >> shift) & 31] for shift in shifts)
    return f"{body[:4]}-{body[4:]}-{_check_character(body)}"


def read_code(text: str) -> str:
    """A code as a person typed or read it out, in the form it is printed in.

    Small letters, missing hyphens, and O, I and L for 0, 1 and 1 are understood.
    Raises WireError where it is no code, or where one character is wrong or two are swapped.
    """
    plain = text.upper().translate(_MISREAD)
    if len(plain) != _LENGTH + 1 or any(character not in _ALPHABET for character in plain):
        raise WireError(f"found {text!r}, expected a configuration code such as 7K3M-9QXT-B")
    body, check = plain[:_LENGTH], plain[_LENGTH]
    if _check_character(body) != check:
        raise WireError(f"found {text!r}, whose last character does not fit the others")
    return f"{body[:4]}-{body[4:]}-{check}"


def configuration(project: Project, drop: Drop) -> dict[str, Any]:
    """What the code is made of: the drop, its rig, and all that the rig refers to, as plain data.

    Left out are the text a value was written as, who stated it, when and on which paper, names,
    the basis, on what evidence a value is known, and every field at its default (so that a field
    added to a later version of the program does not change the code of a rig that does not use
    it). Tolerances, ids, serial numbers, and the dates and standing of anchors are in.
    Raises WireError where a reference leads nowhere.
    """
    ordered = in_order(drop)
    rig = ordered.rig
    roof = _named("roof", drop.roof, project.site.roofs)
    return {
        "format": _FORMAT,
        "drop": _facts(ordered),
        "roof": _roof_facts(roof),
        "edge": _facts(_named("edge", drop.edge, roof.edges)),
        "rig": None if rig is None else _rig_facts(rig),
        "kit": {} if rig is None else _kit_facts(project.kit, rig),
        "anchors": {} if rig is None else _anchor_facts(project, rig),
    }


def _facts(value: Any) -> Any:
    """Plain data of a record without what is not content. Counts are written as floats."""
    if isinstance(value, StatedValue):
        kept = (
            ("value", value.value),
            ("tolerance", value.tolerance),
        )
        return {name: _facts(part) for name, part in kept if part is not None}
    if is_dataclass(value):
        facts = {}
        for name, default in _content(value.__class__):
            stated = _there(getattr(value, name))
            if stated != default:
                facts[name] = _facts(stated)
        return facts
    if isinstance(value, tuple):
        return [_facts(item) for item in value]
    if isinstance(value, StrEnum):
        return str(value)
    return float(value) if isinstance(value, int) else value


def _there(value: Any) -> Any:
    """A list of joints without those that are not there; all else as it is."""
    if not isinstance(value, tuple):
        return value
    return tuple(one for one in value if not (isinstance(one, BeamSplice) and one.absent))


@cache
def _content(record: type) -> tuple[tuple[str, Any], ...]:
    """The fields of a record that are content, each with its default."""
    return tuple(
        (field.name, default_of(field))
        for field in fields(record)
        if field.name not in _NOT_CONTENT | _NOT_CONTENT_OF.get(record, frozenset())
    )


def _rig_facts(rig: Rig) -> dict[str, Any]:
    facts: dict[str, Any] = _facts(rig)
    hung = [{**_facts(one), "from_points": sorted(one.from_points)} for one in rig.stages]
    facts["stages"] = sorted(hung, key=canonical)
    for line, number in zip(facts.get("lifelines", ()), _riders(rig.lines), strict=True):
        line["rider"] = number
    return facts


def _riders(lifelines: tuple[Lifeline, ...]) -> list[int]:
    """Whose line it is, without saying who: 1 for the first rider, 0 for nobody.

    Another person on the same line is the same rig; one person on two lines is another one.
    """
    seen: list[str] = []
    for line in lifelines:
        if line.worker is not None and line.worker not in seen:
            seen.append(line.worker)
    return [0 if line.worker is None else seen.index(line.worker) + 1 for line in lifelines]


def _roof_facts(roof: Roof) -> dict[str, Any]:
    return {"id": roof.id, "level": _facts(roof.level)}


def _kit_facts(kit: Kit, rig: Rig) -> dict[str, Any]:
    points = rig.suspension_points
    roped: list[Any] = [*points, *_tiebacks(rig), *rig.lines]
    ended: list[Any] = [*points, *_tiebacks(rig), *rig.lines]
    fitted = [one for point in points for one in point.connectors or ()]
    beams = [point.counterweighted_beam for point in points if point.counterweighted_beam]
    wanted: tuple[tuple[str, tuple[Any, ...], Iterable[str | None]], ...] = (
        ("hoist", kit.hoists, (point.hoist for point in points)),
        ("rope", kit.ropes, (line.rope for line in roped)),
        ("termination", kit.terminations, (line.termination for line in ended)),
        ("connector", kit.connectors, (one.connector for one in fitted)),
        ("beam", kit.beams, (beam.beam for beam in beams)),
        ("piece", kit.pieces, (group.piece for beam in beams for group in beam.stack.groups)),
        ("stage", kit.stages, (hung.stage for hung in rig.stages)),
        ("lanyard", kit.lanyards, (line.lanyard for line in rig.lines)),
    )
    used = {
        kind: {
            name: _thing(kit, kind, name, items)
            for name in sorted({name for name in names if name is not None})
        }
        for kind, items, names in wanted
    }
    return {kind: things for kind, things in used.items() if things or kind not in _LATER}


def _thing(kit: Kit, kind: str, name: str, items: tuple[Any, ...]) -> dict[str, Any]:
    """A type; of a unit also which thing it is."""
    unit = next((one for one in kit.units if one.id == name and str(one.kind) == kind), None)
    facts: dict[str, Any] = _facts(_named(kind, name if unit is None else unit.of, items))
    return facts if unit is None else facts | {"unit": unit.id, "serial": unit.serial}


def _tiebacks(rig: Rig) -> list[Tieback]:
    return [tieback for point in rig.suspension_points for tieback in point.tied]


def _anchor_facts(project: Project, rig: Rig) -> dict[str, Any]:
    lines: list[Any] = [*_tiebacks(rig), *rig.lines]
    facts = {}
    for name in sorted({line.anchor for line in lines if line.anchor is not None}):
        roof = next((one for one in project.site.roofs if _holds(one.anchors, name)), None)
        if roof is None:
            raise WireError(f"the rig names the anchor {name!r}, which no roof has")
        anchor = _named("anchor", name, roof.anchors)
        uses = sorted(str(use) for use in anchor.uses)
        facts[name] = _facts(anchor) | {"uses": uses, "roof": _roof_facts(roof)}
    return facts


def _holds(items: tuple[Anchor, ...], name: str) -> bool:
    return any(item.id == name for item in items)


def _named(kind: str, name: str, items: Iterable[Any]) -> Any:
    found = next((item for item in items if item.id == name), None)
    if found is None:
        raise WireError(f"the drop or its rig names the {kind} {name!r}, which the project lacks")
    return found


def _check_character(body: str) -> str:
    """The sum of the characters, each times a power of two in the field of 32 elements.

    In a field every single wrong character and every swap of two characters changes the sum.
    """
    total = 0
    for character in body:
        total = _doubled(total ^ _ALPHABET.index(character))
    return _ALPHABET[total]


def _doubled(element: int) -> int:
    """Twice `element` in GF(32) with the modulus x^5 + x^2 + 1."""
    twice = element << 1
    return twice ^ 0b100101 if twice & 32 else twice
