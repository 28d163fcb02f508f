"""Keeps what the core's ledger defines: entries with their receipts, signed heads, evidence."""
