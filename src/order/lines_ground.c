/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines.h"

#include "base/print.h"

/* Lines of what is dug and filled in: lengths and areas are those of the plan. */

/* Mean depth of the dig beside that at the low end: where the ground falls between steps it is deeper. */
static double deeper(const lw_taking *t) {
  const lw_plan *plan = t->laying->plan;
  return plan->falls ? fabs(plan->fall_m) / 2.0 - t->raised_m : 0.0;
}

/* A strip of the plan with the free ends lengthened by what the pad goes beyond them. */
static double strip(const lw_taking *t, double from_m, double to_m) {
  return lw_plan_strip(t->laying->plan, from_m, to_m) + t->free_ends * t->pad_front_m * (to_m - from_m);
}

/* The dig reaches behind the drainage stone, or behind the pad where that is wider. */
static double dig_rear(const lw_taking *t) {
  return fmax(t->pad_rear_m, t->rear_m + t->stone_m);
}

static void digging(const lw_taking *t) {
  const lw_plan *plan = t->laying->plan;
  double rear = dig_rear(t);
  double depth = t->embedded_m + t->bedding_m + t->pad_m;
  double steps = plan->step_count * lw_ordering_value(t->tables, "step-under", 0.3) *
                 (t->pad_front_m + rear) * plan->course_m;
  double dig = strip(t, -t->pad_front_m, rear) * (depth + deeper(t)) + (t->pad_m > 0.0 ? steps : 0.0);
  lw_line_put(t,
              &(lw_order_line){.slug = "dig",
                               .name = "dig, in the ground",
                               .unit = "m3",
                               .net = dig,
                               .note = "to the ground in front; a bank behind is not counted"},
              NULL);
  lw_quantity swell = t->o->spoil_bulking;
  swell.si -= 1.0;
  lw_order *order = t->laying->order;
  lw_order_line *l = lw_line_put(
      t,
      &(lw_order_line){.slug = "spoil",
                       .name = "spoil, loose",
                       .unit = "m3",
                       .net = dig,
                       .note = "net as it lies, order as loose: what is carried away if none is used"},
      &swell);
  order->spoil_kg = l->mass_kg = dig * lw_ordering_value(t->tables, "soil-dug", 2000.0);
  order->skips = (int)lw_pieces_up(l->order / t->o->skip_volume.si);
  order->spoil_barrows = lw_barrows(t, l->order, l->mass_kg);
}

static void pad(const lw_taking *t) {
  if (!(t->pad_m > 0.0)) return;
  const lw_plan *plan = t->laying->plan;
  double steps = plan->step_count * lw_ordering_value(t->tables, "step-under", 0.3);
  double volume =
      (strip(t, -t->pad_front_m, t->pad_rear_m) + steps * (t->pad_front_m + t->pad_rear_m)) * t->pad_m;
  lw_quantity loose = t->o->stone_compaction;
  loose.si -= 1.0;
  lw_order_line *l = lw_line_put(t,
                                 &(lw_order_line){.slug = "pad-stone",
                                                  .name = "pad stone",
                                                  .unit = "m3",
                                                  .net = volume,
                                                  .note = "net as compacted, order as loose"},
                                 &loose);
  l->mass_kg = volume * lw_ordering_value(t->tables, "pad-stone-density", 2200.0);
  double bedding = lw_plan_strip(plan, 0.0, t->rear_m) * t->bedding_m;
  double sand = bedding * lw_ordering_value(t->tables, "bedding-loose", 1.25);
  if (!(bedding > 0.0)) return;
  l = lw_line_put(t,
                  &(lw_order_line){.slug = "bedding-sand",
                                   .name = "sand for dry bedding, loose",
                                   .unit = "m3",
                                   .net = sand,
                                   .note = "its allowance is in the loose volume"},
                  NULL);
  l->mass_kg = sand * lw_ordering_value(t->tables, "sand-density", 1630.0);
  double cement = sand / t->o->bedding_ratio.si * lw_ordering_value(t->tables, "cement-density", 1440.0);
  l = lw_line_put(t,
                  &(lw_order_line){.slug = "cement",
                                   .name = "cement in bags",
                                   .unit = "bags",
                                   .net = cement / t->o->cement_bag_mass.si,
                                   .note = "dry sand and cement has no strength that is counted"},
                  NULL);
  l->order = lw_pieces_up(l->net);
  l->mass_kg = l->order * t->o->cement_bag_mass.si;
}

