"""What a proof found: each damage with the member it lies in, and how far the archive reaches."""

from __future__ import annotations

from dataclasses import dataclass, field

#: So many are listed; a file that is damaged everywhere shall not fill the memory.
MOST_TOLD = 10_000


@dataclass(frozen=True, slots=True)
class Damage:
    """One thing that is not as it was written; `number` is a line of the member, from 1."""

    member: str
    number: int | None
    says: str

    def __str__(self) -> str:
        """The damage on one line."""
        line = "" if self.number is None else f" line {self.number}"
        return f"{self.member}{line}: {self.says}"


@dataclass(slots=True)
class Damages:
    """Damage as it is found, in the order of the archive."""

    told: list[Damage] = field(default_factory=list)
    count: int = 0

    def tell(self, member: str, says: str, *, number: int | None = None) -> None:
        """Add one."""
        self.count += 1
        if self.count <= MOST_TOLD:
            self.told.append(Damage(member, number, says))

    def done(self) -> tuple[Damage, ...]:
        """All that were told, with a last one that says how many were not."""
        if self.count <= MOST_TOLD:
            return tuple(self.told)
        more = Damage("archive", None, f"{self.count - MOST_TOLD:,} more, not listed")
        return (*self.told, more)


@dataclass(frozen=True, slots=True)
class Report:
    """What a proof of an archive found.

    `signed` is the place of the last signed head that holds, by the trusted key where one was
    given: up to there nothing can have been changed without that key. What stands after it is
    proven only against itself and the heads that were known.
    """

    damage: tuple[Damage, ...]
    site: str | None
    entries: int
    head: str
    signed: int

    @property
    def whole(self) -> bool:
        """Whether no damage was found."""
        return not self.damage
