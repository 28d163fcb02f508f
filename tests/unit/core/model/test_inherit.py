from dataclasses import replace

from backspan.core.model.evidence import Evidence, StatedValue, Statement
from backspan.core.model.inherit import inherit, with_statements
from backspan.core.model.kit import Beam
from tests.unit.core.model.sample import DRAWN, project, stated


def test_a_value_without_evidence_takes_all_of_the_nearest_statement() -> None:
    beam = Beam("B1", "Beam", length=stated(6.0, text="20 ft"), values_from=DRAWN)
    assert with_statements(beam).length == StatedValue(
        6.0, evidence=Evidence.DRAWING, document="A-101", text="20 ft"
    )


def test_what_a_value_says_itself_stays() -> None:
    own = stated(6.0, at="2026-11-01", by="EK", document="Note 3")
    statement = Statement(Evidence.TOLD, by="RT", at="2026-11-02", document="A-101")
    filled = with_statements(Beam("B1", "Beam", length=own, values_from=statement)).length
    assert filled == replace(own, evidence=Evidence.TOLD)


def test_a_value_with_evidence_takes_no_paper() -> None:
    own = stated(6.0, evidence=Evidence.LABEL)
    beam = Beam("B1", "Beam", length=own, values_from=DRAWN)
    assert with_statements(beam) is beam


def test_a_value_with_evidence_takes_person_and_day() -> None:
    own = stated(6.0, evidence=Evidence.LABEL)
    statement = Statement(Evidence.TOLD, by="RT", at="2026-11-02", document="A-101")
    filled = with_statements(Beam("B1", "Beam", length=own, values_from=statement)).length
    assert filled == replace(own, by="RT", at="2026-11-02")


def test_an_inner_statement_takes_person_and_day_of_the_outer_one() -> None:
    sample = replace(project(), values_from=Statement(Evidence.TOLD, by="EK", at="2026-11-03"))
    (first, *_) = inherit(sample).site.roofs
    assert (first.level.evidence, first.level.by) == (Evidence.DRAWING, "EK")


def test_the_nearest_record_that_states_something_is_the_one() -> None:
    drop = inherit(project()).drops[1]
    assert drop.rig is not None
    beam = drop.rig.suspension_points[1].counterweighted_beam
    assert beam is not None
    assert beam.reach is not None
    assert beam.backspan is not None
    assert drop.width.evidence is Evidence.DRAWING
    assert beam.reach.evidence is Evidence.MEASURED
    assert (beam.reach.by, beam.reach.document) == ("MT", "Roof sheet 1")
    assert beam.backspan.evidence is Evidence.DRAWING
    assert (beam.backspan.by, beam.backspan.document) == ("MT", None)
    assert beam.stack.groups[1].count.evidence is Evidence.MEASURED


def test_an_inner_record_without_a_statement_takes_the_outer_one() -> None:
    sample = project()
    roof = inherit(sample).site.roofs[0]
    parapet = roof.edges[0].parapet
    assert parapet is not None
    assert parapet.height.evidence is Evidence.DRAWING
    assert roof.level.document == "A-101"


def test_where_nobody_states_anything_there_is_no_evidence() -> None:
    sample = inherit(project())
    assert sample.kit.stages[0].length.evidence is None
    assert sample.drops[0].width.evidence is None


def test_filling_twice_is_filling_once() -> None:
    once = inherit(project())
    assert inherit(once) is once
