"""The code of what a drop is judged on: basis, confirmed values, the project's own values.

Beside the configuration code, which covers things and places. An acceptance names both.
"""

from __future__ import annotations

import hashlib
from typing import Any

from backspan.core.model.project import Project
from backspan.core.model.rigs import Drop
from backspan.core.wire import canonical, to_data

_LENGTH = 12


def basis_code(project: Project, drop: Drop) -> str:
    """Twelve hex digits of the SHA-256 of all that says how a drop is judged, such as "3f0a...".

    In it are the rule sets with their readings, values an office confirmed, how old observations
    may be, the paper that asks for anchors in date, the project's own angle of a tieback, and rule
    sets that the drop meets besides.
    """
    judged_on = [
        to_data(project.basis),
        [to_data(one) for one in project.confirmations],
        None if project.ages is None else to_data(project.ages),
        project.anchor_dates_required_by,
        project.most_tieback_angle,
        [to_data(one) for one in drop.also_meets],
    ]
    return hashlib.sha256(canonical(_stated(judged_on))).hexdigest()[:_LENGTH]


def _stated(data: Any) -> Any:
    """Plain data without fields that hold nothing."""
    if isinstance(data, dict):
        return {name: _stated(one) for name, one in data.items() if one not in (None, [], "")}
    return [_stated(one) for one in data] if isinstance(data, list) else data
