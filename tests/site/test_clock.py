"""The pages leave the machine's clock alone: an entry's time and day are those of the place."""

from __future__ import annotations

import os
import subprocess
import sys

_ASKS = """
import datetime, os
os.environ["DJANGO_SETTINGS_MODULE"] = "backspan.web.settings"
import django
django.setup(set_prefix=False)
print(datetime.datetime.now().astimezone().utcoffset())
"""


def test_the_time_zone_of_the_machine_stays() -> None:
    there = {**os.environ, "TZ": "Asia/Tokyo"}
    said = subprocess.run(
        [sys.executable, "-c", _ASKS], env=there, capture_output=True, text=True, check=True
    )
    assert said.stdout.strip() == "9:00:00"
