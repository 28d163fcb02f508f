"""The paper around a drawing: size, border, the column with title block, basis and caution."""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType

from backspan.core.findings import BasisLine, Review, Verdict
from backspan.core.model.basis import TOPICS
from backspan.core.model.project import Project
from backspan.core.quantities import Style
from backspan.core.words import ENGLISH, Language
from backspan.drawings.canvas import TEXT
from backspan.drawings.flow import HEADING, Flow
from backspan.drawings.geometry import Box, corners
from backspan.drawings.legend import legend, legend_height
from backspan.drawings.lettering import text_width
from backspan.drawings.scene import Layer, Line, Part, Polygon, Scale, Shape, SymbolName
from backspan.drawings.tables import GAP, ROW, SIGN_ROOM, Cell, Column, table

MARGIN = 8.0
COLUMN = 98.0
INNER = 3.0
HAIR = 0.1

#: Which text of drawings says what an answer means.
MEANS = MappingProxyType(
    {
        Verdict.PASS: "means_pass",
        Verdict.FAIL: "means_fail",
        Verdict.REFER: "means_refer",
        Verdict.MISSING: "means_missing",
    }
)


@dataclass(frozen=True, slots=True)
class SheetSize:
    """A sheet, landscape, in millimetres: ANSI B (ASME Y14.1) or A3 (ISO 216)."""

    width: float
    height: float
    name: str

    @property
    def drawing_area(self) -> Box:
        """The paper left for the drawing."""
        return (MARGIN, MARGIN, self.width - MARGIN - COLUMN, self.height - MARGIN)

    @property
    def column(self) -> Box:
        """The column at the right."""
        right = self.width - MARGIN
        return (right - COLUMN, MARGIN, right, self.height - MARGIN)


ANSI_B = SheetSize(431.8, 279.4, "11 x 17 in")
A3 = SheetSize(420.0, 297.0, "A3")


def sheet_size(units: Style) -> SheetSize:
    """The sheet of a project, by its units."""
    return A3 if units is Style.METRIC else ANSI_B


@dataclass(frozen=True, slots=True)
class SheetTable:
    """A table in the column; `shares` are the parts of its width, `more` where the rest is."""

    heading: str
    columns: tuple[str, ...]
    shares: tuple[float, ...]
    rows: tuple[tuple[Cell, ...], ...]
    more: str


@dataclass(frozen=True, slots=True)
class SheetContent:
    """What the column of a sheet says."""

    name: str
    number: str
    scale: Scale
    pairs: tuple[tuple[str, str], ...]
    legend: tuple[Layer | SymbolName, ...]
    basis: tuple[BasisLine, ...]
    verdict: Verdict | None = None
    counted: str = ""
    """What stands beside the answer: topics refused, open or taken over."""
    table: SheetTable | None = None
    notes: tuple[str, ...] = ()
    language: Language = ENGLISH


def basis_of(project: Project, reviews: tuple[Review, ...]) -> tuple[BasisLine, ...]:
    """The rule sets the reviews were made on; those of the project where there is no review."""
    lines: dict[tuple[str, str], BasisLine] = {}
    for review in reviews:
        for line in review.basis:
            lines.setdefault((line.rule_set, line.edition), line)
    if not lines:
        for topic in TOPICS:
            for choice in project.basis.of(topic):
                readings = tuple((one.value, one.reading) for one in choice.readings)
                line = BasisLine(topic, choice.rule_set, choice.edition, "", readings)
                lines.setdefault((choice.rule_set, choice.edition), line)
    return tuple(lines.values())


def sheet(
    project: Project, content: SheetContent, size: SheetSize
) -> tuple[tuple[Shape, ...], tuple[Part, ...]]:
    """The shapes of the sheet around a drawing, and its parts for a small screen."""
    left, bottom, right, top = size.column
    border = Polygon(
        Layer.SHEET, corners((MARGIN, MARGIN, size.width - MARGIN, size.height - MARGIN))
    )
    shapes: list[Shape] = [border, Line(Layer.SHEET, (left, bottom), (left, top))]
    tall = top - _title(project, content, size, top).y
    title_top = bottom + INNER + tall
    title = _title(project, content, size, title_top)
    upper = _upper(content, size, top - INNER, title_top)
    shapes += [*upper.shapes, Line(Layer.SHEET, (left, title_top), (right, title_top))]
    shapes += title.shapes
    parts = (
        Part("drawing-area", content.name, size.drawing_area),
        Part("title-block", content.language.drawn("title_block"), size.column),
    )
    return tuple(shapes), parts


def _flow(size: SheetSize, top: float, language: Language) -> Flow:
    left, _, right, _ = size.column
    return Flow(left=left + INNER, right=right - INNER, top=top, language=language)


