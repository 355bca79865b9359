/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "working.h"
#include "load_cases/kinds.h"
#include "report/text/said.h"
#include "run/again.h"

/* The checks of one contact written out: formula, the numbers put in, what comes of it. A formula stands here
 * only where its numbers give the very value that the check used; a check that rests on other forces than
 * those shown has its own sums and factors beside it. */

/* The lines of one check as it hands them over. */
typedef struct written {
  lw_page page;
  const lw_check *check;
} written;

static void heading(void *context, const char *title) {
  const written *w = context;
  lw_page_say(&w->page, "    ", title);
}

void lw_working_brief(const lw_page *page, const char *indent, const lw_step *step, const char *tail) {
  char prefix[24], value[48];
  bool has = strcmp(step->symbol, "has") == 0, both = step->formula[0] && step->inserted[0];
  lw_print(prefix, sizeof prefix, "%s%-3s = ", indent, step->symbol);
  lw_print(value, sizeof value, has ? "%.3f" : "%.4f", step->value);
  lw_page_sayf(page, prefix, "%s%s%s = %s%s%s%s", step->formula, both ? " = " : "", step->inserted, value,
               step->unit[0] ? " " : "", step->unit, tail);
}

static void take_line(void *context, const lw_step *step) {
  const written *w = context;
  char outcome[40], tail[80] = "", needs[24] = "nothing is asked";
  if (strcmp(step->symbol, "has") == 0) {
    lw_check_outcome(w->check, outcome, sizeof outcome);
    if (w->check->needs.known) lw_number_print(needs, sizeof needs, w->check->needs.value, 2);
    lw_print(tail, sizeof tail, "; %s%s: %s", w->check->needs.known ? "needs " : "", needs, outcome);
  }
  lw_working_brief(&w->page, "    ", step, tail);
}

static void take_row(void *context, const char *row) {
  const written *w = context;
  lw_page_numbers(&w->page, row);
}

static void take_step(void *context, const lw_step *step) {
  const written *w = context;
  lw_working_say(&w->page, step);
}

static bool may_be_lighter(const lw_free_body *body) {
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    bool lifts_off = f->kind == LW_FORCE_PEOPLE || f->kind == LW_FORCE_CAP_LOAD;
    if (lifts_off && f->vertical_kn_per_m > 0.0) return true;
  }
  return false;
}

static const char *source_of(lw_force_kind kind) {
  switch (kind) {
  case LW_FORCE_PART: return "weight of the wall";
  case LW_FORCE_SOIL_ON_WALL: return "soil standing on it";
  case LW_FORCE_SURCHARGE_ON_WALL: return "load standing on it";
  case LW_FORCE_THRUST: return "push of the soil";
  case LW_FORCE_SURCHARGE_THRUST:
  case LW_FORCE_LOADS_THRUST: return "push of loads behind";
  case LW_FORCE_LEVEL_THRUST: return "push through the ground";
  case LW_FORCE_WATER:
  case LW_FORCE_UPLIFT: return "water behind and uplift";
  case LW_FORCE_FRONT_WATER: return "water in front";
  case LW_FORCE_PEOPLE:
  case LW_FORCE_CAP_LOAD: return "people and loads on the cap";
  default: return "";
  }
}

/* The factors that stand on what acts, each source once. */
static void source_factors(const lw_forces *forces, char *out, size_t size) {
  for (int i = 0; i < forces->count; i++) {
    const char *name = source_of(forces->force[i].kind);
    size_t used = strlen(out);
    if (name[0] == '\0' || strstr(out, name)) continue;
    lw_print(out + used, size - used, "%s%s x %.2f", used ? ", " : "", name, forces->force[i].factor);
  }
}

