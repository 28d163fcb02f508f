"""The fixed words of the sheet for the structural engineer, in English."""

from __future__ import annotations

REACTIONS: dict[str, str] = {
    "reactions": "Reactions for the structural engineer",
    "reactions_told": (
        "What each counterweighted beam presses on the roof. It says nothing of what the roof"
        " carries: that is the structural engineer's answer, in the space at the end."
    ),
    "stand": "Stands on",
    "fulcrum": "fulcrum",
    "rear": "rear stand",
    "at_plan": "Plan x, y",
    "plate": "Plate; surface said to carry",
    "on_pad": "on a pad",
    "idle": "Idle",
    "at_rated": "At rated load",
    "with_factor": "With the rule's factor",
    "most": "Most in service",
    "assumed": "What is assumed",
    "assumed_told": (
        "Values as stated, no tolerance added. A rigid beam on two supports: moments about"
        " the fulcrum, then vertical forces; level roof, vertical lines, no impact, no wind."
        " The load on the line is the rated or the stall load of its hoist; no rope is added"
        " to it. Weights at 9.80665 m/s2. Most in service: on the fulcrum the rated load, the"
        " counterweight and the beam together, as if the tail were about to lift; on the rear"
        " stand with nothing on the line. The rule's factor goes on what the stand carries"
        " under the load the rule names; behind, on what lies there idle, which is this"
        " program's strict reading. Of a backspan known two ways each stand is told by the one"
        " that presses it more. Plan coordinates: the site's own datum, from edge, station and"
        " setback. A dash: not stated, or not known from it."
    ),
    "engineers_answer": "The structural engineer's answer",
    "engineers_answer_told": (
        "For the drops, limits and days written here, and for nothing else. A limit left"
        " blank is none."
    ),
    "paper_number": "Drawing or letter, revision",
    "valid_until": "Valid until",
    "for_drops": "For drops",
    "most_reach": "Reach, at most",
    "least_backspan": "Backspan, at least",
    "most_rated": "Rated load, at most",
    "most_front": "On a fulcrum, at most, no factor",
    "most_rear": "On a rear stand, at most, no factor",
    "kinds_named": "Hoists and beams",
}
