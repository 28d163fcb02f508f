"""The folder of a review: package, drawings and data, all made before anything is written."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

from backspan.cli.progress import Progress
from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.review.plain import Data
from backspan.core.review.report import report_text

if TYPE_CHECKING:
    from backspan.drawings import Scene
    from backspan.exchange.files import OutputFolder


@dataclass(slots=True)
class Files:
    """File contents by name; no name is used twice, in large or small letters."""

    contents: dict[str, bytes] = field(default_factory=dict)

    def add(self, stem: str, ending: str, content: bytes) -> None:
        """Keep `content` under stem and ending, with a number where the name is taken."""
        taken = {name.casefold() for name in self.contents}
        name, number = f"{stem}.{ending}", 2
        while name.casefold() in taken:
            name, number = f"{stem}-{number}.{ending}", number + 1
        self.contents[name] = content


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing and its SVG text."""

    scene: Scene
    svg: str


def _drawn(scene: Scene) -> Drawn:
    from backspan.drawings import to_svg

    return Drawn(scene, to_svg(scene))


@dataclass(frozen=True, slots=True)
class Package:
    """What is written of some reviews of a project, and of the document they make."""

    project: Project
    reviews: Sequence[Review]
    document: Data
    progress: Progress

    def write(self, folder: OutputFolder) -> tuple[Path, ...]:
        """Make every file, then write them; the paths, the package first.

        Raises FileError where one cannot be written. What was there under another name stays.
        """
        contents = self.files()
        self.progress.doing(f"writing {len(contents)} files")
        return tuple(folder.write_bytes(name, content) for name, content in contents.items())

    def files(self) -> dict[str, bytes]:
        """The content of every file by its name."""
        from backspan.papers import Drawings, package_content, package_pdf

        self.progress.doing("drawing")
        plans = {roof: _drawn(scene) for roof, scene in self._plans()}
        sections = {drop: _drawn(scene) for drop, scene in self._sections()}
        envelopes = dict(self._envelopes())
        drawings = Drawings(
            plans=tuple(one.svg for one in plans.values()),
            sections={drop: one.svg for drop, one in sections.items()},
            envelopes={drop: tuple(of_drop.values()) for drop, of_drop in envelopes.items()},
        )
        self.progress.doing("setting the package")
        content = package_content(self.project, self.document["reviews"], drawings)
        files = Files()
        if self.reviews:
            files.add("package", "pdf", package_pdf(content, issued=self.reviews[0].on))
        files.add("review", "json", report_text(self.document).encode("utf-8"))
        for roof, drawn in plans.items():
            self._add(files, f"roof-{roof}", drawn)
        for drop, drawn in sections.items():
            self._add(files, f"section-{drop}", drawn)
        for of_drop in envelopes.values():
            for subject, svg in of_drop.items():
                files.add(f"envelope-{subject.replace('/', '-')}", "svg", svg.encode("utf-8"))
        return files.contents

    def _add(self, files: Files, stem: str, drawn: Drawn) -> None:
        from backspan.drawings import to_dxf

        self.progress.doing(f"drawing {stem} for CAD")
        files.add(stem, "svg", drawn.svg.encode("utf-8"))
        files.add(stem, "dxf", to_dxf(drawn.scene))

    def _plans(self) -> Iterator[tuple[str, Scene]]:
        from backspan.drawings import roof_plan

        by_drop = {review.drop: review for review in self.reviews}
        with_drops = {drop.roof for drop in self.project.drops if drop.id in by_drop}
        for roof in self.project.site.roofs:
            if roof.id in with_drops:
                yield roof.id, roof_plan(self.project, by_drop, roof.id)

    def _sections(self) -> Iterator[tuple[str, Scene]]:
        from backspan.drawings import drop_section

        for review in self.reviews:
            yield review.drop, drop_section(self.project, review.drop, review)

    def _envelopes(self) -> Iterator[tuple[str, dict[str, str]]]:
        from backspan.drawings import envelope_picture, to_svg

        for review in self.reviews:
            yield (
                review.drop,
                {
                    envelope.subject: to_svg(envelope_picture(envelope, review.units))
                    for envelope in review.envelopes
                },
            )
