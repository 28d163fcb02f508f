"""The pages as a program that a server of web pages calls, with the workbench they show."""

from __future__ import annotations

import gc
import os
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

import django
from django.core.handlers.wsgi import WSGIHandler
from django.http import HttpRequest
from whitenoise import WhiteNoise

from backspan.web.workbench import Workbench

#: Where a request carries the workbench.
KEY = "backspan.workbench"
_STATIC = Path(__file__).resolve().parent / "static"
Application = Callable[[dict[str, Any], Callable[..., Any]], Iterable[bytes]]
#: Objects made before the collector looks, and how many of its looks before it looks further back:
#: a look at 125,000 takes 30 ms, one at a million a quarter of a second.
_SELDOM = (25_000, 5, 400)


def application_of(workbench: Workbench) -> Application:
    """The pages of a workbench. Several may be made in one process."""
    os.environ["DJANGO_SETTINGS_MODULE"] = "backspan.web.settings"
    django.setup(set_prefix=False)
    handler = WSGIHandler()

    def pages(environ: dict[str, Any], start: Callable[..., Any]) -> Iterable[bytes]:
        return handler({**environ, KEY: workbench}, start)

    served = WhiteNoise(pages, max_age=3600)
    for folder in (_STATIC, _script_folder()):
        served.add_files(str(folder), prefix="static/")
    found: Application = served
    return found


def seldom_collected() -> None:
    """Keep the collector of cycles off what lives as long as the server: rules, words, site.

    A look through all of that takes a fifth of a second, in the middle of somebody's tap.
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(*_SELDOM)


def workbench_of(request: HttpRequest) -> Workbench:
    """The workbench that a request is for."""
    found: Workbench = request.META[KEY]
    return found


def _script_folder() -> Path:
    """Where the script lies that brings an answer after each tap."""
    import django_htmx  # noqa: PLC0415 - only its folder is asked for

    return Path(django_htmx.__file__).resolve().parent / "static" / "django_htmx"
