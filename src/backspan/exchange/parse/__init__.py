"""Text to model: project files and confirmations, all problems at once; the JSON Schema."""

from backspan.exchange.parse.part import parse_part
from backspan.exchange.parse.problems import Place, Problem, ProjectError
from backspan.exchange.parse.project import parse_confirmations, parse_project

__all__ = ["Place", "Problem", "ProjectError", "parse_confirmations", "parse_part", "parse_project"]
