/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "changes.h"

#include <math.h>

#include "base/amount.h"
#include "same_job.h"
#include "sheet/complete_note.h"
#include "sheet/values.h"
#include "tables/known.h"

/* Changes of the wall itself. Sizes are those that are sold or built. */

#define INCHES(count) (LW_INCH_M * (count))
static const lw_built DEPTH_STEP = {0.05, INCHES(2.0)}, DEPTH_LEAST = {0.1, INCHES(4.0)};
static const lw_built SETBACK_STEP = {0.005, INCHES(0.25)}, SETBACK_LEAST = {0.01, INCHES(0.5)};
static const double DEPTH_MOST_M = 1.2, HEIGHT_LEAST_M = 0.1, HEIGHT_KEPT_M = 0.05;
static const double SETBACK_MOST_SHARE = 0.25; /* of the block's depth: more leaves too little to stand on */

double lw_change_built(lw_units units, lw_built step) {
  return units == LW_UNITS_US ? step.us_m : step.metric_m;
}

double lw_change_steps_below(double value, double step) {
  return floor(value / step + 1e-6) * step;
}

double lw_change_steps_above(double value, double step) {
  return ceil(value / step - 1e-6) * step;
}

int lw_change_count(double from, double to, double step) {
  int count = (int)floor((to - from) / step + 1e-6);
  return count > 0 ? count : 0;
}

static bool of_courses(const lw_case *c) {
  return c->wall.kind.value == LW_WALL_COURSES;
}

static lw_range depths(const lw_result *is) {
  double now = lw_change_depth_now(&is->given), step = lw_change_built(is->units, DEPTH_STEP);
  double from = now > 0.0 ? lw_change_steps_below(now, step) : lw_change_built(is->units, DEPTH_LEAST) - step;
  return (lw_range){
      .from = from, .step = step, .most = lw_change_count(from, DEPTH_MOST_M, step), .told_sign = 1.0};
}

/* A pad keeps what it has beyond the wall on both sides, in widths that are dug. */
static bool pad_follows(const lw_case *c, double more_m, lw_typed *typed) {
  if (!lw_given(&c->pad.width)) return true;
  double width = lw_change_steps_above(c->pad.width.si + more_m, lw_change_built(typed->units, DEPTH_STEP));
  return lw_typed_put_mm(typed, "pad width", width);
}

static lw_range deeper_range(const lw_result *now) {
  return of_courses(&now->given) ? depths(now) : (lw_range){0};
}

/* Deeper blocks are of the same stuff, so that their mass grows with them. */
static bool mass_follows(const lw_case *c, double depth_m, lw_typed *typed) {
  double now = lw_change_depth_now(c);
  if (!lw_given(&c->courses.block_mass)) return true;
  if (now <= 0.0) return lw_typed_put(typed, "block mass", "%s", "unknown");
  return lw_typed_put_amount(typed, "block mass", LW_KIND_MASS, c->courses.block_mass.si * depth_m / now);
}

/* A cap goes on covering them, deeper base courses reach as far beyond them, a bed loses what they take. */
static bool what_stands_follows(const lw_case *c, double more_m, lw_typed *typed) {
  double step = lw_change_built(typed->units, DEPTH_STEP);
  double base = lw_change_steps_above(c->courses.base_depth.si + more_m, step);
  bool room = true;
  if (lw_given(&c->courses.cap_depth))
    room = lw_typed_put_mm(typed, "cap depth", c->courses.cap_depth.si + more_m);
  if (room && lw_given(&c->courses.base_depth)) room = lw_typed_put_mm(typed, "base course depth", base);
  if (room && lw_given(&c->construction.bed_width))
    room = lw_typed_put_mm(typed, "bed width", c->construction.bed_width.si - more_m);
  return room;
}

static bool deeper(const lw_changing *wall, double depth_m, lw_typed *typed) {
  const lw_case *c = wall->c;
  double now = lw_change_depth_now(c), more_m = depth_m - now;
  bool room = lw_typed_put_mm(typed, "block depth", depth_m) && mass_follows(c, depth_m, typed);
  if (!room || now <= 0.0) return room;
  return what_stands_follows(c, more_m, typed) && pad_follows(c, more_m, typed);
}

const lw_change lw_change_deeper = {.slug = "deeper-blocks",
                                    .tells = "Blocks %s deep",
                                    .kind = LW_KIND_LENGTH,
                                    .decimals = 3,
                                    .range = deeper_range,
                                    .same_job = lw_change_keeps_depth,
                                    .type = deeper};

static lw_range wider_range(const lw_result *now) {
  bool points = now->given.shape.point[0].x.origin != LW_ABSENT;
  return of_courses(&now->given) || points ? (lw_range){0} : depths(now);
}

/* The base grows forward: the top stays, and the face takes what the widths leave. */
static bool wider(const lw_changing *wall, double width_m, lw_typed *typed) {
  const lw_case *c = wall->c;
  bool room = lw_typed_put_mm(typed, "base width", width_m) &&
              pad_follows(c, width_m - lw_change_depth_now(c), typed);
  if (!room || c->shape.top_width.origin == LW_ABSENT) return room;
  if (!lw_typed_put_mm(typed, "top width", c->shape.top_width.si)) return false;
  return c->shape.face_batter.origin != LW_GIVEN || lw_typed_put(typed, "face batter", "%s", "unknown");
}

const lw_change lw_change_wider = {.slug = "deeper-blocks",
                                   .tells = "A base %s wide",
                                   .kind = LW_KIND_LENGTH,
                                   .decimals = 3,
                                   .range = wider_range,
                                   .type = wider};

