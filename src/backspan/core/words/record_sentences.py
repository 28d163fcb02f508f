"""What the program says of the record, in English: states of a drop, reasons, kinds of entries.

The ids are the words of the ledger's own lists. `{by}` is the entry that stands against a step, as
one line. A line of an entry holds what people named and wrote as they wrote it.
"""

from __future__ import annotations

#: A drop's state, as people call it.
STATES: dict[str, str] = {
    "planned": "planned",
    "rigged": "rigged",
    "connected": "connected",
    "accepted": "accepted",
    "in service": "in service",
    "stopped": "stopped",
    "moving": "moving",
}

#: What it means for somebody who stands beside the stage.
STATE_MEANINGS: dict[str, str] = {
    "planned": "Nothing is rigged here: nobody rides.",
    "rigged": "A rig is stated here, but its lines are not all seen connected: nobody rides.",
    "connected": "Two people saw all lines connected; use is not permitted yet: nobody rides.",
    "accepted": "Use is permitted, but no shift check counts now: nobody rides before one does.",
    "in service": (
        "Permitted, and found fit today: people ride only as the permit says, and only while"
        " nothing is named against it."
    ),
    "stopped": "Nobody rides: it takes a new permit, and a shift check after it.",
    "moving": "A rig is on its way here: nobody rides before it is set up and looked at.",
}

#: What happened to a drop, as the end of a sentence.
EVENTS: dict[str, str] = {
    "a rig is set up and looked at": "a rig was set up",
    "all lines are connected": "all lines were connected",
    "a line counts as connected no longer": "a line counts as connected no longer",
    "use is permitted": "use was permitted anew",
    "the shift check finds it fit": "the shift check found it fit",
    "the shift check finds it unfit": "the shift check found it unfit",
    "the configuration changes, or something it leans on": (
        "the rig changed, or something it leans on did"
    ),
    "use is stopped": "use was stopped",
    "a hold begins": "a hold began",
    "a hold ends": "a hold ended",
    "its rig is moved to another drop": "its rig was moved to another drop",
    "a rig is on its way here": "another rig is on its way here",
    "the day ends": "the day ended",
}

#: Why nobody rides, or why an entry has no effect; and what settles it.
REASONS: dict[str, str] = {
    # the table of states
    "nothing is rigged there": "Nothing is rigged there. Set up the rig, and look at it.",
    "its lines are not connected, seen by two people": (
        "Two people have not seen all its lines connected. Connect them, and let both look."
    ),
    "it is not accepted": "Use is not permitted. Permit it first; the shift check comes after.",
    "the rig was moved and has not been looked at again": (
        "The rig was moved, and nobody looked at it since. Set it up here, and look at it."
    ),
    # what stands against it
    "the one who signed it did not know of this entry": (
        "Whoever signed did not know of this: {by}. Read it, look again, and sign anew."
    ),
    "two statements differ and nobody has settled which holds": (
        "Two statements differ, and this is one of them: {by}. Somebody who has read both states"
        " what is so."
    ),
    "this entry states something that has no place in the site": (
        "This states something that has no place at the site: {by}. Correct it, and state what is"
        " so where it belongs."
    ),
    "a deficiency that forbids use is open": (
        "A deficiency that forbids use is open: {by}. Mend it, look again, and close it."
    ),
    "a concern about something of the rig is open": (
        "A concern is open: {by}. A named test settles it; a repair alone does not."
    ),
    "use is on hold": "Use is on hold: {by}. End the hold; the shift check is made again.",
    "it names another configuration than is there": (
        "The permit names another configuration than stands there. Review the rig as it stands, and"
        " permit that."
    ),
    "it names another basis than is in force": (
        "The permit names another basis than is in force. Review on that basis, and permit anew."
    ),
    "the review it names is no pass": (
        "The review that the permit names is no pass. Settle what it refuses or leaves open, and"
        " review again."
    ),
    "nobody accepts the rig of their own employer": (
        "Whoever signed the permit works for the contractor whose rig it is. Somebody else has to"
        " permit it."
    ),
    "there is no such line on the drop's rig": (
        "The rig of the drop has no such line. Name one that hangs there."
    ),
    "the second person is the one who signs": (
        "Only one person is named for this line. A second one has to see it connected."
    ),
    "it was not written on the day that it is for": (
        "It was not written on the day that it is for. Make the check on its own day."
    ),
    "nobody who looked again found it mended": (
        "Nobody who looked again found it mended: {by}. Look again, and close it then."
    ),
    "there is no such thing": (
        "It speaks of something that was not known where it was written. Name what is there."
    ),
    "no test is named": "No test is named. Name the one that settles the concern.",
    "what stops use, or happened, is not undone by a correction": (
        "A correction does not undo what stops use, or what happened: {by}. Look again, and permit"
        " anew."
    ),
    "no shift check of the day finds it fit": (
        "No shift check of the day finds it fit. A competent person looks before anybody rides."
    ),
    "something it leans on has lapsed": (
        "Something that the permit leans on has run out: {by}. Renew it, review, and permit anew."
    ),
    "the review of the day refuses it": (
        "The review of today refuses it. Settle what it refuses, and permit anew."
    ),
    "use was stopped": (
        "Use was stopped: {by}. Settle the cause, and permit anew; the shift check comes after."
    ),
    "this entry ended the acceptance": (
        "This ended the permit: {by}. Review the rig as it stands now, and permit that."
    ),
}

