/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "every_wall.h"
#include "support.h"

enum { FIGURES_MAX = 8000 };

typedef struct figures {
  int count;
  lw_figure figure[FIGURES_MAX];
} figures;

static void take(void *context, const lw_figure *figure) {
  figures *all = context;
  cr_assert(all->count < FIGURES_MAX);
  all->figure[all->count++] = *figure;
}

/* Owned here; the keys outlive the call, the strings beside them may not. */
static const figures *figures_of(const lw_result *result) {
  static figures all;
  all.count = 0;
  lw_figures_each(result, take, &all);
  return &all;
}

static double value_of(const figures *all, const char *key) {
  for (int i = 0; i < all->count; i++) {
    if (strcmp(all->figure[i].key, key) == 0 && all->figure[i].value.known) return all->figure[i].value.value;
  }
  cr_expect(false, "no figure %s", key);
  return 0.0;
}

static int by_key(const void *a, const void *b) {
  return strcmp(((const lw_figure *)a)->key, ((const lw_figure *)b)->key);
}

int every_key_is_alone(const every_wall *wall) {
  static figures sorted;
  sorted = *figures_of(wall->result);
  cr_expect(sorted.count > 50);
  qsort(sorted.figure, (size_t)sorted.count, sizeof sorted.figure[0], by_key);
  for (int k = 1; k < sorted.count; k++) {
    cr_expect(ne(int, by_key(&sorted.figure[k - 1], &sorted.figure[k]), 0), "%s: %s twice", wall->name,
              sorted.figure[k].key);
  }
  return sorted.count;
}

/* The end of a key is its unit, as programs and people read it. */
static bool unit_fits(const lw_figure *f) {
  static const struct {
    const char *end, *unit;
  } units[] = {{"_m_per_s", "m/s"},
               {"_kn_per_m3", "kN/m3"},
               {"_knm_per_m", "kN m/m"},
               {"_kn_per_m", "kN/m"},
               {"_kpa", "kPa"},
               {"_kg", "kg"},
               {"_deg", "deg"},
               {"_kn", "kN"},
               {"_knm", "kN m"},
               {"_m2", "m2"},
               {"_m", "m"}};
  size_t length = strlen(f->key);
  for (size_t i = 0; i < sizeof units / sizeof *units; i++) {
    size_t end = strlen(units[i].end);
    if (length > end && strcmp(f->key + length - end, units[i].end) == 0)
      return strcmp(f->unit, units[i].unit) == 0;
  }
  return f->unit[0] == '\0';
}

static void is_whole(void *context, const lw_figure *f) {
  ++*(int *)context;
  cr_expect(f->label != NULL && f->label[0] != '\0', "%s has no label", f->key);
  cr_expect(f->source != NULL);
  cr_expect(unit_fits(f), "%s is in %s", f->key, f->unit);
  cr_expect(eq(int, f->value.known, f->reason == LW_REASON_NONE), "%s: a reason goes with what is missing",
            f->key);
  cr_expect(isfinite(f->value.value));
}

int every_figure_is_whole(const every_wall *wall) {
  int count = 0;
  lw_figures_each(wall->result, is_whole, &count);
  return count;
}

Test(report, figures_of_the_base_are_in_balance) {
  const figures *all = figures_of(report_test_named("ground"));
  double b = value_of(all, "drained.base.width_m"), e = value_of(all, "drained.base.eccentricity_m");
  double v = value_of(all, "drained.base.vertical_kn_per_m");
  double resisting = value_of(all, "drained.base.resisting_knm_per_m");
  double overturning = value_of(all, "drained.base.overturning_knm_per_m");
  cr_expect(epsilon_eq(dbl, value_of(all, "drained.base.resultant_m"), (resisting - overturning) / v, 1e-9));
  cr_expect(epsilon_eq(dbl, value_of(all, "drained.base.resultant_m"), b / 2.0 - e, 1e-9));
  cr_expect(epsilon_eq(dbl, value_of(all, "drained.base.effective_width_m"), b - 2.0 * fabs(e), 1e-9));
  cr_expect(epsilon_eq(dbl, value_of(all, "drained.base.kern_m"), b / 6.0, 1e-9));
}

/* Sum of what ends a key of the forces on the drained base. */
static double sum_of(const figures *all, const char *end) {
  static const char begin[] = "drained.base.";
  double sum = 0.0;
  for (int i = 0; i < all->count; i++) {
    const char *key = all->figure[i].key, *dot = strrchr(key, '.');
    bool deep = strncmp(key, begin, sizeof begin - 1) == 0 && dot > key + sizeof begin - 1;
    if (deep && strcmp(dot + 1, end) == 0) sum += all->figure[i].value.value;
  }
  return sum;
}

Test(report, the_forces_of_the_base_add_up_to_its_balance) {
  static const char *const names[] = {"ground", "section", "dry cap on many courses"};
  for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
    const figures *all = figures_of(report_test_named(names[i]));
    double moment =
        sum_of(all, "moment_of_vertical_knm_per_m") + sum_of(all, "moment_of_horizontal_knm_per_m");
    double balance = value_of(all, "drained.base.resisting_knm_per_m") -
                     value_of(all, "drained.base.overturning_knm_per_m");
    cr_expect(epsilon_eq(dbl, sum_of(all, "vertical_kn_per_m"),
                         value_of(all, "drained.base.vertical_kn_per_m"), 1e-9));
    cr_expect(epsilon_eq(dbl, sum_of(all, "horizontal_kn_per_m"),
                         value_of(all, "drained.base.horizontal_kn_per_m"), 1e-9));
    cr_expect(epsilon_eq(dbl, moment, balance, 1e-9), "%s", names[i]);
  }
}

Test(report, the_pressure_down_the_plane_adds_up_to_the_formula) {
  const figures *all = figures_of(report_test_named("ground"));
  double thrust = 0.0, depth = 0.0, pressure = 0.0;
  for (int i = 0; i < all->count; i++) {
    const lw_figure *f = &all->figure[i];
    if (strncmp(f->key, "drained.base.profile-", 21) != 0) continue;
    if (strstr(f->key, ".soil_kpa") == NULL) continue;
    double at = all->figure[i - 1].value.value;
    thrust += (at - depth) * (pressure + f->value.value) / 2.0;
    depth = at;
    pressure = f->value.value;
  }
  cr_expect(epsilon_eq(dbl, depth, value_of(all, "drained.base.plane_height_m"), 1e-9));
  cr_expect(epsilon_eq(dbl, thrust, value_of(all, "drained.base.formula_kn_per_m"), 1e-9));
}

Test(report, wedge_and_formula_stand_side_by_side_with_their_difference) {
  const figures *all = figures_of(report_test_named("section"));
  double wedge = value_of(all, "drained.base.wedge_thrust_kn_per_m");
  double formula = value_of(all, "drained.base.formula_kn_per_m");
  cr_expect(epsilon_eq(dbl, value_of(all, "drained.base.wedge_difference_kn_per_m"), wedge - formula, 1e-12));
  cr_expect(lt(dbl, fabs(wedge - formula), 1e-6 * formula));
}
