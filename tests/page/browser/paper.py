# SPDX-License-Identifier: GPL-3.0-or-later
"""What comes out of a printer."""

import base64
import os
import re
import shutil
import subprocess
from urllib.parse import quote

from selenium.webdriver.common.print_page_options import PrintOptions

from counting import check

PAPERS_CM = {"A4": (21.0, 29.7), "Letter": (21.59, 27.94)}
FULL = 0.6  # of a page that others follow has something on it, at least


def printed(page, size, name):
    """One PDF; in the folder of PAPERS as well, where somebody wants to look at it."""
    options = PrintOptions()
    options.page_width, options.page_height = PAPERS_CM[size]
    pdf = base64.b64decode(page.driver.print_page(options))
    for folder in (page.downloads, os.environ.get("PAPERS")):
        if folder:
            with open(os.path.join(folder, f"{name}-{size}.pdf"), "wb") as file:
                file.write(pdf)
    return os.path.join(page.downloads, f"{name}-{size}.pdf")


def count_pages(path):
    with open(path, "rb") as file:
        pdf = file.read()
    return pdf.count(b"/Type /Page\n") + pdf.count(b"/Type /Page ")


def filled(path):
    """How far down the words of each page go."""
    words = subprocess.run(["pdftotext", "-bbox", path, "-"], capture_output=True, check=True, text=True).stdout
    pages = re.split(r"<page ", words)[1:]
    heights = [float(re.search(r'height="([\d.]+)"', each).group(1)) for each in pages]
    lowest = [max([float(y) for y in re.findall(r'yMax="([\d.]+)"', each)] or [0.0]) for each in pages]
    return [low / height for low, height in zip(lowest, heights)]


def on_paper(page, name, most, full):
    """At most so many pages; of the first of them, as many as have to be full."""
    for size in PAPERS_CM:
        path = printed(page, size, name.replace(" ", "-"))
        pages = count_pages(path)
        check(1 <= pages <= most, f"{name} on {size}: {pages} pages")
        if shutil.which("pdftotext"):
            down = filled(path)
            check(all(each > FULL for each in down[:-1][:full]), f"{name} on {size}: pages filled to {down}")


def precheck_on_paper(page, name):
    """Its own frame is what is printed; in place of the page, which goes."""
    page.open_part("papers")
    page.press("The pre-check", "#papers", changes=False)
    page.wait_for(lambda: page.all("#papers iframe"))
    path = os.path.join(page.downloads, "precheck.html")
    with open(path, "w", encoding="utf8") as file:
        file.write(page.js("return document.querySelector('#papers iframe').srcdoc"))
    page.driver.get(f"file://{quote(path)}")
    on_paper(page, f"the pre-check of {name}", 4, 4)
