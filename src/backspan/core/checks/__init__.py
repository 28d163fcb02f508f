"""One question a file; the registered checks in the order papers print them."""

from __future__ import annotations

from backspan.core.checks import (
    anchor_dates,
    as_planned,
    beam_label,
    beam_length,
    beam_proportion,
    bearing,
    counterweight_words,
    design,
    hanging,
    heads,
    other_support,
    plausible_values,
    rig_described,
    stall_cap,
    stop_list,
    tipping,
    units,
)
from backspan.core.sheet.check import Check

#: Every check answers for every drop: a finding, or why it does not apply.
CHECKS: tuple[Check, ...] = (
    rig_described.CHECK,
    design.CHECK,
    as_planned.CHECK,
    hanging.CHECK,
    other_support.CHECK,
    tipping.CHECK,
    stall_cap.CHECK,
    beam_length.CHECK,
    beam_label.CHECK,
    beam_proportion.CHECK,
    bearing.CHECK,
    counterweight_words.KIND,
    counterweight_words.MARKING,
    counterweight_words.FASTENING,
    *units.CHECKS,
    *stop_list.CHECKS,
    heads.CHECK,
    anchor_dates.CHECK,
    plausible_values.CHECK,
)
