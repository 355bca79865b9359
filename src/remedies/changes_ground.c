/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet/values.h"
#include "tables/known.h"
#include "changes.h"
#include "base/amount.h"
#include "same_job.h"

#include <math.h>

#include "base/lines.h"
#include "pressure/methods.h"
#include "sheet/complete_note.h"

/* Changes of what lies behind the wall and under it. */

enum { PAD_STEPS_MOST = 20 };
static const lw_built STEP = {0.05, 2.0 * LW_INCH_M}, LOAD_STEP = {0.1, 6.0 * LW_INCH_M};
static const double HELD_LEAST_M = 0.1, LOAD_MOST_M = 6.0;

static lw_range once(double value) {
  return (lw_range){.step = value, .most = value > 0.0 ? 1 : 0, .told_sign = 1.0};
}

/* Width of the stone that leads water to its way out; 0 when the ways out are enough. */
static double leading_stone(const lw_result *now) {
  const lw_site *site = &now->wall.site;
  /* A width that a person digs: in feet a whole inch, and no less than counts. */
  double stone = site->leading_stone_m;
  if (now->units == LW_UNITS_US) stone = lw_change_steps_above(stone, LW_INCH_M);
  return site->ways_out < 2 ? stone : 0.0;
}

static bool stone(const lw_changing *wall, double stone_m, lw_typed *typed) {
  double width = fmax(stone_m, lw_si_or(&wall->c->ground.stone_width, 0.0));
  return lw_typed_put_mm(typed, "stone width", width);
}

/* Without a filter it would count as one with what is there already. */
static bool filtered_stone(const lw_changing *wall, double stone_m, lw_typed *typed) {
  if (!stone(wall, stone_m, typed)) return false;
  return wall->now->wall.site.filtered || lw_typed_put(typed, "stone filter", "%s", "cloth");
}

static lw_range drain_range(const lw_result *now) {
  return now->wall.site.drain_outlets == 0 ? once(leading_stone(now)) : (lw_range){0};
}

static bool drain(const lw_changing *wall, double stone_m, lw_typed *typed) {
  bool room = lw_typed_put(typed, "drain outlets", "%d", 2) && filtered_stone(wall, stone_m, typed);
  return room && (!wall->now->wall.site.outlets_buried || lw_typed_put_mm(typed, "outlet level", 0.0));
}

const lw_change lw_change_drain = {
    .slug = "drain",
    .tells = "A drain with two outlets that come out above the ground, in drainage stone %s wide or more "
             "behind the wall, with a filter between stone and soil",
    .kind = LW_KIND_LENGTH,
    .decimals = 3,
    .range = drain_range,
    .type = drain};

/* Nothing leads the water to a way out that is there. */
static lw_range wider_stone_range(const lw_result *now) {
  const lw_site *site = &now->wall.site;
  int there = (site->drain_outlets > 0 ? 1 : 0) + (site->ground_drains ? 1 : 0) + (site->joints_open ? 1 : 0);
  return there > site->ways_found ? once(leading_stone(now)) : (lw_range){0};
}

const lw_change lw_change_wider_stone = {
    .slug = "wider-stone",
    .tells = "Drainage stone %s wide behind the wall, which leads the water to its way out, with a filter "
             "between stone and soil",
    .kind = LW_KIND_LENGTH,
    .decimals = 3,
    .range = wider_stone_range,
    .type = filtered_stone};

static lw_range filter_range(const lw_result *now) {
  return now->wall.site.ways_found > 1 ? once(leading_stone(now)) : (lw_range){0};
}

const lw_change lw_change_filter = {
    .slug = "filter",
    .tells = "A filter between the soil and the drainage stone, which is %s wide or more, so that not all "
             "ways out silt up together",
    .kind = LW_KIND_LENGTH,
    .decimals = 3,
    .range = filter_range,
    .type = filtered_stone};

