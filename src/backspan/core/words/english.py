"""Every sentence the program says, in English, by message id. `{name}` is a typed value."""

from __future__ import annotations

from backspan.core.words.beam_sentences import BEAM, STRENGTH, WEB
from backspan.core.words.english_load_path import LOAD_PATH
from backspan.core.words.fall_sentences import FALL
from backspan.core.words.line_sentences import LINE
from backspan.core.words.names import CHECKS, INPUTS
from backspan.core.words.people_sentences import PEOPLE
from backspan.core.words.stage_sentences import STAGE
from backspan.core.words.stands_on import STANDS_ON

__all__ = ["CHECKS", "INPUTS"]

SENTENCES: dict[str, str] = {
    **LOAD_PATH,
    **BEAM,
    **STRENGTH,
    **WEB,
    # topics a person judged instead of the program, and why that has no effect
    "topic.taken-over": (
        "Taken over by {person}, {role}, card {card}, in {document} of {at}, until {until}."
    ),
    "topic.taken-over-lapses": (
        "Taken over by {person}, {role}, card {card}, in {document} of {at}, only until {until}; "
        "the work is planned to {ends}: nobody rides after that day without another."
    ),
    "take-over.answered": (
        "{document}: no effect, only what nothing was found on can be taken over: {verdict} stays."
    ),
    "take-over.role": "{document}: no effect, {person} may not take this over; who may: {who}.",
    "take-over.no-card": "{document}: no effect, the card of {person} is not stated.",
    "take-over.no-contractor": (
        "{document}: no effect, no plan names the contractor, whose people may not take over."
    ),
    "take-over.no-employer": "{document}: no effect, the employer of {person} is not stated.",
    "take-over.own-rig": (
        "{document}: no effect, {person} is of the contractor's people or designed the rig."
    ),
    "take-over.ended": "{document}: no effect, it ended on {until}.",
    "take-over.configuration": (
        "{document}: no effect, it was given for configuration {given}; the rig is {now} now."
    ),
    # what a check found
    "rig.moved": "The rig was moved to {to}: it no longer hangs here.",
    "rig.none": "No suspension point is recorded for this drop.",
    "support.one": "Suspension point {point} has one support.",
    "support.none": "No support is recorded for suspension point {point}.",
    "support.several": "Suspension point {point} is recorded with more than one support.",
    "stage-on-point.one": "One stage hangs from this point: {stages}.",
    "stage-on-point.none": "No stage is recorded as hanging from this point.",
    "stage-on-point.several": "More than one stage hangs from this point: {stages}.",
    "stage-hangs.two": "Stage {stage} hangs from {points}.",
    "stage-hangs.one": "Stage {stage} needs two suspension points; recorded: {points}.",
    "stage-hangs.several": (
        "Stage {stage} hangs from more than two points: {points}. What each carries is not"
        " statics alone."
    ),
    "other-support": "Held by a {kind}: this version does not judge it. Paper: {document}.",
    "tipping.holds": (
        "The counterweight holds: {resisting} against {required} required ({factor} x {load})."
    ),
    "tipping.would-hold": (
        "As stated it would hold: {resisting} against {required} required ({factor} x {load})."
    ),
    "tipping.does-not-hold": (
        "The counterweight does not hold: {resisting} against {required} required"
        " ({factor} x {load})."
    ),
    "tipping.no-pieces": "No counterweight is on the beam: {required} required.",
    "tipping.not-known": "Tipping under {rule_set} cannot be worked out from what is stated.",
    "tipping.branch-not-known": (
        "{resisting} against {required} required ({factor} x {load}); another branch of"
        " {rule_set} cannot be worked out from what is stated."
    ),
    "tipping.no-number": "{rule_set} gives no factor that could be worked out here.",
    "stall-cap.pass": "Hoist {hoist} stalls at {stall}; the most allowed is {cap}.",
    "stall-cap.fail": "Hoist {hoist} stalls at {stall}; the most allowed is {cap}.",
    "stall-cap.missing": "The stall load of hoist {hoist} is not stated.",
    "stack-fits.pass": "The stack takes {taken} of {inboard} inboard.",
    "stack-fits.fail": "Beam too short: {pieces} pieces take {taken}, inboard there is {inboard}.",
    "stack-fits.missing": "Whether the stack fits cannot be worked out from what is stated.",
    "backspan-fits.pass": "The backspan of {taken} lies within {inboard} of beam inboard.",
    "backspan-fits.fail": (
        "The backspan of {taken} is longer than the {inboard} of beam inboard: measure again."
    ),
    "backspan-fits.missing": "The backspan cannot be compared with the beam's length.",
    "stack-stands.pass": "The stack around the taped middle ends at {taken}, within {inboard}.",
    "stack-stands.fail": (
        "The stack around the taped middle would reach {taken}, where there is {inboard}."
    ),
    "stack-stands.missing": "Whether the stack lies on the beam cannot be worked out.",
    "outside.inboard": "The beam ends at the fulcrum or outboard of it: nothing can stand on it.",
    "outside.reach": "The line hangs at the fulcrum or inboard of it: measure the reach again.",
    "outside.rear_stand": "The rear stand is at the fulcrum: measure its place again.",
    "outside.beyond_tail": (
        "The rear stand lies at the tail of the beam or beyond it, where no beam is: measure both"
        " again."
    ),
    "outside.front": (
        "By these numbers the beam lifts off its fulcrum and turns about the rear stand: measure"
        " where that stands."
    ),
    "outside.plate": "The plate under the fulcrum or the pad under it has no area: measure again.",
    "outside.backspan": (
        "The middle of the counterweight is not inboard of the fulcrum: it holds nothing down."
    ),
    "plan.pass": "A plan is stated, for days that are not over.",
    "plan.missing": "The contractor's plan is not stated whole.",
    "plan.over": "The planned days are over, or end before they begin: no plan covers {day}.",
    "designer.pass": "Designed by a {found}.",
    "designer.fail": "Designed by a {found}; who may: {listed}.",
    "designer.missing": "Nobody is named who designed the rig.",
    "as-planned.pass": "Built as planned, as far as both are stated: {count} values.",
    "as-planned.differs": "{input}: planned {planned}, found {found}.",
    "anchor-dates.pass": "Anchor {anchor}, {input}: counts until {last}.",
    "anchor-dates.refused": (
        "Anchor {anchor}, {input}: counts until {last}, the work is planned to {ends}; {paper} lets"
        " no anchor be used past its dates."
    ),
    "anchor-dates.lapses": (
        "Anchor {anchor}, {input}: counts until {last}; the work is planned to {ends}."
    ),
    "anchor-dates.missing": "Anchor {anchor}, {input}: not stated.",
    "unit.unknown": "Which {kind} it is nobody stated: named is only {name}.",
    "unit.twice": "{unit} is also named at {others}: it can hang in one place only.",
    "unit.same-serial": (
        "{unit} has the serial {serial} of {others}, which hangs too: one of them is read wrong."
    ),
    "unit.lot-too-small": "Of lot {unit} there are {count} pieces; rigs name {named}.",
    "condition.pass": "Condition: {found}.",
    "condition.fail": "Condition: {found}. It may not be used.",
    "condition.missing": "In what condition it is nobody stated.",
    "test.pass": "{what} of {unit} counts until {until}.",
    "test.lapses": "{what} of {unit} counts until {until}; the work is planned to {ends}.",
    "test.over": "{what} of {unit} counted until {until}.",
    "brake-test.pass": "Of the secondary brake of {unit} a test of {at} counts: {what}.",
    "brake-test.missing": "No test of the secondary brake of {unit} that counts today is stated.",
    "brake-test.old": (
        "The last test of the secondary brake of {unit} is of {at}; one counts for {most} days."
    ),
    "line-clear.pass": "The line hangs {reach} out from a fulcrum {setback} behind the face.",
    "line-clear.missing": "Whether the line clears the face cannot be worked out.",
    "outside.line": (
        "By reach and setback the suspension line hangs at the face of the building or inside it."
    ),
    "beam-clear.pass": "The beam lies {bearing} above the roof, the parapet is {wall} high.",
    "beam-clear.fail": (
        "The beam lies {bearing} above the roof and would pass through the parapet, {wall} high."
    ),
    "beam-clear.missing": "Whether the beam clears the parapet cannot be worked out.",
    "strip.pass": "It hangs at {station}, within the drop from {start} to {end}.",
    "strip.outside": "It hangs at {station}, outside the drop, which is from {start} to {end}.",
    "spacing.pass": "The lines are {apart} apart, the stirrups {stirrups}.",
    "spacing.fail": "The lines are {apart} apart, the stirrups {stirrups}: they hang splayed.",
    "spacing.missing": "How far apart the stage's stirrups are is not stated.",
    "hoists-in-sum.pass": "{load} hangs; the hoists lift {rated} together.",
    "hoists-in-sum.fail": "{load} hangs; the hoists lift only {rated} together.",
    "hoists-in-sum.missing": "What hangs cannot be compared with what the hoists lift.",
    "hoists-by-half.pass": "Half of what hangs is {load}; the weaker hoist lifts {rated}.",
    "hoists-by-half.fail": "Half of what hangs is {load}; the weaker hoist lifts only {rated}.",
    "hoists-by-half.missing": "Half of what hangs cannot be compared with what a hoist lifts.",
    "fulcrum.pass": "The beam bears on a {kind}.",
    "fulcrum.refer": "The beam bears on a {kind}.",
    "fulcrum.refer-with-load": "The beam bears on a {kind}; at the most {most} comes on it.",
    "fulcrum.refer-with-reactions": (
        "The beam bears on a {kind}. At rated load {front_loaded} comes on it and {rear_loaded} on"
        " the rear stand; with nothing on the line {front_idle} and {rear_idle}."
    ),
    "fulcrum.on-wall-missing": (
        "The beam bears on a {kind}; whether that stands on the parapet is not known, as its place"
        " is not stated."
    ),
    "fulcrum.missing": "What the beam bears on is not stated.",
    "edge-protection.pass": "It is {height} high; {least} protects who is behind it.",
    "edge-protection.low": "The parapet is only {height} high; {least} protects those behind it.",
    "edge-protection.missing": "How high the parapet is nobody stated.",
    "seen.pass": "Found: {found}.",
    "seen.fail": "Found: {found}. Nobody rides until it is put right.",
    "seen.missing": "Nobody stated what was found.",
    "heads.pass": ("For {riders} riders so many sound lifelines of one rider each: {lines}."),
    "heads.fail": (
        "For {riders} on the stage there are only so many lifelines of a rider each: {lines}."
    ),
    "heads.missing": "Riders cannot be counted against lifelines of their own from what is stated.",
    "label-state.pass": "Label of the beam: {found}.",
    "label-state.fail": "Label of the beam: {found}. Do not use the beam.",
    "label-state.missing": "The state of the beam's label is not recorded.",
    "label-limit.pass": "{pieces} pieces on the beam; its label allows {most}.",
    "label-limit.fail": "{pieces} pieces on the beam; its label allows only {most}.",
    "label-limit.missing": "The number of pieces the label allows is not recorded.",
    "label-load.pass": "The hoist lifts {load}; the beam's label allows {most_load}.",
    "label-load.fail": "The hoist lifts {load}; the beam's label allows only {most_load}.",
    "label-load.missing": (
        "Which rated load the beam's label allows, or which the hoist has, is not recorded."
    ),
    "label-reach.pass": "Reach {reach}; the beam's label allows {most_reach} with its load.",
    "label-reach.fail": (
        "Reach {reach}; the beam's label rates it only up to {most_reach}, nothing beyond."
    ),
    "label-reach.missing": "Up to which reach the label allows its load is not recorded.",
    "label-backspan.pass": "Backspan {backspan}; the beam's label asks for {least_backspan}.",
    "label-backspan.fail": (
        "Backspan {backspan}; the beam's label rates it only with {least_backspan} or more."
    ),
    "label-backspan.missing": "The backspan that the label asks for, or the one there, is unknown.",
    "label-limit-mass.pass": "{mass} on the beam; its label allows {most_mass}.",
    "label-limit-mass.fail": "{mass} on the beam; its label allows only {most_mass}.",
    "proportion.pass": "Inboard over outboard is {ratio}; at least {least} is asked.",
    "proportion.fail": "Inboard over outboard is {ratio}; at least {least} is asked.",
    "proportion.missing": "Inboard over outboard cannot be worked out from what is stated.",
    **LINE,
    **PEOPLE,
    **FALL,
    "bearing.pass": "The fulcrum asks {pressure} of its surface, which carries {strength}.",
    "bearing.fail": "The fulcrum asks {pressure} of its surface, which carries only {strength}.",
    "bearing.missing": "What the fulcrum asks of its surface is not known, or what that carries.",
    **STANDS_ON,
    **STAGE,
    "flowable.pass": "Nothing on the beam can flow: {found}.",
    "flowable.fail": "Flowable material is not counterweight: {found}.",
    "flowable.missing": "No pieces are recorded on the beam.",
    "purpose-made.pass": "Made as counterweight: {found}.",
    "purpose-made.fail": "Not made as counterweight: {found}.",
    "purpose-made.missing": "No pieces are recorded on the beam.",
    "marking.pass": "The mass of each piece is known: {found}.",
    "marking.fail": "The mass of a piece is not known from its stamp: {found}.",
    "marking.missing": "The mass of each piece is not settled; accepted evidence: {listed}.",
    "fastening.pass": "The pieces are held: {found}.",
    "fastening.fail": "The pieces are not held the way the rule asks: {found}.",
    "fastening.missing": "How the pieces are held is not recorded.",
    "unlikely.large": "Unlikely: {input} of {value} is above {bound}. Kept as entered.",
    "unlikely.small": "Unlikely: {input} of {value} is below {bound}. Kept as entered.",
    # why a check does not apply
    "na.no-suspension-point": "No suspension point is recorded.",
    "na.nothing-planned": "No planned value stands beside one that was found.",
    "na.no-anchor": "No line of the drop goes to an anchor.",
    "na.nothing-of-it": "The rig names none.",
    "na.no-tieback": "No tieback is stated here.",
    "na.no-edge": "No line is stated that passes an edge.",
    "na.no-lifeline": "No lifeline is stated.",
    "na.stack-not-known": "Where the stack around a taped middle ends is not known, or follows.",
    "na.bolted": "Its tail is bolted or otherwise connected.",
    "na.no-counterweight": "Not held by counterweight.",
    "na.counterweighted": "Held by a counterweighted beam.",
    "na.no-rule": "No rule set of the basis has a value {value} ({rule_sets}).",
    "na.beam-length": "The beam's length is not stated, and the backspan was measured.",
    "na.beam-tip": (
        "What the beam has beyond the line is not stated; if that is nothing, the backspan fits."
    ),
    "na.nothing-questioned": "Every value lies where the trade expects it.",
    "na.looked-again": "{input} is unusual; {by} looked again.",
    # what would settle it
    "need.too-much-doubt": (
        "{number} values of this carry a tolerance, more than can be tried at every end. Measure"
        " again, the widest first: {inputs}."
    ),
    "need.input": "State {input} ({place}).",
    "need.test": "Have {unit} tested again ({what}) before {until}.",
    "need.anchor-condition": "Say in writing whether the condition of anchor {anchor} is met.",
    "need.two-tiebacks": "Say in writing that anchor {anchor} may hold {lines}, {load} together.",
    "need.tieback-end": "Judge what tieback {tieback} ends on, and sign for it.",
    "need.fulcrum": "Judge the {kind} under the fulcrum and what it stands on, and sign for it.",
    "need.two-backspans": (
        "Measure again: the tape gives a backspan of {taped}, beam and stack {computed}, within"
        " what is doubtful; with the shorter it does not hold."
    ),
    "need.limiter-as-stall": (
        "Determine the stall load of hoist {hoist}: its limiter cuts power at {trip}, which was"
        " taken for it."
    ),
    "need.edge-protection": "Say how those who rig at an edge of {height} are held.",
    "need.as-planned": (
        "Say in writing whether the rig may stay as built: {input} {found}, planned {planned}."
    ),
    "need.anchor-inspected": (
        "Have anchor {anchor} inspected, or say in writing until when it stands."
    ),
    "need.anchor-certified": "Have anchor {anchor} tested, or say in writing until when it stands.",
    "need.witness": (
        "{input} is {evidence}, but not by whom and when: it counts as told ({place})."
    ),
    "need.role": "{input} was stated by {person}; who may state it: {who} ({place}).",
    "need.age": (
        "{input} was seen on {at}, which counts for so many days: {most}. Look again ({place})."
    ),
    "need.evidence": "{input} is {evidence}; accepted: {accepted} ({place}).",
    "need.confirmation": (
        "Confirm {value} against the office's own copy of {rule_set} {edition}, {clause}:"
        " it is only remembered."
    ),
    "need.design": "Judge the counterweight by {rule_set} and sign for it.",
    "need.other-support": "Judge the {kind} and what it bears on, and sign for it.",
    "need.several-points": (
        "Find what each of {points} can carry of stage {stage}, any one line slack, and sign."
    ),
    "need.look-again": "Look at {input} again ({value}) and sign as second reader.",
    # notes
    "note.beam-weight-left-out": "The beam's own weight is left out: it does not harm.",
    "note.shorter-backspan": (
        "Within what is doubtful the tape gives a backspan of {taped}, beam and stack {computed}:"
        " the shorter is judged."
    ),
    "note.beam-weight-harms": "The beam's own weight pulls outboard and is counted.",
    "note.beam-weight-credited": "The beam's own weight is counted, as {rule_set} allows.",
    "note.behind-rear-stand": (
        "Weight lies behind the rear stand: what the stand carries is not taken off the fulcrum."
    ),
    "note.tieback-no-credit": "The tieback is in addition: it gets no credit in tipping.",
    "note.stall-not-known": (
        "The stall load is not known: its branch stays open until the maker's value, or a"
        " qualified person's determination before the lift, is stated."
    ),
    "note.stall-at-most": (
        "Should the hoist stall at the most the rule allows, {cap}, {required} would be"
        " required; there is {resisting}."
    ),
    "note.within-tolerance": "The answer changes within the tolerance.",
    # rule comparison
    "compare.no-number": "no number to work with",
    "compare.not-known": "not stated: {inputs}",
    "compare.too-much-doubt": "too many values carry a tolerance to ask for the worst of them",
    "compare.no-backspan": "the counterweight is not inboard of the fulcrum",
}

