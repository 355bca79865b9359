# SPDX-License-Identifier: GPL-3.0-or-later
"""One page in one browser, and what a person does with it."""

import json
import os
import shutil
import tempfile
import time
from urllib.parse import quote

from selenium import webdriver
from selenium.common.exceptions import StaleElementReferenceException
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By

from counting import check

SEEN_S = 0.3  # nobody answers a question sooner
PHONE, DESK = (360, 740), (1280, 900)


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


class Page:
    """One page in one browser, and what a person does with it."""

    def __init__(self, size, path, downloads):
        self.profile = tempfile.mkdtemp()
        self.driver = open_browser(size, self.profile)
        self.downloads = downloads
        self.taps = 0  # of a finger: each click, each field, each key of what is typed
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
        self.taps += 1

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

    def part(self):
        return self.js("return document.getElementById('question').dataset.part || ''")

    def verdict_ms(self):
        return int(self.js("return document.documentElement.dataset.verdictMs"))

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
            self.taps += 1 + len(value) if value else 0

    def answer(self, answers):
        """Answer the question that stands there, by its key; what has no answer is not known."""
        time.sleep(SEEN_S)
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
