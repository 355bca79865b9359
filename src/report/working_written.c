/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* The checks of one contact written out: formula, the numbers put in, what comes of it. A formula stands here
 * only where its numbers give the very value that the check used; a check that rests on other forces than
 * those shown has its own sums and factors beside it. */

static bool agrees(lw_number number, double value) {
  return number.known && fabs(number.value - value) <= 1e-9 * fmax(fabs(value), 1.0);
}

static void is(const lw_page *page, const char *symbol, const char *formula) {
  char prefix[24];
  lw_print(prefix, sizeof prefix, "    %-3s = ", symbol);
  lw_page_say(page, prefix, formula);
}

static void has(const lw_page *page, const lw_check *check, const char *formula) {
  char outcome[40], text[240], needs[24] = "nothing is asked";
  lw_check_outcome(check, outcome, sizeof outcome);
  if (check->needs.known) lw_number_print(needs, sizeof needs, check->needs.value, 2);
  lw_print(text, sizeof text, "%s = %.4f / %.4f = %.3f; %s%s: %s", formula, check->resistance.value,
           check->demand.value, check->has.value, check->needs.known ? "needs " : "", needs, outcome);
  is(page, "has", text);
}

static double friction_of(const lw_strengths *design, lw_at at) {
  if (at == LW_AT_BASE) return design->base_friction;
  return at == LW_AT_PAD ? design->pad_friction : design->joint_friction;
}

/* What holds besides friction: bonded ground under what is pressed, or the key of a joint. */
static double bond_of(const lw_method *method, const lw_strengths *design, const lw_contact *c, lw_at at) {
  if (at == LW_AT_BASE || at == LW_AT_PAD) return design->base_adhesion_kpa * lw_contact_held(method, c);
  return at == LW_AT_JOINT && c->vertical_kn_per_m > 0.0 ? design->joint_shear_kn_per_m : 0.0;
}

static void plus(char *out, size_t size, double value, bool there) {
  size_t used = strlen(out);
  if (there) lw_print(out + used, size - used, " + %.4f", value);
}

/* What a resistance is multiplied by, where it is. */
static void times(char *out, size_t size, double factor, const char *formula) {
  bool one = fabs(factor - 1.0) < 1e-12;
  if (one)
    lw_print(out, size, "%s", formula);
  else
    lw_print(out, size, "%.4f (%s)", factor, formula);
}

static void friction_by_design(const lw_page *page, const lw_basis *by, double mu) {
  char text[120];
  if (fabs(by->on_friction - 1.0) < 1e-12) return;
  lw_print(text, sizeof text, "%.4f x %.4f = %.4f, the friction to design with", mu / by->on_friction,
           by->on_friction, mu);
  is(page, "mu", text);
}

static void inner_heading(void *context, const char *title) {
  lw_page_say(context, "    ", title);
}

static void inner_step(void *context, const lw_step *step) {
  lw_working_say(context, step);
}

/* The ground in front: its coefficient and thrust, and the share that counts. */
static void passive_steps(const lw_page *page, const lw_basis *by, const lw_check *check) {
  double extra = check->at == LW_AT_PAD ? lw_site_under(&by->wall->site) : 0.0, passive;
  lw_page to = *page;
  lw_working working = {.context = &to, .heading = inner_heading, .step = inner_step};
  if (by->wall->method.passive_share > 0.0 && by->load_case.ground.front.dug_m > 0.0)
    lw_page_sayf(page, "    ", "in front %.3f m of the ground are taken as dug away before it resists",
                 by->load_case.ground.front.dug_m);
  if (by->stage.passive_kn_per_m <= 0.0) return;
  lw_page_say(page, "    ", "in front, passive:");
  passive = lw_passive_resistance(by->wall, &by->load_case.ground, extra, &working);
  lw_page_sayf(page, "    ",
               "its level part, less the friction under the wall that its lift takes off, x share %.2f%s = "
               "%.4f kN/m",
               by->wall->method.passive_share, by->on_passive < 1.0 ? ", before the set's factor," : "",
               passive);
}

/* Where water or air can get to clay, a share of the weight is the most that holds. */
static void limited(const lw_page *page, const lw_basis *by, const char *formula, const char *numbers,
                    double unlimited) {
  char text[240];
  double down = by->stage.contact.vertical_kn_per_m;
  lw_print(text, sizeof text,
           "%s = %s = %.4f kN/m, limited to %.2f V = %.2f x %.4f = %.4f kN/m on clay without "
           "friction",
           formula, numbers, unlimited, by->ground_holds_kn_per_m / down, by->ground_holds_kn_per_m / down,
           down, by->ground_holds_kn_per_m);
  is(page, "Rg", text);
}

