/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"
#include "report/figures/construction.h"
#include "report/text/construction.h"

/* The wall while it is built, and the narrow bed, as objects of their own. */

static void set_figure(void *context, const lw_figure *figure) {
  if (!lw_json_set_real(context, figure->key, figure->value))
    lw_json_set_text(context, "reason", lw_reason_slug(figure->reason));
}

static lw_figures into(json_t *object, const lw_result *result) {
  return (lw_figures){.taker = set_figure, .context = object, .result = result};
}

static void add_plant(json_t *building, const char *key, const lw_result *result, const lw_plant *plant) {
  json_t *object = lw_json_object(building, key);
  lw_figures of = into(object, result);
  lw_json_set_text(object, "name", plant->name);
  lw_json_set_flag(object, "named", plant->named);
  lw_json_set_text(object, "source", plant->row ? plant->row->from.source : "");
  lw_json_set_text(object, "seen", plant->row ? lw_seen_word(plant->row->from.seen) : "");
  lw_figures_of_plant(&of, plant);
}

static void set_check(json_t *object, const char *name, const lw_check *check) {
  char key[40], at[24];
  lw_check_print_at(check, at, sizeof at);
  lw_print(key, sizeof key, "%s_check", name);
  lw_json_set_text(object, key, lw_check_slug(check->kind));
  lw_print(key, sizeof key, "%s_at", name);
  lw_json_set_text(object, key, at);
}

static void add_courses(json_t *object, const lw_result *result) {
  const lw_construction *g = &result->construction;
  json_t *list = lw_json_list(object, "courses");
  for (int i = 0; i < g->course_count; i++) {
    const lw_construction_course *course = &g->course[i];
    json_t *entry = lw_json_entry(list);
    lw_figures of = into(entry, result);
    lw_json_set_count(entry, "course", course->course);
    lw_json_set_flag(entry, "holds", course->sliding.holds == LW_HOLDS && course->tilting.holds == LW_HOLDS);
    lw_figures_of_construction_course(&of, course);
    if (course->has_lower) set_check(entry, "lower", &course->lower);
  }
}

static void add_construction(json_t *root, const lw_result *result) {
  const lw_construction *g = &result->construction;
  char instruction[LW_INSTRUCTION_MAX];
  json_t *object = lw_json_object(root, "building");
  lw_figures of = into(object, result);
  lw_json_set_flag(object, "studied", g->studied);
  add_plant(object, "plant", result, &g->plant);
  add_plant(object, "hand", result, &g->hand);
  if (!g->studied) {
    lw_json_set_text(object, "reason", lw_reason_slug(g->reason));
    lw_json_set_text(object, "reason_text", lw_reason_sentence(g->reason));
    return;
  }
  lw_construction_instruction(result, instruction, sizeof instruction);
  lw_json_set_text(object, "instruction", instruction);
  lw_json_set_flag(object, "layer_given", g->layer_given);
  lw_json_set_flag(object, "layer_too_thick", g->layer_too_thick);
  lw_json_set_count(object, "worst_course", g->course[g->worst].course);
  lw_figures_of_construction_itself(&of, g);
  add_courses(object, result);
  lw_json_set_flag(object, "moves", g->moves);
  if (g->distance_m.known) set_check(object, "distance", &g->at_distance);
}

static void add_narrow(json_t *root, const lw_result *result) {
  const lw_narrow *n = &result->narrow;
  json_t *object = lw_json_object(root, "narrow");
  lw_figures of = into(object, result);
  lw_json_set_flag(object, "shown", n->shown);
  if (!n->shown) return;
  lw_figures_of_narrow_itself(&of, n);
  json_t *list = lw_json_list(object, "values");
  for (int i = 0; i < LW_NARROW_COUNT; i++) {
    json_t *entry = lw_json_entry(list);
    lw_figures value = into(entry, result);
    lw_json_set_text(entry, "slug", lw_narrow_slug((lw_narrow_method)i));
    lw_json_set_text(entry, "title", lw_narrow_title((lw_narrow_method)i));
    lw_json_set_text(entry, "source", lw_narrow_source((lw_narrow_method)i));
    lw_figures_of_narrow_value(&value, &n->value[i]);
  }
}

void lw_json_construction(json_t *root, const lw_result *result) {
  add_construction(root, result);
  add_narrow(root, result);
}
