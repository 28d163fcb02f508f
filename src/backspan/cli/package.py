"""The set of papers, drawings and data of a review, written drop by drop as each is reviewed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import TYPE_CHECKING

from backspan.cli.progress import Progress
from backspan.core.findings import Review
from backspan.core.model.project import Project
from backspan.core.review.asked import Asked
from backspan.core.review.plain import Data
from backspan.core.words import ENGLISH, Language

if TYPE_CHECKING:
    from backspan.drawings import Scene
    from backspan.exchange.output_set import OutputSet
    from backspan.papers import Typesetter


@dataclass(slots=True)
class Package:
    """What is written of a project's reviews into one set; of each review little is kept."""

    project: Project
    into: OutputSet
    typesetter: Typesetter
    asked: Asked
    """What is added to the two pages of each drop."""
    language: Language = ENGLISH
    progress: Progress = field(default_factory=Progress)
    papers: dict[str, str] = field(default_factory=dict)
    """The paper of each drop, by the drop's id."""
    _reactions: list[Data] = field(default_factory=list)
    """What the sheet for the structural engineer needs of each review."""
    _for_plans: dict[str, Review] = field(default_factory=dict)
    _in_work: str | None = None
    """The drop whose paper is being set."""

    def add(self, review: Review, document: Data) -> None:
        """Write the paper, the section and the envelopes of one drop.

        Raises FileError where a file cannot be written.
        """
        from backspan.drawings import (
            drop_details,
            drop_section,
            envelope_picture,
            plan_figure,
            section_figure,
            to_svg,
        )
        from backspan.papers import DropDrawings, drop_content

        drop, told = review.drop, self.language
        self.progress.doing(f"writing drop {drop}")
        section = drop_section(self.project, drop, review, language=told)
        details = drop_details(self.project, drop, review, language=told)
        drawn, detailed = to_svg(section), to_svg(details)
        envelopes = {
            one.subject: to_svg(envelope_picture(one, review.units, language=told))
            for one in review.envelopes
        }
        drawings = DropDrawings(
            section=to_svg(section_figure(self.project, drop, review, language=told)),
            plan=to_svg(plan_figure(self.project, drop, review, language=told)),
            sheet=drawn,
            details=detailed,
            envelopes=tuple(envelopes.values()),
        )
        content = drop_content(self.project, document, drawings, self.asked, self.language)
        self._take_paper()
        self.typesetter.begin(content, issued=review.on)
        self._in_work = drop
        self._add_drawing(f"section-{drop}", section, drawn)
        self._add_drawing(f"details-{drop}", details, detailed)
        for subject, svg in envelopes.items():
            name = f"envelope-{subject.replace('/', '-')}"
            self.into.write(name, "svg", svg.encode("utf-8"))
        self._reactions.append(
            {
                name: document[name]
                for name in ("drop", "configuration", "on", "program", "reactions")
            }
        )
        self._for_plans[drop] = _in_short(review)

    def finish(self, fronts: Sequence[Data], report: str) -> Path:
        """Write what stands before all drops and put the set in force; where it is.

        `fronts` are the `front_data` of all that were added, `report` the text of all their data.
        Raises FileError where a file cannot be written: then the set before stays in force.
        """
        from backspan.papers import package_content, paper_pdf, reactions_content

        self.progress.doing("writing the package")
        self._take_paper()
        issued = next(iter(self._for_plans.values())).on
        # Set beside the drawing of the plans and the setting of the package.
        pressed = reactions_content(
            self.project, self._reactions, self.language, plans=self._reaction_plans()
        )
        self.typesetter.begin(pressed, issued=issued)
        plans = [
            self._plan(roof.id) for roof in self.project.site.roofs if self._has_drops(roof.id)
        ]
        self._add_elevations()
        # The paper of a single drop has its own piece of the plan.
        shown = plans if len(fronts) > 1 else []
        self.into.write("review", "json", report.encode("utf-8"))
        content = package_content(self.project, fronts, shown, self.papers, self.language)
        self.into.write("package", "pdf", paper_pdf(content, issued=issued))
        self.into.write("reactions", "pdf", self.typesetter.take())
        return self.into.finish(issued.isoformat(), lambda name: self._index(name, fronts))

    def _take_paper(self) -> None:
        """Write the paper that was begun, if any."""
        if self._in_work is not None:
            drop, self._in_work = self._in_work, None
            self.papers[drop] = self.into.write(f"drop-{drop}", "pdf", self.typesetter.take())

    def _has_drops(self, roof: str) -> bool:
        return any(one.roof == roof and one.id in self._for_plans for one in self.project.drops)

    def _plan(self, roof: str) -> str:
        from backspan.drawings import roof_plan, to_svg

        scene = roof_plan(self.project, self._for_plans, roof, language=self.language)
        drawn = to_svg(scene)
        self._add_drawing(f"roof-{roof}", scene, drawn)
        return drawn

    def _add_elevations(self) -> None:
        """Write the facade under each edge that a drop of the set hangs from."""
        from backspan.drawings import elevation, to_svg

        hung = [one for one in self.project.drops if one.id in self._for_plans]
        for roof, edge in dict.fromkeys((one.roof, one.edge) for one in hung):
            scene = elevation(self.project, roof, edge, self._for_plans, language=self.language)
            stem = f"elevation-{roof}-{edge}".replace("/", "-")
            self._add_drawing(stem, scene, to_svg(scene))

    def _reaction_plans(self) -> list[str]:
        """Each roof that a beam stands on, in plan with what its stands press."""
        from backspan.drawings import reactions_plan, to_svg

        roofs = {one.id: one.roof for one in self.project.drops}
        made = [one for drop in self._reactions for one in drop["reactions"]]
        loaded = {roofs[one["drop"]] for one in self._reactions if one["reactions"]}
        return [
            to_svg(
                reactions_plan(self.project, self._for_plans, made, roof.id, language=self.language)
            )
            for roof in self.project.site.roofs
            if roof.id in loaded
        ]

    def _add_drawing(self, stem: str, scene: Scene, svg: str) -> None:
        from backspan.drawings import to_dxf

        self.into.write(stem, "svg", svg.encode("utf-8"))
        self.into.write(stem, "dxf", to_dxf(scene))

    def _index(self, name: str, fronts: Sequence[Data]) -> str:
        """What a person reads who opens the folder: answers and papers, then every file's sum."""
        site, first, words = self.project.site, fronts[0], self.language.paper
        lines = [
            words["begin_with"].format(file=f"{name}/package.pdf"),
            "",
            f"{site.name}, {site.place}",
            *((site.invented,) if site.invented else ()),
            f"{words['reviewed_on']} {first['on']}; {first['program']}",
            "",
            *(
                f"{one['drop']}: {one['answer']}; {words['configuration_is']}"
                f" {one['configuration']}; {self.papers[one['drop']]}"
                for one in fronts
            ),
            "",
            *self.language.cautions,
            "",
            words["files"],
            *(f"{total}  {file}" for file, total in sorted(self.into.sums.items())),
        ]
        return "\n".join(lines) + "\n"


def _in_short(review: Review) -> Review:
    """What a roof plan draws of a review: the answers, not how they were worked out."""
    findings = tuple(
        replace(one, inputs=(), steps=(), rules=(), notes=(), margins=(), needs=())
        for one in review.findings
    )
    return replace(review, findings=findings, not_applicable=(), comparison=(), envelopes=())
