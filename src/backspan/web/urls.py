"""Which page stands at which address."""

from __future__ import annotations

from django.urls import path

from backspan.web.pages import (
    anchors,
    concerns,
    deciding,
    drop,
    entry,
    evidence,
    kit,
    matters,
    papers,
    record,
    sheet,
    speaker,
    stating,
    taking_over,
    thing,
    today,
    trying,
)

handler400 = "backspan.web.pages.refused.bad_request"
handler404 = "backspan.web.pages.refused.not_there"
handler500 = "backspan.web.pages.refused.broken"
urlpatterns = [
    path("", today.page, name="today"),
    path("speaker", speaker.page, name="speaker"),
    path("drops/<str:name>/", drop.page, name="drop"),
    path("drops/<str:name>/section.svg", drop.section, name="section"),
    path("drops/<str:name>/try", trying.page, name="try"),
    path("drops/<str:name>/state", stating.value, name="state"),
    path("drops/<str:name>/connect", deciding.connect, name="connect"),
    path("drops/<str:name>/permit", deciding.permit, name="permit"),
    path("drops/<str:name>/stop", deciding.stop, name="stop"),
    path("drops/<str:name>/restrict", deciding.restrict, name="restrict"),
    path("drops/<str:name>/shift", deciding.shift, name="shift"),
    path("drops/<str:name>/hold", deciding.hold, name="hold"),
    path("drops/<str:name>/deficiency", matters.raise_one, name="raise"),
    path("drops/<str:name>/take-over", taking_over.page, name="take-over"),
    path("entries/<str:name>/", entry.page, name="entry"),
    path("drops/<str:name>/papers/", papers.page, name="papers"),
    path("drops/<str:name>/papers/<str:paper>.pdf", papers.pdf, name="paper"),
    path("drops/<str:name>/papers/<str:paper>/issue", papers.issue, name="issue"),
    path("drops/<str:name>/sheet", sheet.page, name="sheet"),
    path("deficiencies/<str:name>/notice.pdf", papers.notice, name="notice"),
    path("deficiencies/<str:name>/notice/issue", papers.issue_notice, name="issue notice"),
    path("deficiencies/<str:name>/", matters.page, name="deficiency"),
    path("kit/", kit.page, name="kit"),
    path("kit/new", kit.new, name="new-thing"),
    path("kit/<path:tag>/", thing.page, name="thing"),
    path("anchors/", anchors.page, name="anchors"),
    path("anchors/<path:roof>/<path:name>/", anchors.one, name="anchor"),
    path("concerns/<path:name>/", concerns.page, name="concern"),
    path("evidence/<str:name>", evidence.file, name="evidence"),
    path("record/", record.page, name="record"),
    path("record/project.json", record.project, name="project"),
    path("record/archive.tar", record.archive, name="archive"),
]
