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
}
