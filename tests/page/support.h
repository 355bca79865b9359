/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_PAGE_SUPPORT_H
#define LOWWALL_TESTS_PAGE_SUPPORT_H

#include <jansson.h>
#include <stdbool.h>

#include "page/core.h"

/* What the core answers to a text, or to a request that json_pack put together and that is given back here.
 * The test fails where the answer is no JSON. */
json_t *page_test_answer(const char *request);
json_t *page_test_ask(json_t *request);
/* The same, by somebody who keeps what was worked out before. */
json_t *page_test_ask_kept(lw_page_kept *kept, json_t *request);

/* A sheet of the demo, "docs/demo/bed.csv"; in static room until the next. */
const char *page_test_sheet(const char *path);

/* Whether it is well, and texts in it. */
bool page_test_ok(const json_t *reply);
const char *page_test_text(const json_t *reply, const char *key);

#endif
