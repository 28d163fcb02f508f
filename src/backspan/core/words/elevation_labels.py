"""The fixed words of an elevation, in English, by id."""

from __future__ import annotations

ELEVATION: dict[str, str] = {
    "elevation": "Elevation {roof} {edge}",
    "elevation_name": "Elevation: edge {edge}, {roof}",
    "elevation_title": "{site}: elevation of edge {edge}, {roof}",
    "elevation_told": (
        "Elevation of the facade under edge {edge} of {roof} at {site}, seen from outside, to"
        " scale. Drops from left to right: {answers}."
    ),
    "seen_from_outside": (
        "Seen from outside: left and right are exchanged against the view from the roof, and the"
        " edge begins at the right."
    ),
    "edge_looks_to": "It faces {faces}.",
    "edge_looks_unstated": "What it faces is not stated.",
    "start_of_edge": "start of edge {edge}",
    "end_of_edge": "end of edge {edge}",
    "ground_datum": "ground datum",
    "level_of_roof": "roof level",
    "top_of_parapet": "top of parapet",
    "drop_height_not_stated": "height not stated",
    "clear_below_of": "{length} clear",
    "clear_below_not_stated": "clear below not stated",
    "way_down": "way down: {found}",
    "way_down_not_stated": "way down: not stated",
    "standing_framed": "Below the answer: where the drop stands by the record of the day.",
    "standing_left_out": "Where each drop stands on a day is in the record, not on this sheet.",
    "stage_drawn": "A stage is dashed below its points: how high it hangs is not stated.",
    "below_datum": "Stated lengths of these drops reach below the ground datum: {drops}.",
    "no_ground": "The roof is not above the ground datum: where the ground lies is not known.",
}
