"""Sentences on the suspension line: its hardware, its end, its clips, its wear and its length."""

from __future__ import annotations

LINE: dict[str, str] = {
    "hardware.pass": "It carries {strength}; {required} is asked ({factor} x {load}).",
    "hardware.fail": "It carries only {strength}; {required} is asked ({factor} x {load}).",
    "hardware.missing": "What this piece of hardware carries, or must carry, is not known.",
    "hardware.unsaid": "Nobody stated what joins the rope's end to its support.",
    "hardware.none": (
        "No connecting hardware is stated: an eye or a socket needs a piece that joins it to"
        " its support."
    ),
    "connector.pass": "The piece was found: {found}.",
    "connector.fail": "The piece was found: {found}. Nobody rides until it is put right.",
    "connector.missing": "Nobody stated in what state the piece was found.",
    "pin.pass": "Its pin or latch: {found}.",
    "pin.fail": "Its pin or latch: {found}. It can come out.",
    "pin.missing": "How its pin or latch is held nobody stated.",
    "thimble.pass": "Thimble in the rope's eye: {found}.",
    "thimble.fail": (
        "Thimble in the rope's eye: {found}. This end needs one that is there and sound."
    ),
    "thimble.missing": "Whether a thimble is in the rope's eye nobody stated.",
    "end-clips.pass": "The rope ends in no refused clips: {found}.",
    "end-clips.fail": "The rope ends in {found}: refused where a hoist's rope hangs.",
    "end-clips.missing": "What the rope's end is made with is not stated.",
    "end-knot.pass": "The rope ends in no knot: {found}.",
    "end-knot.fail": "The rope ends in a {found}: that holds no hoist's rope.",
    "end-knot.missing": "Whether the rope ends in a knot is not stated.",
    "end-maker.pass": "The rope's end was made by: {found}.",
    "end-maker.fail": "The rope's end was made by: {found}; who may: {listed}.",
    "end-maker.missing": "Who made the rope's end is not stated.",
    "end-fits.pass": "The rope's end is made for {made_for}; the rope is {diameter}.",
    "end-fits.fail": (
        "The rope's end is made for {made_for}; the rope is {diameter}: it does not hold that rope."
    ),
    "end-fits.missing": (
        "For which diameter the rope's end is made, or the rope's own, is not stated."
    ),
    "clip-count.pass": "Clips at the rope's end: {count}; at least {least} are asked.",
    "clip-count.fail": "Clips at the rope's end: only {count}; at least {least} are asked.",
    "clip-count.missing": (
        "The clips cannot be counted against their maker's sheet from what is stated."
    ),
    "clip-spacing.pass": (
        "The clips are {apart} apart; at least {least} is asked ({factor} rope diameters)."
    ),
    "clip-spacing.fail": (
        "The clips are only {apart} apart; at least {least} is asked ({factor} rope diameters)."
    ),
    "clip-spacing.missing": "How far apart the clips are, or must be, is not known.",
    "clip-turnback.pass": "Rope turned back at the clips: {turned}; at least {least} is asked.",
    "clip-turnback.fail": (
        "Rope turned back at the clips: only {turned}; at least {least} is asked."
    ),
    "clip-turnback.missing": "How much rope is turned back at the clips, or must be, is not known.",
    "clip-torque.pass": "The clips are tightened with {torque}; their maker asks for {makers}.",
    "clip-torque.fail": (
        "The clips are tightened with {torque}; their maker asks for {makers}, and more than"
        " {most} is too much."
    ),
    "clip-torque.missing": "With what torque the clips are tightened, or must be, is not known.",
    "saddle.pass": "Saddles of the clips: {found}.",
    "saddle.fail": "Saddles of the clips: {found}. They must lie: {listed}.",
    "saddle.missing": "On which end the saddles of the clips lie nobody stated.",
    "tightened.pass": "The clips were tightened {found}.",
    "tightened.fail": "The clips were tightened: {found}. Asked is: {listed}.",
    "tightened.missing": "Since when the clips were tightened nobody stated.",
    "broken-in-lay.pass": (
        "Broken wires in one lay of the rope: {count}; with {limit} it is replaced."
    ),
    "broken-in-lay.fail": (
        "Broken wires in one lay of the rope: {count}; with {limit} it is replaced."
    ),
    "broken-in-lay.missing": (
        "How many wires of one lay are broken nobody stated of this very rope."
    ),
    "broken-in-strand.pass": (
        "Broken wires in one strand of one lay: {count}; with {limit} the rope is replaced."
    ),
    "broken-in-strand.fail": (
        "Broken wires in one strand of one lay: {count}; with {limit} the rope is replaced."
    ),
    "broken-in-strand.missing": (
        "How many wires of one strand are broken nobody stated of this very rope."
    ),
    "wire-worn.pass": (
        "Gone of an outside wire's diameter: {share}; with {limit} the rope is replaced."
    ),
    "wire-worn.fail": (
        "Gone of an outside wire's diameter: {share}; with {limit} the rope is replaced."
    ),
    "wire-worn.missing": "How far the outside wires are worn nobody stated of this very rope.",
    "rope-damage.pass": "Damage of the rope: {found}.",
    "rope-damage.fail": "Damage of the rope: {found}. It is replaced.",
    "rope-damage.missing": "Whether the rope has other damage nobody stated of this very rope.",
    "rope-length.pass": "{length} of rope; {needed} reaches the level below.",
    "rope-length.fail": (
        "Only {length} of rope; {needed} reaches the level below, and no sound stop is at its end."
    ),
    "rope-length.missing": (
        "Whether the rope reaches the level below is not known, and no sound stop at its end"
        " is stated."
    ),
    "drum-turns.pass": (
        "{count} turns of rope on the drum with the stage at its lowest point; at least {least}."
    ),
    "drum-turns.fail": (
        "Only {count} turns of rope on the drum with the stage at its lowest point; at least"
        " {least} stay on it."
    ),
    "drum-turns.missing": (
        "How many turns of rope stay on the drum with the stage at its lowest point is not known."
    ),
    "hoist-rope.missing": (
        "Whether hoist {hoist} climbs its rope or winds it on a drum nobody stated; somebody must"
        " say which."
    ),
    "end-stop.pass": "Stop at the rope's lower end: {found}.",
    "na.no-clips": "The rope's end is not made with clips.",
    "na.no-wire-rope": "Not a wire rope.",
}
