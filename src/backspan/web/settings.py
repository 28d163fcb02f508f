"""Settings of the pages: no database of the framework's own, no accounts, this machine alone.

The record is what is kept (records); the framework reads requests, fills templates, and refuses
what comes from another site or under another name.
"""

from __future__ import annotations

import secrets
from pathlib import Path

_HERE = Path(__file__).resolve().parent

#: New with every start: nothing that is signed with it outlives the program.
SECRET_KEY = secrets.token_urlsafe(48)
DEBUG = False
ALLOWED_HOSTS = ["127.0.0.1", "localhost", "[::1]"]
ROOT_URLCONF = "backspan.web.urls"
INSTALLED_APPS: list[str] = []
DATABASES: dict[str, dict[str, str]] = {}
MIDDLEWARE = [
    "backspan.web.guards.SafeHeaders",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "backspan.web.guards.Refusals",
]
TEMPLATES = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "DIRS": [_HERE / "templates"],
        "OPTIONS": {
            "builtins": ["backspan.web.template_tags"],
            "context_processors": [
                "django.template.context_processors.request",
                "backspan.web.speaking.in_every_page",
            ],
        },
    }
]
CSRF_COOKIE_SAMESITE = "Strict"
CSRF_COOKIE_HTTPONLY = True
CSRF_FAILURE_VIEW = "backspan.web.pages.refused.cross_site"
USE_I18N = False
USE_TZ = False
#: The machine's own: a zone that is named here would become that of the whole process, and with it
#: of every entry's time and day.
TIME_ZONE: str | None = None
#: A form of ours has few fields; a photograph is streamed to the disk and counted there.
DATA_UPLOAD_MAX_MEMORY_SIZE = 1_000_000
DATA_UPLOAD_MAX_NUMBER_FIELDS = 300
DATA_UPLOAD_MAX_NUMBER_FILES = 20
FILE_UPLOAD_MAX_MEMORY_SIZE = 500_000
FILE_UPLOAD_HANDLERS = [
    "backspan.web.uploads.MostBytes",
    "django.core.files.uploadhandler.TemporaryFileUploadHandler",
]
LOGGING_CONFIG = None
