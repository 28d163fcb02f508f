"""The findings of one drop as the package prints them: what does not pass comes first."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from backspan.core.findings import WORST_FIRST, Finding, InputUsed, Review
from backspan.core.model.project import Project
from backspan.core.model.rigs import SuspensionPoint
from backspan.core.quantities import LENGTH, Style, display
from backspan.core.words import say, say_check, say_input, say_margins, say_verdict, shown
from backspan.core.worked.formula import Step
from backspan.core.worked.lines import worked_line
from backspan.core.worked.table import FormulaDescription
from backspan.core.worked.typeset import typst_line
from backspan.papers.wording import NOT_STATED, citation, percent

# A unit such as m/s2 at the end of a number in markup.
_SQUARED = re.compile(r'(?<=\d )((?:[a-z]+/)?(?:mm?|s|ft|in))2(?=")')


@dataclass(frozen=True, slots=True)
class FindingWriter:
    """Writes the findings of one review as plain data for the template."""

    project: Project
    review: Review
    formulas: Mapping[str, FormulaDescription]

    @property
    def units(self) -> Style:
        """The style of units the review is written in."""
        return self.review.units

    def points(self) -> list[dict[str, str]]:
        """One row for each suspension point of the rig."""
        drop = next((one for one in self.project.drops if one.id == self.review.drop), None)
        rig = None if drop is None else drop.rig
        return [] if rig is None else [self._point(one) for one in rig.suspension_points]

    def findings(self) -> list[dict[str, Any]]:
        """Findings, worst first; those that say the same of two subjects are printed once."""
        merged: dict[str, tuple[list[str], dict[str, Any]]] = {}
        for verdict in WORST_FIRST:
            for finding in self.review.findings:
                if finding.verdict is verdict:
                    written = self._finding(finding)
                    merged.setdefault(repr(written), ([], written))[0].append(finding.subject)
        return [
            {"number": str(number), "subject": ", ".join(dict.fromkeys(names)), **data}
            for number, (names, data) in enumerate(merged.values(), 1)
        ]

    def not_applicable(self) -> list[dict[str, str]]:
        """Checks that had nothing to judge, with the reason; equal reasons are printed once."""
        merged: dict[tuple[str, str], list[str]] = {}
        for one in self.review.not_applicable:
            key = (say_check(one.check), say(one.reason, self.units))
            merged.setdefault(key, []).append(one.subject)
        return [
            {"check": check, "reason": reason, "subject": ", ".join(dict.fromkeys(subjects))}
            for (check, reason), subjects in merged.items()
        ]

    def _point(self, point: SuspensionPoint) -> dict[str, str]:
        beam, other = point.counterweighted_beam, point.other_support
        hoist = next((one for one in self.project.kit.hoists if one.id == point.hoist), None)
        row = {
            "point": point.id,
            "station": display(point.station, LENGTH, self.units),
            "hoist": point.hoist if hoist is None else f"{hoist.id}, {hoist.name}",
            "support": "not recorded",
            "reach": "",
            "backspan": "",
            "pieces": "",
        }
        if other is not None:
            row["support"] = str(other.kind)
        if beam is not None:
            row["support"] = f"counterweighted beam {beam.beam}"
            row["reach"] = NOT_STATED if beam.reach is None else self._length(beam.reach.value)
            taped = NOT_STATED if beam.backspan is None else self._length(beam.backspan.value)
            row["backspan"] = taped if beam.backspan_from == "measured" else "from the stack"
            row["pieces"] = ", ".join(
                f"{group.count.value} x {group.piece}" for group in beam.stack.groups
            )
        return row

    def _length(self, metres: float) -> str:
        return display(metres, LENGTH, self.units)

    def _finding(self, finding: Finding) -> dict[str, Any]:
        units = self.units
        return {
            "title": say_check(finding.check),
            "answer": say_verdict(finding.verdict),
            "verdict": str(finding.verdict),
            "sentence": say(finding.message, units),
            "demand": "" if finding.demand is None else shown(finding.demand, units),
            "capacity": "" if finding.capacity is None else shown(finding.capacity, units),
            "utilisation": percent(finding.utilisation),
            "rules": [citation(rule) for rule in finding.rules],
            "inputs": [self._input(one) for one in finding.inputs if _is_stated(one, finding)],
            "steps": [self._step(step) for step in finding.steps],
            "margins": say_margins(finding.margins, units),
            "notes": [say(note, units) for note in finding.notes],
            "needs": [
                {"who": _with_article(str(one.who)), "what": say(one.what, units)}
                for one in finding.needs
            ],
        }

    def _input(self, one: InputUsed) -> dict[str, str]:
        stated, used = shown(one.stated, self.units), shown(one.used, self.units)
        tolerance = (
            ""
            if one.tolerance is None
            else f" ± {shown(one.tolerance, self.units)}{' as usual' if one.usual else ''}"
        )
        return {
            "name": say_input(one.name),
            "value": f"{stated}{tolerance}",
            "used": "" if used == stated else used,
            "evidence": NOT_STATED if one.evidence is None else str(one.evidence),
            "by": self._person(one.by),
            "at": one.at or "",
            "document": one.document or "",
            "again": self._person(one.checked_by),
        }

    def _person(self, name: str | None) -> str:
        found = next((one for one in self.project.people if one.id == name), None)
        return name or "" if found is None else found.name

    def _step(self, step: Step) -> dict[str, str]:
        line = worked_line(step, self.formulas[step.formula], self.units)
        return {
            "title": line.title,
            "math": _SQUARED.sub(r"\1²", typst_line(line)),
            "plain": line.plain,
            "source": line.source,
        }


def _is_stated(one: InputUsed, finding: Finding) -> bool:
    """Whether a person stated it; what the program noted by itself stands in the sentence."""
    wanting = [need.what for need in finding.needs if need.what.id == "need.evidence"]
    return bool(
        one.by or one.evidence or any(("input", one.name) in what.values for what in wanting)
    )


def _with_article(who: str) -> str:
    return who if who.startswith("the ") else f"the {who}"
