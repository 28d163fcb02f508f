"""A device that appends one entry after the other and says which are kept, until it is killed.

Run as a program with where the ledger is; started by test_killed.py.
"""

from __future__ import annotations

import sys

from backspan.records.opening import open_ledger
from tests.unit.core.ledger.writing import written
from tests.unit.records.places import CAME


def main(where: str) -> None:
    """Append three entries at a time; print the hashes once they are acknowledged."""
    with open_ledger(where) as ledger:
        chains = ledger.chains
        while True:
            raws = [written(chains, "pad").raw for _ in range(3)]
            receipts = ledger.append(raws, received=CAME)
            sys.stdout.write("".join(f"{one.entry}\n" for one in receipts))
            sys.stdout.flush()


if __name__ == "__main__":
    main(sys.argv[1])
