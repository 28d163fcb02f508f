"""The program's name and version, as reviews and papers state them."""

VERSION = "0.1.0"
PROGRAM = f"backspan {VERSION}"
