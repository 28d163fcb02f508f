"""Formulas that record themselves, and the text made from what they recorded."""
