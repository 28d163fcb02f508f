"""Which of many tests are run where running all takes too long: a spread, the same every time.

It runs in the browser's Python as well and knows the standard library alone.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence


def spread(names: Sequence[str], *, every: int) -> list[str]:
    """Of each test function its first case and every n-th after it, in the order given.

    `names` are as pytest prints them: a file, its functions, and a case in brackets.
    """
    seen = Counter[str]()
    chosen = []
    for name in names:
        function = name.partition("[")[0]
        if seen[function] % every == 0:
            chosen.append(name)
        seen[function] += 1
    return chosen
