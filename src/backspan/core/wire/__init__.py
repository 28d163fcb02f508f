"""Canonical JSON to and from the model, and the code that names a configuration."""

from backspan.core.wire.canonical import canonical, read_canonical, report_number
from backspan.core.wire.code import configuration, configuration_code, read_code
from backspan.core.wire.codec import from_changed, from_data, to_data
from backspan.core.wire.errors import WireError

__all__ = [
    "WireError",
    "canonical",
    "configuration",
    "configuration_code",
    "from_changed",
    "from_data",
    "read_canonical",
    "read_code",
    "report_number",
    "to_data",
]
