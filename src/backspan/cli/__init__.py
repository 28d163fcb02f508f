"""The command line: it parses, calls and prints. `main` is the entry point."""

from __future__ import annotations

from collections.abc import Sequence


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line on `arguments` (else the process's own); the exit status.

    0 pass, 10 fail, 11 undecided (missing or refer), 2 bad input or usage, 70 internal error,
    130 stopped by the keyboard.
    """
    from backspan.cli.running import run

    return run(arguments)
