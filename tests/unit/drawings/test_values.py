import pytest

from backspan.core.findings import Finding, Message, Verdict
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.quantities import LENGTH, MASS, Amount, Style
from backspan.drawings.values import (
    Known,
    evidence_text,
    force_text,
    known,
    known_length_text,
    length_text,
    mass_text,
    own_length,
    worked_out,
)


def found(*figures: tuple[str, Amount]) -> Finding:
    """A finding with these figures."""
    return Finding("any", "D1/P", (), Verdict.PASS, Message("any.pass"), figures=figures)


@pytest.mark.parametrize(
    ("value", "style", "text"),
    [
        (1.6764, Style.US, "5'-6\" [1,676 mm]"),
        (1.6764, Style.METRIC, "1,676.4 mm [5'-6\"]"),
        (0.2667, Style.US, '10 1/2" [267 mm]'),
        (45.1104, Style.US, "148'-0\" [45.11 m]"),
        (45.1104, Style.METRIC, "45.1104 m [148'-0\"]"),
        (2.0, Style.METRIC, "2,000 mm [6'-6 3/4\"]"),
        (0.0, Style.US, '0" [0 mm]'),
    ],
)
def test_lengths_stand_in_both_systems_the_own_first(value: float, style: Style, text: str) -> None:
    assert length_text(value, style) == text


def test_the_own_figure_is_not_rounded_where_it_is_no_sixteenth() -> None:
    assert own_length(2.0, Style.US) == "78.7402 in"


def test_what_was_worked_out_is_rounded_down_to_a_tape_s_step() -> None:
    assert known_length_text(Known(3.4, worked_out=True), Style.US) == "11'-1 13/16\" [3,400 mm]"
    assert known_length_text(Known(3.5052), Style.US) == "11'-6\" [3,505 mm]"


def test_loads_stand_in_both_systems() -> None:
    assert force_text(4448.2216152605, Style.US) == "1,000 lb [4.45 kN]"
    assert mass_text(25.0, Style.METRIC) == "25 kg [55.1 lb]"


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (Known(1.0, Evidence.MEASURED, 0.00635), 'measured ±1/4"'),
        (Known(1.0, Evidence.MEASURED, 0.0), "measured"),
        (Known(1.0, Evidence.DRAWING), "drawing"),
        (Known(1.0, Evidence.ASSUMED), "assumed, not measured"),
        (Known(1.0), "evidence not stated"),
        (Known(1.0, worked_out=True), "worked out, not measured"),
    ],
)
def test_a_value_says_what_stands_behind_it(value: Known, text: str) -> None:
    assert evidence_text(value, Style.US) == text


def test_a_value_not_stated_is_not_known() -> None:
    assert known(None) is None
    assert known(StatedValue(2.0, 0.1, Evidence.TOLD)) == Known(2.0, Evidence.TOLD, 0.1)


def test_a_backspan_comes_from_whatever_finding_worked_it_out() -> None:
    mass, length = ("backspan", Amount(3.0, MASS)), ("backspan", Amount(3.4, LENGTH))
    other = ("reach", Amount(1.0, LENGTH))
    assert worked_out((found(), found(mass, other)), "backspan") is None
    assert worked_out((found(), found(other, length)), "backspan") == Known(3.4, worked_out=True)
