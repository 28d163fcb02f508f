"""Attributes of blocks and extended data of lines, as `dxf_things` says what they hold.

A sheet has more attributes than all its other entities. They are written here and not by the
library, which takes as long for one of them as for a sign.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, cast

from backspan.drawings.dxf_tables import STYLE
from backspan.drawings.dxf_things import APPLICATION, strings, values_of, written
from backspan.drawings.things import Thing

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.entities.attrib import Attrib
    from ezdxf.entities.dxfgfx import DXFGraphic
    from ezdxf.entities.insert import Insert
    from ezdxf.entities.xdata import XData
    from ezdxf.layouts.blocklayout import BlockLayout
    from ezdxf.lldxf.tagwriter import AbstractTagWriter
    from ezdxf.lldxf.types import DXFTag

HEIGHT = 1.0
"""Of an attribute that somebody makes visible, in millimetres on paper."""

INVISIBLE = 1
STRING = 1000

_IN_LAYOUT = " 67\n1\n"


class _Attributes:
    """The attributes of one INSERT, among its other parts."""

    is_alive = True

    def __init__(self, text: str) -> None:
        self._text = text

    def export_dxf(self, tagwriter: AbstractTagWriter) -> None:
        """Write them all."""
        tagwriter.write_str(self._text)


class _Strings:
    """The strings of extended data of one entity, where the library has one tag."""

    code = STRING

    def __init__(self, thing: Thing) -> None:
        self._text = "".join(f"{STRING}\n{string}\n" for string in strings(thing))

    def dxfstr(self) -> str:
        """All of them as the file has them."""
        return self._text


def define(block: BlockLayout, things: Iterable[Thing]) -> None:
    """The attributes that the INSERTs of a block have, all of them invisible."""
    tags = dict.fromkeys(tag for thing in things for tag, _ in values_of(thing))
    for tag in tags:
        given = {"height": HEIGHT, "flags": INVISIBLE, "style": STYLE, "prompt": tag}
        block.add_attdef(tag, (0.0, 0.0), "", dxfattribs=given)


def attach(insert: Insert, thing: Thing, *, height: float) -> None:
    """Give an INSERT the values of its thing; `height` is that of a letter in the file's unit."""
    handles = cast("Drawing", insert.doc).entitydb.handles
    given = insert.dxf
    where = _IN_LAYOUT if given.paperspace else ""
    x, y, _ = given.insert
    before = (
        f"330\n{given.handle}\n100\nAcDbEntity\n{where}  8\n{given.layer}\n100\nAcDbText\n"
        f" 10\n{x}\n 20\n{y}\n 30\n0.0\n 40\n{height}\n  1\n"
    )
    text = "".join(
        f"  0\nATTRIB\n  5\n{handles.next()}\n{before}{value}\n  7\n{STYLE}\n"
        f"100\nAcDbAttribute\n  2\n{tag}\n 70\n{INVISIBLE}\n"
        for tag, value in written(thing)
    )
    insert.attribs.append(cast("Attrib", _Attributes(text)))


def mark(entity: DXFGraphic, thing: Thing | None) -> None:
    """Give a line the values of its thing."""
    if thing is None:
        return
    entity.set_xdata(APPLICATION, [])
    cast("XData", entity.xdata).get(APPLICATION).append(cast("DXFTag", _Strings(thing)))
