"""A workbench over a record of the case rig, asked as a browser asks: forms, cookies, redirects."""

from __future__ import annotations

import datetime
import io
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from html import unescape
from http.cookies import SimpleCookie
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

from backspan.core.ledger.described import entries_of
from backspan.core.ledger.entry import Signer
from backspan.core.model.project import Project
from backspan.records.api import SiteRecord, make_record
from backspan.records.store import Statement
from backspan.web.application import Application, application_of
from backspan.web.workbench import Workbench
from tests.unit.core.rigs import LIBRARY, ON, PROJECT

NOON = datetime.datetime.combine(ON, datetime.time(12), datetime.UTC)
TOKEN = re.compile(r'name="csrfmiddlewaretoken" value="([^"]+)"')
PLACE = re.compile(r'name="((?:ledger_)?place)" value="([0-9]+)"')
IMPORTER = Signer("MT", "M. Taper", "owner's engineer")


@dataclass(frozen=True)
class Answer:
    """What came back."""

    status: int
    headers: Mapping[str, str]
    body: bytes

    @property
    def text(self) -> str:
        """The page as text, its entities resolved."""
        return unescape(self.body.decode("utf-8"))

    @property
    def plain(self) -> str:
        """What a reader sees, on one line."""
        return " ".join(re.sub(r"<[^>]+>", " ", self.text).split())


@dataclass
class Browser:
    """Asks for pages, keeps cookies, follows where it is sent."""

    pages: Application
    cookies: dict[str, str] = field(default_factory=dict)
    host: str = "127.0.0.1:8765"

    def get(self, path: str, **headers: str) -> Answer:
        """A page."""
        return self._followed(self._ask("GET", path, b"", headers))

    def post(self, path: str, page: str | None = None, /, **fields: Any) -> Answer:
        """A form of a page, filled and sent; `page` is where it stands, if elsewhere."""
        return self.send(path, self._filled(page or path, fields))

    def tap(self, shown: Answer, path: str, /, **fields: Any) -> None:
        """A form of a page that is shown already, sent; what comes after is not looked at."""
        answer = self._sent(path, filled_on(shown, fields), {})
        assert answer.status in {302, 303}, answer.plain

    def leads(self, path: str, page: str, /, **fields: Any) -> str:
        """Where a form of a page leads on to, with the place on the page."""
        return self._sent(path, self._filled(page, fields), {}).headers["Location"]

    def send(self, path: str, fields: Mapping[str, Any], **headers: str) -> Answer:
        """A form as it is."""
        return self._followed(self._sent(path, fields, headers))

    def upload(
        self, path: str, page: str, files: Mapping[str, bytes], into: str = "files", **fields: str
    ) -> Answer:
        """A form with files in its field of that name."""
        token = TOKEN.search(self.get(page).text)
        assert token is not None
        parts = [("csrfmiddlewaretoken", "", token[1].encode())]
        parts += [(name, "", value.encode()) for name, value in fields.items()]
        parts += [(into, name, content) for name, content in files.items()]
        body = b"".join(
            b'--edge\r\nContent-Disposition: form-data; name="%s"%s\r\n\r\n%s\r\n'
            % (
                name.encode(),
                b'; filename="%s"\r\nContent-Type: image/jpeg' % file.encode() if file else b"",
                content,
            )
            for name, file, content in parts
        )
        kind = {"CONTENT_TYPE": "multipart/form-data; boundary=edge"}
        return self._followed(self._ask("POST", path, body + b"--edge--\r\n", kind))

    def _filled(self, page: str, fields: Mapping[str, Any]) -> dict[str, Any]:
        return filled_on(self.get(page), fields)

    def _sent(self, path: str, fields: Mapping[str, Any], headers: Mapping[str, str]) -> Answer:
        body = urlencode(fields, doseq=True).encode()
        kind = {"CONTENT_TYPE": "application/x-www-form-urlencoded"}
        return self._ask("POST", path, body, {**kind, **headers})

    def _followed(self, answer: Answer) -> Answer:
        if answer.status in {302, 303}:
            to = answer.headers["Location"].partition("#")[0]
            return self._followed(self._ask("GET", to, b"", {}))
        return answer

    def _ask(self, method: str, path: str, body: bytes, headers: Mapping[str, str]) -> Answer:
        path, _, query = path.partition("?")
        environ: dict[str, Any] = {
            "REQUEST_METHOD": method,
            "PATH_INFO": path,
            "QUERY_STRING": query,
            "SERVER_NAME": "127.0.0.1",
            "SERVER_PORT": "8765",
            "SERVER_PROTOCOL": "HTTP/1.1",
            "HTTP_HOST": self.host,
            "CONTENT_LENGTH": str(len(body)),
            "HTTP_COOKIE": "; ".join(f"{name}={value}" for name, value in self.cookies.items()),
            "wsgi.url_scheme": "http",
            "wsgi.input": io.BytesIO(body),
            "wsgi.errors": io.StringIO(),
            **headers,
        }
        told: dict[str, Any] = {}

        def start(status: str, fields: list[tuple[str, str]], _info: Any = None) -> None:
            told.update(status=int(status.split(maxsplit=1)[0]), fields=fields)

        given = self.pages(environ, start)
        content = b"".join(given)
        getattr(given, "close", lambda: None)()
        for name, value in told["fields"]:
            if name == "Set-Cookie":
                self.cookies |= {key: one.value for key, one in SimpleCookie(value).items()}
        return Answer(told["status"], dict(told["fields"]), content)


def filled_on(page: Answer, fields: Mapping[str, Any]) -> dict[str, Any]:
    """The fields of a form on a page, with the token and the place that the page carries."""
    shown = page.text
    token, place = TOKEN.search(shown), PLACE.search(shown)
    assert token is not None, shown
    said = {"csrfmiddlewaretoken": token[1], **fields}
    if place is not None:
        said.setdefault(place[1], place[2])
    return said


def made(folder: Path, project: Project = PROJECT, *, database: str | None = None) -> SiteRecord:
    """A record that says what a project does."""
    record = make_record(folder, project.site.name, database=database)
    said = [Statement(body, IMPORTER) for body in entries_of(project)]
    record.say(said, at=NOON.isoformat())
    return record


def browser(record: SiteRecord, now: datetime.datetime = NOON) -> Browser:
    """A browser on its workbench at a time."""
    return Browser(application_of(Workbench(record, LIBRARY, lambda: now)))
