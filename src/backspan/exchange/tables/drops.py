"""Drops over the edges of one roof out of a table: the columns, and what each row says."""

from __future__ import annotations

from backspan.core.errors import quoted
from backspan.core.model.identifiers import near
from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.model.site import Edge, Roof
from backspan.core.model.walked import edge_length
from backspan.core.numbers import surely_above
from backspan.core.quantities import LENGTH, display
from backspan.exchange.parse.shape import quantity
from backspan.exchange.tables.anchors import Told
from backspan.exchange.tables.cells import Row, Table
from backspan.exchange.tables.headed import Headed

_STATED = ("width", "height", "clear_below")
COLUMNS = ("id", "name", "edge", "start", *_STATED)


def drops_of(table: Table, project: Project, roof: Roof, told: Told) -> tuple[Drop, ...]:
    """The drops that a table says hang from a roof. Raises TableError with every problem."""
    headed = Headed(table, COLUMNS)
    headed.need("id", "edge", "start", "width")
    headed.names({one.id: "a drop of the site" for one in project.drops})
    found = []
    for row in headed.rows:
        edge = _edge(headed, row, roof)
        one = headed.record(row, Drop, _data(headed, row, roof, told))
        if one is not None and edge is not None:
            _judge_place(headed, row, one, edge, project)
            found.append(one)
    headed.refuse()
    return tuple(found)


def _edge(headed: Headed, row: Row, roof: Roof) -> Edge | None:
    name = headed.text(row, "edge", needed=f"an edge of {roof.name}")
    edge = next((one for one in roof.edges if one.id == name), None)
    if name and edge is None:
        expected = near(name, [one.id for one in roof.edges], what=f"edges of {roof.name}")
        headed.tell(row, "edge", f"the edge {quoted(name)}, which is not there", expected)
    return edge


def _data(headed: Headed, row: Row, roof: Roof, told: Told) -> dict[str, object]:
    """What a row says, as a project file says it."""
    lengths = {
        name: headed.text(row, name, needed=quantity(LENGTH) if name == "width" else "")
        for name in _STATED
    }
    return {
        "id": headed.text(row, "id", needed="the drop's mark, such as S1"),
        "roof": roof.id,
        # That it is not there was told; what else is wrong in the row is told too.
        "edge": headed.plain(row, "edge") or "-",
        "start": headed.text(row, "start", needed=quantity(LENGTH)),
        "name": headed.text(row, "name"),
        **{name: {"value": text, **told.data} for name, text in lengths.items() if text},
    }


def _judge_place(headed: Headed, row: Row, drop: Drop, edge: Edge, project: Project) -> None:
    """Tell where a drop begins before its edge, or ends beyond it."""
    length = edge_length(edge)
    expected = f"a drop within edge {edge.id}, which is"
    expected += f" {display(length, LENGTH, project.units)} long"
    if drop.start < 0.0:
        headed.tell(row, "start", "a drop that begins before its edge", expected)
    end = drop.start + drop.width.value
    if surely_above(end, limit=length):
        found = f"a drop that ends at {display(end, LENGTH, project.units)}"
        headed.tell(row, "width", found, expected)
