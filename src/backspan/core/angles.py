"""Angles in plan from + - * / and roots alone: the same bits on every platform; NaN is carried.

Both series end where their next term is below the last bit of a float: the sine is asked within a
quarter turn, the arctangent below the tangent of an eleventh of a right angle.
"""

from __future__ import annotations

import math

from backspan.core.numbers import root

#: Half a turn and a quarter of one, in radians.
HALF_TURN = 3.141592653589793
RIGHT_ANGLE = HALF_TURN / 2
_TERMS = 14


def sine(angle: float) -> float:
    """Sine of an angle of at most a few turns."""
    if math.isnan(angle):
        return angle
    within = turned_within(angle)
    if within > RIGHT_ANGLE:
        within = HALF_TURN - within
    elif within < -RIGHT_ANGLE:
        within = -HALF_TURN - within
    term, found = within, 0.0
    for place in range(_TERMS):
        found += term
        term = -term * within * within / ((2 * place + 2) * (2 * place + 3))
    return found


def cosine(angle: float) -> float:
    """Cosine of an angle of at most a few turns."""
    return sine(RIGHT_ANGLE - angle)


def direction(*, across: float, along: float) -> float:
    """The angle whose tangent is across over along, from -pi to pi; NaN for 0, 0."""
    if math.isnan(across) or math.isnan(along) or (across == 0.0 and along == 0.0):
        return math.nan
    far = abs(across) > abs(along)
    angle = _arctangent(along / across if far else across / along)
    if far:
        return (RIGHT_ANGLE if across > 0.0 else -RIGHT_ANGLE) - angle
    if along < 0.0:
        angle += HALF_TURN if across >= 0.0 else -HALF_TURN
    return angle


def turned_within(angle: float) -> float:
    """The same direction between minus half a turn and half a turn."""
    if math.isnan(angle):
        return angle
    turns = math.floor((angle + HALF_TURN) / (2 * HALF_TURN))
    return angle - turns * 2 * HALF_TURN


def _arctangent(x: float) -> float:
    for _ in range(2):  # each step halves the angle
        x = x / (1.0 + root(1.0 + x * x))
    power, found = x, 0.0
    for place in range(_TERMS):
        found += power / (2 * place + 1)
        power = -power * x * x
    return 4.0 * found
