# SPDX-License-Identifier: GPL-3.0-or-later
"""A bed on a phone: from the first question to its order, back and forth, and every part looked at."""

from selenium.webdriver.common.by import By

from answering import BED, answer_part, say_of
from counting import check, say
from paper import precheck_on_paper
from parts import drawings, open_all
from person import PHONE, Page
from reach import accessible, no_sideways, schemes

ANSWERS_MOST = 15


def bed_to_verdict(page):
    check(page.lines() == ["No answer yet: the questions come first."], "a page that begins has an answer")
    told = answer_part(page, BED)
    check(len(told) <= ANSWERS_MOST, f"a bed takes {len(told)} answers")
    check(len(page.lines()) == 3 and page.tone() == "good", f"a bed like many: {page.lines()}")
    say_of("a bed of 300 mm", told)
    verdicts = sorted(each[2] for each in told)
    check(verdicts[len(verdicts) // 2] < 100, f"the answer takes {verdicts} ms")


def parts_of_questions(page):
    """What the order needs and what an officer asks may follow, and may be left."""
    check(page.key() == "", f"after the last answer {page.key()} is asked")
    page.press("For the officer", "#question", changes=False)
    check(page.part() == "officer",
          "what an officer asks is not asked")
    for _ in range(20):  # to the end of it: I don't know is taken wherever it is offered
        before = page.key()
        if not before:
            break
        offered = any(each.text.startswith("I don't know") for each in page.all("#question .row button"))
        page.press("I don't know" if offered else "Later", "#question", changes=offered)
        check(page.key() != before, f"{before}: I don't know is offered and not taken" if offered else f"{before} stays")
    check(page.key() == "", f"what an officer asks does not end: {page.key()}")


def bed_to_order(page):
    part = page.open_part("order")
    if not page.all("#order .ticks li"):
        page.press("Answer it", "#order", changes=False)
        check(page.key() == "bed-size", f"what the order lacks leads to {page.key()}")
        page.answer(BED)
    lines = page.all("#order .ticks li")
    check(len(lines) >= 4, "the order has no lines")
    say(f"a bed of 300 mm: its order after {page.taps} taps")
    if lines:
        words = lines[0].text
        page.click(lines[0].find_element(By.TAG_NAME, "input"))
        page.driver.refresh()
        page.settle()
        page.open_part("order")
        ticked = page.all("#order .ticks input")
        check(bool(ticked) and ticked[0].is_selected(), f"the tick of \"{words[:40]}\" is gone after a reload")
    check(part is not None and len(page.lines()) == 3, "after a reload the sheet is gone")


def back_and_forth(page):
    page.unfold("All questions")
    page.click(page.button("How high is the wall", "#question"))
    fields = page.all("#question form input")
    check(page.key() == "height" and fields[0].get_attribute("value") == "300", "the answer given stands there no more")
    before = page.lines()
    page.fill(["very high", "50"])
    page.press("That is it", "#question", changes=False)
    alert = page.all("#question [role=alert]")[0].text
    check("Wanted" in alert and "number" in alert, f"a fault in an answer has no cure: {alert}")
    check(page.lines() == before, "a fault in an answer changed the wall")
    page.fill(["1900", "0"])
    page.press("That is it", "#question")
    check(page.lines() != before and page.tone() == "bad", "another height changed nothing")
    page.press("Undo", "#answer")
    check(page.lines() == before, "undo does not bring the wall back")
    page.unfold("All questions")
    page.click(page.button("How large is one block", "#question"))
    page.press("Back", "#question", changes=False)
    check(page.key() == "height", f"back from the block is {page.key()}")


def phone(path, downloads):
    page = Page(PHONE, path, downloads)
    bed_to_verdict(page)
    bed_to_order(page)
    parts_of_questions(page)
    back_and_forth(page)
    open_all(page)
    accessible(page, "phone")
    schemes(page, "phone")
    no_sideways(page, "phone")
    drawings(page)
    page.quiet("phone")
    precheck_on_paper(page, "a bed")
    page.close()
