/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "working.h"
#include "report/difference.h"
#include "report/force_words.h"

/* The moment table and the joints. Each force has a line; its level and its upright part each turn the wall
 * by an arm of their own. */

static const double NOTHING = 1e-12;

/* The columns: area, weight, factor, down, push, arm, moment. */
static const char HEAD[] = "  |%-25s|%7s|%7s|%5s|%9s|%9s|%7s|%9s";

/* As many decimals as leave a blank before it in its column; nothing where it is not there. */
static void fit(double value, int decimals, int columns, bool there, char *out, size_t size) {
  out[0] = '\0';
  for (; there && decimals >= 0; decimals--) {
    lw_number_print(out, size, value, decimals);
    if ((int)strlen(out) < columns) return;
  }
}

typedef struct lw_row {
  double area_m2, weight_kn_per_m3, factor, down, push, arm_m, moment;
  bool weighs, factored, is_down, is_push;
} lw_row;

static void row_line(const lw_page *page, const char *label, const lw_row *row) {
  enum { SIZE = 24 };
  char area[SIZE], weight[SIZE], factor[SIZE], down[SIZE], push[SIZE], arm[SIZE], moment[SIZE];
  lw_units units = page->units;
  fit(lw_tell_in(units, "m2", row->area_m2), 4, 7, row->weighs, area, SIZE);
  fit(lw_tell_in(units, "kN/m3", row->weight_kn_per_m3), 2, 7, row->weighs, weight, SIZE);
  fit(row->factor, 2, 5, row->factored, factor, SIZE);
  fit(lw_tell_in(units, "kN/m", row->down), 4, 9, row->is_down, down, SIZE);
  fit(lw_tell_in(units, "kN/m", row->push), 4, 9, row->is_push, push, SIZE);
  fit(lw_tell_in(units, "m", row->arm_m), 4, 7, true, arm, SIZE);
  fit(lw_tell_in(units, "kN m/m", row->moment), 4, 9, true, moment, SIZE);
  lw_page_rowf(page, LW_TONE_PLAIN, HEAD, label, area, weight, factor, down, push, arm, moment);
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

/* What weighs has a unit weight, a load on the wall so much a square metre; other forces have neither. */
static double weight_of(const lw_force *f) {
  if (f->area_m2 <= 0.0 || f->factor <= 0.0) return 0.0;
  return f->kind == LW_FORCE_SURCHARGE_ON_WALL ? f->vertical_kn_per_m / (f->factor * f->area_m2)
                                               : f->unit_weight_kn_per_m3;
}

static void upright_line(const lw_page *page, const char *label, const lw_force *f, double arm,
                         lw_sums *sums) {
  lw_row row = {.area_m2 = f->area_m2,
                .weight_kn_per_m3 = weight_of(f),
                .factor = f->factor,
                .down = f->vertical_kn_per_m,
                .arm_m = arm,
                .moment = f->vertical_kn_per_m * arm,
                .weighs = weight_of(f) > 0.0,
                .factored = fabs(f->factor - 1.0) > NOTHING,
                .is_down = true};
  row_line(page, label, &row);
  sums->vertical += row.down;
  add_moment(sums, row.moment);
}

static void level_line(const lw_page *page, const char *label, const lw_force *f, double lever,
                       lw_sums *sums) {
  lw_row row = {.factor = f->factor,
                .push = f->horizontal_kn_per_m,
                .arm_m = lever,
                .moment = -f->horizontal_kn_per_m * lever,
                .factored = fabs(f->factor - 1.0) > NOTHING,
                .is_push = true};
  row_line(page, label, &row);
  sums->horizontal += row.push;
  add_moment(sums, row.moment);
}

static void sums_line(const lw_page *page, const char *label, const lw_sums *sums) {
  char down[24], push[24], overturns[24], holds[24];
  lw_units units = page->units;
  fit(lw_tell_in(units, "kN/m", sums->vertical), 4, 9, true, down, sizeof down);
  fit(lw_tell_in(units, "kN/m", sums->horizontal), 4, 9, true, push, sizeof push);
  fit(lw_tell_in(units, "kN m/m", sums->overturning), 4, 9, true, overturns, sizeof overturns);
  fit(lw_tell_in(units, "kN m/m", sums->resisting), 4, 10, true, holds, sizeof holds);
  lw_page_rowf(page, LW_TONE_PLAIN, "  |%-41s|%9s|%9s|%9s|%10s", label, down, push, overturns, holds);
}

/* What the table adds up to, and what the checks were made with: two ways to the same sums. */
static void check_sums(const lw_page *page, const lw_free_body *body, const lw_sums *sums) {
  const lw_contact *c = &body->contact;
  lw_sums used = {c->vertical_kn_per_m, c->horizontal_kn_per_m, c->resisting_knm_per_m,
                  c->overturning_knm_per_m};
  lw_page_headf(page, "  |%-41s|%9s|%9s|%9s|%10s", "", "down", "push", "tips", "holds");
  sums_line(page, "sums of this table", sums);
  sums_line(page, "as used in the checks", &used);
}

/* The formula's push stands above; a wedge that pushes more takes its place. */
void lw_working_governs(const lw_page *page, const lw_free_body *body) {
  if (body->status != LW_OK || !body->wedge_governs) return;
  lw_page_sayf(page, "  ", "The wedge pushes more, %s, and is used: %s.",
               lw_tell_amount(page->units, "kN/m", body->thrust.total_kn_per_m, 4).text,
               lw_difference_words(body->difference));
}

/* The courses above a joint count from the joint; people count them from the ground. */
static void label_of(const lw_result *result, const lw_force *force, lw_shown place, char *out, size_t size) {
  lw_force named = *force;
  if (force->kind == LW_FORCE_PART && force->index >= 0) named.index += place.joint;
  lw_force_label(result, &named, out, size);
}

/* What of the soil's push hangs on the back is told from what pushes. */
static const char *upright_label(const lw_force *force, const char *label) {
  if (force->kind != LW_FORCE_THRUST) return label;
  return force->vertical_kn_per_m > 0.0 ? "the soil's push, downward" : "the soil's push, upward";
}

void lw_working_moments(const lw_page *page, const lw_result *result, const lw_free_body *body,
                        lw_shown place) {
  lw_sums sums = {0};
  double foot = lw_free_body_foot(result, body);
  bool us = page->units == LW_UNITS_US;
  lw_page_headf(page, HEAD, "part", "area", "weight", body->forces.factors.factored ? "x" : "", "down",
                "push", "arm", "moment");
  lw_page_headf(page, HEAD, "", us ? "ft2" : "m2", us ? "pcf" : "kN/m3", "", us ? "lb/ft" : "kN/m",
                us ? "lb/ft" : "kN/m", us ? "ft" : "m", us ? "ft-lb/ft" : "kN m/m");
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    char label[40];
    label_of(result, f, place, label, sizeof label);
    if (fabs(f->vertical_kn_per_m) > NOTHING)
      upright_line(page, upright_label(f, label), f, f->x_m - body->contact.front_m, &sums);
    if (fabs(f->horizontal_kn_per_m) > NOTHING) level_line(page, label, f, f->y_m - foot, &sums);
  }
  check_sums(page, body, &sums);
}

