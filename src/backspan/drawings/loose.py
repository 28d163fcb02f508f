"""A canvas on which every label stands at the first place of its choice, whatever else is there.

On paper a label goes where it stands best among all others, which takes long and lets many move
when one thing does. On a plan that is worked on, a thing's name stays beside it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import Canvas
from backspan.drawings.geometry import Quad, Segment
from backspan.drawings.paper import Frame
from backspan.drawings.placing import Label, Placed, Placer, stands
from backspan.drawings.scene import Point, Shape, Text
from backspan.drawings.spots import Spot, around


@dataclass(slots=True)
class LoosePlacer(Placer):
    """Paper on which there is always room."""

    def block(self, quad: Quad) -> None:
        """Nothing is kept free."""

    def cross(self, segments: Iterable[Segment], *, weight: int = 1) -> None:
        """No line is kept off."""

    def fix(self, texts: Sequence[Text]) -> None:
        """Nothing is kept free."""

    def keep(self, placed: Placed) -> None:
        """Nothing is kept free."""

    def free(self, quad: Quad) -> bool:  # noqa: ARG002 - as a placer is asked
        """There is always room."""
        return True

    def best(
        self,
        label: Label,
        target: Point,
        spots: Iterable[Spot] = (),
        *,
        near: bool = False,  # noqa: ARG002 - as a placer is asked
        under: float = math.inf,  # noqa: ARG002 - as a placer is asked
    ) -> Placed | None:
        """The label at the place it likes best, without a leader."""
        spot = next(iter(spots), None) or next(around(target, away=1.2))
        return stands(label, spot)


class LooseCanvas(Canvas):
    """A drawing without edges of its paper."""

    def __init__(self, frame: Frame, *, language: Language = ENGLISH) -> None:
        """Start a drawing that lies as `frame` says."""
        everywhere = (-math.inf, -math.inf, math.inf, math.inf)
        super().__init__(frame, everywhere, language=language)
        self.most_spots = 1
        self.placer = LoosePlacer(everywhere)

    def add(self, *shapes: Shape) -> None:
        """Draw shapes."""
        self.shapes.extend(map(self._shown, shapes))
