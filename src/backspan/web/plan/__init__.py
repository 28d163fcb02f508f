"""The roof plan as a page to work on: what a hand means, what is drawn anew, what is told."""