/* Behind the centre of a curve a strip folds over itself. */
static void note_past_centre(const lw_taking *t, double rear_m) {
  const lw_plan *plan = t->laying->plan;
  for (int i = 0; i < plan->run_count; i++) {
    double radius = plan->run[i].radius_m;
    if (!(radius > 0.0) || radius >= rear_m) continue;
    lw_order_note_add(
        t->laying->order, "stone-past-centre",
        "Run %d: the drainage stone reaches past the centre of the curve: measure stone, cloth, "
        "pipe and dig there by hand.",
        i + 1);
  }
}

/* Of the stone, from the underside of the blocks to the soil that covers it. */
static double stone_height(const lw_taking *t) {
  double below = t->c->soil_below_top.origin == LW_GIVEN ? t->c->soil_below_top.si : 0.0;
  return fmax(0.0, t->high_m - t->raised_m - below - t->o->soil_plug.si);
}

/* What is dug behind the pad, for the pipe and to work in, is filled with stone as well. */
static double behind_the_pad(const lw_taking *t) {
  return fmax(0.0, strip(t, t->pad_rear_m, dig_rear(t))) * (t->pad_m + t->bedding_m);
}

static void drain(const lw_taking *t) {
  if (!(t->stone_m > 0.0)) return;
  double high = stone_height(t), rear = t->rear_m + t->stone_m;
  double length = fmax(0.0, lw_plan_strip(t->laying->plan, t->rear_m, rear) / t->stone_m);
  note_past_centre(t, rear);
  lw_order_line *l = lw_line_put(t,
                                 &(lw_order_line){.slug = "drainage-stone",
                                                  .name = "drainage stone",
                                                  .unit = "m3",
                                                  .net = t->stone_m * high * length + behind_the_pad(t),
                                                  .note = "clean, one size; up to the soil over it"},
                                 &t->o->stone_allowance);
  if (t->pad_m > 0.0)
    lw_print(l->note, sizeof l->note, "clean, one size; behind the pad and up to the soil over it");
  l->mass_kg = l->order * lw_ordering_value(t->tables, "stone-density", 1630.0);
  lw_line_put(t,
              &(lw_order_line){.slug = "geotextile",
                               .name = "geotextile around the stone",
                               .unit = "m2",
                               .net = (2.0 * (t->stone_m + high) + t->o->geotextile_lap.si) * length},
              &t->o->geotextile_allowance);
  double outlets = t->c->drain_outlets.origin == LW_GIVEN ? t->c->drain_outlets.si : 0.0;
  if (outlets < 0.5) {
    lw_order_note_add(
        t->laying->order, "no-outlet",
        "The sheet names no drain outlet, so no pipe is ordered: where does the water come out?");
    return;
  }
  lw_line_put(t,
              &(lw_order_line){.slug = "drain-pipe",
                               .name = "drain pipe and outlets",
                               .unit = "m",
                               .net = length + outlets * t->o->outlet_length.si,
                               .note = "one outlet is a way in for rods as well, or add one"},
              &t->o->pipe_allowance);
}

static void soil(const lw_taking *t) {
  const lw_plan *plan = t->laying->plan;
  double top = lw_plan_offset(plan, plan->courses - 1);
  double below = t->c->soil_below_top.origin == LW_GIVEN
                     ? t->c->soil_below_top.si
                     : lw_ordering_value(t->tables, "soil-below-cap", 0.05);
  double deep = fmax(0.0, t->c->wall_height.si - below);
  double inside = lw_plan_inside(plan, t->rear_m + top / 2.0 + t->stone_m);
  double over = lw_plan_inside(plan, t->rear_m + top / 2.0) - inside; /* the stone's share of the surface */
  if (plan->closed && inside > 0.0 && t->c->site_behind.value == LW_BEHIND_BED) {
    lw_order_line *l = lw_line_put(
        t,
        &(lw_order_line){.slug = "soil",
                         .name = "soil for the bed",
                         .unit = "m3",
                         .net = inside * deep + over * fmin(deep, t->o->soil_plug.si),
                         .note = "beside the drainage stone and over it; it settles, so more is ordered"},
        &t->o->settlement);
    l->mass_kg = l->order * t->c->soil[0].light_unit_weight.si * 1000.0 / 9.80665;
  } else {
    lw_order_note_add(t->laying->order, "no-soil",
                      "Soil behind the wall is counted for a closed bed only: measure what is filled.");
  }
  if (t->o->lining.value != LW_YES) return;
  lw_line_put(t,
              &(lw_order_line){.slug = "lining",
                               .name = "lining of the soil's side",
                               .unit = "m2",
                               .net = lw_plan_strip(plan, t->rear_m, t->rear_m + 1e-3) / 1e-3 * t->high_m},
              &t->o->lining_allowance);
}

void lw_lines_ground(const lw_taking *t) {
  digging(t);
  pad(t);
  drain(t);
  soil(t);
}
