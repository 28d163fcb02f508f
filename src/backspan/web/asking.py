"""What a form asks for a record of the model, and what was written into it.

A question's name is the way to its value in the record, as `parapet.height`. Its words, its example
and whether it has evidence follow from the model. What is left blank is not said.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, TypeVar

from django.http import QueryDict

from backspan.core.ledger.fields import snake_case
from backspan.core.model.dated import is_date
from backspan.core.model.evidence import Evidence
from backspan.core.quantities import Dimension, QuantityError, Style, display, parse
from backspan.core.quantities.named import QUANTITIES
from backspan.core.quantities.quantity import GEOMETRY
from backspan.core.wire.hints import bare, fields_of, marker, record_class, repeated
from backspan.exchange.parse import ProjectError, parse_part
from backspan.exchange.parse.shape import hint_at, is_stated, is_word
from backspan.web.nested import at, listed, put
from backspan.web.pages.common import FormError

T = TypeVar("T")
_STEP = re.compile(r"[.\[\]]+")
#: Two texts say the same number where they differ by less than this share of it.
_SAME = 1e-9
_ABSENT = re.compile("no ([a-z_]+)")
#: Evidence of what is read from a plate, and of what stands on a plan.
PLATE = (Evidence.LABEL, Evidence.CERTIFICATE, Evidence.MEASURED, Evidence.TOLD)
PAPER = (Evidence.CERTIFICATE, Evidence.LABEL, Evidence.TOLD)
DRAWN = (Evidence.DRAWING, Evidence.MEASURED, Evidence.TOLD)
PLANNED = (Evidence.DRAWING,)


class ProblemsError(FormError):
    """A form with all that is wrong in it."""

    def __init__(self, problems: Iterable[str]) -> None:
        self.problems = tuple(problems)
        super().__init__(" ".join(f"{one}." for one in self.problems))


@dataclass(frozen=True, slots=True)
class Ask:
    """One question of a form; `value` is what stands in its field, `values` what is ticked."""

    name: str
    label: str
    like: str = ""
    words: tuple[tuple[str, str], ...] = ()
    many: bool = False
    needed: bool = False
    date: bool = False
    long: bool = False
    evidence: tuple[Evidence, ...] = ()
    more: bool = False
    """Asked for below a fold: not every site has it."""
    dimension: Dimension | None = None
    value: str = ""
    values: tuple[str, ...] = ()
    seen: str = ""
    """The evidence that is chosen."""

    @property
    def evidence_name(self) -> str:
        """The name of the field that says where the value comes from."""
        return f"{self.name}:evidence"


def ask(cls: type[Any], name: str, label: str = "", **said: Any) -> Ask:
    """A question for a value of a record; words and example follow from the model."""
    path = tuple(int(one) if one.isdigit() else one for one in name.split("."))
    hint, around = hint_at(cls, path), hint_at(cls, path[:-1])
    inner = bare(hint)
    stated = is_stated(inner)
    of = hint_at(hint, ("value",)) if stated else hint
    dimension = marker(of, Dimension)
    kind = bare(of)
    found = Ask(
        name,
        label or _words(str(path[-1])),
        like="" if dimension is None else f"such as {dimension.forms[0]}",
        words=tuple((str(one), str(one)) for one in kind) if is_word(kind) else (),
        needed=any(one.required for one in fields_of(bare(around)) if one.name == path[-1]),
        dimension=dimension,
        date=is_date(record_class(bare(around)), str(path[-1])),
    )
    found = replace(found, **said)
    if found.evidence == PLATE and _is_taped(record_class(bare(around)), str(path[-1])):
        # What only a tape settles is offered as taped first: a label does not settle it.
        found = replace(found, evidence=(Evidence.MEASURED, *_but_measured(PLATE)))
    return found if stated else replace(found, evidence=())


def _is_taped(record: type[Any] | None, field: str) -> bool:
    """Whether checks ask for this value to be measured."""
    of = "" if record is None else snake_case(record.__name__)
    rows = (one for one in QUANTITIES.values() if (one.record, one.field) == (of, field))
    return any(one.evidence == GEOMETRY for one in rows)


def _but_measured(evidence: tuple[Evidence, ...]) -> tuple[Evidence, ...]:
    return tuple(one for one in evidence if one is not Evidence.MEASURED)


def every(cls: type[Any], evidence: tuple[Evidence, ...], around: str = "") -> Iterator[Ask]:
    """A question for each single value of a record but its id, of inner records after them."""
    hint: Any = hint_at(cls, tuple(around.split("."))) if around else cls
    inner: list[str] = []
    for one in fields_of(bare(hint)):
        name = f"{around}.{one.name}" if around else one.name
        kind = bare(one.hint)
        if one.name in {"id", "values_from"} or repeated(kind) is not None:
            continue
        if record_class(kind) is not None and not is_stated(kind):
            inner.append(name)
        else:
            before = f"{_words(around.rsplit('.', maxsplit=1)[-1])}: " if around else ""
            own = one.name.replace("_", " ") if around else _words(one.name)
            yield ask(cls, name, before + own, evidence=evidence)
    for name in inner:
        yield from every(cls, evidence, name)


def given(asks: Iterable[Ask], form: QueryDict) -> tuple[Ask, ...]:
    """The questions with what was written into them, so that a form is shown as it was sent."""
    return tuple(
        replace(
            one,
            value=form.get(one.name, "").strip(),
            values=tuple(form.getlist(one.name)) if one.many else (),
            seen=form.get(one.evidence_name, ""),
        )
        for one in asks
    )


def filled_in(
    asks: Iterable[Ask], data: Mapping[str, Any], style: Style = Style.US
) -> tuple[Ask, ...]:
    """The questions with what a record says, as `part_data` writes it.

    A number that nobody wrote stands in the units of the project, where they can say it exactly.
    """
    found = (_filled(one, at(data, one.name)) for one in asks)
    return tuple(replace(one, value=_in_style(one, style)) for one in found)


def said(
    asks: Iterable[Ask], statement: Mapping[str, str] | None = None, fixed: Any = None
) -> dict[str, Any]:
    """What was written, as the data of a project file; `statement` is who states values and when.

    A step of a name that is a number leads into a list.
    """
    data: dict[str, Any] = dict(fixed or {})
    for one in asks:
        value = value_said(one, statement)
        if value is not None:
            put(data, one.name, value)
    found = listed(data)
    return found if isinstance(found, dict) else {}


def value_said(one: Ask, statement: Mapping[str, str] | None = None) -> Any:
    """What was written into one question, as the data of a project file; None where nothing was."""
    value: Any = list(one.values) if one.many else one.value
    if not value:
        return None
    if not one.evidence:
        return value
    seen = one.seen if one.seen in one.evidence else str(one.evidence[0])
    return {"value": value, **(statement or {}), "evidence": seen}


def part(cls: type[T], data: Mapping[str, Any], asks: Sequence[Ask] = ()) -> T:
    """The record that was written. Raises ProblemsError with all problems, by their questions."""
    try:
        return parse_part(data, cls, "form")
    except ProjectError as error:
        raise ProblemsError(told(error, asks)) from error


def told(error: ProjectError, asks: Sequence[Ask] = ()) -> Iterator[str]:
    """Each problem with the words of its question."""
    for one in error.problems:
        steps = [_numbered(step) for step in _STEP.split(one.path) if step]
        # What was not said has the place of the record around it.
        absent = _ABSENT.fullmatch(one.found)
        way = ".".join([*steps, absent[1]] if absent and steps[-1:] != [absent[1]] else steps)
        named = sorted(
            (ask for ask in asks if way.startswith(ask.name)), key=lambda a: -len(a.name)
        )
        name = named[0].label if named else way.replace("_", " ")
        yield f"{name}: found {one.found}, expected {one.expected}"


def _words(name: str) -> str:
    """The name of a field as a label."""
    return name.replace("_", " ").capitalize()


def _numbered(step: str) -> str:
    """A step of a problem's path as names of questions have it: people count from 1."""
    return str(int(step[1:]) - 1) if step.startswith("#") else step


def _filled(one: Ask, value: Any) -> Ask:
    if isinstance(value, dict) and "value" in value:
        return replace(one, value=str(value["value"]), seen=str(value.get("evidence", "")))
    if one.many and isinstance(value, list):
        return replace(one, values=tuple(map(str, value)))
    return replace(one, value="" if value is None or isinstance(value, dict | list) else str(value))


def _in_style(one: Ask, style: Style) -> str:
    dimension = one.dimension
    if dimension is None or not one.value.endswith(f" {dimension.si}"):
        return one.value
    value = parse(one.value, dimension)
    text = display(value, dimension, style)
    try:
        off = abs(parse(text, dimension) - value)
    except QuantityError:
        return one.value
    return text if off <= _SAME * abs(value) else one.value
