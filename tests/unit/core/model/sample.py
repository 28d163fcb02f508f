"""A small project made without any file. Invented: no such building, people or equipment."""

from backspan.core.model.basis import Basis, Confirmation, RuleChoice
from backspan.core.model.evidence import Evidence, StatedValue, Statement
from backspan.core.model.kit import (
    Beam,
    BeamLabel,
    Hoist,
    Kit,
    Piece,
    PieceKind,
    Rope,
    RopeKind,
    Stage,
    Termination,
)
from backspan.core.model.people import Person
from backspan.core.model.project import Project
from backspan.core.model.rigs import (
    CounterweightedBeam,
    Drop,
    Fastening,
    Fulcrum,
    FulcrumKind,
    HungStage,
    Lifeline,
    PieceGroup,
    Rig,
    Stack,
    SuspensionPoint,
    Tieback,
)
from backspan.core.model.site import Anchor, AnchorUse, Edge, Obstacle, Parapet, Roof, Site

MEASURED = Statement(Evidence.MEASURED, by="RT", at="2026-11-24", document="Roof sheet 1")
DRAWN = Statement(Evidence.DRAWING, document="A-101")


def stated(value: float, **more: object) -> StatedValue[float]:
    """A value as a file states it."""
    return StatedValue(value, **more)  # type: ignore[arg-type]  # each test names real fields


def beam(reach: float) -> CounterweightedBeam:
    """A counterweighted beam with two groups of pieces."""
    return CounterweightedBeam(
        beam="B1",
        fulcrum=Fulcrum(FulcrumKind.STAND, setback=stated(0.35)),
        reach=stated(reach, tolerance=0.006, text="18 in"),
        backspan=stated(3.6576, evidence=Evidence.DRAWING, checked_by="EK"),
        stack=Stack(
            groups=(
                PieceGroup("P50", StatedValue(6)),
                PieceGroup("P25", StatedValue(4), per_row=2),
            ),
            tail_gap=stated(0.0762),
            fastening=StatedValue(Fastening.LOCKED_PIN),
        ),
    )


def rig() -> Rig:
    """Two suspension points, one stage, two lifelines, listed out of order."""
    return Rig(
        suspension_points=(
            SuspensionPoint(
                "R",
                station=9.0,
                hoist="H1",
                counterweighted_beam=beam(0.5),
                rope="W1",
                termination="E1",
            ),
            SuspensionPoint(
                "L",
                station=3.5,
                hoist="H2",
                counterweighted_beam=beam(0.4572),
                rope="W1",
                rope_length=stated(70.0),
                tiebacks=(Tieback("T2", "A2"), Tieback("T1", "A1", rope="W1")),
            ),
        ),
        stages=(HungStage("ST1", ("L", "R")),),
        lifelines=(
            Lifeline("LL2", "A2", worker="RT", station=6.0),
            Lifeline("LL1", "A10", rope="W2", worker="EK"),
        ),
        values_from=MEASURED,
    )


def kit() -> Kit:
    """Two hoists, two ropes, and one or two of everything else."""
    return Kit(
        hoists=(
            Hoist("H2", "Hoist two", stated(4448.2, evidence=Evidence.LABEL)),
            Hoist("H1", "Hoist one", stated(4448.2), values_from=Statement(Evidence.CERTIFICATE)),
        ),
        ropes=(
            Rope("W1", "Wire rope", RopeKind.WIRE, stated(0.008)),
            Rope("W2", "Lifeline rope", RopeKind.SYNTHETIC, stated(0.016)),
        ),
        terminations=(Termination("E1", "Thimble end"),),
        beams=(
            Beam(
                "B1",
                "Steel beam",
                length=stated(6.0),
                label=BeamLabel(most_pieces=StatedValue(20)),
            ),
        ),
        pieces=(
            Piece("P50", "Plate", PieceKind.STEEL_PLATE, stated(22.7)),
            Piece("P25", "Half plate", PieceKind.STEEL_PLATE, stated(11.3)),
        ),
        stages=(Stage("ST1", "Stage", stated(7.3)),),
    )


def roof() -> Roof:
    """One roof with two edges, an obstacle and three anchors."""
    return Roof(
        "R1",
        "Main roof",
        stated(64.0),
        outline=((0.0, 0.0), (30.0, 0.0), (30.0, 20.0), (0.0, 20.0)),
        edges=(
            Edge("S", (0.0, 0.0), (30.0, 0.0), Parapet(stated(0.8), stated(0.3)), faces="South"),
            Edge("E", (30.0, 0.0), (30.0, 20.0)),
        ),
        obstacles=(Obstacle("O1", "Fan", ((5.0, 5.0), (6.0, 5.0), (6.0, 6.0))),),
        anchors=(
            Anchor("A10", (12.0, 9.0), "cast-in", (AnchorUse.FALL_ARREST, AnchorUse.TIEBACK)),
            Anchor("A2", (9.0, 9.0), "cast-in", certified="2026-05-01"),
            Anchor("A1", (6.0, 9.0), "cast-in", rating=stated(22000.0), inspected="2026-05-04"),
        ),
        values_from=DRAWN,
    )


def project() -> Project:
    """The whole project; its first drop in the file, D10, has no rig."""
    return Project(
        format=1,
        site=Site("Example Tower", "Nowhere", (roof(),), invented="An invented site for tests."),
        basis=Basis((RuleChoice("us-osha-1926-subpart-l", "1996"),)),
        kit=kit(),
        drops=(
            Drop("D10", "R1", "S", 12.0, stated(8.0), name="Tenth"),
            Drop("D2", "R1", "S", 2.0, stated(8.0), rig=rig(), values_from=DRAWN),
        ),
        people=(
            Person("RT", "R. Tern", "competent person"),
            Person("EK", "E. Kestrel", "engineer", card="C-7"),
        ),
        confirmations=(
            Confirmation("text", "1996", "tipping.rated-load", "EK", "2026-11-01", "office copy"),
        ),
        prepared_by="EK",
    )
