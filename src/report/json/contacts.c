/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "contacts.h"

#include <math.h>

#include "report/difference.h"
#include "report/figures/forces.h"
#include "report/figures/stage.h"
#include "report/text/loads.h"
#include "run/again.h"

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

static bool acts(const lw_force *force) {
  return fabs(force->vertical_kn_per_m) + fabs(force->horizontal_kn_per_m) > 1e-12;
}

static void add_forces(json_t *object, const lw_result *result, const lw_stage *stage, int joint) {
  json_t *list = lw_json_list(object, "forces");
  for (int i = 0; i < stage->forces.count; i++) {
    char name[48];
    if (!acts(&stage->forces.force[i])) continue;
    json_t *entry = lw_json_entry(list);
    lw_figures of = into(entry, result);
    lw_force_name(result, stage, joint, i, name, sizeof name);
    lw_json_set_text(entry, "name", name);
    if (stage->forces.factors.factored) lw_json_set_double(entry, "factor", stage->forces.force[i].factor);
    lw_figures_of_force(&of, stage, i);
  }
}

static void set_formula(json_t *object, const lw_stage *stage) {
  lw_json_set_text(object, "formula", stage->formula ? stage->formula->slug : "");
}

void lw_json_stage(json_t *object, const lw_result *result, const lw_stage *stage, int joint) {
  lw_json_set_flag(object, "computed", stage->status == LW_OK);
  lw_json_set_flag(object, "wedge_known", stage->wedge_known);
  lw_json_set_flag(object, "wedge_governs", stage->wedge_governs);
  lw_json_set_flag(object, "faulty", stage->faulty);
  lw_json_set_text(object, "loads_by",
                   lw_stage_has_loads(stage) ? lw_load_theory_word(stage->elastic_by) : "");
  bool plain = stage->status != LW_OK || !stage->wedge_known;
  lw_json_set_text(object, "difference_why", plain ? "" : lw_difference_words(stage->difference));
  lw_figures of = into(object, result);
  if (stage->status == LW_OK) set_formula(object, stage);
  lw_figures_of_stage(&of, stage);
  if (stage->status == LW_OK) add_forces(object, result, stage, joint);
  set_not_computed(object, stage->status, stage->reason);
}

void lw_json_contact(json_t *situation, const char *key, const lw_result *result, const lw_stage *stage) {
  lw_json_stage(lw_json_object(situation, key), result, stage, 0);
}

/* Hollow blocks without fill bear on their face shells. */
static void set_shells(json_t *entry, const lw_result *result) {
  double shell = result->wall.section.shell_m;
  if (shell > 0.0) lw_json_set_double(entry, "shell_m", shell);
}

static void add_push(json_t *entry, const lw_result *result, const lw_situation *s, int joint) {
  lw_stage stage;
  lw_figures of = into(entry, result);
  lw_again_joint(result, s, joint, &stage);
  if (stage.status != LW_OK) return;
  set_formula(entry, &stage);
  lw_figures_of_push(&of, &stage);
  set_shells(entry, result);
  add_forces(entry, result, &stage, joint);
}

void lw_json_joints(json_t *situation, const lw_result *result, const lw_situation *s) {
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
    if (s->joint[i].status == LW_OK) add_push(entry, result, s, i + 1);
    set_not_computed(entry, s->joint[i].status, s->joint[i].reason);
  }
}
