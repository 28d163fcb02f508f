"""The same support under every rule at hand, as a table."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from backspan.cli.screen import Screen
from backspan.core.review.plain import Data
from backspan.core.review.told import told, wanted_rows
from backspan.core.rules.shape import LoadBasis
from backspan.core.words import Language

_SHORT: Mapping[str, str] = {
    LoadBasis.HOIST_RATED: "rated load",
    LoadBasis.HOIST_STALL: "stall load",
    LoadBasis.LARGEST_ROPE_TENSION: "rope tension",
    LoadBasis.HALF_DEAD_FULL_LIVE: "half dead, full live load",
    LoadBasis.HALF_DEAD_HALF_LIVE: "half dead, half live load",
}
_ENOUGH = {True: "yes", False: "no", None: ""}


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
        lines.append(
            comparison_table(wanted, screen) if wanted else language.paper["no_other_rule"]
        )
    return lines


def envelope_text(review: Data, screen: Screen) -> list[str]:
    """How far out the pieces that are there hold, by backspan: a paragraph for each support."""
    lines: list[str] = []
    for one in review["envelopes"]:
        held = "; ".join(
            f"{point['backspan']['text']}: {point['most_reach']['text']}" for point in one["points"]
        )
        now = f"now {one['backspan_now']['text']}: {one['reach_now']['text']}"
        head = f"Most reach by backspan, {one['subject']}, {one['pieces']['text']} pieces"
        lines += ["", screen.paragraph(f"{head} ({now}): {held}", hanging=2)]
    return lines


def comparison_table(rows: Sequence[Data], screen: Screen) -> str:
    """Rules with a number in a table, largest first; below it the others with the reason."""
    numbered = [row for row in rows if row["required"] is not None]
    judged = any(row["enough"] is not None for row in numbered)
    table = screen.table("rule set", "asks for", "needed", "pieces", *["enough"] * judged, "mark")
    table.columns[0].no_wrap = True
    for name in ("needed", "pieces"):
        next(one for one in table.columns if one.header == name).justify = "right"
    for row in numbered:
        pieces = "" if row["pieces"] is None else row["pieces"]["text"]
        cells = [_name(row), _asked(row["rule"]), row["required"]["text"], pieces]
        table.add_row(*cells, *[_ENOUGH[row["enough"]]] * judged, row["rule"]["mark_text"])
    parts = [screen.drawn(table)] if numbered else []
    if any(row["in_basis"] for row in rows):
        parts.append("* in the basis")
    return "\n".join([*parts, *_without_number(rows, screen)])


def _name(row: Data) -> str:
    return f"{row['rule']['rule_set']}{' *' if row['in_basis'] else ''}"


def _asked(rule: Data) -> str:
    content = rule["content"]
    if "factor" not in content:
        return ""
    return f"{content['factor']['text']} x {_SHORT[content['load']]}{_reading(rule)}"


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
