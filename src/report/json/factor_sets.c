/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"
#include "report/figures/factor_sets.h"

/* The wall under every set of factors. */

static const char *standing(const lw_factor_set_answer *a) {
  return lw_holds_slug(a->stands);
}

static void set_check(json_t *entry, const lw_factor_set_answer *a) {
  char at[24];
  const lw_check *c = &a->check;
  lw_check_print_at(c, at, sizeof at);
  lw_json_set_text(entry, "situation", lw_situation_slug(a->situation));
  lw_json_set_text(entry, "check", lw_check_slug(c->kind));
  lw_json_set_text(entry, "at", at);
  lw_json_set_real(entry, "has", c->has);
  lw_json_set_real(entry, "needs", c->needs);
  lw_json_set_real(entry, "ratio", c->ratio);
  lw_json_set_text(entry, "clause", c->by ? c->by->clause : "");
  lw_json_set_text(entry, "source", c->by ? c->by->from.source : "");
}

void lw_json_factor_sets(json_t *root, const lw_result *result) {
  if (result->factor_sets.count == 0) return;
  json_t *list = lw_json_list(root, "formats");
  for (int i = 0; i < result->factor_sets.count; i++) {
    const lw_factor_set_answer *a = &result->factor_sets.answer[i];
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "slug", a->row->factor_set);
    lw_json_set_text(entry, "title", a->row->title);
    lw_json_set_text(entry, "stands", standing(a));
    lw_json_set_flag(entry, "part", a->part);
    lw_json_set_flag(entry, "for_decisions", a->decides);
    lw_json_set_flag(entry, "memory", a->memory);
    lw_json_set_flag(entry, "proposal", a->proposal);
    if (a->governed) set_check(entry, a);
    lw_reason reason = lw_factor_set_answer_reason(a);
    lw_json_set_text(entry, "reason", reason == LW_REASON_NONE ? "" : lw_reason_slug(reason));
  }
}
