# SPDX-License-Identifier: GPL-3.0-or-later
"""Question after question, as somebody beside the wall would tell, and what that takes."""

from counting import check, say

# A bed of a school's kitchen garden.
BED = {"kind": "bed-level", "place": ["Queensland"], "height": ["300", "50"], "block": ["150", "500", "400", "", "0"],
       "water": "pipe-two", "top": "bare", "base": "rock", "bed-soil": "topsoil", "ground": "stiff", "use": "plants",
       "fence": "none", "near": "none", "land": "none", "works": "new", "bed-size": ["3", "1.2"]}


def terrace(height):
    """In the same garden, as high as somebody wants it."""
    return {"kind": "bank", "place": ["Queensland"], "height": [height, "50"], "block": ["200", "400", "400", "", "20"],
            "water": "pipe-two", "top": "bare", "base": "rock-deep", "soil": "sandy-loam", "ground": "sandy-loam", "use": "people",
            "slope": ["0", ""], "front": ["0"], "fence": "none", "near": "none", "land": "none", "works": "new",
            "hole": "yes", "dig": [height, "0"], "length": ["6"]}


# How far below the answer the question begins.
CLEAR = """
const top = (id) => document.getElementById(id).getBoundingClientRect();
return Math.round(top('question-head').top - Math.max(0, top('answer').bottom));"""


def answer_part(page, answers):
    """To the end of the part that is asked. gives of each answer the taps and lines by then, and how long those took"""
    part, told = page.part(), []
    while page.key() and len(told) < 40 and page.part() == part:
        key = page.key()
        page.answer(answers)
        told.append((page.taps, page.lines(), page.verdict_ms()))
        check(page.js("return document.activeElement.id") == "question-head", f"after {key} the focus is elsewhere")
        check(page.js(CLEAR) >= 0, f"after {key} the answer covers the next question")
        if page.key() == key:
            page.press("Later", "#question", changes=False)
    return told


def first_right(told):
    """After how many answers stands what stands at the end, and has not changed since; and the taps until then."""
    right = len(told)
    while right > 1 and told[right - 2][1] == told[-1][1]:
        right -= 1
    return right, told[right - 1][0]


def say_of(words, told):
    right, taps = first_right(told)
    say(f"{words}: {len(told)} answers, {told[-1][0]} taps; the first right verdict after {right}, {taps} taps")
