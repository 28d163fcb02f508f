"""The calculation package: what a review says, laid out as an engineer's office would print it."""

from backspan.papers.content import Drawings, PackageContent, package_content
from backspan.papers.errors import PaperError
from backspan.papers.pdf import package_pdf

__all__ = ["Drawings", "PackageContent", "PaperError", "package_content", "package_pdf"]
