"""What an outrigger beam takes over its fulcrum, by a shape of the table or by its sizes.

Two different questions: in service the moment stays below what is allowed; and the beam carries
four times the load without failure, for which the nominal moment is held against four times.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from backspan.core.ask.answering import posed
from backspan.core.ask.shape import Answer, Asked, Kind, Line, Parameter, QuestionError
from backspan.core.checks.beam_strength import SAFETY
from backspan.core.errors import quoted
from backspan.core.findings import Decider, Message, MessageValue, Need, Verdict
from backspan.core.mechanics.beam_loading import (
    allowed_moment,
    backspan_bow,
    hogging_moment,
    own_moment_outboard,
    tip_deflection,
)
from backspan.core.mechanics.tipping import weight
from backspan.core.numbers import (
    at_least,
    meets,
    step_down,
    step_up,
    surely_below,
    surely_nothing,
)
from backspan.core.quantities import LENGTH, MOMENT, PRESSURE, RATIO, TAPE_STEP, Amount
from backspan.core.quantities.named import QUANTITIES
from backspan.core.quantities.steps import roof_step
from backspan.core.review.basis import OF_SHAPES, OF_STEEL, selected_rules
from backspan.core.review.naming import suggested
from backspan.core.rules.selected import SelectedRules, SelectedValue
from backspan.core.rules.shape import SIZES_OF, FactorOnLoad, Section, SectionForm
from backspan.core.sheet.beam_section import (
    OPEN,
    SLENDER,
    SLENDER_OF,
    Steel,
    nominal_moment,
    section_numbers,
)
from backspan.core.sheet.decide import to_confirm
from backspan.core.sheet.limits import limit_of, needed_value
from backspan.core.sheet.plain_beam import ELASTIC
from backspan.core.worked.formula import AnyFormula, Step

FOUR_TIMES = "beam.four-times"
SIZES = tuple(dict.fromkeys(name for names in SIZES_OF.values() for name in names))
#: What is said of a section in words.
WORDS = (
    Parameter("shape", "shape of the table, such as W6x12", Kind.WORD, needed=False),
    Parameter("form", "channel, where the sizes are of one", Kind.WORD, needed=False),
    Parameter("material", "steel, 6061-T6 or 6063-T6; steel if not given", Kind.WORD, needed=False),
    Parameter("weld", "no, where an alloy has none over the fulcrum", Kind.WORD, needed=False),
)
#: What tells the beam's own weight, by how it is asked: it harms outboard, and is counted there.
OWN = {QUANTITIES[name].asked: name for name in ("beam_mass", "beam_length")}
_VOUCHED = Message("note.asker-vouches")


@dataclass(frozen=True, slots=True)
class Noted:
    """Works formulas out and keeps each as a step."""

    steps: list[Step] = field(default_factory=list)

    def __call__(self, formula: AnyFormula, **arguments: float) -> float:
        """The result of a formula."""
        step: Step = formula(**arguments)
        self.steps.append(step)
        return step.value


@dataclass(frozen=True, slots=True)
class Asking:
    """The section that is asked about, and the rule value that names it, if one does."""

    form: SectionForm
    given: Mapping[str, float]
    rule: SelectedValue | None


def answer_beam(asked: Asked) -> Answer:
    """Whether the beam takes the load of its line at this reach, and how long a reach it takes."""
    case, do = posed(asked).case, Noted()
    steel = selected_rules(case.project, OF_STEEL, asked.library)
    one = section_of(asked, selected_rules(case.project, OF_SHAPES, asked.library))
    safety, elastic = needed_value(steel, SAFETY), needed_value(steel, ELASTIC)
    four = four_times(case.topics["tipping"])
    slender = {name: needed_value(steel, key) for name, key in SLENDER.items()}
    made_of = Steel(
        asked.number("yield") or 0.0,
        limit_of(elastic, PRESSURE),
        {name: limit_of(value, RATIO) for name, value in slender.items()},
    )
    load, reach = asked.number("rated") or 0.0, asked.number("reach") or 0.0
    unbraced = _unbraced(asked, reach)
    numbers = section_numbers(do, one.form, one.given)
    nominal = nominal_moment(do, one.form, numbers, made_of, unbraced, rolled=one.rule is not None)
    over = {"load": load, "reach": reach, "own_outboard": own_outboard(asked, do, reach)}
    service = do(hogging_moment, factor=1.0, **over)
    factored = do(hogging_moment, factor=factor_of(four), **over)
    allowed = do(
        allowed_moment, nominal_moment=nominal.moment, safety_factor=limit_of(safety, RATIO)
    )
    holds = meets(demand=factored, capacity=nominal.moment) and meets(
        demand=service, capacity=allowed
    )
    words: tuple[tuple[str, MessageValue], ...] = (
        ("moment", Amount(service, MOMENT)),
        ("factored", Amount(factored, MOMENT)),
        ("nominal", Amount(nominal.moment, MOMENT)),
        ("allowed", Amount(allowed, MOMENT)),
    )
    of_plates = (slender[name] for name in SLENDER_OF[one.form])
    rules = (four, safety, elastic, *of_plates, *(() if one.rule is None else (one.rule,)))
    waits = tuple(to_confirm(rule) for rule in rules if rule.only_remembered)
    if one.form is SectionForm.CHANNEL:
        waits = (Need(Decider.LICENSED_ENGINEER, Message("ask.need-of-channel")), *waits)
    untold = tuple(need_of(name) for name in OWN if name not in asked.values)
    ending, verdict = ("holds", Verdict.REFER if waits else Verdict.PASS)
    if untold:
        verdict, waits = Verdict.MISSING, (*untold, *waits)
    if not holds:
        ending, verdict, waits = "over", Verdict.FAIL, ()
    elif surely_below(nominal.plate_left, limit=0.0):
        ending, verdict = "thin", Verdict.REFER
    told_as = {"beam-moment": service, "beam-takes": nominal.moment, "beam-allowed": allowed}
    lines = [Line(name, Amount(number, MOMENT)) for name, number in told_as.items()]
    if ending != "thin" and "unbraced" in asked.values and one.form is not SectionForm.CHANNEL:
        longest = (nominal.moment - over["own_outboard"]) / (factor_of(four) * load)
        told = Amount(step_down(longest, step=TAPE_STEP[asked.style]), LENGTH)
        lines.append(Line("beam-longest-reach", told))
    lines += _bends(asked, do, numbers["second_moment"], made_of)
    return Answer(
        Message(f"ask.beam-{ending}", words),
        verdict=verdict,
        lines=tuple(lines),
        steps=tuple(dict.fromkeys(do.steps)),
        rules=rules,
        notes=_notes(asked, one),
        needs=waits,
    )


def factor_of(value: SelectedValue) -> float:
    """The factor of a rule on the load."""
    return value.content.factor if isinstance(value.content, FactorOnLoad) else 0.0


def four_times(rule_sets: tuple[SelectedRules, ...]) -> SelectedValue:
    """The first rule value in force on the strength of a beam; QuestionError where none is."""
    for rules in rule_sets:
        found = rules.find(FOUR_TIMES)
        if found is not None and isinstance(found.content, FactorOnLoad):
            return found
    names = ", ".join(one.rule_set.id for one in rule_sets)
    raise QuestionError(f"rules: {names} says no number for the strength of a beam")


def section_of(asked: Asked, shapes: SelectedRules) -> Asking:
    """The shape that is named, or the form that the sizes given make."""
    shape = asked.word("shape")
    sizes = {
        name: number
        for name in SIZES
        if (number := asked.number(QUANTITIES[name].asked)) is not None
    }
    if (shape is None) == (not sizes):
        found = "neither" if shape is None else "both"
        raise QuestionError(f"{found} of shape and sizes is given; give shape=W6x12 or its sizes")
    if shape is not None:
        if asked.word("form") is not None:
            raise QuestionError("form: a shape of the table has its own; give it with sizes alone")
        return _of_table(shape, shapes)
    form = _form(asked.word("form"), sizes)
    if form is None:
        asked_by = [
            " ".join(f"{QUANTITIES[name].asked}=" for name in names) for names in SIZES_OF.values()
        ]
        raise QuestionError(f"the sizes make no section; give {' or '.join(asked_by)}")
    thick = sizes.get("wall", sizes.get("flange_thickness", 0.0))
    if not surely_below(thick + thick, limit=sizes["section_depth"]):
        raise QuestionError("depth: a section is deeper than twice its flange or wall")
    wide = sizes.get("flange_width")
    narrow = sizes.get("web_thickness", 0.0) if form in OPEN else thick + thick
    if wide is not None and not surely_below(narrow, limit=wide):
        raise QuestionError("width: a section is wider than its web or twice its wall")
    return Asking(form, sizes, None)


def _form(word: str | None, sizes: Mapping[str, float]) -> SectionForm | None:
    """The form that is named, else the one that the sizes make; none where they make no such."""
    for form, names in SIZES_OF.items():
        if set(names) == set(sizes) and word in {None, str(form)}:
            return form
    return None


def _of_table(shape: str, shapes: SelectedRules) -> Asking:
    known: dict[str, tuple[SelectedValue, Section]] = {}
    for value in shapes.topic("beam"):
        if isinstance(value.content, Section):
            known[value.content.shape.casefold()] = (value, value.content)
    found = known.get(shape.casefold().replace("×", "x"))
    if found is None:
        names = [section.shape for _, section in known.values()]
        raise QuestionError(
            f"shape: found {quoted(shape)}, which is not in the table;"
            f" {suggested(shape, names, what='shapes')}"
        )
    rule, section = found
    return Asking(section.form, section.numbers, rule)


def _unbraced(asked: Asked, reach: float) -> float:
    """As given, and no less than the backspan; else line to counterweight, if that is known."""
    given, backspan = asked.number("unbraced"), asked.number("backspan")
    if given is not None:
        if surely_below(given, limit=reach):
            raise QuestionError(
                "unbraced: the tip of an outrigger is free, so the length is at least the reach"
            )
        return given if backspan is None else at_least(given, least=backspan)
    if backspan is None:
        raise QuestionError("unbraced: give it, or the backspan; without it nothing is known")
    return reach + backspan


def own_outboard(asked: Asked, do: Noted, reach: float) -> float:
    """What the beam itself does over the fulcrum; nothing, as long as nobody tells its weight."""
    mass, length = (asked.number(name) for name in OWN)
    if mass is None or length is None:
        return 0.0
    tip = asked.number("tip") or 0.0
    if surely_below(length, limit=reach + tip):
        raise QuestionError("beam: it is shorter than its reach and its tip together")
    return do(
        own_moment_outboard,
        beam_weight=do(weight, mass=mass),
        beam_length=length,
        reach=reach,
        tip_beyond_line=tip,
    )


def need_of(name: str) -> Need:
    """Whoever asks has to tell of the beam what this parameter is."""
    said = (("input", OWN[name]), ("parameter", name))
    return Need(Decider.MEASURER, Message("ask.need", said))


def _bends(asked: Asked, do: Noted, second_moment: float, steel: Steel) -> list[Line]:
    backspan = asked.number("backspan")
    if backspan is None or surely_nothing(backspan):
        return []
    at = {
        "load": asked.number("rated") or 0.0,
        "reach": asked.number("reach") or 0.0,
        "backspan": backspan,
        "elastic_constant": steel.elastic_constant,
        "second_moment": second_moment,
    }
    step = roof_step(LENGTH, asked.style)
    return [
        Line(name, Amount(step_up(do(formula, **at), step=step), LENGTH))
        for name, formula in (("beam-tip-down", tip_deflection), ("beam-bows-up", backspan_bow))
    ]


def _notes(asked: Asked, one: Asking) -> tuple[Message, ...]:
    names = ["label-first", "one-section", "web-by-itself"]
    names += [] if all(name in asked.values for name in OWN) else ["own-weight-left-out"]
    names += [] if "unbraced" in asked.values else ["whole-beam-unbraced"]
    names += ["without-fillets"] if one.rule is None else []
    names += ["channel-twists"] if one.form is SectionForm.CHANNEL else []
    return (*(Message(f"note.{name}") for name in names), _VOUCHED)
