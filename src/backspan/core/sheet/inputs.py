"""Reading the inputs of one finding: at the case's corner, evidence accepted, what is not stated.

A check reads every value through `Inputs`, so that the finding lists exactly what was used and
no check can forget the tolerance or the evidence of a value.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum
from typing import TypeVar

from backspan.core.findings import Decider, InputUsed, Message, Need
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.inherit import said_by
from backspan.core.model.kit import Hoist, Stage
from backspan.core.quantities import Amount
from backspan.core.quantities.quantity import Quantity
from backspan.core.rules.selected import SelectedValue
from backspan.core.sheet.case import Case, Corner, Place
from backspan.core.sheet.limits import limit_of
from backspan.core.sheet.reads import UNKNOWN, Read
from backspan.core.sheet.witness import EvidenceClass, accepted_evidence, where, why_weak

W = TypeVar("W", bound=StrEnum)


_SUPPLIER = {
    EvidenceClass.GEOMETRY: Decider.MEASURER,
    EvidenceClass.COUNT: Decider.MEASURER,
    EvidenceClass.OBSERVATION: Decider.COMPETENT_PERSON,
    EvidenceClass.MASS: Decider.COMPETENT_PERSON,
    EvidenceClass.SIZE: Decider.COMPETENT_PERSON,
    EvidenceClass.RATING: Decider.QUALIFIED_PERSON,
}


@dataclass(slots=True)
class Inputs:
    """Collects the inputs of one finding as the check reads them."""

    case: Case
    corner: Corner = field(default_factory=dict)
    used: list[InputUsed] = field(default_factory=list)
    not_stated: list[Need] = field(default_factory=list)
    weak: list[Need] = field(default_factory=list)
    policies: list[SelectedValue] = field(default_factory=list)
    refer: list[Need] = field(default_factory=list)
    _noted: set[tuple[str, Place]] = field(default_factory=set)

    def number(self, read: Read) -> float:
        """A stated number at the corner, in SI; NaN where nobody stated it."""
        quantity, stated, place = read.quantity, read.stated, read.place
        if stated is None:
            self.want(quantity.name, EvidenceClass(quantity.evidence), place)
            return UNKNOWN
        number = self.corner.get(place, stated.value)
        if read.refer is not None:
            need = Need(Decider.QUALIFIED_PERSON, read.refer)
            self.refer += [] if need in self.refer else [need]
        if (quantity.name, place) not in self._noted:
            tolerance = tolerance_of(self.case, read)
            self._record(
                quantity.name,
                (_amount(stated.value, quantity), _amount(number, quantity)),
                None if tolerance is None else _amount(tolerance, quantity),
                stated,
                asks=EvidenceClass(quantity.evidence),
                place=place,
            )
        return number

    def word(
        self, name: str, stated: StatedValue[W] | None, asks: EvidenceClass, place: Place
    ) -> str | None:
        """A stated word (a kind, a state); None when it is not stated."""
        if stated is None:
            self.want(name, asks, place)
            return None
        word = str(stated.value)
        if (name, place) not in self._noted:
            self._record(name, (word, word), None, stated, asks=asks, place=place)
        return word

    def plain(
        self, name: str, said: StrEnum | None, record: Hoist | Stage, place: Place
    ) -> str | None:
        """A word that a plate says of a kind; None when it is not stated.

        It says not itself who read it: its record does, or the kit, or the project.
        """
        if said is None:
            self.want(name, EvidenceClass.OBSERVATION, place)
            return None
        project = self.case.project
        who = said_by(record.values_from, project.kit.values_from, project.values_from)
        read = StatedValue(said)
        if who is not None:
            read = StatedValue(said, None, who.evidence, who.by, who.at, who.document)
        return self.word(name, read, EvidenceClass.RATING, place)

    def fact(self, name: str, value: Amount | int | str, place: Place) -> None:
        """Note something the check used that is not a statement of a person (a kind, an id)."""
        self._noted.add((name, place))
        self.used.append(InputUsed(name, value, value, None, place=place))

    def want(
        self, name: str, asks: EvidenceClass, place: Place, who: Decider | None = None
    ) -> None:
        """Note that an input is not stated, and who can supply it, where not the usual one."""
        message = Message("need.input", (("input", name), ("place", where(place))))
        need = Need(who or _SUPPLIER[asks], message)
        if need not in self.not_stated:
            self.not_stated.append(need)

    def _record(
        self,
        name: str,
        values: tuple[Amount | int | str, Amount | int | str],
        tolerance: Amount | int | None,
        stated: StatedValue[float] | StatedValue[int] | StatedValue[W],
        *,
        asks: EvidenceClass,
        place: Place,
    ) -> None:
        """Note an input, as stated and as used, and what its evidence lacks."""
        self._noted.add((name, place))
        self.used.append(
            InputUsed(
                name,
                *values,
                evidence=stated.evidence,
                tolerance=tolerance,
                usual=tolerance is not None and stated.tolerance is None,
                by=stated.by,
                at=stated.at,
                document=stated.document,
                checked_by=stated.checked_by,
                place=place,
                written=stated.text,
            )
        )
        accepted = accepted_evidence(self.case, asks)
        if accepted not in self.policies:
            self.policies.append(accepted)
        weak = why_weak(self.case, name, stated, asks, place)
        if weak is not None:
            self.weak.append(Need(_SUPPLIER[asks], weak))


def tolerance_of(case: Case, read: Read) -> float | None:
    """How far off a stated value may be: as stated, else as is usual; None where it is exact."""
    stated, quantity = read.stated, read.quantity
    if stated is None:
        return None
    if quantity.dimension is None:
        return stated.tolerance or None
    measured = stated.evidence is Evidence.MEASURED
    if stated.tolerance is not None or not quantity.tolerance or not measured:
        return stated.tolerance
    usual = case.practice.find(quantity.tolerance)
    return None if usual is None else limit_of(usual, quantity.dimension)


def _amount(number: float, quantity: Quantity) -> Amount | int:
    return int(number) if quantity.dimension is None else Amount(number, quantity.dimension)