/* Where a check rests on other numbers than those that stand above it: which. */
static void say_basis(const lw_page *page, const lw_situation *s, const lw_basis *by, const lw_check *check) {
  bool other_set =
      check->by && s->load_case.set && strcmp(check->by->factor_set, s->load_case.set->factor_set) != 0;
  char factors[320] = "", set[120] = "", strengths[60] = "";
  if (other_set) lw_print(set, sizeof set, " under another set of the format, %s", check->by->factor_set);
  if (fabs(by->on_friction - 1.0) > 1e-12)
    lw_print(strengths, sizeof strengths, "tan phi and every friction x %.4f; ", by->on_friction);
  if (fabs(by->on_push - 1.0) > 1e-12)
    lw_print(strengths, sizeof strengths, "strength of what pushes x %.4f; ", by->on_push);
  if (by->body.forces.factors.factored)
    source_factors(&by->body.forces, factors, sizeof factors);
  else
    lw_print(factors, sizeof factors, "every factor on what acts is one");
  lw_page_sayf(page, "    ", "at its own worst%s: %s%s", set, strengths, factors);
}

static bool same_forces(const lw_contact *p, const lw_contact *q) {
  const double both[][2] = {{p->vertical_kn_per_m, q->vertical_kn_per_m},
                            {p->horizontal_kn_per_m, q->horizontal_kn_per_m},
                            {p->resisting_knm_per_m, q->resisting_knm_per_m},
                            {p->overturning_knm_per_m, q->overturning_knm_per_m}};
  for (size_t i = 0; i < sizeof both / sizeof *both; i++)
    if (fabs(both[i][0] - both[i][1]) > 1e-9) return false;
  return true;
}

/* What the lines cannot say: that nothing is in compression, and what is gone in front. */
static void say_before(const lw_page *page, const lw_basis *by, const lw_check *check) {
  bool of_pressure = lw_check_about_of(check->kind)->of_pressure;
  double dug = by->load_case.ground.front.dug_m;
  if (of_pressure && !by->body.contact.inside)
    lw_page_say(page, "    ", "nothing is in compression: the resultant is outside");
  if (check->kind == LW_CHECK_SLIDING && by->wall->method.passive_share > 0.0 && dug > 0.0)
    lw_page_sayf(page, "    ", "in front %s of the ground are taken as dug away before it resists",
                 lw_tell_amount(page->units, "m", dug, 3).text);
}

/* The free body that stands above, and the sums of the last table below it. */
typedef struct written_at {
  const lw_free_body *shown;
  lw_shown place;
  lw_contact *last;
} written_at;

/* The forces that a check rests on, unless they are those of the table before. */
static void say_forces(const lw_page *page, const lw_result *result, const lw_basis *by, lw_shown place,
                       lw_contact *last) {
  if (same_forces(&by->body.contact, last)) {
    lw_page_say(page, "    ", "with the forces of the table before");
    return;
  }
  lw_working_moments(page, result, &by->body, place);
  *last = by->body.contact;
}

static void write_check(const lw_page *page, const lw_result *result, const lw_situation *s,
                        const written_at *at, const lw_check *check) {
  lw_basis by;
  written w = {.page = *page, .check = check};
  lw_working working = {.context = &w,
                        .heading = heading,
                        .step = take_step,
                        .line = take_line,
                        .row = take_row,
                        .units = page->units};
  if (!lw_again_basis(result, s, check, &by)) return;
  const lw_free_body *shown = at->shown;
  if (!same_forces(&by.body.contact, &shown->contact)) {
    if (may_be_lighter(shown) && !may_be_lighter(&by.body))
      lw_page_say(page, "    ", "without the load that presses down, which is the worse case:");
    say_basis(page, s, &by, check);
    say_forces(page, result, &by, at->place, at->last);
  }
  say_before(page, &by, check);
  lw_again_check(result, &by, check, &working);
}

void lw_working_written(const lw_page *page, const lw_result *result, const lw_situation *s,
                        const lw_free_body *body, lw_shown place) {
  lw_contact last = body->contact;
  const written_at at = {body, place, &last};
  int joint = place.at == LW_AT_CAP ? 0 : place.joint;
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    if (check.at != place.at || check.joint != joint || !check.has.known) continue;
    lw_page_sayf(page, "  ", "%s:", lw_check_about_of(check.kind)->title);
    write_check(page, result, s, &at, &check);
  }
}
