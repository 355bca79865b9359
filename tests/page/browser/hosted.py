# SPDX-License-Identifier: GPL-3.0-or-later
"""The page from a server, and the copy of it that stays."""

import functools
import http.server
import os
import shutil
import tempfile
import threading

from selenium.webdriver.common.by import By

from counting import check
from person import PHONE, open_browser


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
