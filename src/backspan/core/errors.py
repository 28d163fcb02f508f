"""The one base exception: whoever catches it catches every error the program means to raise."""


class BackspanError(Exception):
    """An error the program raises on purpose, with text fit for the person who has to mend it."""
