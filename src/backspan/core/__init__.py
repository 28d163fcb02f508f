"""The pure core: standard library only, no file, clock, network or framework."""