#: Before all that is left: two changes at once are not told of.
ONE_CHANGE = "One change only: {margins}."
#: A spare piece is no invitation to take one off.
STAY_ON = "As built; pieces stay on until the stage is dismantled."

#: The margins counted in pieces, when it is one.
ONE_PIECE: dict[str, tuple[str, str]] = {
    "pieces-spare": ("1 piece spare", "1 piece short"),
}

MARGINS: dict[str, tuple[str, str]] = {
    # what is left, and what is short
    "pieces-spare": ("{value} pieces spare", "{value} pieces short"),
    "no-number-of-pieces": ("{value} pieces", "no number of pieces on this beam is enough"),
    "more-reach": ("{value} more reach", "{value} too much reach"),
    "less-backspan": ("{value} less backspan would do", "{value} too little backspan"),
    "fulcrum-inboard": (
        "fulcrum may move {value} inboard",
        "fulcrum must move {value} outboard",
    ),
    "most-rated-load": ("holds a rated load of up to {value}",) * 2,
    "most-stall-load": ("holds a stall load of up to {value}",) * 2,
    "most-stall-load-allowed": ("holds any stall load the rule allows, {value}",) * 2,
    "hoists-that-do": ("hoists of the kit that would do: {value}",) * 2,
    "pieces-per-step-us": ("one more inch of reach costs {value} pieces",) * 2,
    "pieces-per-step-metric": ("10 mm more reach costs {value} pieces",) * 2,
}

