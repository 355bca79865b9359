/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core.h"

#include <ctype.h>
#include <string.h>

#include "advised.h"
#include "replies.h"
#include "report/json/json.h"

static const struct {
  const char *name;
  lw_reply_make make;
} DOES[] = {
    {"start", lw_reply_start},     {"sheet", lw_reply_sheet},         {"items", lw_reply_items},
    {"check", lw_reply_check},     {"advice", lw_reply_advice},       {"draw", lw_reply_draw},
    {"order", lw_reply_order},     {"pegs", lw_reply_pegs},           {"report", lw_reply_report},
    {"working", lw_reply_working}, {"precheck", lw_reply_precheck},   {"questions", lw_reply_questions},
    {"answer", lw_reply_answer},   {"take-back", lw_reply_take_back}, {"picture", lw_reply_picture}};

static lw_reply_make do_of(const char *name) {
  for (size_t i = 0; i < sizeof DOES / sizeof *DOES; i++)
    if (strcmp(DOES[i].name, name) == 0) return DOES[i].make;
  return NULL;
}

static lw_status answer(lw_request *asked, const json_error_t *fault) {
  if (!json_is_object(asked->request))
    return lw_request_refuse(asked, "a request is one object of JSON: %s", fault->text);
  lw_reply_make make = do_of(lw_request_text_of(asked, "do"));
  return make ? make(asked)
              : lw_request_refuse(asked, "there is nothing to do of that name: \"%.60s\"",
                                  lw_request_text_of(asked, "do"));
}

/* Faults of the sheet go before anything else that is wrong. */
static const char *why(const lw_request *asked, lw_status status) {
  if (status == LW_NO_MEMORY) return lw_status_slug(LW_NO_MEMORY);
  if (asked->faults.count > 0) return lw_status_slug(LW_FAULTS);
  return status == LW_FAULTS ? "bad-request" : lw_status_slug(status);
}

/* What is wrong and what would be right, as one reads it out. */
static void put_told(json_t *reply, const lw_faults *faults) {
  json_t *list = json_object_get(reply, "faults");
  for (int i = 0; i < faults->count; i++) {
    const lw_fault *f = &faults->fault[i];
    lw_text told = {0};
    const char *sentence = lw_fault_slug_sentence(f->slug);
    lw_text_addf(&told, "%c%s.", toupper((unsigned char)sentence[0]), sentence + 1);
    if (f->stood[0]) lw_text_addf(&told, " There stands: %s.", f->stood);
    if (f->wanted[0]) lw_text_addf(&told, " Wanted: %s.", f->wanted);
    lw_reply_put(json_array_get(list, (size_t)i), "told", &told);
  }
}

/* A sheet that only lacks something is not wrong: it is not answered yet. */
static const char *lead(const lw_faults *faults) {
  for (int i = 0; i < faults->count; i++)
    if (faults->fault[i].slug != LW_FAULT_MISSING_ITEM && faults->fault[i].slug != LW_FAULT_EMPTY)
      return "The sheet has a fault, so there is no answer.";
  return faults->count > 0 ? "No answer yet: the questions come first." : "";
}

static json_t *refusal(const lw_request *asked, lw_status status) {
  json_t *reply = json_object();
  const char *text = asked->error.text[0] ? asked->error.text : lw_status_sentence(status);
  lw_json_set_flag(reply, "ok", false);
  lw_json_set_text(reply, "why", why(asked, status));
  lw_json_set_text(reply, "text", text);
  lw_json_set_text(reply, "lead", lead(&asked->faults));
  lw_json_faults(reply, &asked->faults);
  put_told(reply, &asked->faults);
  return reply;
}

void lw_page_forget(lw_page_kept *kept) {
  lw_request_forget_walls(kept);
  lw_request_forget_search(kept);
}

lw_status lw_page_answer(const lw_tables *tables, lw_page_kept *kept, const char *request, size_t length,
                         lw_text *out) {
  json_error_t fault = {.text = ""};
  lw_page_kept none = {.search = NULL};
  lw_request asked = {.tables = tables, .kept = kept ? kept : &none, .reply = json_object()};
  asked.request = json_loadb(request, length, JSON_REJECT_DUPLICATES, &fault);
  lw_json_set_flag(asked.reply, "ok", true);
  lw_status status = answer(&asked, &fault);
  json_decref(asked.request);
  lw_page_forget(&none);
  if (status == LW_OK) return lw_json_write_exact(asked.reply, 0, out);
  json_decref(asked.reply);
  return lw_json_write_exact(refusal(&asked, status), 0, out);
}
