/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>

/* The moment table and the joints. Each force has a line; its level and its upright part each turn the wall
 * by an arm of their own. */

static const double NOTHING = 1e-12;

static void blank_or(char *out, size_t size, double value, int decimals, bool there) {
  if (there)
    lw_number_print(out, size, value, decimals);
  else
    lw_print(out, size, "%s", "");
}

typedef struct lw_sums {
  double vertical, horizontal, resisting, overturning;
} lw_sums;

static void add_moment(lw_sums *sums, double moment) {
  if (moment >= 0.0)
    sums->resisting += moment;
  else
    sums->overturning -= moment;
}

static void upright_line(const lw_page *page, const char *label, const lw_force *f, double arm,
                         lw_sums *sums) {
  char area[24], weight[24];
  bool weighs = f->area_m2 > 0.0;
  blank_or(area, sizeof area, f->area_m2, 4, weighs);
  blank_or(weight, sizeof weight, f->unit_weight_kn_per_m3, 2, weighs);
  double moment = f->vertical_kn_per_m * arm;
  lw_page_linef(page, LW_TONE_PLAIN, "  %-26s%8s%8s%9.4f%9s%8.4f%10.4f", label, area, weight,
                f->vertical_kn_per_m, "", arm, moment);
  sums->vertical += f->vertical_kn_per_m;
  add_moment(sums, moment);
}

static void level_line(const lw_page *page, const char *label, const lw_force *f, double lever,
                       lw_sums *sums) {
  double moment = -f->horizontal_kn_per_m * lever;
  lw_page_linef(page, LW_TONE_PLAIN, "  %-26s%8s%8s%9s%9.4f%8.4f%10.4f", label, "", "", "",
                f->horizontal_kn_per_m, lever, moment);
  sums->horizontal += f->horizontal_kn_per_m;
  add_moment(sums, moment);
}

static void sums_line(const lw_page *page, const char *label, const lw_sums *sums) {
  lw_page_linef(page, LW_TONE_PLAIN, "  %-42s%9.4f%9.4f%8.4f%10.4f", label, sums->vertical, sums->horizontal,
                sums->overturning, sums->resisting);
}

/* What the table adds up to, and what the checks were made with: two ways to the same sums. */
static void check_sums(const lw_page *page, const lw_stage *stage, const lw_sums *sums) {
  const lw_contact *c = &stage->contact;
  lw_sums used = {c->vertical_kn_per_m, c->horizontal_kn_per_m, c->resisting_knm_per_m,
                  c->overturning_knm_per_m};
  lw_page_linef(page, LW_TONE_PLAIN, "  %-42s%9s%9s%8s%10s", "", "down", "push", "tips", "holds");
  sums_line(page, "sums of this table", sums);
  sums_line(page, "as used in the checks", &used);
}

/* What the diagram adds up to between two of its points, straight from one to the other. */
static double area_between(const lw_profile_point *a, const lw_profile_point *b) {
  return 0.5 * (a->soil_kpa + b->soil_kpa) * (b->depth_m - a->depth_m);
}

/* The diagram is the formula's; a wedge that pushes more takes its place. */
static void diagram_sum(const lw_page *page, const lw_stage *stage, double sum) {
  double formula = stage->formula_kn_per_m, used = stage->thrust.total_kn_per_m;
  bool straight = fabs(sum - formula) <= 1e-9 * fmax(formula, 1.0);
  if (straight)
    lw_page_linef(page, LW_TONE_PLAIN, "  %-54s%20.4f", "sum of the areas = P", sum);
  else
    lw_page_sayf(page, "  ", "P = %.4f kN/m: between these points the diagram is not straight", formula);
  if (stage->wedge_governs)
    lw_page_sayf(page, "  ", "The wedge pushes more, %.4f kN/m, and is used: %s.", used,
                 lw_stage_difference_why(stage));
}

/* In one soil under an even load the pressure at the foot by hand; true only where it is that. */
static void by_hand(const lw_page *page, const lw_stage *stage) {
  const lw_plane *plane = &stage->back.plane;
  const lw_thrust *t = &stage->thrust;
  const lw_layer *soil = &plane->layer[0];
  bool dry = plane->water_depth_m >= plane->height_m;
  double wet = soil->saturated_unit_weight_kn_per_m3 - plane->water_unit_weight_kn_per_m3;
  double weight = dry ? soil->unit_weight_kn_per_m3 : wet;
  double foot = t->coefficient * (weight * plane->height_m + plane->surcharge_kpa);
  double printed = t->profile[t->profile_count - 1].soil_kpa;
  bool simple = lw_plane_is_plain(plane) && fabs(foot - printed) <= 1e-9 * fmax(printed, 1.0);
  if (!simple) return;
  lw_page_sayf(page, "  ", "At the foot: K (weight x depth + q) = %.4f x (%.2f x %.3f + %.2f) = %.3f kPa%s",
               t->coefficient, weight, plane->height_m, plane->surcharge_kpa, printed,
               dry ? "" : ", the soil's weight less the water's");
}

