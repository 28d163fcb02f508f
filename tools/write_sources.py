"""Write docs/sources.md from the rule sets, so that the page and the data cannot differ.

Run it after any change to the data: `python tools/write_sources.py`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import Path

from backspan.core.quantities import Style, display
from backspan.core.rules.loader import load
from backspan.core.rules.shape import (
    Content,
    FactorOnLoad,
    Limit,
    Reading,
    Remark,
    RuleSet,
    RuleValue,
    Section,
    WordList,
)

ROOT = Path(__file__).resolve().parent.parent
RULE_SETS = ROOT / "src" / "backspan" / "rulesets"
PAGE = ROOT / "docs" / "sources.md"

OPENING = """\
# Where the rule values come from

This page is written by `tools/write_sources.py` from the rule sets in `src/backspan/rulesets`;
change the data, not the page. It lists every value the program uses, the clause it is attributed
to, how far that was verified, and where it was seen. Descriptions are in the project's own words.

The list supports a qualified or licensed person and does not replace one. Rules change, and the
law and the standards in force at the place govern: check a value against your own copy before you
rely on it. Full titles and publishers' names are partly from memory.

## Marks

| mark | meaning |
|---|---|
| read | the text was seen, in the publication itself or quoted where the source says |
| copy | a state's copy, a quotation in passing or a paraphrase was seen, not the text itself |
| memory | not seen: verify before relying on it |
| practice | what the trade does; common practice, no source |

## Confirmations

A value marked `memory` never lets a check pass by itself: the finding is `refer` until an office
has found the value in its own copy of the text and says so in the project: who, when, and which
copy. The confirmation is printed beside the clause. It does not change this page.

## Readings

Where a clause can be read in several ways, each reading has a line. The default is the stricter
one; the basis of a review names the reading used.
"""


def read_rule_sets(folder: Path) -> tuple[RuleSet, ...]:
    """Every rule set under `folder`, ordered by text and edition. RuleError names a bad file."""
    files = sorted(folder.glob("*/*.toml"))
    return tuple(
        load(file.read_text(encoding="utf-8"), file.relative_to(folder).as_posix())
        for file in files
    )


def page(rule_sets: Iterable[RuleSet]) -> str:
    """The whole page: the legend, then one table a rule set."""
    return "\n".join((OPENING, *(_section(one) for one in rule_sets)))


def _section(rule_set: RuleSet) -> str:
    place = f"Publisher: {rule_set.publisher}. Jurisdiction: {rule_set.jurisdiction}."
    lines = [
        f"## {rule_set.title}",
        "",
        f"`{rule_set.id}`, edition `{rule_set.edition}`. {place} Scope: {rule_set.scope}.",
        "",
    ]
    if rule_set.note:
        lines += [rule_set.note, ""]
    lines += [
        "| value | what it asks for | clause | mark | source |",
        "|---|---|---|---|---|",
    ]
    lines += [row for value in rule_set.values for row in _rows(value)]
    notes = [f"- `{value.key}`: {value.note}" for value in rule_set.values if value.note]
    if notes:
        lines += ["", "Notes:", "", *notes]
    return "\n".join((*lines, ""))


def _rows(value: RuleValue) -> Iterator[str]:
    for reading in value.readings:
        cells = (
            _name(value, reading),
            f"{reading.description} {_content(reading.content)}",
            reading.provenance.clause,
            reading.provenance.mark,
            reading.provenance.source,
        )
        yield "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"


def _name(value: RuleValue, reading: Reading) -> str:
    if len(value.readings) == 1:
        return f"`{value.key}`"
    standing = ", default" if reading.name == value.default else ""
    return f"`{value.key}`, reading: {reading.name}{standing}"


def _content(content: Content) -> str:
    match content:
        case FactorOnLoad(factor, load_basis, beam_weight):
            return f"**{factor:g} x {load_basis}; beam weight: {beam_weight}**"
        case Limit(amount):
            in_us = display(amount.value, amount.dimension, Style.US)
            in_metric = display(amount.value, amount.dimension, Style.METRIC)
            return f"**{in_us}**" if in_us == in_metric else f"**{in_us} ({in_metric})**"
        case Section(shape, form, sizes):
            numbers = (
                f"{name.replace('_', ' ')} {display(one.value, one.dimension, Style.US)}"
                for name, one in sizes.items()
            )
            return f"**{shape}, {form}**: {', '.join(numbers)}"
        case WordList(words):
            return f"**{'; '.join(words)}**"
        case Remark(text):
            return text


def main() -> None:
    """Write the page."""
    PAGE.parent.mkdir(exist_ok=True)
    PAGE.write_text(page(read_rule_sets(RULE_SETS)), encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