const lw_soil_row *lw_change_stone_row(const lw_tables *tables) {
  const lw_soil_row *row = lw_known_soil(tables, LW_SOIL_OF_CRUSHED_ROCK);
  return row->use == LW_BACKFILL_GOOD && row->free_draining && isfinite(row->friction_rad) ? row : NULL;
}

/* Stone counts only where it fills the whole critical wedge, found with its own angle. */
static lw_range wedge_range(const lw_result *now) {
  const lw_soil_row *row = lw_change_stone_row(now->tables);
  if (!row) return (lw_range){0};
  double reach = lw_line_out(now->verdict.total_to_pad_m, lw_failure_run(row->friction_rad),
                             tan(now->wall.site.slope_rad));
  if (!isfinite(reach)) return (lw_range){0};
  return once(lw_change_steps_above(reach, lw_change_built(now->units, STEP)));
}

static bool wedge(const lw_changing *wall, double stone_m, lw_typed *typed) {
  const lw_soil_row *row = lw_change_stone_row(wall->now->tables);
  bool room = row != NULL;
  for (int i = 1; i <= LW_SOIL_MAX && room; i++)
    room = lw_typed_forget_part(typed, LW_ABOUT_SOIL, i, wall->c);
  return room && lw_typed_put(typed, "soil 1 name", "%s", row->name) && stone(wall, stone_m, typed);
}

const lw_change lw_change_stone = {
    .slug = "stone-wedge",
    .tells = "Crushed rock through the whole wedge, %s wide behind the wall at the top",
    .kind = LW_KIND_LENGTH,
    .decimals = 3,
    .range = wedge_range,
    .type = wedge};

static lw_range soil_range(const lw_result *now) {
  double step = lw_change_built(now->units, STEP);
  double from = lw_change_steps_below(now->wall.site.soil_below_top_m, step);
  double most = now->verdict.height_m[LW_HEIGHT_EXPOSED] - HELD_LEAST_M;
  return (lw_range){.from = from, .step = step, .most = lw_change_count(from, most, step), .told_sign = 1.0};
}

static bool soil_same_job(const lw_result *now, double below_m) {
  return lw_change_keeps_held(now, now->verdict.height_m[LW_HEIGHT_EXPOSED] - below_m);
}

/* Where the ground goes on behind, what lies beyond goes down with it. */
static bool lower_soil(const lw_changing *wall, double below_m, lw_typed *typed) {
  const lw_case *c = wall->c;
  const lw_quantity *beyond = &c->site.level_difference;
  double less_m = below_m - wall->now->wall.site.soil_below_top_m;
  if (!lw_typed_put_mm(typed, "soil below top", below_m)) return false;
  if (!lw_given(beyond) || beyond->si <= 0.0) return true;
  return lw_typed_put_mm(typed, "level difference", fmax(0.0, beyond->si - less_m));
}

const lw_change lw_change_soil = {.slug = "lower-soil",
                                  .tells = "Soil kept %s below the top of the wall",
                                  .kind = LW_KIND_LENGTH,
                                  .decimals = 3,
                                  .wavers = true,
                                  .range = soil_range,
                                  .same_job = soil_same_job,
                                  .type = lower_soil};

static lw_range pad_range(const lw_result *now) {
  const lw_pad *pad = &now->wall.site.pad;
  if (pad->thickness_m <= 0.0) return (lw_range){0};
  double width = fmax(pad->width_m, now->wall.section.base_width_m);
  double step = lw_change_built(now->units, STEP);
  return (lw_range){
      .from = lw_change_steps_below(width, step), .step = step, .most = PAD_STEPS_MOST, .told_sign = 1.0};
}

static bool wider_pad(const lw_changing *wall, double width_m, lw_typed *typed) {
  (void)wall;
  return lw_typed_put_mm(typed, "pad width", width_m);
}

