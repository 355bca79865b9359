/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

#include "../verdict/help.h"
#include "remedies/changes.h"
#include "soil/site.h"

/* A wall run as it is, and a case to be changed. */
static lw_result *start(const char *changes, lw_case *c) {
  lw_result *now = calloc(1, sizeof *now);
  lw_error error = {0};
  verdict_case(changes, c);
  cr_assert_eq(lw_run(c, verdict_tables(), LW_DETAIL_EVERYTHING, now, &error), LW_OK, "%s", error.text);
  *c = now->given;
  c->complete = false;
  return now;
}

/* What the change types, typed in. */
static bool make(const lw_result *now, const lw_change *change, double value, lw_case *c) {
  lw_typed typed = {0};
  return change->type(&(lw_changing){.now = now, .c = c}, value, &typed) && lw_typed_enter(&typed, c);
}

static void complete(lw_case *c) {
  lw_faults faults = {.count = 0};
  cr_assert_eq(lw_case_complete(verdict_tables(), c, &faults), LW_OK, "%s: %s", faults.fault[0].item,
               faults.fault[0].wanted);
}

/* Deeper blocks are of the same stuff: half as light stays half as light, to the six digits of a mass as
 * it is typed. */
Test(remedies, deeper_blocks_keep_their_unit_weight) {
  lw_case c;
  lw_result *now = start("block unit weight=unknown;block mass=14 kg", &c);
  double before = now->given.courses.block_unit_weight.si;
  cr_assert_float_eq(before, 14.0 * 9.80665e-3 / (0.4 * 0.3 * 0.1), 1e-6);
  cr_assert(make(now, &lw_change_deeper, 0.5, &c));
  complete(&c);
  cr_expect_float_eq(c.courses.block_unit_weight.si / before, 1.0, 5e-6);
  cr_expect_float_eq(c.courses.block_depth.si, 0.5, 1e-9);
  free(now);
}

/* Cap, deeper base courses and pad grow with the blocks that stand on them. */
Test(remedies, what_stands_on_deeper_blocks_grows_too) {
  lw_case c;
  lw_result *now = start("cap height=50 mm;cap depth=330 mm;base course count=1;base course depth=400 mm;"
                         "pad thickness=150 mm;pad width=600 mm;bed width=900 mm",
                         &c);
  cr_assert(make(now, &lw_change_deeper, 0.42, &c));
  complete(&c);
  cr_expect_float_eq(c.courses.cap_depth.si, 0.45, 1e-9);
  cr_expect_float_eq(c.courses.base_depth.si, 0.55, 1e-9); /* 520 mm are not to be had */
  cr_expect_float_eq(c.pad.width.si, 0.75, 1e-9);
  cr_expect_float_eq(c.construction.bed_width.si, 0.78, 1e-9); /* inside, less what the blocks take */
  free(now);
}

/* Depths below the top shrink with the top, so that water and layers stay where they are in the ground. */
Test(remedies, a_lower_wall_leaves_water_and_layers_in_place) {
  lw_case c;
  lw_result *now = start("course count=9;soil 1 bottom=0.45 m;soil 2 name=loam;water depth=0.75 m;"
                         "overflow below top=0.1 m;level difference=0.8 m",
                         &c);
  cr_assert(make(now, &lw_change_lower, 0.2, &c));
  complete(&c);
  cr_expect_float_eq(c.courses.count.si, 7.0, 1e-9);
  cr_expect_float_eq(c.wall.height.si, 0.6, 1e-9);
  cr_expect_float_eq(c.ground.soil[0].bottom.si, 0.25, 1e-9);
  cr_expect_float_eq(c.water.depth.si, 0.55, 1e-9);
  cr_expect_float_eq(c.water.overflow_below_top.si, 0.0, 1e-9);
  cr_expect_float_eq(c.site.level_difference.si, 0.6, 1e-9);
  free(now);
}

Test(remedies, a_wall_is_not_lowered_into_the_ground) {
  lw_case c;
  lw_result *now = start("", &c);
  cr_expect_not(make(now, &lw_change_lower, 0.3, &c));
  free(now);
}

/* A load on the cap stays; each of the others steps back and keeps its size. */
Test(remedies, loads_step_back) {
  lw_case c;
  lw_result *now = start("load 1 kind=uniform;load 1 pressure=5 kPa;load 2 kind=strip;load 2 pressure=7 kPa;"
                         "load 2 near edge=0.2 m;load 2 far edge=1.2 m;load 3 kind=line;load 3 force=3 kN/m;"
                         "load 3 distance=0.1 m;load 4 kind=cap;load 4 force=1 kN/m",
                         &c);
  cr_assert(make(now, &lw_change_load, 0.8, &c));
  complete(&c);
  cr_expect_eq(c.load[0].kind.value, LW_LOAD_STRIP);
  cr_expect_float_eq(c.load[0].near_edge.si, 0.8, 1e-9);
  cr_expect_float_eq(c.load[0].pressure.si, 5.0, 1e-9);
  cr_expect_float_eq(c.load[1].near_edge.si, 0.8, 1e-9);
  cr_expect_float_eq(c.load[1].far_edge.si, 1.8, 1e-9);
  cr_expect_float_eq(c.load[2].distance.si, 0.8, 1e-9);
  cr_expect_eq(c.load[3].kind.value, LW_LOAD_CAP);
  free(now);
}

Test(remedies, without_a_load_there_is_none_to_keep_back) {
  lw_case c;
  lw_result *now = start("load 1 kind=none", &c);
  cr_expect_eq(lw_change_load.range(now).most, 0);
  free(now);
}

/* The stone takes the place of every soil behind, and is as wide as it is told. */
Test(remedies, stone_takes_the_place_of_the_soils) {
  lw_case c;
  lw_result *now = start("soil 1 bottom=0.2 m;soil 2 name=loam", &c);
  cr_assert(make(now, &lw_change_stone, 0.66, &c));
  complete(&c);
  lw_site site;
  lw_site_build(&c, verdict_tables(), &site);
  cr_expect_eq(site.soil_count, 1);
  cr_expect(site.free_draining);
  cr_expect_float_eq(site.stone_width_m, 0.66, 1e-9);
  cr_expect_float_eq(site.soil[0].friction_rad, lw_change_stone_row(verdict_tables())->friction_rad, 1e-12);
  free(now);
}
