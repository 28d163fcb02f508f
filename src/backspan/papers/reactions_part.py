"""The sheet for the structural engineer: what comes on the roof, and space for the answer."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from backspan.core.model.project import Project
from backspan.core.review.plain import Data
from backspan.core.words import Language

#: What is not stated is drawn as a blank.
BLANK = "–"

#: What a rule calls a load, as a narrow column names it.
_SHORT = {"hoist rated load": "short_rated", "hoist stall load": "short_stall"}


def reactions_part(project: Project, drops: Sequence[Data], language: Language) -> dict[str, Any]:
    """Drop by drop a row for each stand; `drops` hold drop, configuration and reactions."""
    names = {one.id: one.name or "" for one in project.drops}
    return {
        "drops": [
            {
                "drop": one["drop"],
                "name": names.get(one["drop"], ""),
                "configuration": one["configuration"],
                "rows": [row for each in one["reactions"] for row in _rows(each, language)],
            }
            for one in drops
            if one["reactions"]
        ],
        "rules": _rules(drops),
    }


def _rows(one: Data, language: Language) -> Iterator[dict[str, Any]]:
    point = one["subject"].rpartition("/")[2]
    for name in ("front", "rear"):
        stand = one[name]
        kind = one["kind_text"] if name == "front" else None
        title = language.paper["fulcrum"] if name == "front" else language.paper["rear"]
        yield {
            "point": point if name == "front" else "",
            "stand": title if kind is None else f"{title}, {kind}",
            "at": BLANK if stand["at"] is None else ", ".join(_text(each) for each in stand["at"]),
            "plate": _plate(stand, language),
            "idle": _text(stand["idle"]),
            "rated": _text(stand["rated"]),
            "imposed": [_imposed(each, name, language) for each in stand["imposed"]],
            "most": _text(stand["most"]),
        }


def _plate(stand: Data, language: Language) -> str:
    sides = f"{_text(stand['plate_length'])} × {_text(stand['plate_width'])}"
    if stand["pad"] is not None:
        pad = " × ".join(_text(each) for each in stand["pad"])
        sides = f"{sides}, {language.paper['on_pad']} {pad}"
    return f"{sides}; {_text(stand['surface_strength'])}"


def _imposed(one: Data, stand: str, language: Language) -> dict[str, str]:
    content = one["rule"]["content"]
    # Behind, the factor goes on what lies there with nothing on the line.
    idle = language.paper["idle"].lower() if stand == "rear" else None
    short = idle or language.paper.get(
        _SHORT.get(content["load"], ""), language.word(content["load"])
    )
    return {
        "load": _text(one["load"]),
        "factor": f"{content['factor']['text']} × {short}",
    }


def _rules(drops: Sequence[Data]) -> list[str]:
    """The rule values that the factors are of, each once."""
    stands = [one["front"] for drop in drops for one in drop["reactions"]]
    return list(
        dict.fromkeys(each["rule"]["citation"] for stand in stands for each in stand["imposed"])
    )


def _text(one: Data | None) -> str:
    return BLANK if one is None else str(one["text"])
