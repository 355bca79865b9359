# SPDX-License-Identifier: GPL-3.0-or-later
"""The page in Chromium, used as a person would, on a phone and on a desk.   browser.py PAGE.html [WALK ...]

Prints "PASSED FAILED" last; what fails is said on standard error. Each walk is a file of browser/."""

import os
import shutil
import sys
import tempfile

sys.dont_write_bytecode = True
sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "browser"))

from breaking import breaking  # noqa: E402
from counting import check, count  # noqa: E402
from hosted import hosted  # noqa: E402
from phone import phone  # noqa: E402
from desk import desk  # noqa: E402
from terraces import terraces  # noqa: E402

WALKS = (phone, terraces, desk, breaking, hosted)


def main():
    for walk in WALKS:
        if sys.argv[2:] and walk.__name__ not in sys.argv[2:]:
            continue
        downloads = tempfile.mkdtemp()
        try:
            walk(sys.argv[1], downloads)
        except Exception as stopped:  # what stops a walk has failed, and the others still run
            check(False, f"{walk.__name__}: {type(stopped).__name__}: {str(stopped)[:400]}")
        shutil.rmtree(downloads, ignore_errors=True)
    print(count["passed"], count["failed"])


if __name__ == "__main__":
    main()
