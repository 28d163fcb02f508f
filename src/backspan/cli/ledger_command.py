"""`backspan ledger`: the proof of a record, or of its archive alone."""

from __future__ import annotations

from pathlib import Path

import click

from backspan.cli.app import SuggestingGroup
from backspan.cli.site_source import DATABASE
from backspan.cli.status import Status

HELP = """\
Prove that a record is what was written.

\b
Example:
  backspan ledger verify site.tar
"""
VERIFY_HELP = """\
Prove an archive alone, or the folder of a record: every entry, receipt, signature and file.

What is damaged is named with its line. An archive proves by itself only that it is whole. That
nothing was cut off or written anew is proven against something that was kept elsewhere: a head
that was printed (--head), or the key of the record (--key).

\b
Examples:
  backspan ledger verify site.tar
  backspan ledger verify site.tar --head 3f0a... --key 9c1d...
  backspan ledger verify record

Exit status: 0 whole, 10 damaged, 2 bad input or usage.
"""


@click.group("ledger", cls=SuggestingGroup, help=HELP, short_help="Prove a record or its archive.")
def command() -> None:
    """What can be asked of a ledger."""


@command.command("verify", help=VERIFY_HELP, short_help="Prove an archive, or a record's folder.")
@click.argument("path", type=click.Path(path_type=Path))
@click.option("--key", metavar="KEY", help="The key that its heads have to be signed with.")
@click.option(
    "--head",
    "heads",
    multiple=True,
    metavar="HEAD",
    help="A head that was kept elsewhere; may be given again.",
)
@DATABASE
def verify_command(
    *, path: Path, key: str | None, heads: tuple[str, ...], database: str | None
) -> int:
    """Prove it and tell."""
    from backspan.cli.record_text import folder_proof_text, proof_text
    from backspan.cli.screen import put
    from backspan.core.ledger.entry import is_hash
    from backspan.records.archive import verify
    from backspan.records.signing import holds

    for name, text in (("--key", key), *(("--head", head) for head in heads)):
        if text is not None and not is_hash(text):
            raise click.UsageError(f"{name} {text[:80]}: expected 64 digits and letters a to f")
    if path.is_dir():
        text, whole = folder_proof_text(path, key, heads, database)
    else:
        report = verify(path, holds=holds, trusted_key=key, known_heads=heads)
        text, whole = proof_text(path, report, kept=bool(key or heads)), report.whole
    put(text)
    return Status.PASS if whole else Status.FAIL