NOT_JUDGED = "Not judged, nobody took it over: {topics}."

#: What is counted beside a drop's answer; a drop has more than one topic.
TOPICS_COUNTED: dict[str, tuple[str, str]] = {
    "refused": ("1 topic refused", "{count} topics refused"),
    "open": ("1 topic open", "{count} topics open"),
    "taken over": ("1 topic taken over", "{count} topics taken over"),
}

CAUTIONS: tuple[str, ...] = (
    "This supports the judgement of a qualified or licensed person; it does not replace it.",
    "Local codes, the maker's manual and the project's own engineer come first.",
    "It speaks of the configuration named by its code, and of no other.",
    "Stop, and have it reviewed again, if anything on the roof differs from what is stated here.",
    "A competent person inspects before every shift and after anything that could matter.",
)

ONE_LINE_CAUTION = (
    "Supports a qualified or licensed person's judgement; local codes come first;"
    " stop if the roof differs."
)

VERDICTS: dict[str, str] = {
    "pass": "the demand is met, on evidence good enough for that check",
    "fail": "the demand is not met",
    "refer": "a named person must decide; the finding says who and on what",
    "missing": "not enough evidence; the finding names what would settle it",
}

MARKS: dict[str, str] = {
    "read": "an official text was seen",
    "copy": "a state copy or a quotation of the text was seen",
    "memory": "from memory, text not seen: verify; a pass that rests on it is referred",
    "practice": "common practice, no source; what it decides is said",
    "confirmed": "the office found the value in its own copy of the text",
}
