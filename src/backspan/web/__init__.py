"""The workbench: pages over one site's record, for one machine, readable without a script."""
