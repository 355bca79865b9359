# SPDX-License-Identifier: GPL-3.0-or-later
"""The page in Chromium, used as a person would, on a phone and on a desk.   browser.py PAGE.html

Prints "PASSED FAILED" last; what fails is said on standard error."""

import base64
import functools
import glob
import http.server
import json
import os
import shutil
import sys
import tempfile
import threading
import time
from urllib.parse import quote

from selenium import webdriver
from selenium.common.exceptions import StaleElementReferenceException
from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys
from selenium.webdriver.support.ui import Select

PHONE, DESK = (360, 740), (1280, 900)
passed = failed = 0


def check(well, words):
    global passed, failed
    if well:
        passed += 1
    else:
        failed += 1
        print(f"browser.py: {words}", file=sys.stderr)


def open_browser(size, profile):
    options = Options()
    for argument in ("headless=new", "no-sandbox", "disable-gpu", "disable-background-networking",
                     "disable-component-update", "disable-sync", f"user-data-dir={profile}",
                     f"window-size={size[0]},{size[1]}"):
        options.add_argument(f"--{argument}")
    if size == PHONE:
        metrics = {"width": size[0], "height": size[1], "pixelRatio": 2.0, "touch": True}
        options.add_experimental_option("mobileEmulation", {"deviceMetrics": metrics})
    options.set_capability("goog:loggingPrefs", {"browser": "ALL", "performance": "ALL"})
    return webdriver.Chrome(options=options, service=Service(shutil.which("chromedriver")))


# Whatever keeps a finger waiting for 50 ms or longer.
BLOCKS = """
window.blocks = [];
new PerformanceObserver((list) => list.getEntries().forEach((e) => window.blocks.push(Math.round(e.duration))))
  .observe({ type: 'longtask' });"""


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


class Page:
    """One page in one browser, and what a person does with it."""

    def __init__(self, size, path, downloads):
        self.profile = tempfile.mkdtemp()
        self.driver = open_browser(size, self.profile)
        self.downloads = downloads
        self.driver.execute_cdp_cmd("Browser.setDownloadBehavior",
                                    {"behavior": "allow", "downloadPath": downloads})
        self.driver.execute_cdp_cmd("Page.addScriptToEvaluateOnNewDocument", {"source": BLOCKS})
        self.driver.get_log("performance")
        self.driver.get(f"file://{quote(os.path.abspath(path))}")
        self.settle()

    def js(self, script, *arguments):
        return self.driver.execute_script(script, *arguments)

    def settled(self):
        return int(self.js("return document.documentElement.dataset.settled || 0"))

    def settle(self, after=0):
        until = time.time() + 10
        while self.settled() <= after and time.time() < until:
            time.sleep(0.02)

    def all(self, css):
        return self.driver.find_elements(By.CSS_SELECTOR, css)

    def click(self, element):
        """With what is clicked in the middle of the window, as somebody scrolls to it."""
        self.js("arguments[0].scrollIntoView({block: 'center'})", element)
        element.click()

    def button(self, words, within="body"):
        for each in self.all(f"{within} button"):
            if each.is_displayed() and each.text.strip().startswith(words):
                return each
        raise LookupError(f"no button \"{words}\" in {within}")

    def press(self, words, within="body", changes=True):
        before = self.settled()
        self.click(self.button(words, within))
        if changes:
            self.settle(before)

    def key(self):
        return self.js("return document.getElementById('question').dataset.key || ''")

    def lines(self):
        return [each.text.replace("\n", " ") for each in self.all("#lines .line")]

    def tone(self):
        return self.js("return document.getElementById('answer').dataset.tone")

    def unfold(self, words, within="#question"):
        for each in self.all(f"{within} summary"):
            if each.text.startswith(words):
                return self.click(each)
        raise LookupError(f"nothing to unfold \"{words}\"")

    def open_part(self, name):
        """The browser tells the page a moment later that it is open, and then it is filled."""
        part = self.all(f"#{name}")[0]
        if part.get_attribute("open") is None:
            self.js("document.getElementById(arguments[0]).replaceChildren()", f"part-{name}")
            self.click(part.find_element(By.TAG_NAME, "summary"))
            self.wait_for(lambda: self.all(f"#part-{name} > *"))
        return part

    def wait_for(self, condition, seconds=10):
        until = time.time() + seconds
        while time.time() < until:
            try:
                if condition():
                    return True
            except (StaleElementReferenceException, IndexError):
                pass
            time.sleep(0.05)
        return False

    def fill(self, values):
        for field, value in zip(self.all("#question form input"), values):
            field.clear()
            field.send_keys(value)

    def answer(self, answers):
        """Answer the question that stands there, by its key; what has no answer is not known."""
        given = answers.get(self.key())
        if given is None:
            self.press("I don't know", "#question")
        elif isinstance(given, list):
            self.fill(given)
            self.press("That is it", "#question")
        elif self.all("#question .ticks.open"):
            self.press("These, and no others", "#question")
        else:
            before = self.settled()
            self.click(self.all(f"#question .pick[data-choice='{given}']")[0])
            self.settle(before)

    def quiet(self, words):
        """No request but for the page itself, and no error."""
        asked = []
        for entry in self.driver.get_log("performance"):
            message = json.loads(entry["message"])["message"]
            if message["method"] == "Network.requestWillBeSent":
                asked.append(message["params"]["request"]["url"])
        away = [url for url in asked if not url.startswith(("file:", "data:", "blob:", "about:", "chrome:"))]
        files = [url for url in asked if url.startswith("file:")]
        check(not away, f"{words}: requests: {away[:3]}")
        check(len(set(files)) == 1, f"{words}: files beside the page: {set(files)}")
        errors = [entry["message"] for entry in self.driver.get_log("browser")
                  if entry["level"] in ("SEVERE", "WARNING")]
        check(not errors, f"{words}: console: {errors[:2]}")

    def close(self):
        self.driver.quit()
        shutil.rmtree(self.profile, ignore_errors=True)


