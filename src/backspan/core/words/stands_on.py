"""What the program says of stands and of signed limits, in English."""

from __future__ import annotations

STANDS_ON: dict[str, str] = {
    "bearing.silent": "No rule set of the basis says what a surface must carry ({rule_sets}).",
    "rear-bearing.pass": (
        "The rear stand asks {pressure} of its surface, which carries {strength}."
    ),
    "rear-bearing.fail": (
        "The rear stand asks {pressure} of its surface, which carries only {strength}."
    ),
    "rear-bearing.missing": (
        "What the rear stand asks of its surface is not known, or what that carries."
    ),
    "rear-bearing.silent": (
        "No rule set of the basis says what the surface under the rear stand must carry"
        " ({rule_sets})."
    ),
    "outside.rear-plate": "The plate under the rear stand has no area: measure it again.",
    "outside.beyond_wall": (
        "The fulcrum stands at the very edge of the wall or the roof: nothing of its plate lies"
        " evenly there."
    ),
    "fulcrum.signed-for": (
        "The beam bears on a {kind}: {document}, revision {revision}, signed by {person}, says what"
        " may come on it, until {until}."
    ),
    "signed.pass": ("Within {document}, revision {revision}, signed by {person}, until {until}."),
    "signed.outside": (
        "{document}, revision {revision}, signed by {person}, does not reach so far: {input}"
        " {value}, its limit {limit}."
    ),
    "signed.off-the-list": (
        "{document}, revision {revision}, signed by {person}, does not name {names}."
    ),
    "signed.lapses": (
        "Within {document}, revision {revision}, signed by {person}, only until {until}; the work"
        " is planned to {ends}."
    ),
    "signed.missing": (
        "Whether the beam keeps within {document}, revision {revision}, signed by {person}, is not"
        " known."
    ),
    "signed.ended": (
        "{document}, revision {revision}, signed by {person}: no effect, it ended on {until}."
    ),
    "signed.role": (
        "{document}, revision {revision}: no effect, {person} may not sign it; who may: {who}."
    ),
    "signed.no-card": (
        "{document}, revision {revision}: no effect, the card of {person} is not stated."
    ),
    "na.signed-for": (
        "{document}, revision {revision}, signed by {person}, says what may come on its surface,"
        " until {until}."
    ),
    "na.nothing-signed": "No engineer's paper with limits names the drop.",
    "need.surface": "Say what the surface carries of what comes on it, and sign for it.",
    "need.signed": "Say in writing, and sign, what {document} leaves open here, and until when.",
}
