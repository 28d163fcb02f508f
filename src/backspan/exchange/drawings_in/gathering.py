"""From the entities of a model space to lines, blocks and texts in metres."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Any

from backspan.core.errors import quoted
from backspan.core.model.site import Point
from backspan.exchange.drawings_in.curves import TooFineError, arc, bulged, circle
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.wrong import Wrong

if TYPE_CHECKING:
    from ezdxf.entities.dxfgfx import DXFGraphic

MOST_POINTS = 1_000_000
SAGITTA = 0.001
#: An entity on this layer of a block is on the layer where the block is placed.
_PLACED_LAYER = "0"
_FRAME_POINT = 16
_FULL = 1e-9
_ENDS = 2
#: Pieces of a spline between two knots: the library looks at the middle of each, where one that
#: bends to both sides may be on its chord.
_PIECES = 16


class Gathered:
    """Lines, blocks and texts as plain data; `noted` counts what was left out or is odd."""

    def __init__(self, factor: float, *, hidden: frozenset[str] = frozenset()) -> None:
        self.lines: list[tuple[str, list[Point], bool]] = []
        self.blocks: list[tuple[str, str, Point, dict[str, str]]] = []
        self.texts: list[tuple[str, str, Point]] = []
        self.noted: Counter[str] = Counter()
        self.wrong: list[Wrong] = []
        self._factor = factor
        self._sagitta = SAGITTA / factor
        self._hidden = hidden
        self._points = 0

    def gather(self, entities: Iterable[DXFGraphic], above: str | None = None) -> None:
        """Take each entity; `above` is the layer on which the block that holds them is placed."""
        from ezdxf.lldxf.const import DXFError

        broken = (ArithmeticError, AttributeError, DXFError, LookupError, TypeError, ValueError)
        for one in entities:
            try:
                self._on_layer(one, above)
            except DrawingError:
                raise
            except broken as error:
                where = f"{one.dxftype()} {quoted(str(one))}"
                found = f"something that cannot be drawn ({quoted(str(error))})"
                self.wrong.append(Wrong(where, found, "an entity as it was saved"))

    def _on_layer(self, one: DXFGraphic, above: str | None) -> None:
        layer = str(one.dxf.get("layer", _PLACED_LAYER))
        if above is not None and layer == _PLACED_LAYER:
            layer = above
        if layer.casefold() in self._hidden:
            self.noted["on a layer that is off or frozen, read all the same"] += 1
        self._one(one, layer)

    def _one(self, one: Any, layer: str) -> None:
        """One entity of any kind. The library's entities have their fields by kind: hence Any."""
        kind = one.dxftype()
        if kind == "INSERT":
            self._insert(one, layer)
        elif kind in {"TEXT", "MTEXT"}:
            at = self._at(one, one.dxf.insert, is_turned=kind == "TEXT")
            if at is not None:
                self.texts.append((layer, one.plain_text(), at))
        elif kind in _CURVES or kind in {"LINE", "ELLIPSE", "SPLINE", "POLYLINE"}:
            try:
                drawn = self._curve(one, kind)
            except TooFineError as error:
                self.noted[f"{kind}: {error}, left out"] += 1
                return
            if drawn is not None:
                self._line(kind, layer, *drawn)
        elif kind == "ATTDEF":
            self.noted["ATTDEF: the pattern of an attribute, which is not a text placed"] += 1
        else:
            self.noted[f"{kind}: not read, left out"] += 1

    def _curve(self, one: Any, kind: str) -> tuple[list[Point], bool] | None:
        """The points of a line or curve in the drawing's units, and whether it is closed."""
        if kind == "LINE":
            return self._flat(one, (one.dxf.start, one.dxf.end), is_turned=False), False
        if kind == "ELLIPSE":
            span = (one.dxf.end_param - one.dxf.start_param) % math.tau
            is_full = min(span, math.tau - span) < _FULL
            found = self._flat(one, self._counted(one.flattening(self._sagitta)), is_turned=False)
            return (found[:-1] if is_full else found), is_full
        if kind == "SPLINE":
            if len(one.control_points) + len(one.fit_points) < _ENDS:
                self.noted["SPLINE: without points, left out"] += 1
                return None
            run = one.flattening(self._sagitta / 2, segments=_PIECES)
            return self._flat(one, self._counted(run), is_turned=False), bool(one.closed)
        if kind == "POLYLINE":
            return self._polyline(one)
        flat, closed = _CURVES[kind](one, self._sagitta)
        z = float(one.dxf.get("elevation", 0.0)) if kind == "LWPOLYLINE" else one.dxf.center.z
        return self._flat(one, [(x, y, z) for x, y in flat], is_turned=True), closed

    def _polyline(self, one: Any) -> tuple[list[Point], bool] | None:
        if not (one.is_2d_polyline or one.is_3d_polyline):
            self.noted["POLYLINE: a mesh, left out"] += 1
            return None
        vertices = [each for each in one.vertices if not each.dxf.flags & _FRAME_POINT]
        closed = bool(one.is_closed)
        if one.is_3d_polyline:
            return self._flat(
                one, (each.dxf.location for each in vertices), is_turned=False
            ), closed
        z = one.dxf.elevation.z if one.dxf.hasattr("elevation") else 0.0
        run = [
            (each.dxf.location.x, each.dxf.location.y, each.dxf.get("bulge", 0.0))
            for each in vertices
        ]
        flat = bulged(run, closed=closed, sagitta=self._sagitta)
        return self._flat(one, [(x, y, z) for x, y in flat], is_turned=True), closed

    def _insert(self, one: Any, layer: str) -> None:
        at = self._at(one, one.dxf.insert, is_turned=True)
        if at is None:
            return
        name = str(one.dxf.get("name", ""))
        if one.block() is None:
            self.noted["INSERT: of a block that is not there, placed without what it holds"] += 1
        many = list(one.multi_insert()) if one.mcount > 1 else [one]
        for each in many:
            where = at if each is one else self._at(each, each.dxf.insert, is_turned=True)
            if where is None:
                continue
            attributes: dict[str, str] = {}
            for attribute in one.attribs:
                if attribute.dxf.tag in attributes:
                    self.noted["ATTRIB: a tag a second time in one block, left out"] += 1
                    continue
                attributes[attribute.dxf.tag] = _text_of(attribute)
            self.blocks.append((name, layer, where, attributes))
            if each.block() is not None:
                inside = each.virtual_entities(
                    skipped_entity_callback=self._skipped, redraw_order=False
                )
                self.gather(inside, layer)

    def _skipped(self, entity: Any, reason: str) -> None:
        self.noted[f"{entity.dxftype()} inside a block: {reason}, left out"] += 1

    def _line(self, kind: str, layer: str, points: list[Point], closed: bool) -> None:  # noqa: FBT001
        self._points += len(points)
        self._refuse_many()
        if len(points) < _ENDS:
            self.noted[f"{kind}: of a single point, left out"] += 1
            return
        if self._are_finite(points, kind, layer):
            factor = self._factor
            self.lines.append((layer, [(x * factor, y * factor) for x, y in points], closed))

    def _at(self, one: Any, at: Any, *, is_turned: bool) -> Point | None:
        """A place in metres; None, and a problem, where it is none."""
        (found,) = self._flat(one, [at], is_turned=is_turned)
        if not self._are_finite([found], one.dxftype(), str(one.dxf.get("layer", "0"))):
            return None
        return found[0] * self._factor, found[1] * self._factor

    def _flat(self, one: Any, points: Iterable[Any], *, is_turned: bool) -> list[Point]:
        """Points in plan; what is `turned` has coordinates of its own plane."""
        if is_turned and tuple(one.dxf.extrusion) != (0.0, 0.0, 1.0):
            points = one.ocs().points_to_wcs(_vectors(points))
        found, is_flat = [], True
        for x, y, z in points:
            found.append((float(x), float(y)))
            is_flat = is_flat and z == 0.0
        if not is_flat:
            self.noted["above or below the plan, laid upon it"] += 1
        return found

    def _are_finite(self, points: Iterable[Point], kind: str, layer: str) -> bool:
        if all(math.isfinite(x) and math.isfinite(y) for x, y in points):
            return True
        found, expected = "a coordinate that is no finite number", "finite numbers"
        self.wrong.append(Wrong(f"{kind} on layer {layer}", found, expected))
        return False

    def _counted(self, points: Iterable[Any]) -> Iterator[Any]:
        """The same points, and no more than may be."""
        for many, one in enumerate(points):
            if self._points + many > MOST_POINTS:
                self._points += many
                self._refuse_many()
            yield one

    def _refuse_many(self) -> None:
        if self._points > MOST_POINTS:
            found = f"more than {MOST_POINTS:,} points along its lines"
            raise refused("the drawing", found, f"at most {MOST_POINTS:,}")


def _lwpolyline(one: Any, sagitta: float) -> tuple[list[Point], bool]:
    closed = bool(one.closed)
    return list(bulged(one.get_points("xyb"), closed=closed, sagitta=sagitta)), closed


def _arc(one: Any, sagitta: float) -> tuple[list[Point], bool]:
    start, end = math.radians(one.dxf.start_angle), math.radians(one.dxf.end_angle)
    sweep = (end - start) % math.tau or math.tau
    x, y, _ = one.dxf.center
    radius = one.dxf.radius
    return list(arc((x, y), radius=radius, start=start, sweep=sweep, sagitta=sagitta)), False


def _circle(one: Any, sagitta: float) -> tuple[list[Point], bool]:
    x, y, _ = one.dxf.center
    return list(circle((x, y), radius=one.dxf.radius, sagitta=sagitta)), True


_CURVES = {"LWPOLYLINE": _lwpolyline, "ARC": _arc, "CIRCLE": _circle}


def _text_of(attribute: Any) -> str:
    if attribute.has_embedded_mtext_entity:
        return str(attribute.plain_mtext())
    return str(attribute.plain_text())


def _vectors(points: Iterable[Any]) -> Iterator[Any]:
    from ezdxf.math import Vec3

    return map(Vec3, points)
