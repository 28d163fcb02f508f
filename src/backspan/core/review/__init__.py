"""Runs the checks on a drop, rolls up, compares rule sets; the answer of the main job."""

from backspan.core.review.run import review, review_findings, reviews

__all__ = ["review", "review_findings", "reviews"]
