"""What every check shares: the case, inputs, doubt, accepted evidence, deciding."""