void lw_working_diagram(const lw_page *page, const lw_stage *stage) {
  const lw_thrust *thrust = &stage->thrust;
  double sum = 0.0;
  if (stage->status != LW_OK || thrust->profile_count == 0) return;
  lw_page_blank(page);
  lw_page_sayf(
      page, " ",
      "Pressure on the plane of %.3f m, along the thrust's own direction; the push is the area of it",
      stage->back.plane.height_m);
  lw_page_linef(page, LW_TONE_PLAIN, "  %10s%20s%12s%12s%20s", "depth m", "soil and load kPa", "of it load",
                "water kPa", "soil area to here");
  for (int i = 0; i < thrust->profile_count; i++) {
    const lw_profile_point *p = &thrust->profile[i];
    if (i > 0) sum += area_between(p - 1, p);
    lw_page_linef(page, LW_TONE_PLAIN, "  %10.3f%20.3f%12.3f%12.3f%20.4f", p->depth_m, p->soil_kpa,
                  p->surcharge_kpa, p->water_kpa, sum);
  }
  diagram_sum(page, stage, sum);
  by_hand(page, stage);
}

/* The courses above a joint count from the joint; people count them from the ground. */
static void label_of(const lw_result *result, const lw_force *force, lw_place place, char *out, size_t size) {
  lw_force named = *force;
  if (force->kind == LW_FORCE_PART && force->index >= 0) named.index += place.joint;
  lw_force_label(result, &named, out, size);
}

void lw_working_moments(const lw_page *page, const lw_result *result, const lw_stage *stage, lw_place place) {
  lw_sums sums = {0};
  double foot = lw_stage_foot(result, stage);
  lw_page_linef(page, LW_TONE_PLAIN, "  %-26s%8s%8s%9s%9s%8s%10s", "part", "area", "weight", "down", "push",
                "arm", "moment");
  lw_page_linef(page, LW_TONE_PLAIN, "  %-26s%8s%8s%9s%9s%8s%10s", "", "m2", "kN/m3", "kN/m", "kN/m", "m",
                "kN m/m");
  for (int i = 0; i < stage->forces.count; i++) {
    const lw_force *f = &stage->forces.force[i];
    char label[40];
    label_of(result, f, place, label, sizeof label);
    if (fabs(f->vertical_kn_per_m) > NOTHING)
      upright_line(page, label, f, f->x_m - stage->contact.front_m, &sums);
    if (fabs(f->horizontal_kn_per_m) > NOTHING) level_line(page, label, f, f->y_m - foot, &sums);
  }
  check_sums(page, stage, &sums);
}

void lw_working_joints(const lw_page *page, const lw_result *result, const lw_situation *s) {
  if (s->joint_count == 0) return;
  lw_page_blank(page);
  lw_page_say(page, " ", "Joints, each with the courses above it");
  lw_page_linef(page, LW_TONE_PLAIN, "  %-9s%8s%9s%9s%9s%9s%9s%9s", "", "height", "P", "wedge", "V", "H",
                "R from", "pressed");
  lw_page_linef(page, LW_TONE_PLAIN, "  %-9s%8s%9s%9s%9s%9s%9s%9s", "", "m", "kN/m", "kN/m", "kN/m", "kN/m",
                "front m", "share");
  for (int i = 0; i < s->joint_count; i++) {
    const lw_joint *j = &s->joint[i];
    char name[24], from[24] = "outside", wedge[24] = "-";
    bool cap = result->wall.section.has_cap && i == s->joint_count - 1;
    if (cap)
      lw_print(name, sizeof name, "cap");
    else
      lw_print(name, sizeof name, "joint %d", i + 1);
    if (j->status != LW_OK) {
      lw_page_sayf(page, "  ", "%s: %s", name, lw_reason_sentence(j->reason));
      continue;
    }
    if (j->contact.inside) lw_number_print(from, sizeof from, j->contact.resultant_m, 4);
    if (j->wedge_known) lw_number_print(wedge, sizeof wedge, j->wedge_kn_per_m, 4);
    lw_page_linef(page, LW_TONE_PLAIN, "  %-9s%8.3f%9.4f%9s%9.4f%9.4f%9s%9.3f", name, j->height_m,
                  j->thrust_kn_per_m, wedge, j->contact.vertical_kn_per_m, j->contact.horizontal_kn_per_m,
                  from, j->contact.inside ? j->contact.share_in_compression : 0.0);
  }
}
