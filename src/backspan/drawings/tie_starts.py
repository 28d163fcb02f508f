"""Where on its support a tieback is made fast, as section and plan draw it."""

from __future__ import annotations

from backspan.core.model.rigs import Tieback, TiebackStart
from backspan.drawings.beams import BeamPicture, Place


def tie_start(picture: BeamPicture, tieback: Tieback) -> Place:
    """How far in from the face a tieback begins; at the tail, not known, where nobody said.

    Of two stands nobody says which one holds it: it is drawn from the rear one, not known.
    """
    start = None if tieback.attached is None else tieback.attached.value
    match start:
        case TiebackStart.SHACKLE:
            return picture.line
        case TiebackStart.STACK:
            return Place(picture.centroid.x, picture.centroid.known and picture.stack_known)
        case TiebackStart.STAND if picture.rear_at is not None:
            return Place(picture.rear_at.x, known=False)
        case TiebackStart.STAND:
            return picture.fulcrum
        case TiebackStart.TAIL:
            return picture.tail
        case None:
            return Place(picture.tail.x, known=False)