/* A force of a joint; pounds have fewer decimals. */
static void number_of_force(lw_units units, double kn_per_m, char *out, size_t size) {
  lw_number_print(out, size, lw_tell_in(units, "kN/m", kn_per_m), units == LW_UNITS_US ? 2 : 4);
}

void lw_working_joints(const lw_page *page, const lw_result *result, const lw_situation *s) {
  lw_units units = page->units;
  lw_tell_name push = lw_tell_unit(units, "kN/m");
  bool us = units == LW_UNITS_US;
  if (s->joint_count == 0) return;
  lw_page_blank(page);
  lw_page_part(page, "Joints, each above the course of its number, with the courses above it");
  lw_page_headf(page, "  |%-9s|%8s|%9s|%9s|%9s|%9s|%9s|%9s", "", "height", "P", "wedge", "V", "H", "R from",
                "share in");
  lw_page_headf(page, "  |%-9s|%8s|%9s|%9s|%9s|%9s|%9s|%9s", "", us ? "ft" : "m", push.text, push.text,
                push.text, push.text, us ? "front ft" : "front m", "compr.");
  for (int i = 0; i < s->joint_count; i++) {
    const lw_joint *j = &s->joint[i];
    char name[24], from[24] = "outside", wedge[24] = "-", thrust[24], down[24], along[24];
    bool cap = result->wall.section.has_cap && i == s->joint_count - 1;
    if (cap)
      lw_print(name, sizeof name, "cap");
    else
      lw_print(name, sizeof name, "joint %d", i + 1);
    if (j->status != LW_OK) {
      lw_page_sayf(page, "  ", "%s: %s", name, lw_reason_sentence(j->reason));
      continue;
    }
    if (j->contact.inside)
      lw_number_print(from, sizeof from, lw_tell_in(units, "m", j->contact.resultant_m), 4);
    if (j->wedge_known) number_of_force(units, j->wedge_kn_per_m, wedge, sizeof wedge);
    number_of_force(units, j->thrust_kn_per_m, thrust, sizeof thrust);
    number_of_force(units, j->contact.vertical_kn_per_m, down, sizeof down);
    number_of_force(units, j->contact.horizontal_kn_per_m, along, sizeof along);
    lw_page_rowf(page, LW_TONE_PLAIN, "  |%-9s|%8.3f|%9s|%9s|%9s|%9s|%9s|%9.3f", name,
                 lw_tell_in(units, "m", j->height_m), thrust, wedge, down, along, from,
                 j->contact.inside ? j->contact.share_in_compression : 0.0);
  }
}
