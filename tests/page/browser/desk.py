# SPDX-License-Identifier: GPL-3.0-or-later
"""A wall on a desk that goes to the engineer: what a slider moves, and what would make it stand."""

import time

from selenium.webdriver.common.keys import Keys

from counting import check, say
from paper import on_paper, precheck_on_paper
from papers import save_and_open, share_and_print
from parts import open_all, plain_list
from person import DESK, Page
from reach import accessible, no_sideways, schemes, tab_order


# How many times as long the same work takes now as at its best: the machine may be others' as well.
SLOWER = """
const done = arguments[arguments.length - 1], took = [];
const work = () => {
  const begun = performance.now();
  let sum = 0;
  for (let i = 0; i < 1e7; i += 1) sum += i % 7;
  took.push(performance.now() - begun + sum * 0);
  if (took.length < 40) return setTimeout(work, 5);
  took.sort((a, b) => a - b);
  return done(took[36] / took[0]);
};
work();"""


def engineer(page):
    page.open_part("papers")
    page.press("Wipe it", "#papers", changes=False)
    page.press("Yes, wipe it", "#papers")
    check(page.js("return localStorage.length") == 0, "after wiping something is kept")
    page.unfold("Open a sheet")
    page.press("A wall that holds up ground", "#question")
    page.open_part("try")
    slider = page.all("#try input[type=range]")[0]
    lines = page.lines()
    for _ in range(4):
        slider.send_keys(Keys.ARROW_RIGHT)
    check(page.wait_for(lambda: page.lines() != lines), "a slider changes nothing")
    check("licensed engineer" in page.lines()[0], f"a high wall's first line: {page.lines()[0]}")
    check(page.js("return document.querySelectorAll('#try .bars li').length") > 3, "no ratios beside the sliders")
    page.open_part("stand")
    check(page.wait_for(lambda: len(page.all("#stand .wide")) > 0), "no remedy is offered")
    before = page.settled()
    page.click(page.all("#stand .wide")[0])
    page.settle(before)
    stands = [line for line in page.lines() if line.startswith("Does it stand")]
    check("move" not in stands[0] and "less margin" not in stands[0], f"with the remedy: {stands}")


def no_long_blocks(page):
    """While what would make it stand is sought, sheet after sheet: the two longest may be the machine's own."""
    page.js("window.blocks = []")
    slider = page.all("#try input[type=range]")[0]
    for key in (Keys.ARROW_LEFT, Keys.ARROW_RIGHT, Keys.ARROW_LEFT, Keys.ARROW_RIGHT, Keys.ARROW_LEFT):
        slider.send_keys(key)
        time.sleep(0.3)
        page.wait_for(lambda: "Still" not in page.all("#stand [role=status]")[0].text)
    blocks = sorted(page.js("return window.blocks"), reverse=True)
    slower = max(1.0, page.driver.execute_async_script(SLOWER))
    check(blocks[2:] == [] or blocks[2] <= 100 * slower, f"blocks of {blocks} ms, on a machine {slower:.1f} times as slow")
    say(f"blocks of 50 ms and longer: {blocks}, the machine {slower:.1f} times as slow as at its best")


def broken_off(page):
    """An answer given meanwhile: what is found belongs to the new sheet."""
    slider = page.all("#try input[type=range]")[0]
    for _ in range(3):
        slider.send_keys(Keys.ARROW_RIGHT)
    page.wait_for(lambda: "Still" not in page.all("#stand [role=status]")[0].text)
    time.sleep(0.3)
    page.wait_for(lambda: "Still" not in page.all("#stand [role=status]")[0].text)
    shown = [each.text for each in page.all("#stand .wide")]
    head = page.all("#stand summary h2")[0].text
    page.driver.refresh()
    page.settle()
    page.open_part("stand")
    page.wait_for(lambda: page.all("#stand [role=status]") and "Still" not in page.all("#stand [role=status]")[0].text)
    check([each.text for each in page.all("#stand .wide")] == shown, "remedies of another sheet are shown")
    check(page.all("#stand summary h2")[0].text == head, f"another title: {head}")


def desk(path, downloads):
    page = Page(DESK, path, downloads)
    engineer(page)
    page.press("Undo", "#answer")
    no_long_blocks(page)
    broken_off(page)
    save_and_open(page)
    share_and_print(page)
    tab_order(page, "desk")
    plain_list(page)
    open_all(page)
    accessible(page, "desk")
    schemes(page, "desk")
    no_sideways(page, "desk")
    page.quiet("desk")
    on_paper(page, "the page", 20, 1)  # a large drawing goes to the next page
    precheck_on_paper(page, "a wall for an engineer")
    page.close()
