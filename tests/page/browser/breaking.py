# SPDX-License-Identifier: GPL-3.0-or-later
"""What a person does by mistake, and what a device refuses: nothing is lost, and what is wrong is said."""

import os
import time

from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.support.ui import Select

from answering import BED, answer_part, terrace
from counting import check
from paper import count_pages, printed
from person import PHONE, Page

# Files that are no sheet of one wall, and a word that says why.
BAD_FILES = {
    "schedule.csv": (b"mark,wall height [mm],block depth [mm]\nA,600,300\nB,900,400\n", "schedule"),
    "paper.pdf": (b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n1 0 obj\n<</Type/Catalog>>\nendobj\n\x00\x01\x02" * 40, "not opened"),
    "empty.csv": (b"", "nothing"),
    "blank.csv": (b"item,value,unit,note\n", "no items"),
    "huge.csv": (b"item,value,unit,note\n" + b"wall height,900,mm,as high as the others\n" * 130000, "large"),
    "faults.csv": (b"item,value,unit,note\nwall height,tall,mm,\nblock depth,400,,\n", "tall"),
    "newer.csv": (b"item,value,unit,note\nwall height,600,mm,\nmoon phase,full,,\n", "moon phase"),
}


def bad_files(page):
    """Each is refused with a reason, in a second or two; what stood there stays."""
    page.open_part("papers")
    lines, sheet = page.lines(), page.js("return localStorage.getItem('lowwall.sheet')")
    for name, (text, why) in BAD_FILES.items():
        path = os.path.join(page.downloads, name)
        with open(path, "wb") as file:
            file.write(text)
        page.all("#papers input[type=file]")[0].send_keys(path)
        told = lambda: page.all("#papers [role=alert]")[0].text
        check(page.wait_for(lambda: name in told() and why in told(), 5), f"{name}: {told()[:200]}")
        check(len(told()) < 3000, f"{name}: {len(told())} letters of faults")
        check(page.lines() == lines and page.js("return localStorage.getItem('lowwall.sheet')") == sheet,
              f"{name} took the place of the wall")


def double_tap(page):
    """The second tap of two comes when the next question stands there: it answers nothing."""
    page.wait_for(lambda: page.key() == "kind")
    time.sleep(0.5)
    pick = page.all("#question .pick[data-choice='bed-level']")[0]
    page.js("arguments[0].scrollIntoView({block: 'center'})", pick)
    before = page.settled()
    ActionChains(page.driver).move_to_element(pick).click().click().perform()
    page.settle(before)
    time.sleep(0.5)
    check(page.key() == "place", f"after two taps on the first question {page.key()} is asked")
    page.answer(BED)
    page.answer(BED)  # the height, by its form
    time.sleep(0.5)
    check(page.key() == "block", f"after the height {page.key()} is asked")


def no_storage(page):
    """In a private window a device may refuse to keep anything: the page works, and says so."""
    page.js("Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }")
    before = page.lines()
    page.answer(BED)
    check(page.key() not in ("", "block"), f"without storage {page.key()} is asked")
    page.js("document.getElementById('papers').open = false")
    page.open_part("papers")
    check("Nothing is kept" in page.all("#papers")[0].text, "that nothing is kept is not said")
    check(len(page.lines()) >= len(before), "without storage the answer goes")
    page.driver.refresh()
    page.settle()
    check(page.key() == "kind", "an older wall came back from a device that kept nothing of the last one")


def units_amid(page):
    """Other units in the middle of a question: it is asked again in them, nothing is taken over."""
    page.answer(BED)
    page.answer(BED)
    page.fill(["300", "50"])
    sheet = page.js("return localStorage.getItem('lowwall.sheet')")
    choose = Select([each for each in page.all("#question select") if "Feet" in each.text][0])
    before = page.settled()
    choose.select_by_value("us")
    page.settle(before)
    check(page.key() == "height" and "[in]" in page.all("#question form")[0].text, f"{page.key()} is asked in metres")
    check("300" not in page.js("return localStorage.getItem('lowwall.sheet')"), "a number was taken in other units")
    page.press("Undo", "#answer")
    check(page.js("return localStorage.getItem('lowwall.sheet')") == sheet, "units are not undone")


def zoomed(page):
    """A desk of 1280 px at 400 % leaves 320 by 256."""
    metrics = {"width": 320, "height": 256, "deviceScaleFactor": 4, "mobile": False}
    page.driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", metrics)
    wide = page.js("return [document.documentElement.scrollWidth, document.documentElement.clientWidth]")
    check(wide[0] <= wide[1], f"at 400 %: {wide[0]} px wide, {wide[1]} are there")
    covered = page.js("return getComputedStyle(document.getElementById('answer')).position")
    check(covered == "static", f"at 400 % the answer covers what is below it: {covered}")
    page.driver.execute_cdp_cmd("Emulation.clearDeviceMetricsOverride", {})


def back_button(page):
    """Away and back again: the wall stands there."""
    lines = page.lines()
    page.driver.execute_script("location.href = 'about:blank'")
    page.wait_for(lambda: page.js("return location.href") == "about:blank")
    page.driver.back()
    page.wait_for(lambda: page.settled() > 0)
    check(page.lines() == lines, f"after going back: {page.lines()}")


def hurried(page):
    """An answer taken back and given again while remedies are sought and drawings are made."""
    page.open_part("stand")
    page.open_part("drawings")
    lines = page.lines()
    for _ in range(3):
        page.press("Undo", "#answer", changes=False)
        time.sleep(0.05)
    page.settle(page.settled())
    again = answer_part(page, terrace("1200"))
    check(len(again) >= 3 and page.lines() == lines, f"in a hurry another wall came out: {page.lines()}")
    page.wait_for(lambda: "Still" not in page.all("#stand [role=status]")[0].text, 120)
    title = page.all("#stand summary h2")[0].text
    check(page.all("#stand .wide") != [] or "Nothing" in title, f"no remedy after a hurry: {title}")


def nothing_on_paper(page):
    path = printed(page, "A4", "nothing")
    check(count_pages(path) == 1, f"with nothing answered {count_pages(path)} pages are printed")


def breaking(path, downloads):
    page = Page(PHONE, path, downloads)
    nothing_on_paper(page)
    double_tap(page)
    no_storage(page)
    units_amid(page)
    back_button(page)
    page.js("localStorage.clear()")
    page.driver.refresh()
    page.settle()
    answer_part(page, terrace("1200"))
    bad_files(page)
    zoomed(page)
    hurried(page)
    page.quiet("breaking")
    page.close()
