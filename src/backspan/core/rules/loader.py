"""Rule file to rule set: TOML text in, every value checked, all problems told at once."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from enum import StrEnum

from backspan.core.rules.contents import CONTENT_FIELDS, Kind, read_content
from backspan.core.rules.fields import Problems, Table
from backspan.core.rules.shape import Mark, Provenance, Reading, RuleError, RuleSet, RuleValue

FORMAT = 1

#: The name of the one reading of a plain clause.
ONLY_READING = "as written"

#: One reading alone is the clause as written and needs no table of its own.
_FEWEST_READINGS = 2

_TEXTS = ("id", "edition", "title", "publisher", "jurisdiction", "scope")
_TEXTS_IF_GIVEN = ("retrieved", "note")
_SHARED_FIELDS = ("description", "clause", "mark", "source")
_VALUE_FIELDS = ("kind", *_SHARED_FIELDS, "note", "default", "readings")


class Topic(StrEnum):
    """What the values of a rule set can be about; a misspelt topic would hide its values."""

    TIPPING = "tipping"
    GEOMETRY = "geometry"
    BEARING = "bearing"
    LINE = "line"
    TIEBACK = "tieback"
    LOAD = "load"
    HOIST = "hoist"
    COUNTERWEIGHT = "counterweight"
    EQUIPMENT = "equipment"
    EVIDENCE = "evidence"
    TOLERANCE = "tolerance"
    PLAUSIBLE = "plausible"
    TAKE_OVER = "take-over"
    WITNESS = "witness"
    AGE = "age"
    PRESENCE = "presence"
    DESIGN = "design"
    CONDITION = "condition"
    ANCHOR = "anchor"
    STAGE = "stage"
    BEAM = "beam"
    FALL = "fall"
    POWER = "power"


def load(text: str, origin: str) -> RuleSet:
    """Read the rule set written in `text`; `origin` says where the text is from, for errors.

    Raises RuleError, naming the origin, every place and what was expected there, when the text
    is not TOML, has another format number, or any key or word that this program does not know.
    """
    problems = Problems()
    file = Table(_tables(text, origin), place="", problems=problems)
    if "format" not in file.content:
        problems.add("", f"'format' is missing; expected {FORMAT}")
    elif type(file.content["format"]) is not int or file.content["format"] != FORMAT:
        problems.add("", f"'format': found {file.content['format']!r}, expected {FORMAT}")
    _refuse_unknown_keys(file)
    head = {name: file.text(name) or "" for name in _TEXTS}
    retrieved, note = file.text_if_given("retrieved"), file.text_if_given("note")
    topics = [Topic(key) for key in file.content if key in set(Topic)]
    if not topics:
        problems.add("", f"no values; expected tables of these topics: {', '.join(Topic)}")
    values = tuple(value for topic in topics for value in _values(topic, file))
    listed = problems.listed()
    if listed:
        raise RuleError(f"{origin}: {_counted(len(listed))}:\n  " + "\n  ".join(listed))
    return RuleSet(
        id=head["id"],
        edition=head["edition"],
        title=head["title"],
        publisher=head["publisher"],
        jurisdiction=head["jurisdiction"],
        scope=head["scope"],
        values=values,
        retrieved=retrieved,
        note=note,
    )


def _tables(text: str, origin: str) -> Mapping[str, object]:
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise RuleError(f"{origin}: not readable as TOML: {error}") from error
    except RecursionError as error:
        raise RuleError(f"{origin}: not readable as TOML: nested too deep") from error


def _counted(number: int) -> str:
    return "1 problem" if number == 1 else f"{number} problems"


def _refuse_unknown_keys(file: Table) -> None:
    known = ("format", *_TEXTS, *_TEXTS_IF_GIVEN)
    for key, content in file.content.items():
        if key in known or key in set(Topic):
            continue
        if isinstance(content, dict):
            file.problems.add("", f"unknown topic {key!r}; topics: {', '.join(Topic)}")
        else:
            file.problems.add("", f"unknown key {key!r}; a rule file has: {', '.join(known)}")


def _values(topic: Topic, file: Table) -> list[RuleValue]:
    given = file.content.get(topic, {})
    if not isinstance(given, dict):
        file.problems.add(topic, f"found {given!r}, expected a table for each value")
        return []
    found = []
    for name, content in given.items():
        key = f"{topic}.{name}"
        if not isinstance(content, dict):
            file.problems.add(key, f"found {content!r}, expected a table")
            continue
        value = _value(key, topic, Table(content, place=key, problems=file.problems))
        if value is not None:
            found.append(value)
    return found


def _value(key: str, topic: Topic, table: Table) -> RuleValue | None:
    kind = table.word("kind", Kind)
    if kind is None:
        return None
    table.refuse_keys_but((*_VALUE_FIELDS, *CONTENT_FIELDS[kind]), of=f"value of kind {kind!s}")
    description = table.text("description")
    note = table.text_if_given("note")
    readings = _readings(kind, table)
    default = _default(table)
    if description is None or default is None or any(one is None for one in readings):
        return None
    whole = tuple(one for one in readings if one is not None)
    return RuleValue(key, topic, description, whole, default, note)


def _readings(kind: Kind, table: Table) -> list[Reading | None]:
    given = table.content.get("readings")
    if given is None:
        return [_reading(kind, ONLY_READING, table)]
    if not isinstance(given, dict) or len(given) < _FEWEST_READINGS:
        table.refuse("readings", "expected two readings or more, a table for each")
        return [None]
    readings: list[Reading | None] = []
    for name, content in given.items():
        if not isinstance(content, dict):
            table.refuse("readings", f"reading {name!r}: found {content!r}, expected a table")
            readings.append(None)
            continue
        place = f"{table.place}, reading {name!r}"
        own = Table(content, place=place, problems=table.problems, behind=table)
        fields = (*_SHARED_FIELDS, *CONTENT_FIELDS[kind])
        own.refuse_keys_but(fields, of=f"reading of kind {kind!s}")
        readings.append(_reading(kind, name, own))
    return readings


def _reading(kind: Kind, name: str, table: Table) -> Reading | None:
    content = read_content(kind, table)
    description = table.text("description")
    clause = table.text("clause")
    mark = table.word("mark", Mark)
    source = table.text("source")
    if content is None or description is None or clause is None or mark is None or source is None:
        return None
    return Reading(name, content, Provenance(clause, mark, source), description)


def _default(table: Table) -> str | None:
    readings = table.content.get("readings")
    if not isinstance(readings, dict):
        if "default" in table.content:
            table.refuse("default", "only a value with readings has a default")
            return None
        return ONLY_READING
    default = table.text("default")
    if default is not None and default not in readings:
        names = ", ".join(repr(name) for name in readings)
        table.refuse("default", f"found {default!r}, expected one of its readings: {names}")
        return None
    return default
