/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "contacts.h"

#include <math.h>

#include "report/difference.h"
#include "report/figures/forces.h"
#include "report/figures/free_body.h"
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

static void add_forces(json_t *object, const lw_result *result, const lw_free_body *body, int joint) {
  json_t *list = lw_json_list(object, "forces");
  for (int i = 0; i < body->forces.count; i++) {
    char name[48];
    if (!acts(&body->forces.force[i])) continue;
    json_t *entry = lw_json_entry(list);
    lw_figures of = into(entry, result);
    lw_force_name(result, body, joint, i, name, sizeof name);
    lw_json_set_text(entry, "name", name);
    if (body->forces.factors.factored) lw_json_set_double(entry, "factor", body->forces.force[i].factor);
    lw_figures_of_force(&of, body, i);
  }
}

static void set_formula(json_t *object, const lw_free_body *body) {
  lw_json_set_text(object, "formula", body->formula ? body->formula->slug : "");
}

void lw_json_free_body(json_t *object, const lw_result *result, const lw_free_body *body, int joint) {
  lw_json_set_flag(object, "computed", body->status == LW_OK);
  lw_json_set_flag(object, "wedge_known", body->wedge_known);
  lw_json_set_flag(object, "wedge_governs", body->wedge_governs);
  lw_json_set_flag(object, "faulty", body->faulty);
  lw_json_set_text(object, "loads_by",
                   lw_free_body_has_loads(body) ? lw_load_theory_word(body->elastic_by) : "");
  bool plain = body->status != LW_OK || !body->wedge_known;
  lw_json_set_text(object, "difference_why", plain ? "" : lw_difference_words(body->difference));
  lw_figures of = into(object, result);
  if (body->status == LW_OK) set_formula(object, body);
  lw_figures_of_free_body(&of, body);
  if (body->status == LW_OK) add_forces(object, result, body, joint);
  set_not_computed(object, body->status, body->reason);
}

void lw_json_contact(json_t *situation, const char *key, const lw_result *result, const lw_free_body *body) {
  lw_json_free_body(lw_json_object(situation, key), result, body, 0);
}

/* Hollow blocks without fill bear on their face shells. */
static void set_shells(json_t *entry, const lw_result *result) {
  double shell = result->wall.section.shell_m;
  if (shell > 0.0) lw_json_set_double(entry, "shell_m", shell);
}

static void add_push(json_t *entry, const lw_result *result, const lw_situation *s, int joint) {
  lw_free_body body;
  lw_figures of = into(entry, result);
  lw_again_joint(result, s, joint, &body);
  if (body.status != LW_OK) return;
  set_formula(entry, &body);
  lw_figures_of_push(&of, &body);
  set_shells(entry, result);
  add_forces(entry, result, &body, joint);
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
