"""The fixed words of drawings for joints, softeners and details, in English, by id."""

from __future__ import annotations

DETAILS: dict[str, str] = {
    # joints between the sections of a beam, softeners where a line passes an edge
    "joint": "Joint {joint}",
    "joint_from_tail": "Joint {joint} from tail",
    "joint_of": "Joint {joint} of {points}",
    "from_tail": "{length} from the tail",
    "distance_not_measured": "distance from the tail not measured",
    "joint_pins": "pins {pins}",
    "joint_marks": "marks: {marks}",
    "joint_order": "sections: {order}",
    "joints_not_stated": "Joined of sections: joints not stated",
    "seen_by": "seen by {who}",
    "seen_by_nobody": "who saw it: not stated",
    "legend_joint": "Joint of sections",
    "softener": "Softener of {lines}: {found}.",
    "legend_softener": "Softener at an edge",
    # the detail sheet: bearings, lines, schedule
    "legend_plate": "Plate, pad, foot",
    "bearing_front": "Front bearing",
    "bearing_rear": "Rear bearing",
    "roof_surface": "Roof",
    "top_of_parapet": "Top of the parapet",
    "surface_not_stated": "Surface not stated",
    "fulcrum_not_stated": "Fulcrum not stated",
    "stand_behind": "Stand behind",
    "pad_of": "Pad under it: {sides}",
    "plate_of": "Plate: {sides}",
    "carries": "carries {pressure}",
    "carries_not_stated": "what it carries is not stated",
    "beam_type": "Beam, type {beam}",
    "section_shape": "shape {shape}",
    "depth_not_stated": "depth not stated",
    "deep": "{depth} deep",
    "no_bearing": "No beam of this drop bears on the roof as this program draws it.",
    "tieback_of": "Tieback {tieback}, point {point}",
    "line_of": "Upper end of the suspension line at {point}",
    "run": "run: {run}",
    "softener_is": "softener: {found}",
    "ending": "end: {kind}",
    "clips": "clips: {clips}",
    "clips_are": "{count}, spaced {spacing}, turned back {turnback}",
    "hardware_not_stated": "connecting hardware not stated",
    "no_hardware": "no connecting hardware",
    "line": "Line",
    "kind": "Kind",
    "diameter": "Diameter",
    "construction": "Construction",
    "termination": "Termination",
    "clips_head": "Clips",
    "length": "Length",
    "ends_at": "Ends at",
    "line_short": "Line {point}",
    "tieback_short": "Tieback {tieback}",
    "lifeline_short": "Lifeline {line}",
    "hardware_short": "Hardware {point}",
    "point_short": "point {point}",
    "letters": (
        "A letter behind a value tells how it is known: {letters}; a dash: nobody said how."
    ),
    "details": "Details {drop}",
    "details_name": "Details: drop {drop}",
    "details_title": "{site}: details of drop {drop}",
    "details_told": (
        "Bearings of drop {drop} at {site} to scale, its lines from end to end, and "
        "their schedule. Answer: {answer}."
    ),
    "details_scale": (
        "To scale: plates, pads, the depth of beams, a height with its dimension. All else is not."
    ),
    "lines_left_out": "Not drawn, for want of room: {lines}.",
    # the plan of reactions
    "reaction_front": "{point} front",
    "reaction_rear": "{point} rear",
    "reaction_most": "most {load}",
    "reaction_factored": "x {factor}: {load}",
    "reactions_name": "Reactions on the roof: {roof}",
    "reactions_sheet": "Reactions {roof}",
    "reactions_title": "{site}: reactions on {roof}",
    "reactions_told": (
        "Roof plan of {roof} at {site}, to scale, with what each stand presses on it."
    ),
    "reactions_read": (
        "Most: the largest in service. With a factor: what the rules ask. The table governs."
    ),
}
