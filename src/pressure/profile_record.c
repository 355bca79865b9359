/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "profile_record.h"

#include <math.h>
#include <string.h>

#include "base/bound.h"
#include "base/tell.h"
#include "base/working.h"

enum { SIZE = 24, TERMS = 440 };

static const char SOIL_ROW[] = "%8s%8s%10s%9s%8s%10s%10s%10s";
static const char LOAD_ROW[] = "%8s%10s%10s%10s";

/* As many decimals as leave a blank before it in its column; nothing where it is not there. */
static const char *fit(char *out, double value, int decimals, int columns, bool there) {
  out[0] = '\0';
  for (; there && decimals >= 0; decimals--) {
    lw_number_print(out, SIZE, value, decimals);
    if ((int)strlen(out) < columns) break;
  }
  return out;
}

void lw_layer_heading(const lw_plane *plane, int layer, const lw_working *working) {
  char name[80];
  if (working == NULL || plane->layer_count == 1) return;
  double top = layer > 0 ? fmax(plane->layer[layer - 1].bottom_m, 0.0) : 0.0;
  lw_print(name, sizeof name, "layer %d, below %s", layer + 1,
           lw_tell_amount(working->units, "m", top, 3).text);
  lw_working_heading(working, name);
}

bool lw_layer_is_met(const lw_plane *plane, int layer) {
  double top = layer > 0 ? plane->layer[layer - 1].bottom_m : 0.0;
  return plane->layer[layer].bottom_m > 0.0 && top < plane->height_m;
}

void lw_cohesion_record(const char *symbol, double k, double cohesion_kpa, const lw_working *working) {
  char formula[40];
  if (working == NULL || cohesion_kpa <= 0.0) return;
  lw_print(formula, sizeof formula, "2 c sqrt(%s)", symbol);
  const lw_bound bound[] = {{"c", cohesion_kpa, "kPa"}, {symbol, k, ""}};
  lw_working_bound(working, &(lw_step){"pc", formula, NULL, 2.0 * cohesion_kpa * sqrt(k), "kPa", ""}, bound,
                   2);
}

/* --- before the table --- */

static void tell_load(const lw_plane *plane, const lw_law *law) {
  const lw_bound bound[] = {{"q", plane->surcharge_kpa, "kPa"},
                            {"t", plane->batter_rad * LW_DEG_PER_RAD, "deg"},
                            {"b", plane->slope_rad * LW_DEG_PER_RAD, "deg"}};
  const lw_step step = {
      "qb", "q cos t cos b/cos(t - b)", NULL, plane->surcharge_kpa * law->surcharge_factor, "kPa", ""};
  bool spread = fabs(law->surcharge_factor - 1.0) > 1e-12 && plane->surcharge_kpa > 0.0;
  if (spread) lw_working_bound(law->working, &step, bound, sizeof bound / sizeof *bound);
}

/* What each layer weighs below water. */
static void tell_weights(const lw_plane *plane, const lw_law *law, const lw_told *told) {
  int said = -1;
  for (int i = 0; i < told->count; i++) {
    const lw_told_point *p = &told->point[i];
    if (!p->wet || p->layer == said) continue;
    said = p->layer;
    char symbol[12] = "gb";
    if (plane->layer_count > 1) lw_print(symbol, sizeof symbol, "gb%d", said + 1);
    const lw_bound bound[] = {{"gsat", plane->layer[said].saturated_unit_weight_kn_per_m3, "kN/m3"},
                              {"gw", plane->water_unit_weight_kn_per_m3, "kN/m3"}};
    const lw_step step = {symbol, "gsat - gw", NULL, p->weight_kn_per_m3, "kN/m3", ""};
    lw_working_bound(law->working, &step, bound, sizeof bound / sizeof *bound);
  }
}

/* --- the table --- */

