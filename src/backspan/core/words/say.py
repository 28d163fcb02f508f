"""From a message with typed values to a sentence, in a language and a style of units."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from enum import StrEnum

from backspan.core.findings import Decider, Finding, Margin, Message, MessageValue, Verdict
from backspan.core.quantities import Amount, Dimension, Style, display, shared_unit
from backspan.core.words.language import ENGLISH, Language, WordsError
from backspan.core.words.plates import MARGINS_ON_A_PLATE, ON_A_PLATE, load, most_load
from backspan.core.words.roof_questions import AT_MOST_STALL
from backspan.core.words.seen_from import LOOKS
from backspan.core.words.tape import on_a_tape

#: An answer is never told by colour alone: a word and a sign.
SIGNS: Mapping[Verdict, str] = {
    Verdict.PASS: "✓",
    Verdict.FAIL: "✗",
    Verdict.REFER: "→",
    Verdict.MISSING: "?",
}

#: How a sentence tells where in the project's file a value belongs.
_PLACE = " ({place})"

#: The values of a message that are words of the model. In all others stand names that people gave
#: to their things, which are never put into other words, even where they read like one.
WORD_VALUES = frozenset(
    {
        *("accepted", "evidence", "found", "kind", "listed", "load", "planned", "role"),
        *("title", "use", "uses", "verdict", "who"),
    }
)
#: The ratios of a message that people tell in percent.
IN_PERCENT = frozenset({"lost", "most_lost"})
#: The inputs of a finding that hold words of the model, and no names.
WORD_INPUTS = frozenset(
    {
        *("anchor_standing", "anchor_uses", "condition", "fastening", "fulcrum", "label_state"),
        *("plate_state", "test_found"),
        *("lifeline", "lifelines", "piece_kind", "power", "rescue", "rope_ends"),
        *("support", "tieback", "attached", "ends_on", "taut", "route", "thimble", "end_stop"),
        *("tested_by", "secondary_brake", "control", "joints", "fixed", "guardrail", "toeboard"),
        *(
            "face_side",
            "high_rail",
            "along",
            "sway",
            "first_lift",
            "hot_work",
            "deck",
            "running",
            "bow",
            "drives",
            "overhead",
            "listed",
        ),
        *("web", "stop_bolts", "square", "shackle", "beam_level", "beam_bow", "restrained"),
        *("channels", "joined", "joint_there", "pins", "order", "marks"),
        *("grab", "grab_height", "splices", "tied_to", "rope_kind", "swing", "harness"),
        *("hooks", "low_end", "upright", "holes"),
        *("takes_rope", "connector", "pin", "saddle", "tightened", "damage"),
        *("termination_kind", "termination_maker"),
        *("line_softener", "tieback_softener", "lifeline_softener"),
    }
)
#: What stands where a name would, if there is none.
NO_NAME = frozenset({"none", "not stated"})


def say(
    message: Message, style: Style, *, places: bool = True, language: Language = ENGLISH
) -> str:
    """The sentence of a message; WordsError when it has none or lacks a value.

    Without `places` it does not tell where in the project's file a value belongs.
    """
    template = language.sentences.get(message.id)
    if template is None:
        raise WordsError(f"message {message.id!r} has no sentence")
    if not places:
        template = template.replace(_PLACE, "")
    values = on_a_tape(dict(message.values), style)
    units = shared_unit([one for one in values.values() if isinstance(one, Amount)], style)
    texts = {name: _worded(name, value, style, units, language) for name, value in values.items()}
    try:
        told = template.format(**texts)
    except KeyError as error:
        raise WordsError(f"message {message.id!r} lacks the value {error}") from error
    told = told[:1].upper() + told[1:] if template.startswith("{input}:") else told
    return told + _from_where(message, language)


def say_margin(margin: Margin, style: Style, *, language: Language = ENGLISH) -> str:
    """A margin in words: what is left, or what is short."""
    pair = language.one_piece.get(margin.id) if margin.value == 1 else None
    pair = pair or language.margins.get(margin.id)
    if pair is None:
        raise WordsError(f"margin {margin.id!r} has no words")
    text = pair[1] if margin.beyond else pair[0]
    return text.format(value=_left(margin, style, language))


def say_margins(margins: Sequence[Margin], style: Style, *, language: Language = ENGLISH) -> str:
    """All that is left or short, told as what it is: each by itself, all else as built."""
    if not margins:
        return ""
    each = "; ".join(say_margin(one, style, language=language) for one in margins)
    told = language.one_change.format(margins=each)
    spare = any(one.id in language.one_piece and not one.beyond and one.value for one in margins)
    return f"{told} {language.stay_on}" if spare else told


def say_mend(finding: Finding, style: Style, *, language: Language = ENGLISH) -> str:
    """What mends a refused finding: one change of the rig, else what its message asks for."""
    changes = [
        language.phrase("mend-one-piece")
        if one.id in language.one_piece and one.value == 1
        else language.mends_by_margin[one.id].format(value=_left(one, style, language))
        for one in finding.margins
        if one.beyond and one.id in language.mends_by_margin
    ]
    if changes:
        return language.phrase("mend", changes=language.phrase("mend-or").join(changes))
    return language.mends_by_message.get(finding.message.id) or language.phrase("put-right")


def say_input(name: str, *, language: Language = ENGLISH) -> str:
    """The trade's words for an input; WordsError when there are none."""
    if name not in language.inputs:
        raise WordsError(f"input {name!r} has no words")
    return language.inputs[name]


