/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figures.h"
#include "json.h"

#include <math.h>

/* Whether something is null that has no reason yet. */
static bool set_numbers(json_t *entry, const lw_check *check) {
  bool all = lw_json_set_real(entry, "demand", check->demand);
  all = lw_json_set_real(entry, "resistance", check->resistance) && all;
  lw_json_set_text(entry, "unit", check->unit);
  all = lw_json_set_real(entry, "has", check->has) && all;
  all = lw_json_set_real(entry, "needs", check->needs) && all;
  return lw_json_set_real(entry, "ratio", check->ratio) && all;
}

static void set_holds(json_t *entry, const lw_check *check) {
  bool shown = check->holds != LW_CANNOT_SHOW;
  lw_json_put(entry, "holds", shown ? json_boolean(check->holds == LW_HOLDS) : json_null());
}

static void add_check(json_t *list, const lw_check *check, lw_situation_kind kind) {
  char at[24];
  lw_check_print_at(check, at, sizeof at);
  json_t *entry = lw_json_entry(list);
  lw_json_set_text(entry, "slug", lw_check_slug(check->kind));
  lw_json_set_text(entry, "at", at);
  bool all = set_numbers(entry, check);
  set_holds(entry, check);
  lw_json_set_flag(entry, "counts", check->counts);
  lw_json_set_flag(entry, "factored", check->factored);
  lw_json_set_flag(entry, "would_move", lw_check_would_move(check));
  lw_reason reason = check->reason;
  if (reason == LW_REASON_NONE && !all) reason = LW_REASON_NO_REQUIREMENT;
  if (reason != LW_REASON_NONE) {
    lw_json_set_text(entry, "reason", lw_reason_slug(reason));
    lw_json_set_text(entry, "reason_text", lw_reason_sentence(reason));
  }
  lw_json_set_text(entry, "format", check->by ? check->by->format : "");
  lw_json_set_text(entry, "clause", check->by ? check->by->clause : "");
  lw_json_set_text(entry, "source", check->by ? check->by->from.source : "");
  lw_json_set_text(entry, "needs_seen", check->by ? lw_seen_word(lw_check_seen(check, kind)) : "");
}

static void set_figure(void *context, const lw_figure *figure) {
  if (!lw_json_set_real(context, figure->key, figure->value))
    lw_json_set_text(context, "reason", lw_reason_slug(figure->reason));
}

/* Figures without a prefix: their keys are those of the object. */
static lw_figures into(json_t *object, const lw_result *result) {
  return (lw_figures){.taker = set_figure, .context = object, .result = result};
}

static void set_not_computed(json_t *object, lw_status status, lw_reason reason) {
  if (status == LW_OK) return;
  lw_json_set_text(object, "reason", lw_reason_slug(reason));
  lw_json_set_text(object, "reason_text", lw_reason_sentence(reason));
}

static void add_joints(json_t *situation, const lw_result *result, const lw_situation *s) {
  json_t *list = lw_json_list(situation, "joints");
  bool cap = result->wall.section.has_cap;
  for (int i = 0; i < s->joint_count; i++) {
    char at[24] = "cap";
    json_t *entry = lw_json_entry(list);
    lw_figures of = into(entry, result);
    if (!cap || i < s->joint_count - 1) lw_print(at, sizeof at, "joint-%d", i + 1);
    lw_json_set_count(entry, "joint", i + 1);
    lw_json_set_text(entry, "at", at);
    lw_json_set_flag(entry, "computed", s->joint[i].status == LW_OK);
    lw_json_set_flag(entry, "faulty", s->joint[i].faulty);
    lw_figures_of_joint(&of, &s->joint[i]);
    set_not_computed(entry, s->joint[i].status, s->joint[i].reason);
  }
}

static void add_stage(json_t *situation, const char *key, const lw_result *result, const lw_stage *stage) {
  json_t *object = lw_json_object(situation, key);
  lw_json_set_flag(object, "computed", stage->status == LW_OK);
  lw_json_set_flag(object, "wedge_known", stage->wedge_known);
  lw_json_set_flag(object, "wedge_governs", stage->wedge_governs);
  lw_json_set_flag(object, "faulty", stage->faulty);
  lw_json_set_text(object, "loads_by",
                   lw_stage_has_loads(stage) ? lw_load_theory_word(stage->elastic_by) : "");
  bool plain = stage->status != LW_OK || !stage->wedge_known;
  lw_json_set_text(object, "difference_why", plain ? "" : lw_stage_difference_why(stage));
  lw_figures of = into(object, result);
  lw_figures_of_stage(&of, stage);
  set_not_computed(object, stage->status, stage->reason);
}

static void add_situation(json_t *list, const lw_result *result, const lw_situation *s) {
  json_t *entry = lw_json_entry(list);
  lw_json_set_text(entry, "slug", lw_situation_slug(s->name));
  lw_json_set_text(entry, "kind", lw_situation_kind_slug(s->kind));
  lw_json_set_flag(entry, "decides", s->decides);
  lw_json_set_text(entry, "sentence", lw_situation_sentence(s->name));
  lw_json_set_text(entry, "why", s->why);
  if (!lw_json_set_double(entry, "water_depth_m", s->water_depth_m))
    lw_json_set_text(entry, "reason", lw_reason_slug(LW_REASON_NO_DEMAND));
  if (s->name == LW_SITUATION_EARTHQUAKE) {
    lw_json_set_double(entry, "seismic_horizontal", s->seismic.horizontal);
    lw_json_set_double(entry, "seismic_vertical", s->seismic.vertical);
  }
  lw_json_set_text(entry, "set", s->set ? s->set->format : "");
  add_stage(entry, "base", result, &s->base);
  add_stage(entry, "pad", result, &s->pad);
  add_joints(entry, result, s);
  lw_json_slip(entry, result, s);
  json_t *checks = lw_json_list(entry, "checks");
  for (int i = 0; i < s->check_count; i++) add_check(checks, &s->check[i], s->kind);
}

void lw_json_situations(json_t *root, const lw_result *result) {
  json_t *list = lw_json_list(root, "situations");
  for (int i = 0; i < result->situations.count; i++)
    add_situation(list, result, &result->situations.situation[i]);
}
