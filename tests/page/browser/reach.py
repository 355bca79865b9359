# SPDX-License-Identifier: GPL-3.0-or-later
"""Whoever cannot see well, hear, point or hold still reaches all of it."""

from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.common.keys import Keys

from counting import check


NAMELESS = ("button", "checkbox", "textbox", "combobox", "slider", "link", "DisclosureTriangle", "image")


SIZES = """
return [...document.querySelectorAll('button, summary, select, textarea, .tick, input:not([type=checkbox])')]
  .filter((e) => e.checkVisibility({contentVisibilityAuto: true}))
  .map((e) => [e.tagName, e.textContent.slice(0, 30), e.getBoundingClientRect().width, e.getBoundingClientRect().height])
  .filter((e) => e[2] < 47.5 || e[3] < 47.5)"""


CONTRAST = """
const rgb = (c) => c.match(/[\\d.]+/g).map(Number);
const light = ([r, g, b]) => [r, g, b].map((v) => v / 255).map((v) => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)
  .reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
const behind = (e) => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor);
  if (c.length < 4 || c[3] > 0.99) return c; } return [255, 255, 255]; };
const found = new Map();
const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
for (let n = walker.nextNode(); n; n = walker.nextNode()) {
  const e = n.parentElement;
  if (!n.textContent.trim() || !e.checkVisibility() || ["SCRIPT", "STYLE"].includes(e.tagName)) continue;
  const a = light(rgb(getComputedStyle(e).color)), b = light(behind(e));
  const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  if (ratio < 7) found.set(e.tagName + '.' + e.className, ratio);
}
return [...found]"""


ORDER = """
const a = arguments[0], b = document.activeElement;
return !a || !!(a.compareDocumentPosition(b) & Node.DOCUMENT_POSITION_FOLLOWING)"""


# Buttons with a word that is broken, and what is cut off without a way to scroll to it.
BROKEN = """
const broken = [], range = document.createRange();
for (const button of [...document.querySelectorAll('button')].filter((e) => e.checkVisibility())) {
  const walker = document.createTreeWalker(button, NodeFilter.SHOW_TEXT);
  for (let n = walker.nextNode(); n; n = walker.nextNode())
    for (const word of n.textContent.matchAll(/[\\w']+/g)) {
      range.setStart(n, word.index);
      range.setEnd(n, word.index + word[0].length);
      if (new Set([...range.getClientRects()].map((r) => Math.round(r.top))).size > 1) broken.push(word[0]);
    }
}
const cut = [...document.querySelectorAll('body *')].filter((e) => e.checkVisibility() && e.tabIndex < 0 &&
  e.scrollHeight > e.clientHeight + 2 && ['auto', 'scroll', 'hidden'].includes(getComputedStyle(e).overflowY));
return [...broken, ...cut.map((e) => e.tagName + '#' + e.id)];"""


def accessible(page, words):
    tree = page.driver.execute_cdp_cmd("Accessibility.getFullAXTree", {})["nodes"]
    named = [node for node in tree if not node.get("ignored") and node.get("role", {}).get("value") in NAMELESS]
    silent = [node["role"]["value"] for node in named if not node.get("name", {}).get("value", "").strip()]
    check(len(named) > 10 and not silent, f"{words}: controls without a name: {silent[:5]}")
    roles = [node.get("role", {}).get("value") for node in tree if not node.get("ignored")]
    for role in ("main", "banner", "contentinfo", "status", "heading"):
        check(role in roles, f"{words}: no {role}")
    small = page.js(SIZES)
    check(not small, f"{words}: targets below 48 px: {small[:4]}")
    check(page.js("return document.querySelectorAll('h1').length") == 1, f"{words}: not one h1")
    check(page.js("return document.documentElement.lang") == "en", f"{words}: no language")


def tab_order(page, words):
    page.driver.refresh()
    page.settle()
    last, stops, ordered, outlined = None, 0, True, True
    ActionChains(page.driver).send_keys(Keys.TAB).perform()
    first = page.js("return document.activeElement.className")
    for _ in range(25):
        here = page.driver.switch_to.active_element
        if here.tag_name == "body":
            break
        ordered = ordered and page.js(ORDER, last)
        outlined = outlined and page.js("return getComputedStyle(document.activeElement).outlineStyle") != "none"
        last, stops = here, stops + 1
        ActionChains(page.driver).send_keys(Keys.TAB).perform()
    check(first == "skip", f"{words}: the first stop is no way past the head: {first}")
    check(stops > 10 and ordered, f"{words}: {stops} stops, in order: {ordered}")
    check(outlined, f"{words}: a stop is not seen")


def schemes(page, words):
    for scheme in ("light", "dark"):
        page.driver.execute_cdp_cmd("Emulation.setEmulatedMedia",
                                    {"features": [{"name": "prefers-color-scheme", "value": scheme}]})
        weak = page.js(CONTRAST)
        check(not weak, f"{words}, {scheme}: contrast below 7: {weak[:4]}")
    page.driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"features": []})


def no_sideways(page, words):
    for size in ("100%", "200%"):
        page.js("document.documentElement.style.fontSize = arguments[0]", size)
        wide = page.js("return [document.documentElement.scrollWidth, document.documentElement.clientWidth]")
        check(wide[0] <= wide[1], f"{words} at {size}: {wide[0]} px wide, {wide[1]} are there")
        broken = page.js(BROKEN)
        check(not broken, f"{words} at {size}: broken or cut off: {broken[:5]}")
    page.js("document.documentElement.style.fontSize = ''")
