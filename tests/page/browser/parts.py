# SPDX-License-Identifier: GPL-3.0-or-later
"""Each part below the question, opened."""

from selenium.webdriver.common.by import By
from selenium.webdriver.support.ui import Select

from counting import check


PARTS = ("stand", "find", "try", "drawings", "order", "pegs", "mind", "why", "numbers", "list", "papers")


def open_all(page):
    for part in PARTS:
        page.open_part(part)
    page.wait_for(lambda: page.all("#find button"))


def plain_list(page):
    page.open_part("list")
    label = [each for each in page.all("#list label") if each.text == "wall height"][0]
    field = page.all(f"#{label.get_attribute('for')}")[0]
    field.clear()
    field.send_keys("tall")
    form = field.find_element(By.XPATH, "ancestor::form")
    page.click(form.find_element(By.TAG_NAME, "button"))
    check(page.wait_for(lambda: "Wanted" in form.find_element(By.CSS_SELECTOR, "[role=alert]").text),
          "a fault in the list has no cure")
    check(all(isinstance(Select(each).options, list) for each in page.all("#list select")), "a choice has no words")


def drawings(page):
    page.open_part("drawings")
    check(page.wait_for(lambda: page.js("return [...document.querySelectorAll('#drawings img')]"
                                        ".every((i) => i.complete && i.naturalWidth > 0 && i.alt.length > 20)")),
          "a drawing is not drawn, or says nothing to those who listen")
    before = page.js("return document.querySelector('#drawings img').clientWidth")
    page.press("Larger", "#drawings", changes=False)
    check(page.js("return document.querySelector('#drawings img').clientWidth") > before, "a drawing does not grow")
