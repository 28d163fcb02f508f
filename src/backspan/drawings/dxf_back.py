"""The things of the site read back out of a DXF file that this program wrote.

Places are in metres, whatever the unit of the file. What each entity holds says `dxf_things`.
"""

from __future__ import annotations

import io
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from backspan.drawings.dxf_things import APPLICATION, GOES_ON, ID, KIND, PATH, decoded, name_of
from backspan.drawings.scene import DrawingError, Point
from backspan.drawings.things import Facts, ThingKind, path_in

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.entities.dxfentity import DXFEntity

METRES = {1: 0.0254, 4: 0.001}
"""How long one unit of the file is, by the number with which it states its unit."""

OURS = frozenset({KIND, ID, PATH})


@dataclass(frozen=True, slots=True)
class ThingRead:
    """A thing of the site as a file shows it, put together from all that shows it.

    `at` is where its sign stands, `outline` the corners and ends of its lines one after the
    other, in metres; what stands on the paper around the drawing has neither.
    """

    kind: ThingKind
    id: str
    path: tuple[str, ...]
    facts: Facts
    at: Point | None = None
    outline: tuple[Point, ...] = ()

    def fact(self, name: str) -> str | None:
        """A value by its name; None where there is none."""
        return dict(self.facts).get(name)


def things_in(dxf: bytes) -> tuple[ThingRead, ...]:
    """Every thing that a DXF file of this program shows, in the order of the file.

    Raises DrawingError for a file that is no DXF, is cut off, or is in another unit.
    """
    document = _opened(dxf)
    unit = METRES.get(document.header.get("$INSUNITS", 0))
    if unit is None:
        raise DrawingError("the DXF file states a unit other than inches or millimetres")
    found: dict[tuple[str, str], ThingRead] = {}
    for layout in document.layouts:
        for entity in layout:
            values = dict(_attributes(entity) or _extended(entity))
            if not values.keys() >= OURS:
                continue
            at, outline = _places(entity, unit) if layout.is_modelspace else (None, ())
            key = (values[KIND], values[PATH])
            found[key] = _more(found.get(key), values, at, outline)
    return tuple(found.values())


def _opened(dxf: bytes) -> Drawing:
    from ezdxf.filemanagement import read
    from ezdxf.lldxf.const import DXFError

    try:
        return read(io.StringIO(dxf.decode("utf-8"), newline="\n"))
    except (DXFError, UnicodeDecodeError, ValueError) as error:
        raise DrawingError(f"this cannot be read as a DXF file: {error}") from error


def _attributes(entity: DXFEntity) -> list[tuple[str, str]]:
    from ezdxf.entities.insert import Insert

    if not isinstance(entity, Insert):
        return []
    return [(one.dxf.tag, decoded(one.dxf.text)) for one in entity.attribs]


def _extended(entity: DXFEntity) -> Iterator[tuple[str, str]]:
    if not entity.has_xdata(APPLICATION):
        return
    whole: list[str] = []
    for tag in entity.get_xdata(APPLICATION):
        if tag.value.startswith(GOES_ON) and whole:
            whole[-1] += tag.value.removeprefix(GOES_ON)
        else:
            whole.append(tag.value)
    for string in whole:
        name, _, value = string.partition("=")
        yield name, decoded(value)


def _places(entity: DXFEntity, unit: float) -> tuple[Point | None, tuple[Point, ...]]:
    """Where a sign stands; the ends or corners of a line."""
    given = entity.dxf
    match entity.dxftype():
        case "INSERT":
            return _metres(given.insert, unit), ()
        case "LINE":
            return None, (_metres(given.start, unit), _metres(given.end, unit))
        case "LWPOLYLINE":
            corners = entity.get_points("xy")  # type: ignore[attr-defined]  # it is one
            return None, tuple(_metres(corner, unit) for corner in corners)
        case "CIRCLE" | "ARC":
            return _metres(given.center, unit), ()
        case _:
            return None, ()


def _metres(point: tuple[float, ...], unit: float) -> Point:
    return (float(point[0]) * unit, float(point[1]) * unit)


def _more(
    before: ThingRead | None,
    values: dict[str, str],
    at: Point | None,
    outline: tuple[Point, ...],
) -> ThingRead:
    """The thing with what another entity of it adds."""
    if before is not None:
        return ThingRead(
            before.kind,
            before.id,
            before.path,
            before.facts,
            at if before.at is None else before.at,
            (*before.outline, *outline),
        )
    kind = values[KIND]
    if kind not in set(ThingKind):
        raise DrawingError(f"the DXF file shows a kind of thing that is not known: {kind!r}")
    facts = tuple((name_of(tag), value) for tag, value in values.items() if tag not in OURS)
    return ThingRead(ThingKind(kind), values[ID], path_in(values[PATH]), facts, at, outline)