def _title(project: Project, content: SheetContent, size: SheetSize, top: float) -> Flow:
    """The title block proper; its height depends on its texts only."""
    language = content.language
    flow = _flow(size, top, language)
    site = project.site
    not_stated = language.drawn("not_stated")
    flow.space(1.6)
    flow.paragraph(site.name, height=3.6, bold=True, most=2)
    flow.paragraph(site.place, most=2)
    if site.invented:
        said = site.invented.casefold().startswith(language.drawn("invented_begins"))
        words = site.invented if said else language.drawn("invented", words=site.invented)
        flow.paragraph(words, bold=True, most=3)
    flow.rule()
    flow.paragraph(content.name, height=3.6, bold=True, most=3)
    flow.space(1.0)
    if content.verdict is not None:
        flow.answer(content.verdict, content.counted or language.drawn(MEANS[content.verdict]))
    for label, value in content.pairs:
        flow.pair(label, value)
    scale = language.drawn("scale_on", scale=content.scale.text, sheet=size.name)
    flow.pair(language.drawn("scale"), scale)
    flow.pair(language.drawn("owner"), site.owner or not_stated)
    flow.pair(language.drawn("prepared_by"), _preparer(project, language))
    flow.pair(language.drawn("project_number"), project.number or not_stated)
    flow.pair(language.drawn("sheet"), content.number)
    return flow


def _preparer(project: Project, language: Language) -> str:
    for person in project.people:
        if person.id == project.prepared_by:
            return f"{person.name}, {language.word(person.role)}"
    return project.prepared_by or language.drawn("not_stated")


def _upper(content: SheetContent, size: SheetSize, top: float, floor: float) -> Flow:
    """Legend, answers, basis and caution; the table is cut where the column has no more room.

    Sooner than its answers a sheet gives up the titles of its rule sets, which every paper prints.
    """
    language = content.language
    flow = _flow(size, top, language)
    room = (top - floor) - _legend_height(content)
    rows = 0 if content.table is None else len(content.table.rows)
    titles = room + _lower(content, size, 0.0).y >= HEADING * 2.5 + (rows + 1) * ROW
    room_for_table = room + _lower(content, size, 0.0, titles=titles).y
    flow.heading(language.drawn("legend"))
    flow.shapes += legend(
        content.legend, left=flow.left, right=flow.right, top=flow.y, language=language
    )
    flow.space(legend_height(content.legend))
    _table(flow, content.table, room=room_for_table)
    flow.shapes += _lower(content, size, flow.y, titles=titles).shapes
    return flow


def _legend_height(content: SheetContent) -> float:
    return legend_height(content.legend) + HEADING * 1.65


def _lower(content: SheetContent, size: SheetSize, top: float, *, titles: bool = True) -> Flow:
    language = content.language
    flow = _flow(size, top, language)
    flow.rule()
    flow.heading(language.drawn("basis"))
    for line in content.basis[:5]:
        words = language.drawn("edition", rule_set=line.rule_set, edition=line.edition)
        flow.paragraph(f"{words}: {line.title}" if titles and line.title else words, most=2)
        for value, reading in line.readings[:2]:
            flow.paragraph(f"{value}: {reading}", indent=3.0, most=1)
    if len(content.basis) > 5:  # noqa: PLR2004 - what the column holds
        flow.paragraph(language.drawn("more_basis", count=str(len(content.basis) - 5)))
    flow.rule()
    flow.heading(language.drawn("caution_head"))
    flow.paragraph(language.drawn("caution"))
    notes = [language.drawn("brackets")]
    if Layer.NOT_KNOWN in content.legend:
        notes.append(language.drawn("dashed"))
    for note in (*notes, *content.notes):
        flow.paragraph(note, most=3)
    return flow


def _table(flow: Flow, content: SheetTable | None, *, room: float) -> None:
    """As many rows as there is room for, and how many are left out."""
    if content is None or not content.rows:
        return
    flow.rule()
    flow.heading(content.heading)
    columns = [
        Column(name, width, wraps=True)
        for name, width in zip(content.columns, _widths(flow, content), strict=True)
    ]
    shapes, height = table(
        columns,
        content.rows,
        left=flow.left,
        top=flow.y,
        room=room - HEADING * 2.5,
        more=content.more,
        language=flow.language,
    )
    flow.shapes += shapes
    flow.space(height)


def _widths(flow: Flow, content: SheetTable) -> list[float]:
    """The widths by their shares; a column whose heading or answers need more takes it."""
    widths = [share * flow.room for share in content.shares]
    least = [_least(flow.language, content, at) for at in range(len(widths))]
    lacking = sum(max(need - width, 0.0) for need, width in zip(least, widths, strict=True))
    spare = [max(width - need, 0.0) for need, width in zip(least, widths, strict=True)]
    if not lacking or not any(spare):
        return widths
    part = min(lacking / sum(spare), 1.0)
    return [
        max(width, need) - room * part
        for width, need, room in zip(widths, least, spare, strict=True)
    ]


def _least(language: Language, content: SheetTable, at: int) -> float:
    """The width a column needs so that neither its heading nor its answers are cut."""
    # Nothing stands right of the answers in the last column but the margin.
    beside = GAP if at < len(content.columns) - 1 else -HAIR
    return max(
        text_width(content.columns[at], height=TEXT, bold=True) + GAP,
        *(
            SIGN_ROOM + text_width(language.word(cell), height=TEXT, bold=True) + beside
            for cell in (row[at] for row in content.rows)
            if isinstance(cell, Verdict)
        ),
        0.0,
    )
