"""Words for how something was seen to be set: clips at a rope's end, what arrests a fall."""

from __future__ import annotations

from enum import StrEnum


class Saddle(StrEnum):
    """On which part of the rope the saddles of clips lie."""

    LIVE = "on the live end"
    DEAD = "on the dead end"
    MIXED = "some on either"
    NEITHER = "fist grips, no saddle"


class Tightened(StrEnum):
    """Since when clips were tightened."""

    THIS_SHIFT = "after first loading, and for this shift"
    FIRST_LOADING = "after first loading only"
    NOT_AGAIN = "not since they were fitted"


class Pin(StrEnum):
    """How the pin or latch of a piece of connecting hardware is held."""

    BOLTED = "bolt, nut and cotter"
    MOUSED = "screw pin, moused"
    LATCHED = "latch closed"
    SOLID = "no pin in it"
    NOT_MOUSED = "screw pin, not moused"
    OPEN = "open or missing"


class Grab(StrEnum):
    """How the grab sits on a lifeline."""

    MATCHED = "matched to the rope, right way up"
    UPSIDE_DOWN = "upside down"
    OTHER_ROPE = "made for another rope"
    NONE = "no grab on it"


class GrabHeight(StrEnum):
    """Where the rider keeps the grab while at work."""

    ABOVE = "above the D-ring"
    LEVEL = "level with the D-ring"
    BELOW = "below the D-ring"


class Splices(StrEnum):
    """What interrupts the length of a lifeline below its end."""

    NONE = "none below its end"
    KNOTTED = "knotted"
    SPLICED = "spliced"


class TiedTo(StrEnum):
    """What the lanyard of a line's rider is tied to."""

    LIFELINE = "to this lifeline"
    SUPPORT_LINES = "to the stage, with independent support lines"
    STAGE = "to the stage"
    SUSPENSION_ROPE = "to a suspension rope"


class Swing(StrEnum):
    """How far to the side of a lifeline its rider works, and what a swing would meet."""

    NEAR = "worked close below it"
    WIDE = "worked far to its side"
    STRIKES = "a swing would strike something"


class HarnessState(StrEnum):
    """In which state a rider's harness and lanyard were found before use."""

    SOUND = "looked at and sound"
    WORN = "worn or damaged"
    ARRESTED = "has arrested a fall"


class Hooks(StrEnum):
    """How the hooks and links between a rider's harness and the lifeline close."""

    LOCKING = "all lock by themselves, closed"
    NOT_LOCKING = "one does not lock by itself"
    BAD = "one open, bent or cracked"


class LowEnd(StrEnum):
    """Where a lifeline ends below."""

    BELOW = "below the lowest place"
    ABOVE = "above the lowest place"


class Tautness(StrEnum):
    """Whether a tieback can move before it holds."""

    TAUT = "taut"
    SLACK = "slack"


class Route(StrEnum):
    """How a tieback runs from its support to its end."""

    STRAIGHT = "straight, touching nothing"
    ABOVE = "straight, clear above what the plan shows"
    OVER_AN_EDGE = "over an edge"
    BENT = "bent round something"
