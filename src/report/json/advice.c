/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"

#include "base/canned.h"

static void add_parts(json_t *entry, const lw_remedy *remedy) {
  json_t *list = lw_json_list(entry, "parts");
  for (int i = 0; i < remedy->part_count; i++) {
    json_t *part = lw_json_entry(list);
    lw_json_set_text(part, "slug", remedy->part[i].slug);
    (void)lw_json_set_real(part, "value", (lw_number){remedy->part[i].value, true});
    lw_json_set_text(part, "unit", remedy->part[i].unit);
  }
}

static void add_items(json_t *entry, const lw_typed *typed) {
  json_t *list = lw_json_list(entry, "items");
  for (int i = 0; i < typed->count; i++) lw_json_append(list, json_string(typed->item[i]));
}

static const char *const kind_slugs[] = {"cure", "lower-job", "other-wall"};

static void add_remedies(json_t *root, const lw_result *result) {
  json_t *list = lw_json_list(root, "remedies");
  for (int i = 0; i < result->remedy_count; i++) {
    const lw_remedy *remedy = &result->remedy[i];
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "slug", remedy->slug);
    lw_json_set_text(entry, "kind", kind_slugs[remedy->kind]);
    lw_json_set_text(entry, "text", remedy->text);
    add_parts(entry, remedy);
    add_items(entry, &remedy->items);
    if (!lw_json_set_real(entry, "ratio", remedy->ratio))
      lw_json_set_text(entry, "reason", lw_reason_slug(LW_REASON_NO_DEMAND));
    lw_json_set_text(entry, "governs", remedy->governs);
  }
}

static const char *const helps_slugs[] = {"verdict", "margin", "reasons"};

static void add_asking(json_t *root, const lw_result *result) {
  json_t *list = lw_json_list(root, "worth_asking");
  for (int i = 0; i < result->asking_count; i++) {
    const lw_asking *asking = &result->asking[i];
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "item", asking->item);
    lw_json_set_text(entry, "question", asking->question);
    lw_json_set_text(entry, "assumed", asking->assumed);
    lw_json_set_text(entry, "favourable", asking->favourable);
    lw_json_set_text(entry, "stands_then", lw_holds_slug(asking->stands_then));
    lw_json_set_text(entry, "who_then", lw_who_slug(asking->who_then));
    if (!lw_json_set_real(entry, "ratio_then", asking->ratio_then))
      lw_json_set_text(entry, "reason", lw_reason_slug(LW_REASON_NO_DEMAND));
    lw_json_set_count(entry, "exit_then", asking->exit_then);
    lw_json_set_text(entry, "helps", helps_slugs[asking->helps]);
  }
}

static void add_costs(json_t *root, const lw_result *result) {
  lw_json_set_text(root, "caution_costs_rare", LW_COSTS_RARE);
  json_t *list = lw_json_list(root, "caution_costs");
  for (int i = 0; i < result->cost_count; i++) {
    const lw_cost *cost = &result->cost[i];
    const lw_check check = {.kind = cost->kind, .at = cost->at, .joint = cost->joint};
    json_t *entry = lw_json_entry(list);
    char at[24];
    lw_check_print_at(&check, at, sizeof at);
    lw_json_set_text(entry, "item", cost->item);
    lw_json_set_text(entry, "question", cost->question);
    lw_json_set_text(entry, "cautious", cost->cautious);
    lw_json_set_text(entry, "likely", cost->likely);
    bool all = lw_json_set_real(entry, "has", cost->has);
    all = lw_json_set_real(entry, "ratio", cost->ratio) && all;
    all = lw_json_set_real(entry, "least", cost->least) && all;
    if (!all) lw_json_set_text(entry, "reason", lw_reason_slug(LW_REASON_NO_DEMAND));
    lw_json_set_text(entry, "situation", cost->has.known ? lw_situation_slug(cost->situation) : "");
    lw_json_set_text(entry, "check", cost->has.known ? lw_check_slug(cost->kind) : "");
    lw_json_set_text(entry, "at", cost->has.known ? at : "");
    lw_json_set_flag(entry, "worse", cost->worse);
  }
}

static void add_cautions(json_t *root, const lw_result *result) {
  json_t *list = lw_json_list(root, "cautions");
  for (int i = 0; i < result->verdict.reasons.caution_count; i++) {
    const lw_hazard_row *row = result->verdict.reasons.caution[i];
    char hazard[LW_SOURCE_MAX], caution[LW_NOTE_MAX], number[LW_SOURCE_MAX];
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "id", row->id);
    lw_json_set_text(entry, "phase", row->phase);
    lw_json_set_text(entry, "hazard", lw_canned_told(result->units, row->hazard, hazard, sizeof hazard));
    lw_json_set_text(entry, "caution", lw_canned_told(result->units, row->caution, caution, sizeof caution));
    lw_json_set_text(entry, "number", lw_canned_told(result->units, row->number, number, sizeof number));
    lw_json_set_count(entry, "severity", row->severity);
    lw_json_set_text(entry, "source", row->from.source);
    lw_json_set_text(entry, "seen", lw_seen_word(row->from.seen));
  }
}

void lw_json_advice(json_t *root, const lw_result *result) {
  add_remedies(root, result);
  add_asking(root, result);
  add_costs(root, result);
  add_cautions(root, result);
}
