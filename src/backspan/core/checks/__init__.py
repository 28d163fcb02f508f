"""One question a file; the registered checks in the order papers print them."""

from __future__ import annotations

from backspan.core.checks import (
    anchor_dates,
    anchor_use,
    as_planned,
    beam_label,
    beam_length,
    beam_proportion,
    bearing,
    counterweight_words,
    design,
    fulcrum_kind,
    hanging,
    heads,
    hoist_load,
    other_support,
    over_the_edge,
    plausible_values,
    rig_described,
    stall_cap,
    stations,
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
    tipping.BESIDE,
    stall_cap.CHECK,
    beam_length.CHECK,
    beam_length.STANDS,
    beam_label.CHECK,
    beam_proportion.CHECK,
    bearing.CHECK,
    counterweight_words.KIND,
    counterweight_words.MARKING,
    counterweight_words.FASTENING,
    *over_the_edge.CHECKS,
    fulcrum_kind.CHECK,
    stations.CHECK,
    hoist_load.CHECK,
    *units.CHECKS,
    *stop_list.CHECKS,
    heads.CHECK,
    anchor_dates.CHECK,
    *anchor_use.CHECKS,
    plausible_values.CHECK,
)
