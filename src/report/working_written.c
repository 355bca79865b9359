/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>
#include <string.h>

/* The checks of one contact written out: formula, the numbers put in, what comes of it. A formula stands here
 * only where its numbers give the very value that the check used; where they do not, it is said why. */

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

static double friction_of(const lw_wall *wall, lw_at at) {
  if (at == LW_AT_BASE) return wall->site.base_friction;
  return at == LW_AT_PAD ? wall->site.pad_friction : wall->section.joint_friction;
}

/* What holds besides friction: bonded ground under what is pressed, or the key of a joint. */
static double bond_of(const lw_wall *wall, const lw_contact *c, lw_at at) {
  if (at == LW_AT_BASE || at == LW_AT_PAD)
    return c->inside ? wall->site.base_adhesion_kpa * c->width_m * c->share_in_compression : 0.0;
  return at == LW_AT_JOINT && c->vertical_kn_per_m > 0.0 ? wall->section.joint_shear_kn_per_m : 0.0;
}

static void plus(char *out, size_t size, double value, bool there) {
  size_t used = strlen(out);
  if (there) lw_print(out + used, size - used, " + %.4f", value);
}

static bool sliding(const lw_page *page, const lw_result *result, const lw_stage *stage,
                    const lw_check *check) {
  const lw_contact *c = &stage->contact;
  double mu = friction_of(&result->wall, check->at), bond = bond_of(&result->wall, c, check->at);
  double friction = mu * fmax(c->vertical_kn_per_m, 0.0), passive = stage->passive_kn_per_m;
  bool off_push = passive > 0.0 && agrees(check->resistance, friction + bond);
  double holds = friction + bond + (off_push ? 0.0 : passive);
  double push = c->horizontal_kn_per_m - (off_push ? passive : 0.0);
  char text[240], formula[40], numbers[120];
  if (!agrees(check->resistance, holds) || !agrees(check->demand, push)) return false;
  bool passes = passive > 0.0 && !off_push;
  lw_print(formula, sizeof formula, "mu V%s%s", bond > 0.0 ? " + bond" : "", passes ? " + passive" : "");
  lw_print(numbers, sizeof numbers, "%.4f x %.4f", mu, fmax(c->vertical_kn_per_m, 0.0));
  plus(numbers, sizeof numbers, bond, bond > 0.0);
  plus(numbers, sizeof numbers, passive, passes);
  lw_print(text, sizeof text, "%s = %s = %.4f kN/m", formula, numbers, holds);
  is(page, "R", text);
  if (off_push) {
    lw_print(text, sizeof text, "push less passive = %.4f - %.4f = %.4f kN/m", c->horizontal_kn_per_m,
             passive, push);
    is(page, "H", text);
  }
  has(page, check, "R / H");
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
  if (!c->inside || !agrees(check->resistance, c->share_in_compression * c->width_m)) return false;
  if (c->share_in_compression > 1.0 - 1e-9)
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

static void theory_heading(void *context, const char *title) {
  lw_page_say(context, "    ", title);
}

static void theory_step(void *context, const lw_step *step) {
  lw_working_say(context, step);
}

/* The author's factors, one by one, for the very footing that was checked. */
static bool theory(const lw_page *page, const lw_result *result, const lw_situation *s,
                   const lw_check *check) {
  const lw_bearing_routine *routine = lw_bearing_routine_of(result->wall.method.bearing);
  lw_strip strip = lw_situation_strip(&result->wall, result->tables, s, check->at);
  bool net = result->wall.method.bearing_on == LW_BEARING_NET;
  lw_page to = *page;
  lw_working working = {.context = &to, .heading = theory_heading, .step = theory_step};
  lw_bearing b;
  lw_error error = {0};
  if (routine->ultimate(&strip, &b, &error, NULL) != LW_OK) return false;
  if (!agrees(check->resistance, net ? b.net_kpa : b.ultimate_kpa)) return false;
  (void)routine->ultimate(&strip, &b, &error, &working);
  has(page, check, net ? "net / pressure less what stood there" : "ultimate / greatest pressure");
  return true;
}

static bool bearing(const lw_page *page, const lw_result *result, const lw_situation *s,
                    const lw_stage *stage, const lw_check *check) {
  if (result->wall.method.bearing != LW_BEARING_PRESUMPTIVE) return theory(page, result, s, check);
  if (!check->resistance.known || !agrees(check->demand, stage->contact.greatest_kpa)) return false;
  has(page, check, "allowable / greatest pressure");
  return true;
}

static bool written(const lw_page *page, const lw_result *result, const lw_situation *s,
                    const lw_stage *stage, const lw_check *check) {
  switch (check->kind) {
  case LW_CHECK_SLIDING: return sliding(page, result, stage, check);
  case LW_CHECK_OVERTURNING:
  case LW_CHECK_TILTING: return tipping(page, stage, check);
  case LW_CHECK_COMPRESSION: return pressed(page, stage, check);
  case LW_CHECK_BEARING: return bearing(page, result, s, stage, check);
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

/* Why a check rests on other numbers than those that stand above it. */
static void say_other(const lw_page *page, const lw_situation *s, const lw_stage *stage,
                      const lw_check *check) {
  bool other_set = check->by && s->set && strcmp(check->by->format, s->set->format) != 0;
  if (other_set)
    lw_page_sayf(page, "    ", "under another set of the format, %s%s:", check->by->format,
                 check->factored ? ", by design values" : ", every factor one");
  else if (check->factored)
    lw_page_say(page, "    ",
                "design values: strengths and loads, each favourable or not, at the worst factors for it:");
  else
    lw_page_say(page, "    ",
                may_be_lighter(stage) ? "without the load that presses down, which is the worse case:"
                                      : "with the strengths that the format divides:");
}

void lw_working_written(const lw_page *page, const lw_result *result, const lw_situation *s,
                        const lw_stage *stage, lw_place place) {
  static const char *const words[] = {[LW_CHECK_SLIDING] = "sliding",
                                      [LW_CHECK_OVERTURNING] = "tipping",
                                      [LW_CHECK_COMPRESSION] = "pressed share",
                                      [LW_CHECK_BEARING] = "ground",
                                      [LW_CHECK_TILTING] = "tipping",
                                      [LW_CHECK_SLIP] = "slip"};
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *check = &s->check[i];
    if (check->at != place.at || check->joint != place.joint || !check->has.known) continue;
    lw_page_sayf(page, "  ", "%s:", words[check->kind]);
    bool of_pressure = check->kind == LW_CHECK_COMPRESSION || check->kind == LW_CHECK_BEARING;
    if (!stage->contact.inside && of_pressure) {
      lw_page_say(page, "    ", "nothing is pressed: the resultant is outside");
    } else if (!written(page, result, s, stage, check)) {
      say_other(page, s, stage, check);
      if (check->resistance.known && check->demand.known) has(page, check, "what holds / what pushes");
    }
  }
}
