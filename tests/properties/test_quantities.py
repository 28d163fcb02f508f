"""What holds for every quantity, not only for the examples."""

import math
from fractions import Fraction

from hypothesis import example, given
from hypothesis import strategies as st

from backspan.core.numbers import (
    exact_sum,
    meets,
    significant,
    step_down,
    step_up,
    whole_down,
    whole_up,
)
from backspan.core.quantities import (
    CONDUCTOR_AREA,
    DIMENSIONS,
    LENGTH,
    Amount,
    Dimension,
    QuantityError,
    Style,
    display,
    display_round,
    parse,
    parse_exact,
)

INCH = Fraction("0.0254")
dimensions = st.sampled_from(DIMENSIONS)
styles = st.sampled_from(list(Style))
sixteenths = st.integers(min_value=-200_000, max_value=200_000)
sizes = st.floats(min_value=1e-4, max_value=1e8)
signed = st.builds(lambda size, sign: size * sign, sizes, st.sampled_from([1.0, -1.0]))
finite = st.floats(allow_nan=False, allow_infinity=False, min_value=-1e12, max_value=1e12)
# Characters of the trade's notation, so that random texts come close to sense.
notation = st.text(alphabet="0123456789'\"-/., ½¾inftmkNlbs%:#°²AWGe+", max_size=70)


def float_of_sixteenths(count: int) -> float:
    return float(Fraction(count, 16) * INCH)


def decimal_text(number: Fraction, places: int) -> str:
    scaled = number * 10**places
    assert scaled.denominator == 1
    digits = f"{abs(scaled.numerator):0{places + 1}d}"
    return f"{'-' if number < 0 else ''}{digits[:-places]}.{digits[-places:]}"


@given(sixteenths)
def test_sixteenths_come_back_as_the_same_float(count: int) -> None:
    value = float_of_sixteenths(count)
    assert parse(display(value, LENGTH, Style.US), LENGTH) == value


@given(sixteenths)
def test_canonical_feet_and_inches_come_back_as_the_same_text(count: int) -> None:
    feet, rest = divmod(abs(count), 192)
    whole, part = divmod(rest, 16)
    words = [str(whole)] if whole or feet or not part else []
    words += [str(Fraction(part, 16))] if part else []
    feet_text = f"{feet:,}'-" if feet else ""
    text = f'{"-" if count < 0 else ""}{feet_text}{" ".join(words)}"'
    assert display(parse(text, LENGTH), LENGTH, Style.US) == text


@given(sixteenths)
def test_equal_lengths_are_the_same_float_in_any_unit(count: int) -> None:
    inches = Fraction(count, 16)
    millimetres = inches * Fraction("25.4")
    texts = [
        decimal_text(inches, 4) + " in",
        decimal_text(millimetres, 5) + " mm",
        decimal_text(millimetres / 10, 6) + " cm",
        decimal_text(millimetres / 1000, 8) + " m",
    ]
    assert {parse(text, LENGTH) for text in texts} == {float_of_sixteenths(count)}


@given(signed, dimensions, styles)
def test_what_is_shown_is_read_back_to_the_digits_shown(
    value: float, dimension: Dimension, style: Style
) -> None:
    again = parse(display(value, dimension, style), dimension)
    assert math.isclose(again, value, rel_tol=5.1e-4 if abs(value) < 1 else 5.1e-5)


@example(0.0999999999, LENGTH, Style.METRIC)  # rounds into the next larger unit
@given(signed, dimensions, styles)
def test_showing_what_was_shown_keeps_it(value: float, dimension: Dimension, style: Style) -> None:
    shown = parse(display(value, dimension, style), dimension)
    assert parse(display(shown, dimension, style), dimension) == shown


@given(signed, dimensions, st.data())
def test_every_unit_is_read_back(value: float, dimension: Dimension, data: st.DataObject) -> None:
    unit = data.draw(st.sampled_from(dimension.units))
    shown = display(value, dimension, Style.US, unit=unit.label, digits=12)
    step = float(unit.factor) * 1e-9
    assert math.isclose(parse(shown, dimension), value, rel_tol=1e-11, abs_tol=step)


@given(signed, dimensions.filter(lambda dimension: dimension != CONDUCTOR_AREA), styles)
def test_a_negative_is_shown_as_the_positive_with_a_sign(
    value: float, dimension: Dimension, style: Style
) -> None:
    positive = display(abs(value), dimension, style)
    assert display(-abs(value), dimension, style) == f"-{positive}"


@given(signed, dimensions, styles)
def test_rounding_to_roof_units_keeps_to_its_side(
    value: float, dimension: Dimension, style: Style
) -> None:
    amount = Amount(value, dimension)
    down = parse(display_round(amount, style, direction="down"), dimension)
    up = parse(display_round(amount, style, direction="up"), dimension)
    slack = 1e-9 * max(1.0, abs(value))
    assert down <= value + slack
    assert up >= value - slack


@given(st.one_of(notation, st.text(max_size=70)), dimensions)
def test_any_text_is_read_or_refused_with_a_reason(text: str, dimension: Dimension) -> None:
    refused: QuantityError | None = None
    try:
        value = parse(text, dimension)
    except QuantityError as error:
        refused = error
    if refused is None:
        assert math.isfinite(value)
    else:
        assert refused.expected == dimension.forms
        assert f"{dimension.wanted} is wanted" in str(refused)


@given(notation, dimensions)
def test_a_sign_in_front_is_for_the_whole(text: str, dimension: Dimension) -> None:
    try:
        value = parse_exact(text, dimension)
    except QuantityError:
        return
    if text.strip()[0] not in "+-" and len(text) < 64:
        assert parse_exact("-" + text.strip(), dimension) == -value


@given(st.lists(finite))
def test_a_sum_is_the_exact_sum_rounded_once(values: list[float]) -> None:
    assert exact_sum(values) == float(sum(map(Fraction, values), Fraction(0)))


@given(finite)
def test_whole_numbers_stand_on_both_sides(x: float) -> None:
    slack = 1e-9 * max(1.0, abs(x)) * 1.000001
    assert whole_down(x) <= x + slack
    assert whole_up(x) >= x - slack
    assert 0 <= whole_up(x) - whole_down(x) <= 1


@given(st.floats(-1e6, 1e6), st.sampled_from([1 / 16, 0.01, 0.1, 1.0, 25.0]))
def test_steps_stand_on_both_sides(x: float, step: float) -> None:
    slack = 1e-9 * max(step, abs(x)) * 1.000001
    assert step_down(x, step=step) <= x + slack
    assert step_up(x, step=step) >= x - slack
    assert step_up(step_down(x, step=step), step=step) == step_down(x, step=step)


@given(finite, st.integers(min_value=1, max_value=17))
def test_significant_digits_are_stable(x: float, digits: int) -> None:
    once = significant(x, digits)
    assert significant(once, digits) == once
    assert math.isclose(once, x, rel_tol=0.51 * 10.0 ** (1 - digits))


@given(finite, finite)
def test_meets_is_decided_one_way_or_the_other(demand: float, capacity: float) -> None:
    assert meets(demand=demand, capacity=capacity) or meets(demand=capacity, capacity=demand)
    if capacity >= demand:
        assert meets(demand=demand, capacity=capacity)
