"""What answers say, in English, by id; sentences of findings come from core/words."""

from __future__ import annotations

import re

from backspan.core.findings import Message
from backspan.core.quantities import Style
from backspan.core.words import WordsError, say, say_input, shown

_ONE_PIECE = re.compile(r"(?<![\d,.])1 pieces")

SENTENCES: dict[str, str] = {
    "ask.not-known": "Under {rule_set} this cannot be worked out from what is given.",
    "ask.no-number": "{rule_set} gives no factor that could be worked out here.",
    "counterweight.needed": (
        "{pieces} pieces of {piece} on this beam: {required} needed ({factor} x {load})."
    ),
    "counterweight.open": (
        "{pieces} pieces by the rated load alone; {most_pieces} if the hoist stalls at the most"
        " allowed, {stall}."
    ),
    "counterweight.at-least": (
        "At least {pieces} pieces of {piece}, by what is known ({factor} x {load})."
    ),
    "reach.most": "Out to {reach} ({factor} x {load}).",
    "reach.open": (
        "Out to {reach} by the rated load alone; {least_reach} if the hoist stalls at the most"
        " allowed, {stall}."
    ),
    "reach.none": "Not held at any reach ({factor} x {load}).",
    "reach.any": "Held at any reach that was tried: look at the numbers again.",
    "backspan.least": "At least {backspan} of backspan ({factor} x {load}).",
    "backspan.open": (
        "At least {backspan} by the rated load alone; {most_backspan} if the hoist stalls at the"
        " most allowed, {stall}."
    ),
    "backspan.none": "Not held at any backspan that was tried ({factor} x {load}).",
    "hoist.most": "Hoists rated up to {rated} ({factor} x {load}).",
    "hoist.open": (
        "Hoists rated up to {rated} by the rated load alone; {least_rated} if they stall at the"
        " most allowed, {stall_ratio} x rated."
    ),
    "hoist.none": "No hoist is held ({factor} x {load}).",
    "hoist.any": "Held for any hoist that was tried: look at the numbers again.",
    "stack.fits": "{pieces} pieces fit: they take {length} of the {inboard} inboard.",
    "stack.needed": "{pieces} pieces of {piece}, with the true middle of the stack.",
    "stack.open": (
        "{pieces} pieces by the rated load alone; {most_pieces} if the hoist stalls at the most"
        " allowed, {stall}."
    ),
    "stack.open-too-short": (
        "{pieces} pieces by the rated load alone; beam too short if the hoist stalls at the most"
        " allowed, {stall}."
    ),
    "stack.too-short": (
        "Beam too short: the {most} pieces that fit hold {held}; {required} is required."
    ),
    "moment": "{load} at {reach} turns with {moment}.",
    "stall.cap": "A hoist rated {rated} may stall at {cap} at most.",
    "stall.no-cap": "{rule_set} sets no cap on the stall load.",
    "compare.range": "From {least} to {most} pieces, by the rule that applies.",
    "compare.none": "No rule set gives a number with what is given.",
    # what is still needed
    "ask.need": "{input}, as {parameter}=...",
    # notes
    "note.asker-vouches": (
        "Nothing was measured here: whoever asks vouches for the values. A review judges evidence."
    ),
    "note.one-beam": "Each beam by itself; a two-point stage has two.",
    "note.label": "The label of the beam sets the most pieces: no readable label, no use.",
    "note.moment-practice": "Common practice, no source: before any factor.",
    "note.rounded-down": "Rounded down to the last step that holds.",
    "note.rounded-up": "Rounded up to the first step that holds.",
    "note.stall-ratio": "The stall load is taken as {stall_ratio} x the rated load.",
    "note.by-what-is-known": "By what is known: what is still needed can change the number.",
    "note.shift": (
        "The pieces stay where they are: the reach grows and the backspan shrinks by the shift."
    ),
}

#: Said wherever an answer is shown.
CAUTIONS: tuple[str, ...] = (
    "This supports the judgement of a qualified or licensed person; it does not replace it.",
    "Local codes, the maker's manual and the project's own engineer come first.",
    "It answers one question about one beam; it does not review the rig.",
    "Stop, and have the rig reviewed, if anything on the roof differs from what was given.",
)

LABELS: dict[str, str] = {
    "required": "counterweight needed",
    "pieces-needed": "pieces needed",
    "pieces": "pieces given",
    "counterweight": "counterweight given",
    "factor-reached": "factor reached",
    "governing": "governing",
    "most-stall": "most stall load allowed",
    "stall-governs-above": "stall load governs above",
    "required-at-most-stall": "counterweight needed at that stall load",
    "pieces-at-most-stall": "pieces needed at that stall load",
    "most-reach": "most reach",
    "most-reach-at-most-stall": "most reach at that stall load",
    "least-backspan": "least backspan",
    "least-backspan-at-most-stall": "least backspan at that stall load",
    "most-rated": "most rated load",
    "most-rated-at-most-stall": "most rated load at that stall ratio",
    "most-stall-ratio": "most stall ratio allowed",
    "inboard": "beam inboard of the fulcrum",
    "stack-length": "length the stack takes",
    "stack-centroid": "middle of the stack from the tail end",
    "backspan": "backspan",
    "reach": "reach",
    "backspan-after": "backspan after",
    "reach-after": "reach after",
    "factor-before": "factor reached before",
    "factor-after": "factor reached after",
    "most-that-fit": "most pieces that fit",
    "moment": "tipping moment before any factor",
    "stall-ratio": "stall load over rated load",
    "room-left": "room left on the beam",
}


def say_answer(message: Message, style: Style) -> str:
    """The sentence of an answer or a finding. Raises WordsError where there is none."""
    template = SENTENCES.get(message.id)
    if template is None:
        return say(message, style)
    texts = {
        name: say_input(str(value)) if name == "input" else shown(value, style)
        for name, value in message.values
    }
    try:
        return _ONE_PIECE.sub("1 piece", template.format(**texts))
    except KeyError as error:
        raise WordsError(f"message {message.id!r} lacks the value {error}") from error


def say_label(line: str) -> str:
    """The label of a number of an answer. Raises WordsError where there is none."""
    if line not in LABELS:
        raise WordsError(f"line {line!r} has no label")
    return LABELS[line]
