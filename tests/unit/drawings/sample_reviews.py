"""Invented reviews of the invented site, so that the drawings are tested without the checks."""

from __future__ import annotations

from backspan.core.findings import (
    BasisLine,
    Envelope,
    EnvelopePoint,
    Finding,
    Message,
    Review,
    Verdict,
)
from backspan.core.quantities import LENGTH, MASS, Amount, Style, parse
from backspan.core.rules.selected import SelectedValue
from backspan.core.rules.shape import BeamWeight, FactorOnLoad, LoadBasis, Mark, Provenance
from tests.unit.core.rigs import ON
from tests.unit.drawings.sample import metres

#: The backspan of the second point of N-02, as a review works it out from beam and stack.
WORKED_OUT = metres("13'-3\"")


def rule() -> SelectedValue:
    """A rule value for an envelope."""
    return SelectedValue(
        "us-osha-1926-subpart-l",
        "1996",
        "29 CFR 1926 Subpart L, Scaffolds",
        "tipping.rated-load",
        "plain",
        1,
        "Four times the tipping moment at the rated load of the hoist.",
        FactorOnLoad(4.0, LoadBasis.HOIST_RATED, BeamWeight.NO_CREDIT),
        Provenance("1926.451(a)(2)", Mark.READ, "quoted text"),
        None,
    )


def finding(
    drop_id: str, point_id: str, verdict: Verdict, backspan: float | None = None
) -> Finding:
    """A tipping finding on one point."""
    figures = () if backspan is None else (("backspan", Amount(backspan, LENGTH)),)
    return Finding(
        "tipping",
        f"{drop_id}/{point_id}",
        ("drops", drop_id, "rig", "suspension_points", point_id, "counterweighted_beam"),
        verdict,
        Message("rig.none"),
        figures=figures,
    )


def review_of(drop_id: str, verdict: Verdict, findings: tuple[Finding, ...] = ()) -> Review:
    """A review with its findings."""
    basis = BasisLine(
        "tipping", "us-osha-1926-subpart-l", "1996", "29 CFR 1926 Subpart L, Scaffolds", ()
    )
    return Review(
        1,
        "0.1.0",
        "Quince Court",
        drop_id,
        "7K3M-9QXT-B",
        ON,
        Style.US,
        verdict,
        (basis,),
        findings,
        (),
        0 if findings else None,
    )


def reviews() -> dict[str, Review]:
    """Reviews of four of the five drops, one with each answer."""
    return {
        "N-01": review_of(
            "N-01",
            Verdict.PASS,
            (finding("N-01", "SP1", Verdict.PASS), finding("N-01", "SP2", Verdict.PASS)),
        ),
        "N-02": review_of(
            "N-02",
            Verdict.FAIL,
            (
                finding("N-02", "SP1", Verdict.FAIL),
                finding("N-02", "SP2", Verdict.PASS, WORKED_OUT),
            ),
        ),
        "N-03": review_of("N-03", Verdict.MISSING, (finding("N-03", "SP1", Verdict.MISSING),)),
        "W-01": review_of(
            "W-01",
            Verdict.REFER,
            (finding("W-01", "SP1", Verdict.REFER), finding("W-01", "SP2", Verdict.REFER)),
        ),
    }


def envelope() -> Envelope:
    """An operating envelope with a straight line."""
    points = tuple(
        EnvelopePoint(Amount(back * 0.3048, LENGTH), Amount(back * 880 / 4000 * 0.3048, LENGTH))
        for back in (0.0, 3.0, 6.0, 9.0, 12.0, 15.0, 18.0)
    )
    return Envelope(
        "N-01/SP1",
        rule(),
        16,
        Amount(parse("880 lb", MASS), MASS),
        points,
        Amount(metres("10 ft"), LENGTH),
        Amount(metres("2 ft"), LENGTH),
    )
