"""Rule values as data: their shape, the strict loader, look-up by text and edition."""
