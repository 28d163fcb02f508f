"""The same support under every rule at hand, as a table."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from backspan.cli.screen import Screen
from backspan.core.review.plain import Data
from backspan.core.review.told import told, wanted_rows
from backspan.core.rules.shape import LoadBasis
from backspan.core.words import ENGLISH, Language

#: Short words of the loads, by their labels: a table of a terminal is narrow.
_SHORT: Mapping[str, str] = {
    LoadBasis.HOIST_RATED: "short_rated",
    LoadBasis.HOIST_STALL: "short_stall",
    LoadBasis.LARGEST_ROPE_TENSION: "short_tension",
    LoadBasis.HALF_DEAD_FULL_LIVE: "short_full_live",
    LoadBasis.HALF_DEAD_HALF_LIVE: "short_half_live",
}
_COLUMNS = ("column_rule", "column_asks", "column_needed", "column_pieces")


def comparison_text(
    review: Data, screen: Screen, language: Language, *, against: Sequence[str] = ()
) -> list[str]:
    """The counterweight of a drop under other rules, largest first: a table for each support.

    Only rules that give a number here are told; else those of `against`, the named rule sets,
    where one without a number is told with the reason.
    """
    lines: list[str] = []
    for subjects, rows in told(review, "comparison"):
        wanted = wanted_rows(rows, against)
        lines += ["", f"{language.paper['comparison']}, {subjects}:"]
        none = language.paper["no_other_rule"]
        lines.append(comparison_table(wanted, screen, language) if wanted else none)
    return lines


def envelope_text(review: Data, screen: Screen, language: Language) -> list[str]:
    """How far out the pieces that are there hold, by backspan: a paragraph for each support."""
    lines: list[str] = []
    for one in review["envelopes"]:
        held = "; ".join(
            f"{point['backspan']['text']}: {point['most_reach']['text']}" for point in one["points"]
        )
        text = language.paper["reach_by_backspan"].format(
            subject=one["subject"],
            pieces=one["pieces"]["text"],
            now=f"{one['backspan_now']['text']}: {one['reach_now']['text']}",
            held=held,
        )
        lines += ["", screen.paragraph(text, hanging=2)]
    return lines


def comparison_table(rows: Sequence[Data], screen: Screen, language: Language = ENGLISH) -> str:
    """Rules with a number in a table, largest first; below it the others with the reason."""
    words = language.paper
    numbered = [row for row in rows if row["required"] is not None]
    judged = any(row["enough"] is not None for row in numbered)
    heads = [words[name] for name in (*_COLUMNS, *["column_enough"] * judged, "column_mark")]
    table = screen.table(*heads)
    table.columns[0].no_wrap = True
    for column in table.columns[2:4]:
        column.justify = "right"
    enough = {True: words["yes"], False: words["not_enough"], None: ""}
    for row in numbered:
        pieces = "" if row["pieces"] is None else row["pieces"]["text"]
        cells = [_name(row), _asked(row["rule"], language), row["required"]["text"], pieces]
        table.add_row(*cells, *[enough[row["enough"]]] * judged, row["rule"]["mark_text"])
    parts = [screen.drawn(table)] if numbered else []
    if any(row["in_basis"] for row in rows):
        parts.append(f"* {words['in_basis']}")
    return "\n".join([*parts, *_without_number(rows, screen)])


def _name(row: Data) -> str:
    return f"{row['rule']['rule_set']}{' *' if row['in_basis'] else ''}"


def _asked(rule: Data, language: Language) -> str:
    content = rule["content"]
    if "factor" not in content:
        return ""
    load = language.paper[_SHORT[content["load"]]]
    return f"{content['factor']['text']} x {load}{_reading(rule)}"


def _reading(rule: Data) -> str:
    return f" ({rule['reading_text']})" if rule["reading_text"] else ""


def _without_number(rows: Sequence[Data], screen: Screen) -> list[str]:
    by_reason: dict[str, list[str]] = {}
    for row in rows:
        if row["required"] is None and row["reason"] is not None:
            name = f"{row['rule']['rule_set']}{_reading(row['rule'])}"
            by_reason.setdefault(row["reason"]["text"], []).append(name)
    return [
        screen.paragraph(f"{reason}: {', '.join(names)}", indent=0, hanging=2)
        for reason, names in by_reason.items()
    ]