# A bed of a school's kitchen garden, as somebody beside it would tell.
BED = {"kind": "bed-level", "place": ["Queensland"], "height": ["300", "50"], "block": ["150", "500", "400", "", "0"],
       "water": "pipe-two", "top": "bare", "base": "rock", "bed-soil": "topsoil", "ground": "stiff", "use": "plants",
       "fence": "none", "near": "none", "land": "none", "works": "new", "bed-size": ["3", "1.2"], "run": ["3"]}


def bed_to_order(page):
    check(page.lines() == ["No answer yet: the questions come first."], "a page that begins has an answer")
    answers, verdicts, first = 0, [], True
    while page.key() and answers < 30:
        if page.js("return document.querySelector('#question').dataset.part") != "first":
            first = False
        before = page.key()
        page.answer(BED)
        answers += 1 if first else 0
        if page.js("return document.activeElement.id") != "question-head":
            check(False, f"after {before} the focus is not on the next question")
        verdicts.append(int(page.js("return document.documentElement.dataset.verdictMs")))
        if page.key() == before:
            page.press("Later", "#question", changes=False)
        if not first:
            break
    check(answers <= 15, f"a bed takes {answers} answers")
    check(sorted(verdicts)[len(verdicts) // 2] < 100, f"the answer takes {verdicts} ms")
    check(len(page.lines()) == 3 and page.tone() == "good", f"a bed like many: {page.lines()}")
    print(f"browser.py: a bed in {answers} answers, verdict in {verdicts} ms", file=sys.stderr)


def parts_of_questions(page):
    """What the order needs and what an officer asks may follow, and may be left."""
    check(page.key() == "", f"after the last answer {page.key()} is asked")
    page.press("For the officer", "#question", changes=False)
    check(page.js("return document.querySelector('#question').dataset.part") == "officer",
          "what an officer asks is not asked")
    for _ in range(20):  # to the end of it: I don't know is taken wherever it is offered
        before = page.key()
        if not before:
            break
        offered = any(each.text.startswith("I don't know") for each in page.all("#question .row button"))
        page.press("I don't know" if offered else "Later", "#question", changes=offered)
        check(page.key() != before, f"{before}: I don't know is offered and not taken" if offered else f"{before} stays")
    check(page.key() == "", f"what an officer asks does not end: {page.key()}")


def order(page):
    part = page.open_part("order")
    if not page.all("#order .ticks li"):
        page.press("Answer it", "#order", changes=False)
        check(page.key() == "bed-size", f"what the order lacks leads to {page.key()}")
        page.answer(BED)
    lines = page.all("#order .ticks li")
    check(len(lines) >= 4, "the order has no lines")
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
    print(f"browser.py: blocks of 50 ms and longer: {blocks}, the machine {slower:.1f} times as slow as at its best",
          file=sys.stderr)


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


SHARES = """
window.shared = [];
navigator.canShare = (data) => data.files.length === 1;
navigator.share = async (data) => {
  window.shared.push([data.files[0].name, data.files[0].type, await data.files[0].text()]);
  if (window.refuse) throw new DOMException("no", window.refuse);
};"""


def shared(page, words, count):
    page.press(words, "#papers", changes=False)
    page.wait_for(lambda: len(page.js("return window.shared")) == count)
    return page.js("return window.shared")[-1]


def share_and_print(page):
    """What the device's own sharing gets, and a file in its place where it refuses; the pre-check on paper."""
    page.js(SHARES)
    page.js("document.getElementById('papers').open = false")
    page.open_part("papers")
    name, kind, text = shared(page, "Share the sheet", 1)
    check(name.endswith(".csv") and kind == "text/csv" and text.startswith("item,value"), f"shared: {name} {kind}")
    page.press("The pre-check", "#papers", changes=False)
    page.wait_for(lambda: page.all("#papers iframe"))
    name, kind, text = shared(page, "Share it", 2)
    check(name.endswith("-pre-check.html") and "pre-check" in text, f"shared: {name} {kind}")
    for each in glob.glob(os.path.join(page.downloads, "*.csv")):  # a file of that name would be written over
        os.remove(each)
    for refusal in ("AbortError", "NotAllowedError"):
        page.js("window.refuse = arguments[0]", refusal)
        shared(page, "Share the sheet", 3 if refusal == "AbortError" else 4)
        new = lambda: glob.glob(os.path.join(page.downloads, "*.csv"))
        page.wait_for(new, 0.5 if refusal == "AbortError" else 10)
        check((refusal == "AbortError") == (not new()), f"after {refusal}: {new()}")
    page.js("document.querySelector('#papers iframe').contentWindow.print = () => { window.printed = true; }")
    page.press("Print it", "#papers", changes=False)
    check(page.js("return window.printed === true"), "the pre-check is not printed")
    return page.js("return document.querySelector('#papers iframe').srcdoc")


def on_paper(page, html):
    """The pages that come out of the printer, where somebody wants to look at them too."""
    path = os.path.join(page.downloads, "precheck.html")
    with open(path, "w", encoding="utf8") as file:
        file.write(html)
    for url, name in ((None, "page"), (f"file://{quote(path)}", "precheck")):
        if url:
            page.driver.get(url)
        pdf = base64.b64decode(page.driver.print_page())
        pages = pdf.count(b"/Type /Page\n") + pdf.count(b"/Type /Page ")
        check(pdf.startswith(b"%PDF") and 1 <= pages <= 20, f"{name} on paper: {pages} pages")
        if os.environ.get("PAPERS"):
            with open(os.path.join(os.environ["PAPERS"], f"{name}.pdf"), "wb") as file:
                file.write(pdf)


def whole_downloads(folder):
    """A file stands there empty, and under another name, until all of it has come."""
    files = glob.glob(os.path.join(folder, "*"))
    return files and all(name.endswith(".csv") and os.path.getsize(name) > 0 for name in files)


def save_and_open(page):
    lines = page.lines()
    page.open_part("papers")
    page.press("Save the sheet", "#papers", changes=False)
    check(page.wait_for(lambda: whole_downloads(page.downloads)), "no sheet was saved")
    saved = glob.glob(os.path.join(page.downloads, "*.csv"))[0]
    page.press("Wipe it", "#papers", changes=False)
    page.press("Yes, wipe it", "#papers")
    check(page.lines() != lines, "wiped, the answer stays")
    before = page.settled()
    page.all("#papers input[type=file]")[0].send_keys(saved)
    page.settle(before)
    check(page.lines() == lines, f"opened again it is another wall: {page.lines()}")
    with open(os.path.join(page.downloads, "bad.csv"), "w", encoding="utf8") as file:
        file.write("item,value,unit,note\nwall height,tall,mm,\n")
    page.all("#papers input[type=file]")[0].send_keys(file.name)
    check(page.wait_for(lambda: "tall" in page.all("#papers [role=alert]")[0].text), "a bad sheet is opened in silence")
    page.press("The pre-check", "#papers", changes=False)
    check(page.wait_for(lambda: page.js("return (document.querySelector('#papers iframe').contentDocument.body || {})"
                                        ".textContent || ''").find("pre-check") >= 0), "no pre-check")


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
    page.js("document.documentElement.style.fontSize = ''")


PARTS = ("stand", "find", "try", "drawings", "order", "pegs", "mind", "why", "numbers", "list", "papers")


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


def phone(path, downloads):
    page = Page(PHONE, path, downloads)
    bed_to_order(page)
    parts_of_questions(page)
    order(page)
    back_and_forth(page)
    for part in PARTS:
        page.open_part(part)
    page.wait_for(lambda: page.all("#find button"))
    accessible(page, "phone")
    schemes(page, "phone")
    no_sideways(page, "phone")
    drawings(page)
    page.quiet("phone")
    page.close()


def desk(path, downloads):
    page = Page(DESK, path, downloads)
    engineer(page)
    page.press("Undo", "#answer")
    no_long_blocks(page)
    broken_off(page)
    save_and_open(page)
    html = share_and_print(page)
    tab_order(page, "desk")
    plain_list(page)
    for part in PARTS:
        page.open_part(part)
    page.wait_for(lambda: page.all("#find button"))
    accessible(page, "desk")
    schemes(page, "desk")
    no_sideways(page, "desk")
    page.quiet("desk")
    on_paper(page, html)
    page.close()


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, *_):
        """Says nothing."""


def hosted(path, _downloads):
    """From a server that then goes away: the copy that was kept opens all the same."""
    folder = os.path.dirname(os.path.abspath(path))
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=folder))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    profile = tempfile.mkdtemp()
    driver = open_browser(PHONE, profile)
    driver.get(f"http://127.0.0.1:{server.server_port}/lowwall.html")
    ready = "return navigator.serviceWorker.ready.then(() => caches.keys()).then((k) => caches.open(k[0]))" \
            ".then((c) => c.keys()).then((k) => k.length)"
    kept = driver.execute_script(ready)
    check(kept == 2, f"hosted: {kept} files are kept, not the page and its manifest")
    manifest = driver.execute_script("return document.querySelector('link[rel=manifest]').href")
    check(manifest.endswith("/lowwall.webmanifest"), f"hosted: the manifest is {manifest}")
    server.shutdown()
    server.server_close()
    driver.refresh()
    heads = [each.text for each in driver.find_elements(By.CSS_SELECTOR, "#question h2")]
    check(bool(heads) and heads[0].startswith("What is it"), f"hosted, without a server: {heads}")
    driver.quit()
    shutil.rmtree(profile, ignore_errors=True)


def main():
    for walk in (phone, desk, hosted):
        downloads = tempfile.mkdtemp()
        try:
            walk(sys.argv[1], downloads)
        except Exception as stopped:  # what stops a walk has failed, and the other one still runs
            check(False, f"{walk.__name__}: {type(stopped).__name__}: {str(stopped)[:400]}")
        shutil.rmtree(downloads, ignore_errors=True)
    print(f"{passed} {failed}")


if __name__ == "__main__":
    main()
