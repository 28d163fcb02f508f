"""PDF files by hand: pages of a roof's outline, and what such files may carry."""

from __future__ import annotations

from collections.abc import Sequence

#: Catalog entries of a file that would run a script when it is opened, and carries another file.
SCRIPT = "/OpenAction << /S /JavaScript /JS (while (true) {}) >>"
CARRIES = (
    "/Names << /EmbeddedFiles << /Names [(a.exe) << /Type /Filespec /F (a.exe) >>] >>"
    " /JavaScript << /Names [(a) << /S /JavaScript /JS (while (true) {}) >>] >> >>"
)
#: A line around 600 by 400 points, 50 in from the corner of a page of 700 by 500.
OUTLINE = b"2 w 50 50 600 400 re S"
_PASSWORD = "00" * 32


def pdf(
    *pages: bytes,
    size: tuple[float, float] = (700, 500),
    catalog: str = "",
    encrypted: bool = False,
) -> bytes:
    """A PDF with a page for each content that is told."""
    kids = " ".join(f"{3 + 2 * one} 0 R" for one in range(len(pages)))
    objects = [
        f"<< /Type /Catalog /Pages 2 0 R {catalog} >>".encode(),
        f"<< /Type /Pages /Count {len(pages)} /Kids [{kids}] >>".encode(),
    ]
    for number, content in enumerate(pages):
        box = f"[0 0 {size[0]:f} {size[1]:f}]"
        page = f"<< /Type /Page /Parent 2 0 R /MediaBox {box} /Contents {4 + 2 * number} 0 R >>"
        stream = b"<< /Length %d >>\nstream\n%s\nendstream" % (len(content), content)
        objects += [page.encode(), stream]
    locked = ""
    if encrypted:
        secret = f"/O <{_PASSWORD}> /U <{_PASSWORD}>"
        locked = f"/Encrypt << /Filter /Standard /V 1 /R 2 /P -4 {secret} >> /ID [<00> <00>]"
    return _file(objects, locked)


def _file(objects: Sequence[bytes], trailer: str) -> bytes:
    whole, places = b"%PDF-1.7\n", []
    for number, one in enumerate(objects, start=1):
        places.append(len(whole))
        whole += b"%d 0 obj\n%s\nendobj\n" % (number, one)
    rows = b"".join(b"%010d 00000 n \n" % one for one in places)
    table = b"xref\n0 %d\n0000000000 65535 f \n%s" % (len(places) + 1, rows)
    end = f"trailer\n<< /Size {len(places) + 1} /Root 1 0 R {trailer} >>\nstartxref\n{len(whole)}"
    return whole + table + end.encode() + b"\n%%EOF\n"
