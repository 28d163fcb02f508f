"""Sentences on what arrests a fall: the lifeline, its grab, its rider's lanyard, the clearance."""

from __future__ import annotations

FALL: dict[str, str] = {
    "lifeline-way.pass": "By the plan nothing stands in the way of lifeline {line}.",
    "lifeline-way.in-the-way": "By the plan lifeline {line} runs over or round: {obstacles}.",
    "need.lifeline-way": (
        "Look at how lifeline {line} passes {obstacles}: lead it elsewhere or protect it there, and"
        " sign for it."
    ),
    "na.line-not-placed": "Where the lifeline passes the edge is not stated.",
    "roof-below.pass": (
        "Roof {roof} lies {there} below; the drop goes down {down} with what is clear below it."
    ),
    "roof-below.fail": (
        "Roof {roof} lies only {there} below; the drop and what is said to be clear below it are"
        " {down}: a fall may end on that roof."
    ),
    "roof-below.missing": "Whether the drop ends above roof {roof} is not known.",
    "na.no-roof-below": "The plan shows no lower roof under the drop.",
    "lifeline-strength.pass": "The lifeline carries {strength} at its end; {least} is asked.",
    "lifeline-strength.fail": (
        "The lifeline carries only {strength} at its end; {least} is asked."
    ),
    "lifeline-strength.missing": "What the lifeline carries at its end is not known.",
    "lanyard-strength.pass": "It carries {strength}; {least} is asked.",
    "lanyard-strength.fail": "The lanyard carries only {strength}; {least} is asked.",
    "lanyard-strength.missing": "What the lanyard with its hooks carries is not known.",
    "lifeline-rope.pass": "Found: {found}.",
    "lifeline-rope.fail": "The lifeline's rope: {found}, which holds no life.",
    "lifeline-rope.refer": (
        "The lifeline's rope: {found}; whether its grab and its absorber are made for that no word"
        " says."
    ),
    "need.lifeline-of-wire": (
        "A lifeline of wire: a qualified person says that line, grab and shock absorber of {line}"
        " are made for each other."
    ),
    "lifeline-rope.missing": "Of which rope the lifeline is nobody stated.",
    "life-end-kind.pass": "The lifeline ends in: {found}.",
    "life-end-kind.fail": "The lifeline ends in: {found}; what holds such a rope: {listed}.",
    "life-end-kind.missing": "What the lifeline's end is made with nobody stated.",
    "life-end-maker.pass": "The lifeline's end was made by: {found}.",
    "life-end-maker.fail": "The lifeline's end was made by: {found}; who may: {listed}.",
    "life-end-maker.missing": "Who made the lifeline's end nobody stated.",
    "life-end-fits.pass": "The lifeline's end is made for {made_for}; the rope is {diameter}.",
    "life-end-fits.fail": (
        "The lifeline's end is made for {made_for}; the rope is {diameter}: it does not hold that"
        " rope."
    ),
    "life-end-fits.missing": (
        "For which diameter the lifeline's end is made, or that of its rope, is not stated."
    ),
    "lifeline-grab.pass": "Found: {found}.",
    "lifeline-grab.fail": "Grab on the lifeline: {found}; it may not hold.",
    "lifeline-grab.missing": "How the grab sits on the lifeline nobody stated.",
    "grab-height.pass": "The rider keeps the grab {found}.",
    "grab-height.fail": "The rider keeps the grab {found}: the free fall grows with that.",
    "grab-height.missing": "Where the rider keeps the grab nobody stated.",
    "lifeline-swing.pass": "Found: {found}.",
    "lifeline-swing.fail": "Found: {found}. A fall swings, and ends lower than it began.",
    "lifeline-swing.aside": (
        "Found: {found}. The line goes over the edge at {station}, beside the drop: whoever falls"
        " swings."
    ),
    "lifeline-swing.far": (
        "Found: {found}. In step {step}, on {stage}, not everybody who is placed stays within"
        " {most} of a line of their own: whoever falls swings."
    ),
    "lifeline-swing.missing": "How far to the side of the lifeline its rider works nobody stated.",
    "rider-harness.pass": "Found: {found}.",
    "rider-harness.fail": "Harness or lanyard: {found}. It is out of use.",
    "rider-harness.missing": "Whether harness and lanyard were looked at nobody stated.",
    "rider-hooks.pass": "Found: {found}.",
    "rider-hooks.fail": "Hooks and links: {found}. It can come off in a fall.",
    "rider-hooks.missing": "How the hooks between harness and lifeline close nobody stated.",
    "lifeline-low-end.pass": "Found: {found}.",
    "lifeline-low-end.fail": "The lifeline ends {found}: a grab runs off it there.",
    "lifeline-low-end.missing": "Where the lifeline ends below nobody stated.",
    "lifeline-splices.pass": "Found: {found}.",
    "lifeline-splices.fail": "The lifeline is {found} below its end: the grab stops short there.",
    "lifeline-splices.missing": "Whether a knot or a splice is in the lifeline nobody stated.",
    "lifeline-tied.pass": "The rider's lanyard is tied {found}.",
    "lifeline-tied.fail": "The rider's lanyard is tied {found}: it falls with the stage.",
    "lifeline-tied.refer": (
        "The rider's lanyard is tied {found}; whether those are as many and as strong as the"
        " suspension ropes and lock by themselves no word says."
    ),
    "lifeline-tied.missing": "What the rider's lanyard is tied to nobody stated.",
    "need.tied-to-stage": (
        "Judge the independent support lines and the locks that stand for lifeline {line}, and"
        " sign for them."
    ),
    "lifeline-overhead.pass": "Above {stage}: {found}.",
    "lifeline-overhead.fail": (
        "Above the riders of {stage}: {found}. A vertical line holds nobody there."
    ),
    "lifeline-overhead.refer": (
        "Above the riders of {stage}: {found}. A vertical line does not count there."
    ),
    "lifeline-overhead.missing": "What is above the riders of {stage} nobody stated.",
    "need.held-under": (
        "How riders under {stage}'s second level are held in place of {line}: vertical lines do"
        " not count there."
    ),
    "lifeline-ledge.pass": "Along {stage}: {found}.",
    "lifeline-ledge.fail": "Along the way of {stage}: {found}. A rider may fall onto it.",
    "lifeline-ledge.refer": (
        "Along the way of {stage}: {found}. What is there a rider may fall onto, above all that is"
        " clear below the drop."
    ),
    "lifeline-ledge.missing": "What {stage} passes, onto which a rider may fall, nobody stated.",
    "need.past-ledge": (
        "Say that a fall from {stage} on {line} ends above all that the stage passes, or how else"
        " riders are held there."
    ),
    "free-fall.pass": "The rider falls freely {found} at the most; {most} is allowed.",
    "free-fall.fail": "The rider falls freely {found}; only {most} is allowed.",
    "free-fall.missing": "How far the rider would fall freely is not known.",
    "deceleration.pass": "The lanyard's absorber opens by {found}; {most} is allowed.",
    "deceleration.fail": "The lanyard's absorber opens by {found}; only {most} is allowed.",
    "deceleration.missing": "By how much the lanyard's absorber opens is not stated.",
    "arrest-force.pass": "The lanyard arrests with {found} at the most; {most} is allowed.",
    "arrest-force.fail": "The lanyard arrests with {found}; only {most} is allowed.",
    "arrest-force.missing": "With what force the lanyard arrests a fall is not stated.",
    "absorber.pass": (
        "To stop a rider of {rider} the absorber has to open by {needed}; it opens by {found}."
    ),
    "absorber.fail": (
        "To stop a rider of {rider} the absorber has to open by {needed}; it opens by {found} only."
    ),
    "absorber.missing": "Whether the absorber opens far enough to stop its rider is not known.",
    "outside.force_left": (
        "The absorber opens at no more than its rider's weight: it stops nobody. Look at its label"
        " again."
    ),
    "line-angle.pass": (
        "From its anchor to the edge the lifeline turns {off} off the perpendicular; {most} is"
        " allowed."
    ),
    "line-angle.fail": (
        "From its anchor to the edge the lifeline turns {off} off the perpendicular, with {most}"
        " allowed: it slides along the edge, and whoever falls swings."
    ),
    "line-angle.missing": "Where the lifeline passes the edge nobody stated.",
    "fall-clearance.pass": (
        "A fall takes {needed} below the feet; the deck is {there} above the level below. A fall"
        " is in time from {lowest} on."
    ),
    "fall-clearance.fail": (
        "A fall takes {needed} below the feet, and the deck comes down to {there} above the level"
        " below. A fall is in time only from {lowest} on."
    ),
    "fall-clearance.missing": (
        "Whether a fall is stopped above the level below cannot be worked out from what is stated."
    ),
}
