"""Pieces that join values into a text where no message does, in English, by id."""

from __future__ import annotations

PHRASES: dict[str, str] = {
    # a number of an answer, where the hoist stalls at the most its rule allows
    "label-at-most-stall": "{label} at that stall load",
    # what a rule value asks, where it stands and how far it was verified
    "factor-on-load": "{factor} x {load}, beam's own weight: {beam_weight}",
    "factor-on-load-alone": "{factor} x {load}",
    "mark-confirmed": "{mark}, confirmed",
    "mark-by": "{mark} by {by} on {at}",
    "cited": "{reference}: {asked}",
    "cited-as-read": '{reference}, read as "{reading}": {asked}',
    "confirmed-in-copy": "confirmed by {by} on {at} in {copy_seen}",
    # what mends a refusal
    "mend": "One change: {changes}.",
    "mend-one-piece": "add 1 piece",
    "mend-or": "; or ",
    "seen-from": "Seen from: {where}.",
    "put-right": "Put it right, and have it reviewed again.",
    # reasons
    "or": " or ",
    "waits-for": "Not stated: {inputs}.",
    "not-judged-here": "Not judged here; nobody took it over.",
    "judge-in-writing": "Judge it, and take it over in writing.",
    # an input as it was stated
    "with-tolerance": "{value} ± {tolerance}",
    "with-usual-tolerance": "{value} ± {tolerance} as usual",
}

#: Who must decide or supply something, as the one who is asked.
DECIDERS: dict[str, str] = {
    "competent person": "the competent person",
    "qualified person": "the qualified person",
    "licensed engineer": "the licensed engineer",
    "owner": "the owner",
    "contractor": "the contractor",
    "the office that keeps the text": "the office that keeps the text",
    "the person who measures on the roof": "the person who measures on the roof",
}
