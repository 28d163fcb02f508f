"""What every check shares: the case, inputs at their adverse end, accepted evidence, deciding."""
