"""A device that appends one entry after the other and says which are kept, until it is killed.

Run as a program with where the ledger is and the device's name; started by tests/killed_appends.py.
"""

from __future__ import annotations

import sys

from backspan.records.opening import open_ledger
from tests.unit.core.ledger.writing import written
from tests.unit.records.places import CAME

#: Entries of one transaction.
TOGETHER = 3


def main(where: str, device: str) -> None:
    """Append some entries at a time; print the hashes once they are acknowledged."""
    with open_ledger(where) as ledger:
        chains = ledger.chains
        while True:
            raws = [written(chains, device).raw for _ in range(TOGETHER)]
            receipts = ledger.append(raws, received=CAME)
            sys.stdout.write("".join(f"{one.entry}\n" for one in receipts))
            sys.stdout.flush()


if __name__ == "__main__":
    main(*sys.argv[1:])
