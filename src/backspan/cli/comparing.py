"""The same support under every rule at hand, as a table."""

from __future__ import annotations

from collections.abc import Sequence

from backspan.cli.screen import Screen
from backspan.core.findings import ComparisonRow
from backspan.core.quantities import RATIO, Style, display
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import FactorOnLoad, LoadBasis
from backspan.core.words import say, shown

_SHORT = {
    LoadBasis.HOIST_RATED: "rated load",
    LoadBasis.HOIST_STALL: "stall load",
    LoadBasis.LARGEST_ROPE_TENSION: "rope tension",
    LoadBasis.HALF_DEAD_FULL_LIVE: "half dead, full live load",
    LoadBasis.HALF_DEAD_HALF_LIVE: "half dead, half live load",
}
_ENOUGH = {True: "yes", False: "no", None: ""}


def comparison_text(rows: Sequence[ComparisonRow], screen: Screen, style: Style) -> str:
    """Rules with a number in a table, largest first; below it the others with the reason."""
    numbered = [row for row in rows if row.required is not None]
    judged = any(row.enough is not None for row in numbered)
    table = screen.table("rule set", "asks for", "needed", "pieces", *["enough"] * judged, "mark")
    table.columns[0].no_wrap = True
    for name in ("needed", "pieces"):
        next(one for one in table.columns if one.header == name).justify = "right"
    for row in numbered:
        required = "" if row.required is None else shown(row.required, style)
        cells = [_name(row), _asked(row.rule), required, str(row.pieces or 0)]
        table.add_row(*cells, *[_ENOUGH[row.enough]] * judged, _mark(row.rule))
    parts = [screen.drawn(table)] if numbered else []
    if any(row.in_basis for row in rows):
        parts.append("* in the basis")
    parts += _without_number(rows, screen, style)
    return "\n".join(parts)


def _name(row: ComparisonRow) -> str:
    return f"{row.rule.rule_set}{' *' if row.in_basis else ''}"


def _asked(rule: SelectedValue) -> str:
    if not isinstance(rule.content, FactorOnLoad):
        return ""
    factor = display(rule.content.factor, RATIO, Style.US)
    reading = f" ({rule.reading})" if rule.of_readings > 1 else ""
    return f"{factor} x {_SHORT[rule.content.load]}{reading}"


def _mark(rule: SelectedValue) -> str:
    confirmed = "" if rule.confirmed is None else ", confirmed"
    return f"{rule.provenance.mark}{confirmed}"


def _without_number(rows: Sequence[ComparisonRow], screen: Screen, style: Style) -> list[str]:
    by_reason: dict[str, list[str]] = {}
    for row in rows:
        if row.required is None and row.reason is not None:
            reading = f" ({row.rule.reading})" if row.rule.of_readings > 1 else ""
            name = f"{row.rule.rule_set}{reading}"
            by_reason.setdefault(say(row.reason, style), []).append(name)
    return [
        screen.paragraph(f"{reason}: {', '.join(names)}", indent=0, hanging=2)
        for reason, names in by_reason.items()
    ]