def say_label(line: str, *, language: Language = ENGLISH) -> str:
    """The label of a number of an answer to a roof question; WordsError when it has none."""
    name = line.removesuffix(AT_MOST_STALL)
    if name not in language.labels:
        raise WordsError(f"line {line!r} has no label")
    label = language.labels[name]
    return label if name == line else language.phrase("label-at-most-stall", label=label)


def say_check(check: str, *, language: Language = ENGLISH) -> str:
    """The title of a check; WordsError when it has none."""
    if check not in language.checks:
        raise WordsError(f"check {check!r} has no title")
    return language.checks[check]


def say_verdict(verdict: Verdict, *, language: Language = ENGLISH) -> str:
    """Sign and word of an answer."""
    return f"{SIGNS[verdict]} {language.word(verdict)}"


def say_decider(who: Decider, *, language: Language = ENGLISH) -> str:
    """Who is asked, such as "the owner"; WordsError when there are no words for them."""
    if who not in language.deciders:
        raise WordsError(f"decider {str(who)!r} has no words")
    return language.deciders[who]


def say_stated(
    name: str, value: MessageValue, style: Style, *, language: Language = ENGLISH
) -> str:
    """The value of an input of a finding: words of the model are told, names stay as given."""
    if name in WORD_INPUTS:
        return shown(value, style, language=language)
    return _named(value, style, language)


def shown(value: MessageValue, style: Style, *, language: Language = ENGLISH) -> str:
    """A typed value as text in the style asked for; a text is taken for a word of the model."""
    if isinstance(value, Amount):
        return display(value.value, value.dimension, style)
    if isinstance(value, tuple):
        return ", ".join(language.word(one) for one in value)
    return language.word(value) if isinstance(value, str) else str(value)


def _from_where(message: Message, language: Language) -> str:
    """From where it can be seen, where somebody is asked to look at it; else nothing."""
    asked = str(dict(message.values).get("input", ""))
    if message.id not in LOOKS or asked not in language.seen_from:
        return ""
    return " " + language.phrase("seen-from", where=language.seen_from[asked])


def _left(margin: Margin, style: Style, language: Language) -> str:
    """The value of a margin: a load in kilograms first, as plates have it."""
    if margin.id in MARGINS_ON_A_PLATE and isinstance(margin.value, Amount):
        return most_load(margin.value, style)
    return _named(margin.value, style, language)


def _named(value: MessageValue, style: Style, language: Language) -> str:
    """A value as text where a text is the name of a thing: it stays as it was given."""
    if isinstance(value, StrEnum) or (isinstance(value, str) and value in NO_NAME):
        return language.word(value)
    return shown(value, style)


def _worded(
    name: str, value: MessageValue, style: Style, units: Mapping[Dimension, str], language: Language
) -> str:
    """A value in words: names of inputs become the trade's words for them."""
    if isinstance(value, Amount) and name in ON_A_PLATE and style is Style.METRIC:
        return load(value, style)
    if isinstance(value, Amount) and name in IN_PERCENT:
        return display(value.value, value.dimension, style, unit="%")
    if isinstance(value, Amount) and value.dimension in units:
        return display(value.value, value.dimension, style, unit=units[value.dimension])
    if name == "input":
        return say_input(str(value), language=language)
    if name == "inputs" and isinstance(value, tuple):
        return "; ".join(say_input(one, language=language) for one in value)
    if name in WORD_VALUES:
        return shown(value, style, language=language)
    return _named(value, style, language)
