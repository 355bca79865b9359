/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <limits.h>
#include <stdlib.h>
#include <string.h>

#include "advised.h"
#include "replies.h"

/* What is read in full: the report, the working, the pre-check. */

enum { COLUMNS = 80 };

static void put_figure(void *context, const lw_figure *figure) {
  (void)lw_json_set_real(context, figure->key, figure->value);
}

/* Of the run itself, for a program that compares: "json" is all of it, "figures" the numbers. */
static lw_status compared(lw_request *asked, bool figures) {
  const lw_request_wall *wall;
  lw_text text = {0};
  lw_status status = lw_request_run(asked, &wall);
  if (status == LW_OK && figures)
    lw_figures_each(&wall->result, put_figure, lw_json_object(asked->reply, "figures"));
  else if (status == LW_OK)
    status = lw_report_json(&wall->result, 0, &text);
  if (!figures) lw_reply_put(asked->reply, "text", &text);
  return status;
}

lw_status lw_reply_report(lw_request *asked) {
  const char *as = lw_request_text_of(asked, "as");
  if (strcmp(as, "json") == 0 || strcmp(as, "figures") == 0) return compared(asked, as[0] == 'f');
  if (strcmp(as, "text") != 0) return lw_request_refuse(asked, "as: text, json or figures is wanted");
  lw_page_search *search;
  lw_text text = {0};
  lw_text_style style = {.columns = COLUMNS};
  lw_status status = lw_request_advised(asked, INT_MAX, &search);
  if (status == LW_OK) {
    lw_water_find(&search->wall->result, &search->wall->scratch);
    status = lw_report_text(&search->wall->result, &style, &text);
  }
  lw_reply_put(asked->reply, "text", &text);
  return status;
}

lw_status lw_reply_working(lw_request *asked) {
  const lw_request_wall *wall;
  lw_text text = {0};
  lw_text_style style = {.columns = COLUMNS};
  lw_status status = lw_request_run(asked, &wall);
  if (status == LW_OK) status = lw_report_working(&wall->result, &style, &text);
  lw_reply_put(asked->reply, "text", &text);
  return status;
}

/* With the water levels, which are no part of a run. */
static lw_status print_precheck(const lw_request_wall *wall, const char *hash, lw_text *html) {
  lw_request_copy *copy = lw_request_copy_of(wall);
  if (!copy) return LW_NO_MEMORY;
  lw_water_find(&copy->result, &copy->scratch);
  lw_status status = lw_precheck_html(&copy->result, hash, html);
  free(copy);
  return status;
}

lw_status lw_reply_precheck(lw_request *asked) {
  const lw_request_wall *wall;
  lw_text html = {0};
  char hash[LW_HASH_HEX] = "";
  lw_status status = lw_request_run(asked, &wall);
  if (status == LW_OK) status = lw_precheck_hash(&wall->result.given, NULL, hash, &asked->error);
  if (status == LW_OK) status = print_precheck(wall, hash, &html);
  lw_reply_put(asked->reply, "html", &html);
  return status;
}
