"""The drawings of a package: a file name of our own for each, and the size of its sheet."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Any

from backspan.papers.errors import PaperError

_SIZE = re.compile(r'<svg\b[^>]*?\bwidth="([\d.]+)mm" height="([\d.]+)mm"')


@dataclass(slots=True)
class Pictures:
    """SVG texts by file name. No id a person typed becomes part of a name."""

    files: dict[str, str] = field(default_factory=dict)

    def add(self, svg: str, *, title: str) -> dict[str, Any]:
        """Keep a drawing; its file, its sheet in millimetres and its title, for the template.

        Raises PaperError for a drawing that does not state its size.
        """
        size = _SIZE.search(svg)
        if size is None:
            raise PaperError(f"{title}: the drawing does not say its size in millimetres")
        name = f"drawing-{len(self.files) + 1}.svg"
        self.files[name] = svg
        return {
            "file": name,
            "width": float(size[1]),
            "height": float(size[2]),
            "title": title,
        }
