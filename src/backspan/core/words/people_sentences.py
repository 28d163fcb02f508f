"""Sentences on people and loads: the share of each hoist, the steps of the work."""

from __future__ import annotations

PEOPLE: dict[str, str] = {
    "share.not-on-two": "{stage} hangs from {points}: statics alone tells of two points only.",
    "share-anywhere.pass": (
        "With all of it at one end the {side} hoist carries {load}; it is rated for {rated}."
    ),
    "share-anywhere.unplaced": (
        "With all of it at one end the {side} hoist would carry {load}, rated for {rated}: who"
        " stands where, and what lies where, has to be said step by step."
    ),
    "share-anywhere.missing": "What comes on each hoist cannot be told from what is stated.",
    "taut-anywhere.pass": (
        "All of it at one end takes {lifted} off the other line, which {held} holds taut."
    ),
    "taut-anywhere.unplaced": (
        "All of it at one end takes {lifted} off the other line, which only {held} holds taut: who"
        " stands where has to be said step by step."
    ),
    "taut-anywhere.missing": "Whether a line goes slack cannot be told from what is stated.",
    "share-in-step.pass": (
        "The {side} hoist carries {load} at the most, in step {step}; it is rated for {rated}."
    ),
    "share-in-step.fail": (
        "In step {step} the {side} hoist carries {load}; it is rated for only {rated}."
    ),
    "share-in-step.missing": "What comes on each hoist in some step cannot be told.",
    "taut-in-step.pass": (
        "Step {step} takes the most off a line, {lifted}; {held} holds that line taut."
    ),
    "taut-in-step.fail": (
        "In step {step} what stands beyond the {side} line takes {lifted} off the other, which only"
        " {held} holds taut: that line goes slack."
    ),
    "taut-in-step.missing": "Whether a line goes slack in some step cannot be told.",
    "riders-weight.pass": "The riders weigh {people} of the {intended} that is intended.",
    "riders-weight.fail": "The riders weigh {people}; only {intended} is intended, with all else.",
    "riders-weight.missing": "How many ride, or what is intended on the stage, is not stated.",
    "step-load.pass": "{load} is on the stage at the most, in step {step}; {intended} is intended.",
    "step-load.fail": "{load} is on the stage in step {step}; only {intended} is intended.",
    "step-load.missing": "What is on the stage in some step, or may be, is not known.",
    "steps-with-all.pass": "The steps have all who ride, {riders}, and no more on all stages.",
    "steps-with-all.fail": "The fullest steps of all stages have {people} people; {riders} ride.",
    "steps-with-all.missing": "How many ride is not stated; a step has to have all of them.",
    "one-load.pass": "The most that lies at one place of the stage is {load}, in step {step}.",
    "one-load.refer": (
        "In step {step} {load} stands at one place; a deck is taken to carry {most} there."
    ),
    "one-load.missing": "What lies at one place of the stage is not known to its weight.",
    "need.one-load": "Say that the deck of stage {stage} carries it at one place, and sign.",
    "step-on-deck.pass": "Everything that is placed is on the deck.",
    "step-on-deck.fail": (
        "In step {step} something is {off} from the middle of the stage, whose deck ends at {half}."
    ),
    "step-on-deck.missing": "Whether all that is placed is on the deck cannot be told.",
}
