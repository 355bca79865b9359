# SPDX-License-Identifier: GPL-3.0-or-later
"""What leaves the page: sheets saved, opened and shared."""

import glob
import os

from counting import check


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
