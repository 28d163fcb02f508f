"""What an entry says, as one line in a language.

What people wrote or named stands in it as they wrote it, in whatever language; only words of the
model are told. Days and times are those of the entry. Signs that do not print, line breaks among
them, become spaces: whoever wrote an entry decides nothing about the lines around it.
"""

from __future__ import annotations

from dataclasses import fields

from backspan.core.ledger import bodies
from backspan.core.ledger.document import drop_of
from backspan.core.ledger.entry import Entry
from backspan.core.ledger.entry_cases import CASES, listed, plain
from backspan.core.ledger.kinds import Body
from backspan.core.words import ENGLISH, Language


def entry_line(entry: Entry, language: Language = ENGLISH) -> str:
    """One line such as "drop S2: use stopped - cracked stirrup".

    Raises WordsError where the language has no line for its kind.
    """
    body, kind = entry.body, entry.envelope.kind
    case = CASES.get(type(body), plain)(body, entry, language)
    name = f"{kind}/{case.name}" if case.name else kind
    own = {one.name: getattr(body, one.name) for one in fields(body)}
    values = {
        "where": _where(drops_of(body), language),
        **{one: value for one, value in own.items() if isinstance(value, str)},
        **case.values,
    }
    line = language.line_of_entry(name, **{one: _printed(each) for one, each in values.items()})
    if isinstance(body, bodies.DeficiencyRaised) and body.until:
        line = language.phrase("record-until", line=line, until=_printed(body.until))
    says = _printed(own.get("says") or own.get("why") or "")
    return language.phrase("record-said", line=line, says=says) if says else line


def _printed(text: str) -> str:
    """A text that stays on its line."""
    return "".join(one if one.isprintable() else " " for one in text).strip()


def drops_of(body: Body) -> tuple[str, ...]:
    """The drops that an entry is about; none is the whole site, or a thing of it."""
    match body:
        case bodies.DropDescribed():
            return (body.drop.id,)
        case bodies.NumberFound() | bodies.CountFound() | bodies.WordFound():
            drop = drop_of(body.path)
            return () if drop is None else (drop,)
        case bodies.TopicTakenOver():
            return tuple(one.drop for one in body.taken.drops)
        case bodies.LimitsSigned():
            return body.limits.drops
        case _:
            drop = getattr(body, "drop", None)
            return getattr(body, "drops", ()) if drop is None else (drop,)


def _where(drops: tuple[str, ...], language: Language) -> str:
    if not drops:
        return language.phrase("record-site")
    return language.phrase("record-drop" + "s" * (len(drops) > 1), drops=listed(drops))