/* The lowest wall worth trying leaves one course, or one step, above the ground. */
static lw_range lower_range(const lw_result *now) {
  const lw_case *c = &now->given;
  double exposed = now->verdict.height_m[LW_HEIGHT_EXPOSED];
  double step = of_courses(c) ? c->courses.block_height.si : lw_change_built(now->units, DEPTH_STEP);
  int most = lw_change_count(0.0, exposed - HEIGHT_LEAST_M, step);
  int courses = of_courses(c) ? (int)lround(c->courses.count.si) - 1 : LW_COURSE_MAX * 8;
  if (c->shape.point[0].x.origin != LW_ABSENT) return (lw_range){0};
  return (lw_range){
      .step = step, .most = most < courses ? most : courses, .told_from = exposed, .told_sign = -1.0};
}

/* What is measured downwards from the top comes nearer to it. */
static bool top_falls(const lw_case *c, double less_m, lw_typed *typed) {
  const struct {
    const char *item;
    const lw_quantity *depth;
  } depths_below[] = {{"water depth", &c->water.depth},
                      {"front water depth", &c->water.front_depth},
                      {"overflow below top", &c->water.overflow_below_top}};
  bool room = true;
  for (size_t i = 0; i < sizeof depths_below / sizeof *depths_below && room; i++) {
    const lw_quantity *depth = depths_below[i].depth;
    if (lw_given(depth)) room = lw_typed_put_mm(typed, depths_below[i].item, fmax(0.0, depth->si - less_m));
  }
  for (int i = 0; i < LW_SOIL_MAX && room; i++) {
    const lw_quantity *bottom = &c->ground.soil[i].bottom;
    char item[32];
    lw_print(item, sizeof item, "soil %d bottom", i + 1);
    if (lw_given(bottom)) room = lw_typed_put_mm(typed, item, fmax(0.001 * (i + 1), bottom->si - less_m));
  }
  return room;
}

static bool lower_same_job(const lw_result *now, double less_m) {
  return lw_change_keeps_held(now, lw_change_held(now) - less_m);
}

static bool fewer_courses(const lw_case_courses *now, double less_m, lw_typed *typed) {
  double count = now->count.si - round(less_m / now->block_height.si);
  if (count < 1.0 || !lw_typed_put(typed, "course count", "%.0f", count)) return false;
  bool too_many = lw_given(&now->base_count) && now->base_count.si > count;
  return !too_many || lw_typed_put(typed, "base course count", "%.0f", count);
}

static bool lower(const lw_changing *wall, double less_m, lw_typed *typed) {
  const lw_case *c = wall->c;
  const lw_section *section = &wall->now->wall.section;
  double exposed = section->height_m - section->embedment_m - less_m;
  if (exposed < HEIGHT_KEPT_M) return false;
  if (of_courses(c) && !fewer_courses(&c->courses, less_m, typed)) return false;
  if (!lw_typed_put_mm(typed, "wall height", exposed)) return false;
  bool held = lw_given(&c->site.level_difference) && c->site.level_difference.si > 0.0;
  if (held && !lw_typed_put_mm(typed, "level difference", fmax(0.0, c->site.level_difference.si - less_m)))
    return false;
  return top_falls(c, less_m, typed);
}

const lw_change lw_change_lower = {.slug = "lower-wall",
                                   .tells = "A wall at most %s high above the ground in front",
                                   .kind = LW_KIND_LENGTH,
                                   .decimals = 3,
                                   .range = lower_range,
                                   .same_job = lower_same_job,
                                   .type = lower};

static lw_range setback_range(const lw_result *now) {
  const lw_case *c = &now->given;
  if (!of_courses(c) || c->courses.count.si < 2.0) return (lw_range){0};
  double now_m = lw_si_or(&c->courses.setback, 0.0), step = lw_change_built(now->units, SETBACK_STEP);
  double from = fmax(lw_change_built(now->units, SETBACK_LEAST) - step, lw_change_steps_below(now_m, step));
  double most = SETBACK_MOST_SHARE * lw_change_depth_now(c);
  return (lw_range){.from = from, .step = step, .most = lw_change_count(from, most, step), .told_sign = 1.0};
}

static bool setback(const lw_changing *wall, double setback_m, lw_typed *typed) {
  (void)wall;
  return lw_typed_put_mm(typed, "setback", setback_m);
}

const lw_change lw_change_setback = {.slug = "more-setback",
                                     .tells = "Each course set back %s",
                                     .kind = LW_KIND_LENGTH,
                                     .decimals = 3,
                                     .wavers = true,
                                     .range = setback_range,
                                     .type = setback};

/* Of what lies in open units some drops out: what counts is the share of tables/thresholds.csv. */
static lw_range filled_range(const lw_result *now) {
  const lw_case *c = &now->given;
  const lw_material_row *gravel = lw_known_material(now->tables, LW_MATERIAL_OF_LOOSE_GRAVEL);
  double share = lw_known_value(now->tables, LW_THRESHOLD_FILL_THAT_COUNTS);
  bool hollow = lw_given(&c->courses.face_shell_thickness) && c->courses.fill_unit_weight.origin == LW_ABSENT;
  if (!of_courses(c) || !hollow) return (lw_range){0};
  return (lw_range){.step = share * gravel->unit_weight_low_kn_per_m3, .most = 1, .told_sign = 1.0};
}

static bool filled(const lw_changing *wall, double unit_weight_kn_per_m3, lw_typed *typed) {
  (void)wall;
  return lw_typed_put_amount(typed, "fill unit weight", LW_KIND_UNIT_WEIGHT, unit_weight_kn_per_m3);
}

const lw_change lw_change_filled = {.slug = "filled-hollows",
                                    .tells = "Every hollow filled with gravel, of which %s counts",
                                    .kind = LW_KIND_UNIT_WEIGHT,
                                    .decimals = 1,
                                    .range = filled_range,
                                    .type = filled};