static bool sliding(const lw_page *page, const lw_basis *by, const lw_check *check) {
  const lw_contact *c = &by->stage.contact;
  const lw_strengths *design = &by->load_case.ground.design;
  double mu = friction_of(design, check->at), bond = bond_of(&by->wall->method, design, c, check->at);
  double unlimited = by->on_sliding * (mu * fmax(c->vertical_kn_per_m, 0.0) + bond);
  double ground = fmin(unlimited, by->ground_holds_kn_per_m);
  double passive = by->on_passive * by->stage.passive_kn_per_m;
  double factor = by->wedges > 0.0 ? by->wedges : 1.0;
  bool alone = passive > 0.0 && agrees(check->resistance, factor * ground) &&
               agrees(check->demand, c->horizontal_kn_per_m);
  if (alone) passive = 0.0;
  bool off_push = passive > 0.0 && agrees(check->resistance, factor * ground);
  double holds = ground + (off_push ? 0.0 : passive);
  double push = c->horizontal_kn_per_m - (off_push ? passive : 0.0);
  char text[240], formula[80], numbers[120], factored[120];
  if (!agrees(check->resistance, factor * holds) || !agrees(check->demand, push)) return false;
  bool passes = passive > 0.0 && !off_push;
  friction_by_design(page, by, mu);
  if (alone)
    lw_page_say(page, "    ", "in front, passive: not counted, as the set asks for less without it");
  else
    passive_steps(page, by, check);
  times(formula, sizeof formula, by->on_sliding, bond > 0.0 ? "mu V + bond" : "mu V");
  lw_print(numbers, sizeof numbers, "%.4f x %.4f", mu, fmax(c->vertical_kn_per_m, 0.0));
  plus(numbers, sizeof numbers, bond, bond > 0.0);
  times(factored, sizeof factored, by->on_sliding, numbers);
  if (ground < unlimited) limited(page, by, formula, factored, unlimited);
  if (ground < unlimited) lw_print(factored, sizeof factored, "%.4f", ground);
  plus(factored, sizeof factored, passive, passes);
  lw_print(text, sizeof text, "%s%s = %s = %.4f kN/m", ground < unlimited ? "the limit" : formula,
           passes ? " + passive" : "", factored, holds);
  is(page, "R", text);
  if (off_push) {
    lw_print(text, sizeof text, "push less passive = %.4f - %.4f = %.4f kN/m", c->horizontal_kn_per_m,
             passive, push);
    is(page, "H", text);
  }
  has(page, check, by->wedges > 0.0 ? "F R / H, with F on every strength" : "R / H");
  return true;
}

static bool tipping(const lw_page *page, const lw_stage *stage, const lw_check *check) {
  const lw_contact *c = &stage->contact;
  if (!agrees(check->resistance, c->resisting_knm_per_m) || !agrees(check->demand, c->overturning_knm_per_m))
    return false;
  has(page, check, "what holds / what tips");
  return true;
}

static bool pressed(const lw_page *page, const lw_stage *stage, const lw_check *check) {
  const lw_contact *c = &stage->contact;
  char text[160];
  double near = 0.5 * c->width_m - fabs(c->eccentricity_m), triangle = 3.0 * near;
  if (!c->inside || !agrees(check->resistance, c->share_in_compression * c->area_m2)) return false;
  if (c->area_m2 < c->width_m)
    lw_print(text, sizeof text, "%.4f m2 a metre of %.4f, the blocks taper: %.4f m of the width is pressed",
             check->resistance.value, c->area_m2, c->pressed_m);
  else if (c->share_in_compression > 1.0 - 1e-9)
    lw_print(text, sizeof text, "B: |e| = %.4f m is within B/6 = %.4f m", fabs(c->eccentricity_m),
             c->width_m / 6.0);
  else if (agrees(check->resistance, triangle))
    lw_print(text, sizeof text, "3 (B/2 - |e|) = 3 x %.4f = %.4f m, for |e| is beyond B/6 = %.4f m", near,
             triangle, c->width_m / 6.0);
  else
    lw_print(text, sizeof text, "%.4f m of face shells, which alone bear", check->resistance.value);
  is(page, "b", text);
  has(page, check, "b / B");
  return true;
}

/* The author's factors, one by one, for the very footing that was checked. */
static bool theory(const lw_page *page, const lw_basis *by, const lw_check *check) {
  const lw_bearing_routine *routine = lw_bearing_routine_of(by->wall->method.bearing);
  bool net = by->wall->method.bearing_on == LW_BEARING_NET;
  lw_page to = *page;
  lw_working working = {.context = &to, .heading = inner_heading, .step = inner_step};
  lw_bearing b;
  lw_error error = {0};
  char formula[80];
  if (routine->ultimate(&by->strip, &b, &error, NULL) != LW_OK) return false;
  if (!agrees(check->resistance, by->on_bearing * (net ? b.net_kpa : b.ultimate_kpa))) return false;
  (void)routine->ultimate(&by->strip, &b, &error, &working);
  times(formula, sizeof formula, by->on_bearing, net ? "net" : "ultimate");
  lw_print(formula + strlen(formula), sizeof formula - strlen(formula), " / %s",
           net ? "pressure less what stood there" : "greatest pressure");
  has(page, check, formula);
  return true;
}

