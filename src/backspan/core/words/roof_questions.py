"""What is said of a question of the roof and its answer, in English, by id."""

from __future__ import annotations

SENTENCES: dict[str, str] = {
    "ask.not-known": "Under {rule_set} this cannot be worked out from what is given.",
    "ask.no-number": "{rule_set} gives no factor that could be worked out here.",
    "ask.most": "{input}: at most {value} ({factor} x {load}).",
    "ask.least": "{input}: at least {value} ({factor} x {load}).",
    "ask.by-what-is-known": "{input}: {value} by what is known ({factor} x {load}).",
    "ask.open": (
        "{input}: {value} by the rated load alone, {there} if the hoist stalls at the most allowed,"
        " {stall}."
    ),
    "ask.open-ratio": (
        "{input}: {value} by the rated load alone, {there} if it stalls at the most allowed,"
        " {stall} x rated."
    ),
    "ask.open-none": (
        "{input}: {value} by the rated load alone, none is enough if the hoist stalls at the most"
        " allowed, {stall}."
    ),
    "ask.none": "{input}: none holds ({factor} x {load}).",
    "ask.any": "{input}: any that was tried holds, look at the numbers again.",
    "ask.too-short": (
        "Beam too short: the {most} pieces that fit hold {held}; {required} is required."
    ),
    "ask.clips": (
        "Clips: {least}, at least {apart} apart, with at least {turned} of rope turned back, each"
        " tightened with {makers}."
    ),
    "ask.share-only": "The left hoist carries {left}, the right one {right}.",
    "ask.share-holds": "The left hoist carries {left}, the right one {right}; each lifts {rated}.",
    "ask.share-over": (
        "The left hoist carries {left}, the right one {right}; neither lifts more than {rated}."
    ),
    "ask.share-slack": (
        "The left hoist carries {left}, the right one {right}: the {side} line goes slack, and the"
        " stage tips."
    ),
    "ask.lifeline": "From its anchor to the lowest place the lifeline is {value} long.",
    "ask.clearance-only": "A fall takes {needed} below the feet.",
    "ask.clearance-too-far": "A rider falls {free} freely; only {most} is allowed.",
    "ask.clearance-too-slow": "A rider is slowed over {slowed}; only {most} is allowed.",
    "ask.clearance-in-time": (
        "A fall takes {needed} below the feet; with the deck {there} up it is over in time."
    ),
    "ask.clearance-too-late": (
        "A fall takes {needed} below the feet; the deck is only {there} above what is below."
    ),
    "ask.sling-leg": "Each of two legs at {angle} above the horizontal pulls {value}.",
    "ask.sling-flat": (
        "Each of two legs at {angle} above the horizontal pulls {value}: flatter than slings are"
        " used."
    ),
    "ask.stretch": "The rope stretches by {value} at most.",
    "ask.out-of-level": "One end of the stage hangs up to {value} lower than the other.",
    "ask.cord-enough": (
        "The cord loses {drop}, {lost} of the voltage, and leaves {left} while all lift and"
        " {start} as they start; the maker asks for {least}."
    ),
    "ask.cord-low": (
        "The cord leaves {left} while all lift; the maker asks for {least} at the hoist."
    ),
    "ask.cord-low-start": (
        "The cord leaves {start} as they start; the maker asks for {least} at the hoist."
    ),
    "ask.cord-nothing-left": "The cord would lose {drop}, all of the voltage there is.",
    "ask.cord-over": (
        "The cord loses {drop}, {lost} of the voltage; at most {most_lost} is allowed."
    ),
    "ask.cord-over-practice": (
        "The cord loses {drop}, {lost} of the voltage, and leaves {left} while all lift; the trade"
        " keeps a cord to {most_lost}."
    ),
    "ask.cord-drop": (
        "The cord loses {drop}, {lost} of the voltage, and leaves {left} while all lift."
    ),
    "ask.cord-longest": "The cord may be {value} long at most, by what is given.",
    "ask.cord-no-length": "No cord does: the maker asks for {least}, and {volts} is there.",
    "ask.generator-enough": (
        "The hoists draw {running} while all lift and {start} as they start; the generator gives"
        " {given}, and {given_start} for a start."
    ),
    "ask.generator-low": ("The hoists draw {running} while all lift; the generator gives {given}."),
    "ask.generator-low-start": (
        "The hoists draw {start} as they start; the generator gives {given_start} for a start."
    ),
    "ask.generator-open": (
        "The hoists draw {running} while all lift; how much as they start is not given."
    ),
    "ask.beam-holds": (
        "Over the fulcrum the load makes {moment}, four times that is {factored}; the beam takes"
        " {nominal} before it yields or turns over, {allowed} in service."
    ),
    "ask.beam-over": (
        "Too much for the beam: the load makes {moment} over the fulcrum, four times that is"
        " {factored}; it takes {nominal} before it yields or turns over, {allowed} in service."
    ),
    "ask.beam-thin": (
        "Its plates are so thin that they may buckle before {nominal}: an engineer decides."
    ),
    "ask.beam-aluminium": (
        "Over the fulcrum the load makes {moment}, four times that is {factored}; the alloy takes"
        " {nominal} before it yields or breaks, {allowed} in service. Turning over is not asked."
    ),
    "ask.formula": "{title}: {value}.",
    "stall.cap": "A hoist rated {rated} may stall at {cap} at most.",
    "stall.no-cap": "{rule_set} sets no cap on the stall load.",
    "compare.range": "From {least} to {most} pieces, by the rule that applies.",
    "compare.none": "No rule set gives a number with what is given.",
    # what is still needed
    "ask.need": "{input}, as {parameter}=...",
    "ask.need-of-drop": (
        "the hoist maker's word that it runs on a cord that loses {lost}, or a thicker cord"
    ),
    "ask.need-of-aluminium": (
        "the beam of aluminium reckoned by an engineer: turning over, thin plates, welds, its web"
    ),
    "ask.need-of-channel": "the beam reckoned with the twist of a single channel, and signed",
    # notes
    "note.label-first": (
        "The maker's label or table goes before any of this; a kit of tubes or of two channels"
        " without one is for an engineer."
    ),
    "note.one-section": (
        "One steel section all along, web vertical, without holes, splices, welds or damage."
    ),
    "note.own-weight-left-out": (
        "Without beam=... and beam-mass=... its own weight outboard is left out: nothing passes."
    ),
    "note.web-by-itself": (
        "Bending alone: the web over the fulcrum, shear and splices are not asked here."
    ),
    "note.whole-beam-unbraced": (
        "No place holds the beam sideways between its line and its counterweight, as nothing is"
        " given."
    ),
    "note.without-fillets": "By its plates alone, without the fillets of a rolled shape.",
    "note.aluminium-alone": (
        "Bending at the edge of an alloy's section alone; whether the beam turns over sideways or"
        " its thin plates buckle is not reckoned here: nothing passes."
    ),
    "note.channel-twists": (
        "A single channel also twists about its own length under its load: nothing passes here."
    ),
    "note.resistance-alone": (
        "Resistance alone, power factor 1: a thick cord's reactance is left out. Cords of copper at"
        " 75 C."
    ),
    "note.table-of-gages": (
        "The gage's resistance is remembered from a table; measured ohms or the maker's go before."
    ),
    "note.same-least-at-start": (
        "As they start the same least voltage is asked; a start is taken at full voltage's current."
    ),
    "note.all-start": "All hoists are taken to start at once; starting=... says how many do.",
    "note.single-phase": "Single-phase: there and back on two conductors.",
    "note.three-phase": "Three-phase: voltage between lines, current in each line, balanced.",
    "note.cord-itself": (
        "What current cord, plugs and breaker may carry, and their protection, is not asked here."
    ),
    "note.cord-hangs": (
        "The cord's weight hangs too: a grip takes it at the top and at the stage, not the plug."
    ),
    "note.generator-rating": (
        "Whatever else hangs on the generator adds to it; height and heat take from its rating."
    ),
    "note.generator-in-kw": "A rating in kW is taken as as many kVA: no less than that is there.",
    "note.start-by-rating": (
        "Its rating for a start is not given: a start is held against what it gives without end."
    ),
    "note.asker-vouches": (
        "Nothing was measured here: whoever asks vouches for the values. A review judges evidence."
    ),
    "note.one-beam": "Each beam by itself; a two-point stage has two.",
    "note.one-line": "Each line by itself; the other hardware of the line is asked by a review.",
    "note.pair-opposite": "A pair stands on opposite sides of the beam: on one side none balances.",
    "note.taut": (
        "Each is taken as taut, as strong as the rope and on a sound anchor: a review asks that."
    ),
    "note.two-lines": (
        "Two lines only; half of what hangs is taken on each. Who walks is asked at both ends."
    ),
    "note.from-the-feet": (
        "From the feet of who rides, who hangs lower by it; a fall aside of the line swings too."
    ),
    "note.line-and-end": "To the lowest place; its end goes on to where somebody sees it lie.",
    "note.two-legs": (
        "Two legs are taken to carry, however many there are; common practice, no source."
    ),
    "note.new-rope": (
        "A new rope stretches once more besides, by 0.5 to 1 % of its length, and stays so;"
        " common practice, no source."
    ),
    "note.as-stretched": "The load alone: what the rope weighs stretches it further, on both ends.",
    "note.stall-besides": "A hoist that stalls at more than this rope holds is too large as well.",
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

#: What ends the name of a number for a hoist that stalls at the most its rule allows.
AT_MOST_STALL = "-at-most-stall"

LABELS: dict[str, str] = {
    "required": "counterweight needed",
    "pieces-needed": "pieces needed",
    "pieces": "pieces given",
    "counterweight": "counterweight given",
    "factor-reached": "factor reached",
    "governing": "governing",
    "most-stall": "most stall load allowed",
    "stall-governs-above": "stall load governs above",
    "most-reach": "most reach",
    "least-backspan": "least backspan",
    "most-rated": "most rated load",
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
    "strength-at-end": "strength at the rope's end",
    "most-stall-held": "most stall load that the rope holds",
    "least-clips": "fewest clips",
    "least-spacing": "least spacing of the clips",
    "least-turnback": "least rope turned back",
    "least-torque": "torque the maker asks for",
    "most-torque": "most torque",
    "pull": "pull of the tieback",
    "pull-aside": "its pull across the beam",
    "pull-down": "its pull down on the beam",
    "pull-other": "pull of the other tieback",
    "pull-aside-other": "its pull across the beam, the other way",
    "pull-down-other": "pull of the other down on the beam",
    "share-left": "left hoist",
    "share-right": "right hoist",
    "take-off-left": "to come off the left hoist at least, which is a share of a load",
    "take-off-right": "to come off the right hoist at least, which is a share of a load",
    "fall-takes": "a fall takes, below the feet",
    "in-time-from": "in time from a deck at",
    "lifeline-length": "lifeline from anchor to the lowest place",
    "cord-drop": "voltage lost while all lift",
    "cord-left": "voltage left while all lift",
    "cord-drop-start": "voltage lost as they start",
    "cord-left-start": "voltage left as they start",
    "cord-drop-before": "voltage lost while all lift, without the added length",
    "cord-length": "length of the cord",
    "cord-longest": "longest cord by what is given",
    "cord-weight": "weight of the cord",
    "cord-current": "current while all lift",
    "cord-current-start": "current as they start",
    "power-running": "drawn while all lift",
    "power-starting": "drawn as they start",
    "beam-moment": "moment over the fulcrum",
    "beam-takes": "moment it takes before it yields or turns over",
    "beam-allowed": "moment allowed in service",
    "beam-longest-reach": "longest reach at which it carries four times the load",
    "beam-tip-down": "the line's end goes down by",
    "beam-bows-up": "the beam bows up inboard by",
    "leg-pull": "pull in each leg",
    "leg-from-horizontal": "angle above the horizontal",
    "leg-from-vertical": "angle off the vertical",
    "stretch": "stretch",
    "stretch-of-other": "stretch of the other rope",
    "out-of-level": "out of level from stretch alone",
    "room-left": "room left on the beam",
}
