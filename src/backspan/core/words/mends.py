"""What mends a refused drop, in English: by the margin that is used up, else by what was found.

Common practice, no source: who may mend it decides how.
"""

from __future__ import annotations

#: One change of the rig, by the id of the margin that is used up.
BY_MARGIN: dict[str, str] = {
    "pieces-spare": "add {value} pieces",
    "no-number-of-pieces": "no number of pieces on this beam is enough",
    "more-reach": "take {value} off the reach",
    "less-backspan": "lengthen the backspan by {value}",
    "fulcrum-inboard": "move the fulcrum {value} outboard",
    "most-rated-load": "use hoists rated for up to {value}",
    "most-stall-load": "use hoists that stall at up to {value}",
    "hoists-that-do": "use hoist {value}",
}

#: What mends a finding that has no margin, by its message.
BY_MESSAGE: dict[str, str] = {
    "rig.moved": "Review the rig where it hangs now.",
    "support.several": "Record each point with the one support it hangs on.",
    "stage-on-point.several": "Hang one stage from each point.",
    "stage-hangs.one": "Hang the stage from two points.",
    "tipping.does-not-hold": "Change the beam, its counterweight or the hoist; have it reviewed.",
    "tipping.no-pieces": "Put the counterweight on the beam, and have it reviewed.",
    "stall-cap.fail": "Use a hoist that stalls at no more than the most allowed.",
    "stack-fits.fail": "Use fewer or shorter pieces, or a longer beam.",
    "backspan-fits.fail": "Measure backspan, reach and beam again.",
    "stack-stands.fail": "Measure again where the stack lies, or use a longer beam.",
    "outside.inboard": "Move the beam inboard until its counterweight holds it down.",
    "outside.reach": "Measure the reach again.",
    "outside.rear_stand": "Measure the place of the rear stand again.",
    "outside.front": "Measure where the rear stand stands.",
    "outside.plate": "Measure the plate under the fulcrum again.",
    "outside.backspan": "Put the counterweight inboard of the fulcrum.",
    "outside.line": "Move the line out from the face, or measure reach and setback again.",
    "plan.over": "State a plan for the days of work.",
    "designer.fail": "Have the rig designed by one who may.",
    "anchor-dates.refused": "Have the anchor inspected or tested, or tie to another.",
    "unit.twice": "Name the thing that hangs here: it cannot hang in two places.",
    "unit.lot-too-small": "Count the lot again, or name the lots the pieces are of.",
    "condition.fail": "Put a sound one in its place, and have it looked at.",
    "test.over": "Have it tested, or put a tested one in its place.",
    "beam-clear.fail": "Raise the beam above the parapet, or measure both again.",
    "strip.outside": "Move the line into the drop, or measure its station again.",
    "spacing.fail": "Move the lines until they hang over the stirrups.",
    "hoists-in-sum.fail": "Take load off the stage, or use hoists that lift more.",
    "hoists-by-half.fail": "Take load off the stage, or use hoists that lift more.",
    "anchor-use.out": "Tie to an anchor that is in service.",
    "anchor-use.not-for-it": "Tie to an anchor whose papers allow it.",
    "tieback-end.fail": "Tie to an anchor whose papers allow it, or to structure that is judged.",
    "tieback-angle.fail": "Tie straight back, or with a pair from both sides of the beam.",
    "tieback-pair.fail": "Tie back to what lies inboard of the beam.",
    "outside.one_side": "Put one of the pair on the other side of the beam.",
    "tieback-strength.fail": "Use a tieback and ends as strong as the suspension rope.",
    "anchor-load.fail": "Tie to an anchor that is rated for it.",
    "anchor-direction.fail": "Tie to an anchor that is rated for this direction of pull.",
    "alone.shared": "Give each lifeline an anchor of its own.",
    "edge-protection.low": "Hold those who rig at the edge, in writing how.",
    "seen.fail": "Put it right, and look again.",
    "heads.fail": "Add a sound lifeline for each rider, or fewer riders.",
    "label-state.fail": "Use a beam whose label can be read.",
    "label-limit.fail": "Take pieces off or use a beam that may carry them; have it reviewed.",
    "label-limit-mass.fail": "Take pieces off or use a beam that may carry them; have it reviewed.",
    "proportion.fail": "Shorten the arm outboard or lengthen the beam inboard; have it reviewed.",
    "rope.fail": "Use a stronger rope or rope end, or a smaller hoist; have it reviewed.",
    "bearing.fail": "Spread the load with a larger plate, or bear on what carries it.",
    "flowable.fail": "Use pieces made as counterweight that cannot flow.",
    "purpose-made.fail": "Use pieces made as counterweight.",
    "marking.fail": "Use pieces stamped with their mass, or weigh and mark them.",
    "fastening.fail": "Hold the pieces the way the rule asks, and look again.",
}
