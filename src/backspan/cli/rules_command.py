"""`backspan rules`: what is in the rule sets, and how far each value was verified."""

from __future__ import annotations

import click

from backspan.cli.status import Status

HELP = """\
List the rule sets, or show what one of them holds.

Every value is shown with its clause, its source and a mark that says how far it was verified:
read (the text was seen), copy (a copy or quotation was seen), memory (not seen: a pass on it is
"refer" until your office confirms it), practice (custom of the trade).

\b
Examples:
  backspan rules
  backspan rules us-osha-1926-subpart-l
  backspan rules us-wa-wac-296-874@2007
"""


@click.command("rules", help=HELP)
@click.argument("rule_set", required=False, metavar="[SET[@EDITION]]")
def command(rule_set: str | None) -> int:
    """Print the list of rule sets, or one of them."""
    from backspan.cli.rules_text import library_text, rule_set_text
    from backspan.cli.screen import put, screen_of
    from backspan.core.review.naming import chosen_rule_set
    from backspan.exchange.files import load_rule_library

    library = load_rule_library()
    screen = screen_of()
    if rule_set is None:
        put(library_text(library, screen))
    else:
        put(rule_set_text(chosen_rule_set(rule_set, library), screen))
    return Status.PASS
