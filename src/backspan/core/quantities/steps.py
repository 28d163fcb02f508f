"""One step of what people read on a roof, in SI: a tape's sixteenth, a pound, a millimetre."""

from backspan.core.quantities.dimension import Dimension
from backspan.core.quantities.errors import QuantityError
from backspan.core.quantities.style import ROOF_STEPS, Style
from backspan.core.quantities.units import INCH

#: The little more length whose price is told: an inch, ten millimetres.
LITTLE_MORE_LENGTH = {Style.US: float(INCH), Style.METRIC: 0.01}
#: What is left of a length is told in steps that a tape shows at a glance (common practice, no
#: source).
TAPE_STEP = {Style.US: float(INCH) / 2, Style.METRIC: 0.01}
#: Prices in pieces are told to a tenth.
TENTH = 0.1


def roof_step(dimension: Dimension, style: Style) -> float:
    """The step of a dimension in SI, as margins are rounded to and limits are probed with.

    Raises QuantityError for a dimension nobody reads off in steps.
    """
    found = ROOF_STEPS[style].get(dimension)
    unit = None if found is None else dimension.unit(found[0])
    if found is None or unit is None:
        raise QuantityError(
            reason="has no step people read on a roof",
            found=dimension.name,
            expected=[one.name for one in ROOF_STEPS[style]],
        )
    return float(unit.factor) * found[1]
