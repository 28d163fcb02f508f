"""The fixed words of the papers of a site's record, in English: tag, notices, sheet."""

from __future__ import annotations

SITE_PAPERS: dict[str, str] = {
    # the foot
    "entry_number": "entry {place} of the record",
    "head_begins": "head {head}",
    "whole_head": "Head of the record at entry {place}:",
    "basis_code": "basis code",
    "whole_site": "Whole site",
    "several_drops": "{count} drops, codes on the last page",
    "one_drop": "drop {drop}",
    "stated_not_sealed": (
        "A name here is what somebody stated in the record, not a personal signature. The record"
        " counts; this is a copy of it."
    ),
    # the tag
    "tag": "Acceptance tag",
    "nobody_on": "NOBODY ON",
    "permitted": "PERMITTED",
    "restricted": "RESTRICTED",
    "permitted_told": "Only as stated here, and only after the shift check of the day.",
    "nobody_told": "A permit is on record, and this stands against it:",
    "permitted_by": "Permitted by",
    "permitted_on": "Day of the permit",
    "most_riders": "Most people on the stage",
    "review_answered": "The review answered",
    "restrictions": "Restrictions",
    "no_restriction": "none stated beside the permit",
    "what_ends_it": "What ends it",
    "ends_told": (
        "Any change of the rig, a stop or a hold: nobody on, take this tag down. It counts on a"
        " day only with a shift check of that day, in the record and below."
    ),
    "shift_checks": "Shift checks",
    "day": "Day",
    "fit": "Fit: yes / no",
    # the notice of a stop
    "stop_notice": "Stop notice",
    "stop_word": "STOP",
    "why": "Why",
    "by_whom": "By whom",
    "when": "When",
    "settles": "What settles it",
    "who_lifts": "Who may lift it",
    "lift_permit": (
        "{who}, or who acts in that place: looks again, and states a new permit in the record."
        " Nobody whose employer's rig it is."
    ),
    "lift_hold": "Whoever ends the hold in the record. Each drop then needs its shift check again.",
    "lift_deficiency": (
        "Whoever looks again, finds it mended, and closes the deficiency in the record. Where the"
        " permit ended, a new one is needed too."
    ),
    "lift_concern": "Whoever names, in the record, the test that settles it.",
    "who_permits": "Whoever permits use for the owner",
    "no_word_of_mouth": "Nobody lifts it by word of mouth.",
    "more_reasons": "and {count} more in the record",
    # the notice of a deficiency
    "deficiency": "Deficiency",
    "deficiency_notice": "Deficiency notice",
    "where": "Where",
    "what_is_wrong": "What is wrong",
    "raised_by": "Raised by",
    "mend_until": "To be mended by",
    "use_forbidden": "USE FORBIDDEN until it is closed",
    "use_not_forbidden": "Use not forbidden by it",
    "is_closed": "CLOSED",
    "photographs": "Photographs",
    "photograph": "Photograph {number}",
    "not_shown": "Evidence not shown here, by its SHA-256",
    "said_since": "In the record since",
    "contractors_answer": "The contractor's answer",
    "done_told": "What was done, by whom, with which part",
    "company": "Company",
    "second_look": "The second look",
    "seen_told": "What was found",
    "mended": "mended",
    "not_mended": "not mended: it stays open",
    # the sheet for the roof
    "roof_sheet": "Roof sheet",
    "sheet_told": (
        "Write what you find, not what is planned. What you could not see stays blank: a blank is"
        " never a pass. Thin type is planned, or was found before. Whoever enters this copies each"
        " number beside its number."
    ),
    "sheet_code": "Sheet",
    "found_by": "Found by",
    "time": "Time",
    "planned_value": "planned {value}",
    "found_before": "found {value}, {by}",
    "from_papers": "Told by papers in the record; nothing is written here.",
    "none_stated": "The rig as stated has nothing of this. If you see it, write it below.",
    "remarks": "Remarks, not entered as values",
    "unit_like": "such as {like}",
    "how_many": "how many",
}
