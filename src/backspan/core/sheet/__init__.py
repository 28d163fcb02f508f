"""The frame of a check: what is read, what is compared, in numbers alone or with its record."""