static void head(const lw_plane *plane, const lw_law *law, bool curved) {
  lw_units units = lw_tell_units(law->working);
  lw_tell_name m = lw_tell_unit(units, "m"), weight = lw_tell_unit(units, "kN/m3"),
               stress = lw_tell_unit(units, "kPa"), push = lw_tell_unit(units, "kN/m"),
               moment = lw_tell_unit(units, "kNm/m");
  char title[140];
  lw_print(title, sizeof title,
           "Pressure on the plane of %s: p = K s - pc, not below 0%s; A areas, M about the foot",
           lw_tell_amount(units, "m", plane->height_m, 3).text, curved ? ", or Mohr's" : "");
  lw_working_heading(law->working, title);
  lw_working_row(law->working, SOIL_ROW, "depth", "g", "s", "K", "pc", "p", "A", "M");
  lw_working_row(law->working, SOIL_ROW, m.text, weight.text, stress.text, "", stress.text, stress.text,
                 push.text, moment.text);
}

static void soil_row(const lw_told_point *p, const lw_working *working) {
  char depth[SIZE], g[SIZE], s[SIZE], k[SIZE], cut[SIZE], soil[SIZE], area[SIZE], moment[SIZE];
  bool by_k = !p->curved, cuts = by_k && fabs(p->cut_kpa) > 0.0;
  lw_working_row(working, SOIL_ROW, fit(depth, lw_tell(working, "m", p->depth_m), 4, 8, true),
                 fit(g, lw_tell(working, "kN/m3", p->weight_kn_per_m3), 3, 8, !p->begins),
                 fit(s, lw_tell(working, "kPa", p->stress_kpa), 4, 10, true), fit(k, p->k, 5, 9, by_k),
                 fit(cut, lw_tell(working, "kPa", p->cut_kpa), 4, 8, cuts),
                 fit(soil, lw_tell(working, "kPa", p->soil_kpa), 4, 10, !p->skipped),
                 fit(area, lw_tell(working, "kN/m", p->area), 4, 10, p->ends),
                 fit(moment, lw_tell(working, "kNm/m", p->moment), 4, 10, p->ends));
}

static void load_row(const lw_told_point *p, const lw_working *working) {
  char depth[SIZE], load[SIZE], area[SIZE], moment[SIZE];
  lw_working_row(working, LOAD_ROW, fit(depth, lw_tell(working, "m", p->depth_m), 4, 8, true),
                 fit(load, lw_tell(working, "kPa", p->load_kpa), 4, 10, true),
                 fit(area, lw_tell(working, "kN/m", p->load_area), 4, 10, p->ends),
                 fit(moment, lw_tell(working, "kNm/m", p->load_moment), 4, 10, p->ends));
}

/* --- after it --- */

/* A column, and the unit of what stands in it. */
typedef struct column {
  size_t offset;
  const char *unit;
} column;

static const column AREA = {offsetof(lw_told_point, area), "kN/m"},
                    MOMENT = {offsetof(lw_told_point, moment), "kNm/m"},
                    LOAD_AREA = {offsetof(lw_told_point, load_area), "kN/m"},
                    LOAD_MOMENT = {offsetof(lw_told_point, load_moment), "kNm/m"};

/* "0.2345 + 1.2345": of every stretch that pushes. */
static void terms(const lw_told *told, column of, const lw_working *working, char *out, size_t size) {
  size_t used = 0;
  out[0] = '\0';
  for (int i = 0; i < told->count && used + SIZE < size; i++) {
    const lw_told_point *p = &told->point[i];
    double value = *(const double *)(const void *)((const char *)p + of.offset);
    if (!p->ends || fabs(value) <= 0.0) continue;
    used += (size_t)lw_print(out + used, size - used, "%s%.4f", used > 0 ? " + " : "",
                             lw_tell(working, of.unit, value));
  }
  if (used == 0) lw_print(out, size, "0.0000");
}

static void tell_sum(const lw_told *told, const lw_law *law, const lw_thrust *thrust) {
  char areas[TERMS];
  terms(told, AREA, law->working, areas, sizeof areas);
  lw_working_step(law->working, &(lw_step){law->symbol, "sum of A", NULL, thrust->total_kn_per_m, "kN/m", ""},
                  "%s", areas);
}

