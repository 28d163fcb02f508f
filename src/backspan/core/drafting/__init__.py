"""The roof plan drawn on before it is signed: acts on a copy of the site, and their entries.

A draft is a list of acts. The site as drawn is the site as recorded with each act done in turn, so
taking one back is leaving it out, and nothing of a draft can outlive it. Signing compares the two
sites and says as entries what differs.
"""

from backspan.core.drafting.draft import Draft, DraftError, act_of, data_of, drawn
from backspan.core.drafting.entries import entries_between
from backspan.core.drafting.snapping import Snapped, distance, seen_from, snapped, squared, stepped

__all__ = [
    "Draft",
    "DraftError",
    "Snapped",
    "act_of",
    "data_of",
    "distance",
    "drawn",
    "entries_between",
    "seen_from",
    "snapped",
    "squared",
    "stepped",
]