#: Titles of the kinds of entries.
TITLES: dict[str, str] = {
    "site described": "description of the site",
    "drop described": "description of a drop",
    "anchor registered": "anchor and its papers",
    "anchor inspected": "inspection of an anchor",
    "anchor withdrawn": "withdrawal of an anchor",
    "plan received": "contractor's plan",
    "unit registered": "thing with its tag",
    "unit looked at": "look at a thing",
    "unit exchanged": "exchange of a thing",
    "rig set up": "rig as it stands",
    "rig moved": "move of a rig",
    "work planned": "steps of the work",
    "number found": "measured or read number",
    "count found": "count",
    "word found": "observation",
    "line connected": "connection of a line",
    "topic taken over": "topics taken over in writing",
    "limits signed": "signed limits",
    "deficiency raised": "deficiency",
    "deficiency answered": "answer to a deficiency",
    "deficiency re-inspected": "second look at a deficiency",
    "deficiency closed": "closing of a deficiency",
    "concern noted": "concern",
    "concern closed by a test": "test that closes a concern",
    "use stopped": "stop of use",
    "use permitted": "permit of use",
    "use restricted": "restriction of use",
    "shift check": "shift check",
    "hold begun": "hold",
    "hold ended": "end of a hold",
    "paper issued": "issued paper",
    "underlay laid": "drawing under the plan",
    "correction": "correction",
}

#: What an entry says as one line, by its kind; behind a stroke the same kind in another case.
LINES: dict[str, str] = {
    "site described": "site {name}, {place}: building, people, kit and basis described",
    "drop described": "{where}: described, roof {roof}, edge {edge}",
    "anchor registered": "anchor {anchor}, roof {roof}: registered, {standing}",
    "anchor inspected": "anchor {anchor}, roof {roof}: inspected {inspected}, {standing}",
    "anchor inspected/certified": (
        "anchor {anchor}, roof {roof}: inspected {inspected}, {standing}, certificate of"
        " {certified}"
    ),
    "anchor withdrawn": "anchor {anchor}, roof {roof}: withdrawn, nobody uses it",
    "plan received": "{where}: plan of {contractor} received",
    "plan received/drawing": "{where}: plan of {contractor} received, drawing {drawing}",
    "unit registered": "{kind} {unit}, type {of}: registered",
    "unit looked at": "{kind} {unit}, type {of}: looked at, condition: {condition}",
    "unit exchanged": "{where}: {put_in} in the place of {taken_out} ({path})",
    "rig set up": "{where}: rig set up and looked at, suspension points: {points}",
    "rig moved": "{where}: rig moved to drop {to}",
    "work planned": "{where}: work on stage {stage}, step by step: {steps}",
    "number found": "{where}: {path}: {value}, {evidence}",
    "number found/named": "{where}: {input}: {value}, {evidence} ({path})",
    "count found": "{where}: {path}: {value}, {evidence}",
    "count found/named": "{where}: {input}: {value}, {evidence} ({path})",
    "word found": "{where}: {path}: {value}, {evidence}",
    "word found/named": "{where}: {input}: {value}, {evidence} ({path})",
    "line connected": "{where}: line {line} connected, seen by {signer} and {second}",
    "topic taken over": "{where}: {topics} taken over by {person}, {document}, until {until}",
    "limits signed": "{where}: limits signed by {person}, {document}, until {until}",
    "deficiency raised": "{where}: deficiency {id} at {about}",
    "deficiency raised/forbids": "{where}: deficiency {id} at {about}, use forbidden",
    "deficiency answered": "deficiency {id}: answered",
    "deficiency re-inspected": "deficiency {id}: looked at again, not mended",
    "deficiency re-inspected/mended": "deficiency {id}: looked at again, mended",
    "deficiency closed": "deficiency {id}: closed",
    "concern noted": "concern {id} about {about}",
    "concern closed by a test": "concern {id}: closed by a test, {test}",
    "concern closed by a test/none": "concern {id}: to be closed, no test named",
    "use stopped": "{where}: use stopped",
    "use permitted": (
        "{where}: use permitted, configuration {configuration}, basis {basis}, review: {answer}"
    ),
    "use permitted/leaning": (
        "{where}: use permitted, configuration {configuration}, basis {basis}, review: {answer};"
        " leans on {documents}"
    ),
    "use restricted": "{where}: use restricted",
    "shift check": "{where}: shift check of {day}, unfit",
    "shift check/fit": "{where}: shift check of {day}, fit",
    "hold begun": "{where}: hold begun",
    "hold ended": "{where}: hold ended, shift check to be made again",
    "paper issued": "{where}: paper {name} issued",
    "underlay laid": (
        "roof {roof}: drawing {name} laid under the plan by {places}; a third length taped as"
        " {taped} is {off} off on it"
    ),
    "underlay laid/picture": (
        "roof {roof}: picture {name} laid under the plan by {places}; a third length taped as"
        " {taped} is {off} off on it"
    ),
    "correction": "entry {entry}: not so, counts no longer",
}

#: Pieces of those lines, and what is said of a step.
PHRASES: dict[str, str] = {
    "record-drop": "drop {drops}",
    "record-drops": "drops {drops}",
    "record-site": "whole site",
    "record-said": "{line} - {says}",
    "record-until": "{line}, until {until}",
    "record-written": "{number}, written as {text}",
    "record-si": "{value} in SI units",
    "record-revision": "{drawing}, revision {revision}",
    "record-by-unknown": "not named",
    "record-beside": "{reason} Entry: {by}.",
    "record-refused": "No effect: {entry}. {reason}",
    "record-ended": "Permit ended, {event}: {permit}. By: {by}.",
    "record-in-service": "{site}, {on}: {count} of {all} drops in service by the record",
    "record-restricted": "Restricted: {line}.",
    "record-clock-ahead": "The clock of {device} ran {by} ahead: {entry}.",
    "record-clock-back": "The clock of {device} went back by {by}: {entry}.",
}
