"""The fixed words of drawings, in English: names, heads of tables, notes, by id."""

from __future__ import annotations

from backspan.core.words.detail_labels import DETAILS
from backspan.core.words.elevation_labels import ELEVATION

DRAWING: dict[str, str] = {
    **DETAILS,
    **ELEVATION,
    # what nobody stated, measured or reviewed
    "not_measured": "not measured",
    "not_stated": "not stated",
    "not_reviewed": "not reviewed",
    "no_finding": "no finding",
    "not_judged": "not judged by this program",
    "evidence_not_stated": "evidence not stated",
    "evidence_not_measured": "{evidence}, not measured",
    "worked_out": "worked out, not measured",
    "length_worked_out": "{length} worked out",
    "length_not_measured": "{name} not measured",
    # the building
    "edge": "Edge {edge}",
    "faces": "faces {faces}",
    "parapet": "parapet",
    "parapet_of": "parapet ({material})",
    "parapet_high": "parapet {high}",
    "parapet_not_stated": "parapet: not stated",
    "high": "{height} high",
    "thick": "{thickness} thick",
    "height_not_measured": "height not measured",
    # a support
    "beam": "Beam {tags}:",
    "beam_not_measured": "Beam {tags}: length not measured",
    "type": "{tags}, type {types}",
    "tip_beyond_line": "Tip beyond line",
    "tail_gap": "Tail gap",
    "reach": "Reach",
    "backspan": "Backspan",
    "setback": "Setback",
    "setback_not_measured": "Setback not measured: place on the roof not known",
    "fulcrum": "Fulcrum",
    "on_the_parapet": "On the parapet",
    "kind_high": "{kind} {height} high",
    "kind_not_measured": "{kind}: height not measured",
    "rear_stand": "Rear stand, from the fulcrum",
    "rear_stand_at": "Rear stand {length}",
    "planned": "planned",
    "one_piece": "1 piece",
    "pieces": "{count} pieces",
    "pieces_of": "{pieces} of {mass}",
    "no_pieces": "no pieces",
    "held": "held: {fastening}",
    "stack_not_measured": "length of the stack not measured",
    "support_not_stated": "Support not stated",
    "reach_of": "reach {length}",
    "backspan_of": "backspan {length}",
    "reach_not_measured": "reach not measured",
    "paper": "paper: {paper}",
    # what hangs, and what holds back
    "suspension_line": "Suspension line",
    "rope": "rope {rope}",
    "hoist": "hoist {hoist}",
    "rated_load": "rated load {load}",
    "stall_load": "stall load {load}",
    "stage": "Stage {stage}",
    "stage_not_stated": "Stage not stated",
    "long": "{length} long",
    "wide": "{width} wide",
    "width_not_stated": "width not stated",
    "no_tieback": "No tieback stated",
    "anchor_not_to_scale": "not to scale",
    "tie_start_not_stated": "made fast: not stated",
    "to_anchor": "to anchor {anchor}",
    "to_other": "to: {end}",
    "tieback_to": "tieback {tieback} {end}",
    "angle_not_known": "{tieback}: angle not known",
    "station_not_stated": "station not stated",
    # titles of views and drawings
    "point_title": "Suspension point {point}",
    "points_title": "Suspension points {points} and {last}, alike",
    "section": "Section {drop}",
    "section_name": "Section: drop {drop}",
    "section_title": "{site}: section of drop {drop}",
    "section_told": (
        "Section through drop {drop} at {site}, to scale, with {count} suspension points."
        " Answer: {answer}."
    ),
    "section_figure_told": (
        "Section through drop {drop} at {site}, to scale; suspension points: {points}."
        " Answer: {answer}."
    ),
    "no_points": "none",
    "plan": "Plan {roof}",
    "plan_name": "Roof plan: {roof}",
    "plan_title": "{site}: roof plan, {roof}",
    "plan_told": (
        "Roof plan of {roof} at {site}, to scale, with {anchors} anchors and {drops} drops."
        " Answers: {answers}."
    ),
    "no_drops": "no drops",
    "plan_figure_title": "{site}: plan of drop {drop}",
    "plan_figure_told": (
        "Roof around drop {drop} at {site} in plan, to scale, with its tiebacks and lifelines to"
        " their anchors. Answer: {answer}."
    ),
    # the title block
    "title_block": "Title block, basis and caution",
    "invented": "Invented: {words}",
    "invented_begins": "invented",
    "reviewed": "Reviewed",
    "configuration": "Configuration",
    "by_drop": "by drop, above",
    "governing": "Governing",
    "edge_pair": "Edge",
    "edge_faces": "{edge}, faces {faces}",
    "along_edge": "Along the edge",
    "from_to": "{start} to {end}",
    "drop_height": "Drop height",
    "roof_level": "Roof level",
    "scale": "Scale",
    "scale_on": "{scale} on {sheet}",
    "scale_bar": "Scale {scale}",
    "owner": "Owner",
    "prepared_by": "Prepared by",
    "project_number": "Project no.",
    "sheet": "Sheet",
    # what the answers mean
    "means_pass": "every check that ran was met",
    "means_fail": "at least one check is not met",
    "means_refer": "a named person has to decide",
    "means_missing": "a measurement or a paper is missing",
    # tables
    "answer": "Answer",
    "answers": "Answers",
    "findings": "Findings",
    "check": "Check",
    "at": "At",
    "drop": "Drop",
    "point": "Point",
    "counterweight": "Counterweight",
    "hoist_rated_load": "Hoist rated load",
    "more": "and {count} more: {where}",
    "see_report": "see the report",
    "see_sections": "see the section of each drop",
    # the legend
    "legend": "Legend",
    "legend_existing": "Existing building",
    "legend_parapet": "Parapet",
    "legend_obstacle": "Obstacle",
    "legend_drop": "Drop",
    "legend_beam": "Beam",
    "legend_counterweight": "Counterweight",
    "legend_suspension": "Suspension line",
    "legend_stage": "Stage",
    "legend_tieback": "Tieback",
    "legend_lifeline": "Lifeline",
    "legend_planned": "Planned",
    "legend_not_known": "Not measured",
    "legend_anchor": "Anchor",
    "legend_anchor_conditional": "Conditional",
    "legend_anchor_out": "Out of service",
    "legend_point": "Suspension point",
    "legend_fulcrum": "Fulcrum",
    "legend_centroid": "Centroid of stack",
    # basis, caution and notes
    "basis": "Basis",
    "edition": "{rule_set}, edition {edition}",
    "more_basis": "and {count} more, see the report of each drop",
    "caution_head": "Reviewed by program. Not a design.",
    "caution": (
        "This sheet shows what was stated and measured, and what the program found when it compared"
        " that with the rules named here. It is no permission to work. The qualified or licensed"
        " person and the local code decide. If the roof differs from this sheet, stop, keep people"
        " off the stage, and ask that person."
    ),
    "brackets": "Figures in brackets are rounded; the first figure governs.",
    "dashed": 'Dashed and "not measured": nobody stated it, and its place here means nothing.',
    "no_rig": "No rig is stated for this drop.",
    "not_to_scale": (
        "Not to scale: below the break, the height of the pieces, the width of the stand, and where"
        " a tieback ends."
    ),
    "angles": (
        "The angle at a tieback is in plan, from the line of its beam; without a figure it is under"
        " 5 degrees."
    ),
    "taken_over": (
        "An answer covers every topic of its drop; what persons took over in writing is counted on"
        " the drop's section."
    ),
    "backward": (
        "By the outline, the roof lies on the other side of edge {edges}: an edge runs from its"
        " left end to its right end, seen from the roof."
    ),
    "one_label": "1 label",
    "labels": "{count} labels",
    "no_room": "{labels} found no room at this scale: see the tables and the report.",
    "left_out": "{labels} left out here: see {sheet}.",
    "more_views": "Not drawn, for want of room: suspension points {points}.",
    # the operating envelope
    "envelope_head": "Reach held at each backspan, {point}",
    "envelope_told": "{title}, {pieces}; as built: {as_built}.",
    "held_here": "held by the pieces present",
    "not_held_here": "not held by the pieces present",
    "no_envelope": "The review gave no line for this point.",
    "as_built": "As built",
    "now": "As built: {as_built}.",
    "together": "{pieces}, {mass} together",
    "counterweight_on_beam": "Counterweight on the beam: {held}.",
    "rule": "Rule: {rule}.",
    "rule_factor": "{rule}, {factor} times the moment of the {load}",
    "rule_source": "Source of the rule: {mark}.",
    "confirmed": "{mark}, confirmed by {by} on {at}",
    "envelope_caution": (
        "One check only, at the worst corner of the tolerances. Not a design and no permission to"
        " work: the review of the whole drop, the qualified or licensed person and the local code"
        " decide."
    ),
}