const lw_change lw_change_pad = {.slug = "wider-pad",
                                 .tells = "A pad %s wide",
                                 .kind = LW_KIND_LENGTH,
                                 .decimals = 3,
                                 .range = pad_range,
                                 .type = wider_pad};

static bool is_behind(const lw_case_load *load) {
  bool there = load->kind.origin != LW_ABSENT && load->kind.value != LW_LOAD_NONE;
  return there && load->kind.value != LW_LOAD_CAP;
}

/* Plants and who weeds them cannot be kept off their own bed: nobody gave that load. */
static bool only_planted(const lw_case *c) {
  const lw_choice *use = &c->ground.bed_use;
  return use->origin != LW_ABSENT && use->value == LW_BED_PLANTED && c->load[0].kind.origin != LW_GIVEN;
}

static lw_range load_range(const lw_result *now) {
  double step = lw_change_built(now->units, LOAD_STEP);
  bool any = false;
  for (int i = 0; i < LW_LOAD_MAX; i++) any = any || is_behind(&now->given.load[i]);
  any = any && !only_planted(&now->given);
  return (lw_range){
      .step = step, .most = any ? lw_change_count(0.0, LOAD_MOST_M, step) : 0, .told_sign = 1.0};
}

static bool put_metres(int number, const char *end, double metres, lw_typed *typed) {
  char item[40];
  lw_print(item, sizeof item, "load %d %s", number, end);
  return lw_typed_put_amount(typed, item, LW_KIND_LENGTH, metres);
}

static bool put_pressure(lw_typed *typed, const char *item, double kpa) {
  if (typed->units == LW_UNITS_US) return lw_typed_put_amount(typed, item, LW_KIND_PRESSURE, kpa);
  return lw_typed_put(typed, item, "%.9g kPa", kpa);
}

/* A uniform load that stops short of the wall is a strip; what it sends from twenty heights on is little. */
static bool uniform_back(const lw_changing *wall, int number, double clear_m, lw_typed *typed) {
  const lw_case_load *load = &wall->c->load[number - 1];
  double step = lw_change_built(wall->now->units, LOAD_STEP);
  double far_m = lw_change_steps_above(clear_m + 20.0 * wall->now->wall.section.height_m, step);
  char kind[40], pressure[40];
  lw_print(kind, sizeof kind, "load %d kind", number);
  lw_print(pressure, sizeof pressure, "load %d pressure", number);
  return lw_typed_forget_part(typed, LW_ABOUT_LOAD, number, wall->c) &&
         lw_typed_put(typed, kind, "%s", "strip") && put_pressure(typed, pressure, load->pressure.si) &&
         put_metres(number, "near edge", clear_m, typed) && put_metres(number, "far edge", far_m, typed);
}

static bool step_back(const lw_changing *wall, int number, double clear_m, lw_typed *typed) {
  const lw_case_load *load = &wall->c->load[number - 1];
  bool strip = load->kind.value == LW_LOAD_STRIP;
  double near = strip ? load->near_edge.si : load->distance.si;
  if (load->kind.value == LW_LOAD_UNIFORM) return uniform_back(wall, number, clear_m, typed);
  if (near >= clear_m) return true;
  if (!strip) return put_metres(number, "distance", clear_m, typed);
  return put_metres(number, "near edge", clear_m, typed) &&
         put_metres(number, "far edge", load->far_edge.si + clear_m - near, typed);
}

static bool load_back(const lw_changing *wall, double clear_m, lw_typed *typed) {
  bool room = true;
  for (int i = 0; i < LW_LOAD_MAX && room; i++) {
    if (is_behind(&wall->c->load[i])) room = step_back(wall, i + 1, clear_m, typed);
  }
  return room;
}

const lw_change lw_change_load = {.slug = "load-back",
                                  .tells = "No load nearer than %s behind the wall",
                                  .kind = LW_KIND_LENGTH,
                                  .decimals = 1,
                                  .range = load_range,
                                  .type = load_back};
