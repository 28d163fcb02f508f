"""What of a review is told beside answers and reasons because somebody asked for it."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Asked:
    """What the terminal tells, and the appendix of a drop's paper holds, beside the two pages."""

    worked: bool = False
    """Every finding of each drop with its inputs and arithmetic."""
    compare: bool = False
    """The counterweight under other rule sets: those that give a number here."""
    against: tuple[str, ...] = ()
    """The rule sets to compare with, in place of all that apply."""
    envelope: bool = False
    """How far out the pieces that are there hold."""

    @property
    def compared(self) -> bool:
        """Whether other rule sets are told."""
        return self.compare or bool(self.against)

    @property
    def beyond(self) -> bool:
        """Whether rule sets are compared or envelopes told."""
        return self.compared or self.envelope

    @property
    def more(self) -> bool:
        """Whether anything is told beside answers and reasons."""
        return self.worked or self.beyond
