"""Sentences on the load path from the rope to the roof, in English, by message id."""

from __future__ import annotations

LOAD_PATH: dict[str, str] = {
    "rope.pass": (
        "The suspension rope carries {strength} at its end; {required} is asked"
        " ({factor} x {load})."
    ),
    "rope.fail": (
        "The suspension rope carries only {strength} at its end; {required} is asked"
        " ({factor} x {load})."
    ),
    "rope.missing": "What the suspension rope carries at its end, or must carry, is not known.",
    "anchor-use.pass": (
        "Anchor {anchor} is for this: {use}; nothing on record takes it out of service."
    ),
    "anchor-use.out": "Anchor {anchor} is out of service.",
    "anchor-use.barred": "Anchor {anchor} is a {called}: no line of a stage may end there.",
    "anchor-use.not-for-it": "Anchor {anchor} is not for {use}; its papers allow: {uses}.",
    "anchor-use.missing": "What anchor {anchor} may be used for is not stated.",
    "anchor-use.conditional": "Anchor {anchor} is in service on a condition.",
    "anchor-use.off-roof": "By the plan anchor {anchor} does not stand on its roof.",
    "need.anchor-off-roof": (
        "Measure where anchor {anchor} stands again, and the outline of its roof."
    ),
    "anchor-use.two-tiebacks": (
        "Anchor {anchor} holds {lines}: their hoists are rated for {load} together."
    ),
    "alone.pass": "Nothing else goes to anchor {anchor}.",
    "alone.near": "Anchors {anchor} and {others} are {apart} apart: one thing, or two?",
    "need.anchors-apart": (
        "Measure anchors {anchor} and {others} again, which are {apart} apart, and tell them apart."
    ),
    "alone.shared": "Anchor {anchor} also holds {others}: the lifeline is not independent.",
    "tieback-end.pass": "The tieback ends on anchor {anchor}.",
    "tieback-end.fail": "The tieback ends on a {found}: nothing may be tied to it.",
    "tieback-end.refer": "The tieback ends on a {found}, which no paper rates.",
    "tieback-end.missing": "What the tieback ends on nobody stated.",
    "tieback-way.pass": (
        "By the plan tieback {tieback} passes everything; {obstacle} is nearest, {apart} away."
    ),
    "tieback-way.above": (
        "Tieback {tieback} was seen to pass above {obstacle}: it begins {bearing} above the roof,"
        " {obstacle} is {height} high."
    ),
    "tieback-way.word": (
        "Tieback {tieback} was seen to pass above {obstacle}, which stands in its way by the plan;"
        " how high both are is not stated."
    ),
    "tieback-way.in-the-way": (
        "By the plan {obstacle} stands in the way of tieback {tieback}, which is said to touch"
        " nothing. Look again how it passes, or put the plan right."
    ),
    "tieback-way.too-high": (
        "By the plan {obstacle} stands in the way of tieback {tieback}, {height} high; the tieback"
        " begins {bearing} above the roof. Look again how it passes, or put the plan right."
    ),
    "tieback-way.missing": (
        "Whether the plan shows {obstacle} in the way of tieback {tieback} is not known."
    ),
    "na.route-unsaid": "How the tieback runs nobody stated, which is asked by itself.",
    "na.not-straight": "The tieback does not run straight.",
    "na.ends-on-no-anchor": "The tieback ends on no anchor of the plan.",
    "na.no-obstacle": "The plan shows no obstacle on the roof.",
    "tieback-angle.pass": "Tieback {tieback} turns {angle} off straight back; one may {most}.",
    "tieback-angle.fail": (
        "Tieback {tieback} turns {angle} off straight back; one alone may only {most}."
    ),
    "tieback-angle.missing": "How far a tieback turns off straight back is not known.",
    "tieback-pair.pass": "The tiebacks hold as a pair; {tieback} turns {angle} off straight back.",
    "tieback-pair.fail": "Tieback {tieback} turns {angle} off straight back: it pulls outboard.",
    "outside.one_side": (
        "Two tiebacks at an angle on the same side: no pair, the beam is pulled sideways."
    ),
    "tieback-strength.pass": "The tieback carries {strength}; as strong as the rope is {required}.",
    "tieback-strength.fail": (
        "The tieback carries only {strength}; as strong as the rope is {required}."
    ),
    "tieback-strength.missing": "What the tieback carries, or has to carry, is not known.",
    "anchor-load.pass": "Anchor {anchor} is rated for {rated} in this use; {required} is asked.",
    "anchor-load.fail": (
        "Anchor {anchor} is rated for only {rated} in this use; {required} is asked."
    ),
    "anchor-load.missing": "What anchor {anchor} is rated for in this use is not known.",
    "anchor-direction.pass": (
        "The pull on anchor {anchor} is {off} off the direction of its rating, within {within}."
    ),
    "anchor-direction.fail": (
        "The pull on anchor {anchor} is {off} off the direction of its rating; it holds within"
        " {within}."
    ),
    "anchor-direction.missing": "In which direction anchor {anchor} may be pulled is not known.",
}
