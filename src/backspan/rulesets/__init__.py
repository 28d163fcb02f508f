"""Rule sets as data: one folder a published text, one TOML file an edition."""
