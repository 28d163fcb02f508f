"""Sentences on the stage and its hoists: kinds, what was found where it hangs, its measures."""

from __future__ import annotations

STAGE: dict[str, str] = {
    "need.hot-work-lines": (
        "Say how the lifelines at stage {stage} are shielded from heat and sparks while there is"
        " hot work, and sign."
    ),
    "deck-clear.pass": "Apart from {other}.",
    "deck-clear.fail": (
        "The deck shares a strip of the face with {other}: the one on the left ends at {end}, the"
        " other begins at {begin}."
    ),
    "deck-clear.missing": "Whether another stage hangs in its strip of the face is not known.",
    "na.alone-at-edge": "No other stage hangs from this edge.",
    "hoist-rope.pass": "The hoist is made for rope of {made_for}; the rope is {diameter}.",
    "hoist-rope.fail": (
        "The hoist is made for rope of {made_for}, the rope is {diameter}: it slips, or the brake"
        " does not grip it."
    ),
    "hoist-rope.missing": "Which rope the hoist is made for, or which rope is in it, is not known.",
    "hoist-tested.pass": "The hoist's kind: {found}.",
    "hoist-tested.fail": "The hoist's kind: {found}; a qualified laboratory has to have tested it.",
    "hoist-tested.missing": "Whether a laboratory tested this kind of hoist nobody stated.",
    "second-brake.pass": "Besides its normal brake, one that: {found}.",
    "second-brake.fail": (
        "Besides its normal brake: {found}; one that acts by itself on overspeed is asked."
    ),
    "second-brake.missing": "Whether the hoist has a brake for overspeed nobody stated.",
    "hoists-alike.pass": "The hoists of stage {stage} are of one kind: {hoists}.",
    "hoists-alike.two": (
        "The hoists of stage {stage} are of several kinds: {hoists}; whether they run level a"
        " qualified person judges."
    ),
    "need.hoists-alike": (
        "Judge whether {hoists} lift stage {stage} level and hold it so, and sign for it."
    ),
    "control.pass": "Control of the hoists: {found}.",
    "control.fail": (
        "Control of the hoists: {found}; a laboratory has to have tested them wired like that."
    ),
    "control.missing": "Whether each hoist has its own control nobody stated.",
    "joints.pass": "Joints and pins between modules: {found}.",
    "joints.fail": "Joints and pins between modules: {found}. The stage can come apart.",
    "joints.missing": "What was found of the joints between modules nobody stated.",
    "fixed.pass": "Fixing to the stirrups: {found}.",
    "fixed.fail": "Fixing to the stirrups: {found}. The stage can come off them.",
    "fixed.missing": "Whether the stage is fixed to its stirrups nobody stated.",
    "guardrail.pass": "Guardrails on the open sides: {found}.",
    "guardrail.fail": (
        "Guardrails on the open sides: {found}. They are asked on every one, lifelines or not."
    ),
    "guardrail.missing": "Whether guardrails are on all open sides nobody stated.",
    "toeboard.pass": "Toeboards on the open sides: {found}.",
    "toeboard.fail": "Toeboards on the open sides: {found}. Tools and rubble can fall.",
    "toeboard.missing": "Whether toeboards are on the open sides nobody stated.",
    "along.pass": "Along its travel: {found}.",
    "along.fail": (
        "Along its travel: {found}. Where it catches, one line goes slack and the other has all;"
        " somebody has to say how it is kept clear."
    ),
    "along.missing": "Whether the stage can catch on something on its way nobody stated.",
    "sway.pass": "Against sway: {found}.",
    "sway.fail": "Against sway: {found}; what is accepted: {listed}.",
    "sway.missing": "What keeps the stage from swaying nobody stated.",
    "first-lift.pass": "First lift since the set-up: {found}.",
    "first-lift.fail": (
        "First lift since the set-up: {found}. It is lifted a few feet and both brakes tried"
        " before anybody rides higher."
    ),
    "first-lift.missing": "Whether the stage was tried a few feet up since set-up is not known.",
    "deck.pass": "Deck without gaps: {found}.",
    "deck.fail": "Deck without gaps: {found}. Feet or tools go through.",
    "deck.missing": "Whether the deck is whole nobody stated.",
    "level.pass": "The stage {found}.",
    "level.fail": "The stage {found}: loads slide, and one rope takes more than its share.",
    "level.missing": "Whether the stage runs level nobody stated.",
    "bow.pass": "The loaded stage {found}.",
    "bow.fail": "The loaded stage {found}: it is too weak or too long for its load.",
    "bow.missing": "How far the loaded stage bends nobody stated.",
    "drives.pass": "Drives of the hoists: {found}.",
    "drives.fail": "Drives of the hoists: {found}. Nobody rides with that.",
    "drives.missing": "Whether gears and brakes are enclosed nobody stated.",
    "hot-work.pass": "Welding or cutting from the stage: {found}.",
    "hot-work.fail": (
        "Welding or cutting from the stage: {found}. The current can go by the ropes and burn them."
    ),
    "hot-work.missing": "Whether anybody welds or cuts from the stage nobody stated.",
    "overhead.pass": "Above the riders: {found}.",
    "overhead.fail": (
        "Above the riders: {found}. It needs support lines of its own, as many and as strong as"
        " the suspension ropes."
    ),
    "overhead.missing": "Whether anything is built above the riders nobody stated.",
    "need.overhead": (
        "Judge what is above the riders of stage {stage} and how they are held there without a"
        " lifeline through it, and sign for it."
    ),
    "listed.pass": "Listing of the stage: {found}.",
    "listed.fail": "Listing of the stage: {found}; one of light metal has to be listed.",
    "listed.missing": "Whether the stage was tested and listed nobody stated.",
    "listed-contradicts.missing": (
        "By its name the stage is of light metal; that it is not cannot be so."
    ),
    "stage-width.pass": "The stage is {width} wide; at most {most}.",
    "stage-width.refer": (
        "The stage is {width} wide, more than {most}: that needs the design of a qualified person."
    ),
    "stage-width.missing": "How wide the stage is is not known well enough.",
    "need.stage-width": "Say that stage {stage} was designed to be stable at its width, and sign.",
    "stage-narrow.pass": "The stage is {width} wide; at least {least}.",
    "stage-narrow.fail": "The stage is only {width} wide; at least {least} is asked.",
    "stage-narrow.missing": "Whether the stage is wide enough is not known.",
    "stage-short.pass": "The stage is {length} long and hangs from points {apart} apart.",
    "stage-short.fail": (
        "The stage is {length} long and hangs from points {apart} apart: one of the two is wrong."
    ),
    "stage-short.missing": "Whether the stage is as long as its stirrups are apart is not known.",
    "stage-beyond.pass": "The deck stands {out} out beyond each line; at most {most}.",
    "stage-beyond.refer": (
        "The deck stands {out} out beyond each line, more than {most}: that needs the word of a"
        " qualified person."
    ),
    "stage-beyond.missing": "How far the deck stands out beyond its lines is not known.",
    "need.stage-beyond": "Say that stage {stage} may stand out so far beyond its lines, and sign.",
    "most-load.pass": "{intended} of people and material; the stage's plate allows {most}.",
    "most-load.fail": "{intended} of people and material; the stage's plate allows only {most}.",
    "most-load.missing": "What the stage may carry cannot be held against what it is to carry.",
    "rail-height.pass": "The top rail is {height} above the deck; at least {least}.",
    "rail-height.fail": "The top rail is only {height} above the deck; at least {least} is asked.",
    "rail-height.missing": "How high the top rail is is not known.",
    "rail-high.pass": "The top rail is {height} above the deck; at most {most}.",
    "high-rail.pass": "The top rail is higher than usual: {found}.",
    "high-rail.fail": "The top rail is higher than usual, and {found}.",
    "high-rail.missing": (
        "The top rail is higher than usual, and whether it meets all else that is asked of a"
        " guardrail nobody stated since its height was taped."
    ),
    "rail-lacks.fail": "Of the top rail somebody saw: {found}.",
    "plate-state.pass": "Its plate or stamp: {found}.",
    "plate-state.fail": "Its plate or stamp: {found}. What is read from it nobody can look up.",
    "test.failed": "{what} of {unit} did not hold.",
    "test.named-failed": "By its name, {what} of {unit} may have failed; nobody stated its end.",
    "brake-test.lapses": (
        "The last test of the secondary brake of {unit} is of {at}; one counts for {most} days, and"
        " the work is planned to {ends}."
    ),
    "to-face.pass": "The stage's inner edge hangs {apart} from the face; at most {most}.",
    "to-face.missing": "How far from the face the stage hangs is not known.",
    "face-side.pass": "On the side of the face: {found}.",
    "need.face-open": (
        "Say that riders of stage {stage} who are tied need no rail on the side of the face, and"
        " sign."
    ),
    "face-side.fail": (
        "On the side of the face: {found}, and the stage hangs too far from it: a rail or a tie"
        " for every rider is asked."
    ),
    "face-side.missing": (
        "The stage hangs too far from the face, and what keeps riders from falling there nobody"
        " stated."
    ),
}
