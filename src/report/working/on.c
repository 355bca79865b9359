/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

/* A recorder whose steps go straight onto a page. */

static void heading_taken(void *context, const char *title) {
  lw_page_part(context, title);
}

static void step_taken(void *context, const lw_step *step) {
  lw_working_say(context, step);
}

static void row_taken(void *context, const char *row) {
  lw_page_numbers(context, row);
}

lw_working lw_page_working(lw_page *page) {
  return (lw_working){
      .context = page, .heading = heading_taken, .step = step_taken, .row = row_taken, .units = page->units};
}