static bool bearing(const lw_page *page, const lw_basis *by, const lw_check *check) {
  if (by->wall->method.bearing != LW_BEARING_PRESUMPTIVE) return theory(page, by, check);
  if (!check->resistance.known || !agrees(check->demand, by->stage.contact.greatest_kpa)) return false;
  has(page, check, "allowable / greatest pressure");
  return true;
}

static bool written(const lw_page *page, const lw_basis *by, const lw_check *check) {
  switch (check->kind) {
  case LW_CHECK_SLIDING: return sliding(page, by, check);
  case LW_CHECK_OVERTURNING:
  case LW_CHECK_TILTING: return tipping(page, &by->stage, check);
  case LW_CHECK_COMPRESSION: return pressed(page, &by->stage, check);
  case LW_CHECK_BEARING: return bearing(page, by, check);
  case LW_CHECK_SLIP: return false;
  }
  return false;
}

static bool may_be_lighter(const lw_stage *stage) {
  for (int i = 0; i < stage->forces.count; i++) {
    const lw_force *f = &stage->forces.force[i];
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

/* Where a check rests on other numbers than those that stand above it: which, and their sums. */
static void say_basis(const lw_page *page, const lw_situation *s, const lw_basis *by, const lw_check *check) {
  const lw_contact *c = &by->stage.contact;
  bool other_set = check->by && s->load_case.set && strcmp(check->by->format, s->load_case.set->format) != 0;
  char factors[320] = "", set[120] = "", strengths[60] = "";
  if (other_set) lw_print(set, sizeof set, " under another set of the format, %s", check->by->format);
  if (fabs(by->on_friction - 1.0) > 1e-12)
    lw_print(strengths, sizeof strengths, "tan phi and every friction x %.4f; ", by->on_friction);
  if (fabs(by->on_push - 1.0) > 1e-12)
    lw_print(strengths, sizeof strengths, "strength of what pushes x %.4f; ", by->on_push);
  if (by->stage.forces.factors.factored)
    source_factors(&by->stage.forces, factors, sizeof factors);
  else
    lw_print(factors, sizeof factors, "every factor on what acts is one");
  lw_page_sayf(page, "    ", "at its own worst%s: %s%s", set, strengths, factors);
  lw_page_sayf(page, "    ", "sums: %.4f down, %.4f push; %.4f tips, %.4f holds", c->vertical_kn_per_m,
               c->horizontal_kn_per_m, c->overturning_knm_per_m, c->resisting_knm_per_m);
}

static bool same_forces(const lw_stage *a, const lw_stage *b) {
  const lw_contact *p = &a->contact, *q = &b->contact;
  const double both[][2] = {{p->vertical_kn_per_m, q->vertical_kn_per_m},
                            {p->horizontal_kn_per_m, q->horizontal_kn_per_m},
                            {p->resisting_knm_per_m, q->resisting_knm_per_m},
                            {p->overturning_knm_per_m, q->overturning_knm_per_m}};
  for (size_t i = 0; i < sizeof both / sizeof *both; i++)
    if (fabs(both[i][0] - both[i][1]) > 1e-9) return false;
  return true;
}

/* A check whose stage is not found again stands with its two numbers. */
static void write_check(const lw_page *page, const lw_result *result, const lw_situation *s,
                        const lw_stage *shown, const lw_check *check) {
  bool of_pressure = check->kind == LW_CHECK_COMPRESSION || check->kind == LW_CHECK_BEARING;
  lw_basis *by = malloc(sizeof *by);
  page->out->failed = page->out->failed || by == NULL;
  bool found = by && lw_check_basis(&result->wall, result->tables, s, check, by);
  if (found && !same_forces(&by->stage, shown)) {
    if (may_be_lighter(shown) && !may_be_lighter(&by->stage))
      lw_page_say(page, "    ", "without the load that presses down, which is the worse case:");
    say_basis(page, s, by, check);
  }
  if (of_pressure && !(found ? by->stage.contact : shown->contact).inside)
    lw_page_say(page, "    ", "nothing is pressed: the resultant is outside");
  else if (!found || !written(page, by, check))
    has(page, check, "what holds / what pushes");
  free(by);
}

void lw_working_written(const lw_page *page, const lw_result *result, const lw_situation *s,
                        const lw_stage *stage, lw_place place) {
  static const char *const words[] = {
      [LW_CHECK_SLIDING] = "sliding",           [LW_CHECK_OVERTURNING] = "tipping",
      [LW_CHECK_COMPRESSION] = "pressed share", [LW_CHECK_BEARING] = "ground",
      [LW_CHECK_TILTING] = "tipping",           [LW_CHECK_SLIP] = "slip"};
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *check = &s->check[i];
    if (check->at != place.at || check->joint != place.joint || !check->has.known) continue;
    lw_page_sayf(page, "  ", "%s:", words[check->kind]);
    write_check(page, result, s, stage, check);
  }
}
