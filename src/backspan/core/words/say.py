"""From a message with typed values to a sentence, in a language and a style of units."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from backspan.core.errors import BackspanError
from backspan.core.findings import Finding, Margin, Message, MessageValue, Verdict
from backspan.core.quantities import Amount, Dimension, Style, display, shared_unit
from backspan.core.words import english, mends, roof_questions

#: An answer is never told by colour alone: a word and a sign.
SIGNS: Mapping[Verdict, str] = {
    Verdict.PASS: "✓",
    Verdict.FAIL: "✗",
    Verdict.REFER: "→",
    Verdict.MISSING: "?",
}


#: How a sentence tells where in the project's file a value belongs.
_PLACE = " ({place})"


class WordsError(BackspanError, KeyError):
    """A message without a sentence, or a sentence without one of its values."""


def say(message: Message, style: Style, *, places: bool = True) -> str:
    """The sentence of a message; WordsError when it has none or lacks a value.

    Without `places` it does not tell where in the project's file a value belongs.
    """
    template = english.SENTENCES.get(message.id) or roof_questions.SENTENCES.get(message.id)
    if template is None:
        raise WordsError(f"message {message.id!r} has no sentence")
    if not places:
        template = template.replace(_PLACE, "")
    values = dict(message.values)
    units = shared_unit([one for one in values.values() if isinstance(one, Amount)], style)
    texts = {name: _worded(name, value, style, units) for name, value in values.items()}
    try:
        told = template.format(**texts)
    except KeyError as error:
        raise WordsError(f"message {message.id!r} lacks the value {error}") from error
    return told[:1].upper() + told[1:] if template.startswith("{input}:") else told


def say_margin(margin: Margin, style: Style) -> str:
    """A margin in words: what is left, or what is short."""
    pair = english.ONE_PIECE.get(margin.id) if margin.value == 1 else None
    pair = pair or english.MARGINS.get(margin.id)
    if pair is None:
        raise WordsError(f"margin {margin.id!r} has no words")
    text = pair[1] if margin.beyond else pair[0]
    return text.format(value=shown(margin.value, style))


def say_margins(margins: Sequence[Margin], style: Style) -> str:
    """All that is left or short, told as what it is: each by itself, all else as built."""
    if not margins:
        return ""
    told = english.ONE_CHANGE.format(margins="; ".join(say_margin(one, style) for one in margins))
    spare = any(one.id in english.ONE_PIECE and not one.beyond and one.value for one in margins)
    return f"{told} {english.STAY_ON}" if spare else told


def say_mend(finding: Finding, style: Style) -> str:
    """What mends a refused finding: one change of the rig, else what its message asks for."""
    changes = [
        mends.ONE_PIECE
        if one.id in english.ONE_PIECE and one.value == 1
        else mends.BY_MARGIN[one.id].format(value=shown(one.value, style))
        for one in finding.margins
        if one.beyond and one.id in mends.BY_MARGIN
    ]
    if changes:
        return mends.ONE_CHANGE.format(changes=mends.OR.join(changes))
    return mends.BY_MESSAGE.get(finding.message.id, mends.PUT_RIGHT)


def say_input(name: str) -> str:
    """The trade's words for an input; WordsError when there are none."""
    if name not in english.INPUTS:
        raise WordsError(f"input {name!r} has no words")
    return english.INPUTS[name]


def say_label(line: str) -> str:
    """The label of a number of an answer to a roof question; WordsError when it has none."""
    name = line.removesuffix(roof_questions.AT_MOST_STALL)
    if name not in roof_questions.LABELS:
        raise WordsError(f"line {line!r} has no label")
    label = roof_questions.LABELS[name]
    return label if name == line else f"{label} at that stall load"


def say_check(check: str) -> str:
    """The title of a check; WordsError when it has none."""
    if check not in english.CHECKS:
        raise WordsError(f"check {check!r} has no title")
    return english.CHECKS[check]


def say_verdict(verdict: Verdict) -> str:
    """Sign and word of an answer."""
    return f"{SIGNS[verdict]} {verdict}"


def shown(value: MessageValue, style: Style) -> str:
    """A typed value as text in the style asked for."""
    if isinstance(value, Amount):
        return display(value.value, value.dimension, style)
    if isinstance(value, tuple):
        return ", ".join(value)
    return str(value)


def _worded(name: str, value: MessageValue, style: Style, units: Mapping[Dimension, str]) -> str:
    """A value in words: names of inputs become the trade's words for them."""
    if isinstance(value, Amount) and value.dimension in units:
        return display(value.value, value.dimension, style, unit=units[value.dimension])
    if name == "input":
        return say_input(str(value))
    if name == "inputs" and isinstance(value, tuple):
        return "; ".join(say_input(one) for one in value)
    return shown(value, style)
