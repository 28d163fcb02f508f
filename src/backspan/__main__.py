"""`python -m backspan` is the command line."""

from backspan.cli import main

raise SystemExit(main())
