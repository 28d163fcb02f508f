"""Signs of answers, for templates: word, sign and colour together, never one alone."""

from __future__ import annotations

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString

from backspan.core.findings import Verdict
from backspan.core.words import SIGNS

register = template.Library()


@register.filter
def answer(verdict: str) -> SafeString:
    """An answer with its sign."""
    one = Verdict(verdict)
    return format_html(
        '<span class="answer {}"><span class="sign" aria-hidden="true">{}</span> {}</span>',
        str(one),
        SIGNS[one],
        str(one),
    )
