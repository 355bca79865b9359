/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"
#include "base/canned.h"
#include "report/text/limit_dates.h"

static const char *answer_word(lw_answer answer) {
  static const char *const words[] = {
      [LW_ANSWER_WHAT] = "what", [LW_ANSWER_STANDS] = "stands", [LW_ANSWER_WHO] = "who"};
  return words[answer];
}

static void add_reasons(json_t *verdict, const lw_verdict *v) {
  json_t *list = lw_json_list(verdict, "reasons");
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *reason = &v->reasons.reason[i];
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "slug", reason->slug);
    lw_json_set_text(entry, "text", reason->text);
    lw_json_set_text(entry, "source", reason->source);
    lw_json_set_text(entry, "answer", answer_word(reason->answer));
    lw_json_set_text(entry, "who", reason->answer == LW_ANSWER_WHO ? lw_who_slug(reason->who) : "");
    lw_json_set_flag(entry, "assumed", reason->assumed);
    lw_json_set_text(entry, "left_out", reason->left_out ? reason->left_out : "");
  }
}

static void add_governing(json_t *verdict, const lw_result *result) {
  lw_check check;
  if (!lw_verdict_governing(result, &check)) {
    lw_json_put(verdict, "governing", json_null());
    lw_json_set_text(verdict, "reason", lw_reason_slug(LW_REASON_NO_DEMAND));
    return;
  }
  char at[24];
  lw_check_print_at(&check, at, sizeof at);
  const lw_situation *situation = &result->situations.situation[result->verdict.governing_situation];
  json_t *object = lw_json_object(verdict, "governing");
  lw_json_set_text(object, "situation", lw_situation_slug(situation->name));
  lw_json_set_text(object, "check", lw_check_slug(check.kind));
  lw_json_set_text(object, "at", at);
}

/* The least that any check has in one of the two looks. */
static void add_least(json_t *verdict, const char *key, const lw_least *least) {
  const lw_check check = {.kind = least->kind, .at = least->at, .joint = least->joint};
  json_t *object = lw_json_object(verdict, key);
  char at[24];
  if (!lw_json_set_real(object, "has", least->has)) {
    lw_json_set_text(object, "reason",
                     lw_reason_slug(least->not_shown ? least->reason : LW_REASON_NO_DEMAND));
    return;
  }
  lw_check_print_at(&check, at, sizeof at);
  lw_json_set_text(object, "situation", lw_situation_slug(least->situation));
  lw_json_set_text(object, "check", lw_check_slug(least->kind));
  lw_json_set_text(object, "at", at);
  lw_json_set_flag(object, "outside", least->outside);
}

static void add_looks(json_t *verdict, const lw_looks *looks) {
  char words[200];
  add_least(verdict, "cautious", &looks->cautious);
  if (!looks->looked) return;
  add_least(verdict, "likely", &looks->likely);
  lw_json_set_flag(verdict, "without_factors", looks->bare);
  lw_json_set_text(verdict, "looks", lw_looks_words(looks, words, sizeof words));
}

static const char *trigger_word(lw_trigger trigger) {
  static const char *const words[] = {[LW_EXEMPT_BELOW] = "exempt-below",
                                      [LW_APPROVAL_ABOVE] = "approval-above",
                                      [LW_ENGINEER_ABOVE] = "engineer-above",
                                      [LW_DESIGN_ABOVE] = "design-above",
                                      [LW_BARRIER_ABOVE] = "barrier-above"};
  return words[trigger];
}

static void add_limit(json_t *list, const lw_tables *tables, const lw_limit_hit *hit) {
  const lw_limit_row *row = hit->row;
  char again[LW_MONTH_BYTES], told[sizeof row->conditions];
  json_t *entry = lw_json_entry(list);
  lw_limit_ask_again(tables, row, again);
  lw_json_set_text(entry, "id", row->id);
  lw_json_set_text(entry, "place", row->place);
  lw_json_set_text(entry, "region", row->region);
  lw_json_set_text(entry, "instrument", row->instrument);
  lw_json_set_text(entry, "trigger", trigger_word(row->trigger));
  lw_json_set_double(entry, "limit_m", row->height_m);
  lw_json_set_flag(entry, "at_or_above", row->at_or_above);
  lw_json_set_text(entry, "measured", lw_height_slug(row->measured));
  lw_json_set_text(entry, "datum", row->datum);
  lw_json_set_double(entry, "height_m", hit->height_m);
  lw_json_set_flag(entry, "past", hit->past);
  lw_json_set_text(entry, "conditions", lw_canned_told(LW_UNITS_METRIC, row->conditions, told, sizeof told));
  lw_json_set_text(entry, "confidence", row->confidence);
  lw_json_set_text(entry, "as_of", row->as_of);
  lw_json_set_text(entry, "read", row->read);
  lw_json_set_text(entry, "ask_again_after", again);
  lw_json_set_text(entry, "status", row->status);
  lw_json_set_text(entry, "source", row->from.source);
  lw_json_set_text(entry, "seen", lw_seen_word(row->from.seen));
}

void lw_json_verdict(json_t *root, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  json_t *object = lw_json_object(root, "verdict");
  lw_json_set_text(object, "what", lw_what_slug(v->what));
  lw_json_set_text(object, "stands", lw_holds_slug(v->stands));
  lw_json_set_text(object, "grade", lw_grade_slug(v->grade));
  lw_json_set_text(object, "who", lw_who_slug(v->who));
  lw_json_set_flag(object, "place_known", v->place_known);
  add_reasons(object, v);
  add_governing(object, result);
  add_looks(object, &result->looks);
  json_t *list = lw_json_list(root, "limits");
  for (int i = 0; i < v->limit_count; i++) add_limit(list, result->tables, &v->limit[i]);
}
