# SPDX-License-Identifier: GPL-3.0-or-later
"""Terraces on a phone, a low one and one for an engineer: what they take of a person."""

from answering import answer_part, say_of, terrace
from counting import check
from paper import precheck_on_paper
from person import PHONE, Page

ANSWERS_MOST = 25
HEIGHTS = (("700", "council"), ("1200", "licensed engineer"))


def terraces(path, downloads):
    for height, who in HEIGHTS:
        page = Page(PHONE, path, downloads)
        told = answer_part(page, terrace(height))
        check(len(told) <= ANSWERS_MOST, f"a terrace of {height} mm takes {len(told)} answers")
        asked = [line for line in page.lines() if line.startswith("Who answers")]
        check(len(page.lines()) == 3 and who in asked[0], f"a terrace of {height} mm: {page.lines()}")
        say_of(f"a terrace of {height} mm", told)
        page.quiet(f"a terrace of {height} mm")
        precheck_on_paper(page, f"a terrace of {height} mm")
        page.close()
