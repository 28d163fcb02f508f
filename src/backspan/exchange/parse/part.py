"""One record of a project, given as the keys and texts that a project file has for it."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any, TypeVar

from backspan.exchange.parse.record import read_record
from backspan.exchange.parse.tree import read_tree

T = TypeVar("T")


def parse_part(data: Mapping[str, Any], cls: type[T], origin: str) -> T:
    """The record of the model that `data` is, each value a text as a person writes it.

    Names of other things are not looked up. Raises ProjectError with every problem; a problem's
    path leads through `data`.
    """
    tree = read_tree(json.dumps(data, ensure_ascii=False), origin)
    return read_record(tree, cls, names=lambda _: (), places=lambda _: ())