static void tell_sums(const lw_told *told, const lw_thrust *thrust, const lw_working *working) {
  char areas[TERMS], moments[TERMS];
  terms(told, AREA, working, areas, sizeof areas);
  terms(told, MOMENT, working, moments, sizeof moments);
  lw_working_step(working, &(lw_step){"P", "sum of A", NULL, thrust->total_kn_per_m, "kN/m", ""}, "%s",
                  areas);
  if (thrust->total_kn_per_m > 0.0)
    lw_working_step(working, &(lw_step){"h", "sum of M / P", NULL, thrust->height_of_action_m, "m", ""},
                    "(%s)/%.4f, above the foot of the plane", moments,
                    lw_tell(working, "kN/m", thrust->total_kn_per_m));
}

static void tell_parts(const lw_thrust *thrust, const lw_working *working) {
  const lw_bound bound[] = {{"P", thrust->total_kn_per_m, "kN/m"},
                            {"a", thrust->angle_rad * LW_DEG_PER_RAD, "deg"}};
  const lw_step level = {"Ph", "P cos a", NULL, thrust->horizontal_kn_per_m, "kN/m", ""};
  const lw_step down = {"Pv", "P sin a", NULL, thrust->vertical_kn_per_m, "kN/m", ""};
  lw_working_bound(working, &level, bound, 2);
  lw_working_bound(working, &down, bound, 2);
}

static void tell_load_sums(const lw_told *told, const lw_thrust *thrust, const lw_working *working) {
  lw_units units = lw_tell_units(working);
  char areas[TERMS], moments[TERMS];
  terms(told, LOAD_AREA, working, areas, sizeof areas);
  terms(told, LOAD_MOMENT, working, moments, sizeof moments);
  lw_working_heading(working, "Of it the uniform load's");
  lw_working_row(working, LOAD_ROW, "depth", "pq", "A", "M");
  lw_working_row(working, LOAD_ROW, lw_tell_unit(units, "m").text, lw_tell_unit(units, "kPa").text,
                 lw_tell_unit(units, "kN/m").text, lw_tell_unit(units, "kNm/m").text);
  for (int i = 0; i < told->count; i++) load_row(&told->point[i], working);
  lw_working_step(working,
                  &(lw_step){"Pq", "sum of A, P at most", NULL, thrust->surcharge_kn_per_m, "kN/m", ""},
                  "min(%s, %.4f)", areas, lw_tell(working, "kN/m", thrust->total_kn_per_m));
  lw_working_step(working, &(lw_step){"hq", "sum of M / sum of A", NULL, thrust->surcharge_height_m, "m", ""},
                  "(%s)/(%s)", moments, areas);
}

/* Mohr's pressure at the foot of each stretch, numbered where there are several. */
static void tell_curves(const lw_plane *plane, const lw_law *law, const lw_told *told) {
  int number = 0;
  for (int i = 0; i < told->count; i++) {
    const lw_told_point *p = &told->point[i];
    char symbol[8] = "p";
    if (!p->curved || !p->ends || p->soil_kpa <= 0.0) continue;
    if (number++ > 0) lw_print(symbol, sizeof symbol, "p%d", number);
    law->tell_curved(symbol, &plane->layer[p->layer], plane->slope_rad, p->stress_kpa, law->working);
  }
}

void lw_profile_record(const lw_plane *plane, const lw_law *law, const lw_told *told,
                       const lw_thrust *thrust) {
  bool curved = false;
  for (int i = 0; i < told->count; i++) curved = curved || told->point[i].curved;
  tell_load(plane, law);
  tell_weights(plane, law, told);
  head(plane, law, curved);
  for (int i = 0; i < told->count; i++) soil_row(&told->point[i], law->working);
  tell_curves(plane, law, told);
  if (law->symbol != NULL) {
    tell_sum(told, law, thrust);
    return;
  }
  tell_sums(told, thrust, law->working);
  tell_parts(thrust, law->working);
  if (thrust->surcharge_kn_per_m > 0.0) tell_load_sums(told, thrust, law->working);
}
