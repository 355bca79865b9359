/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "base/print.h"
#include "parts.h"

/* What to buy, dig and carry: net, allowance and order, a line each. Lengths and areas are those of the
 * plan. */

typedef struct taking {
  lw_laying *laying;
  const lw_case *c;
  const lw_case_order *o;
  const lw_tables *tables;
  double rear_m; /* of the lowest course, behind its face */
  double stone_m, pad_m, pad_front_m, pad_rear_m, bedding_m, high_m, embedded_m;
  double raised_m; /* the base above its lowest place, on the mean of the length */
  int free_ends;
} taking;

static lw_order_line *put(const taking *t, const lw_order_line *line, const lw_quantity *allowance) {
  lw_order *order = t->laying->order;
  if (order->line_count >= LW_ORDER_LINE_MAX) return &order->line[LW_ORDER_LINE_MAX - 1];
  lw_order_line *l = &order->line[order->line_count++];
  *l = *line;
  l->order = l->net;
  if (allowance == NULL) return l;
  l->allowance_known = true;
  l->allowance = l->pieces ? allowance->si : allowance->si;
  l->order = l->pieces ? l->net + allowance->si : l->net * (1.0 + allowance->si);
  bool ours = allowance->origin == LW_ASSUMED && allowance->table_row >= 0;
  lw_print(l->source, sizeof l->source, "%s",
           ours ? t->tables->ordering[allowance->table_row].from.source : "given");
  return l;
}

static double up(double pieces) {
  return ceil(pieces - 1e-9);
}

static double mass_of(const lw_case *c, double length_m, double depth_m) {
  return c->block_unit_weight.si * 1000.0 / 9.80665 * length_m * depth_m * c->block_height.si;
}

static bool has_curve(const lw_plan *plan) {
  bool curved = false;
  for (int i = 0; i < plan->run_count; i++) curved = curved || fabs(plan->run[i].radius_m) > 0.0;
  return curved;
}

/* Pieces of all courses of one depth. */
static lw_course_count sum_of(const taking *t, bool base) {
  const lw_plan *plan = t->laying->plan;
  lw_course_count sum = {0};
  for (int i = 0; i < plan->courses; i++) {
    const lw_course_count *n = &t->laying->order->course[i];
    if ((i < plan->base_courses) != base) continue;
    sum.whole += n->whole;
    sum.half += n->half;
    sum.left += n->left;
    sum.right += n->right;
  }
  return sum;
}

/* How many are sawn, and what using offcuts again saves or has saved. */
static int sawn(const taking *t, lw_stock stock, char *note, size_t size) {
  const lw_order *order = t->laying->order;
  int fresh = order->sawn[stock], again = order->sawn_again[stock];
  bool used = t->o->offcuts.value == LW_YES;
  note[0] = '\0';
  if (fresh > 0 && fresh == again)
    lw_print(note, size, "%d of them to be sawn; no offcut is long enough to be used again", fresh);
  else if (fresh > 0 && used)
    lw_print(note, size, "%d of them to be sawn, offcuts used; %d if each piece takes a new one", again,
             fresh);
  else if (fresh > 0)
    lw_print(note, size, "%d of them to be sawn, each for its own piece; %d if offcuts are used again", fresh,
             again);
  return used ? again : fresh;
}

static void kind_of(const taking *t, const char *slug, const char *name, int count, double unit_kg) {
  if (count == 0) return;
  lw_order_line *l =
      put(t, &(lw_order_line){.slug = slug, .name = name, .unit = "pieces", .net = count, .pieces = true},
          &t->o->spare_units);
  l->mass_kg = l->order * unit_kg;
}

/* Blocks of one depth, whole ones and those to be sawn; then the units that are bought as such. */
static void blocks_of(const taking *t, bool base, double unit_kg) {
  const lw_plan *plan = t->laying->plan;
  lw_course_count sum = sum_of(t, base);
  lw_order_line line = {.slug = base ? "base-blocks" : "blocks",
                        .name = base ? "deeper blocks of the base courses, whole" : "blocks, whole",
                        .unit = "pieces"};
  line.net = sum.whole + sawn(t, base ? LW_STOCK_BASE_BLOCK : LW_STOCK_BLOCK, line.note, sizeof line.note);
  lw_order_line *l = put(t, &line, has_curve(plan) ? &t->o->curve_allowance : &t->o->block_allowance);
  l->order = up(l->order);
  l->mass_kg = l->order * unit_kg;
  double corner_kg = unit_kg * t->laying->corner_unit_m / plan->unit_m;
  if (!t->laying->half_cut)
    kind_of(t, base ? "base-half-blocks" : "half-blocks", base ? "deeper half blocks" : "half blocks",
            sum.half, unit_kg / 2.0);
  kind_of(t, base ? "base-left-corners" : "left-corners",
          base ? "deeper left corner units" : "left corner units", sum.left, corner_kg);
  kind_of(t, base ? "base-right-corners" : "right-corners",
          base ? "deeper right corner units" : "right corner units", sum.right, corner_kg);
}

static void caps(const taking *t) {
  lw_order *order = t->laying->order;
  if (!order->has_cap) return;
  double depth = t->c->cap_depth.si;
  order->cap_mass_kg =
      t->c->cap_unit_weight.si * 1000.0 / 9.80665 * t->o->cap_length.si * depth * t->c->cap_height.si;
  lw_order_line line = {.slug = "caps", .name = "caps", .unit = "pieces"};
  order->cap_count = order->cap_whole + sawn(t, LW_STOCK_CAP, line.note, sizeof line.note);
  line.net = order->cap_count;
  lw_order_line *l = put(t, &line, &t->o->cap_allowance);
  l->order = up(l->order);
  l->mass_kg = l->order * order->cap_mass_kg;
  if (t->c->cap_fixing.value != LW_FIXING_BONDED) return;
  double bead = t->o->adhesive_bead.si * 0.5;
  put(t,
      &(lw_order_line){.slug = "adhesive",
                       .name = "adhesive in two beads",
                       .unit = "L",
                       .net = 2.0 * order->cap_line_m * 3.14159265358979 * bead * bead * 1000.0,
                       .note = "dry, brushed, above 5 C, beads clear of weeps; no part of the check"},
      &t->o->adhesive_allowance);
}

static double mean_raised(const lw_plan *plan) {
  double base = 0.0, from = 0.0;
  for (int i = 0; i <= plan->step_count; i++) {
    double to = i < plan->step_count ? plan->step[i].at_m : plan->length_m;
    base += (to - from) * lw_plan_raised(plan, (from + to) / 2.0, true) * plan->course_m;
    from = to;
  }
  return base / plan->length_m;
}

/* Mean depth of the dig beside that at the low end: where the ground falls between steps it is deeper. */
static double deeper(const taking *t) {
  const lw_plan *plan = t->laying->plan;
  return plan->falls ? fabs(plan->fall_m) / 2.0 - t->raised_m : 0.0;
}

/* A strip of the plan with the free ends lengthened by what the pad goes beyond them. */
static double strip(const taking *t, double from_m, double to_m) {
  return lw_plan_strip(t->laying->plan, from_m, to_m) + t->free_ends * t->pad_front_m * (to_m - from_m);
}

/* The dig reaches behind the drainage stone, or behind the pad where that is wider. */
static double dig_rear(const taking *t) {
  return fmax(t->pad_rear_m, t->rear_m + t->stone_m);
}

/* Trips of a barrow that is full by volume or by mass, whichever takes more. */
static int barrows(const taking *t, double loose_m3, double mass_kg) {
  return (int)up(fmax(loose_m3 / t->o->barrow_volume.si, mass_kg / t->o->barrow_mass.si));
}

static void digging(const taking *t) {
  const lw_plan *plan = t->laying->plan;
  double rear = dig_rear(t);
  double depth = t->embedded_m + t->bedding_m + t->pad_m;
  double steps = plan->step_count * lw_ordering_value(t->tables, "step-under", 0.3) *
                 (t->pad_front_m + rear) * plan->course_m;
  double dig = strip(t, -t->pad_front_m, rear) * (depth + deeper(t)) + (t->pad_m > 0.0 ? steps : 0.0);
  put(t,
      &(lw_order_line){.slug = "dig",
                       .name = "dig, in the ground",
                       .unit = "m3",
                       .net = dig,
                       .note = "to the ground in front; a bank behind is not counted"},
      NULL);
  lw_quantity swell = t->o->spoil_bulking;
  swell.si -= 1.0;
  lw_order *order = t->laying->order;
  lw_order_line *l =
      put(t,
          &(lw_order_line){.slug = "spoil",
                           .name = "spoil, loose",
                           .unit = "m3",
                           .net = dig,
                           .note = "net as it lies, order as loose: what is carried away if none is used"},
          &swell);
  order->spoil_kg = l->mass_kg = dig * lw_ordering_value(t->tables, "soil-dug", 2000.0);
  order->skips = (int)up(l->order / t->o->skip_volume.si);
  order->spoil_barrows = barrows(t, l->order, l->mass_kg);
}

static void pad(const taking *t) {
  if (!(t->pad_m > 0.0)) return;
  const lw_plan *plan = t->laying->plan;
  double steps = plan->step_count * lw_ordering_value(t->tables, "step-under", 0.3);
  double volume =
      (strip(t, -t->pad_front_m, t->pad_rear_m) + steps * (t->pad_front_m + t->pad_rear_m)) * t->pad_m;
  lw_quantity loose = t->o->stone_compaction;
  loose.si -= 1.0;
  lw_order_line *l = put(t,
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
  l = put(t,
          &(lw_order_line){.slug = "bedding-sand",
                           .name = "sand for dry bedding, loose",
                           .unit = "m3",
                           .net = sand,
                           .note = "its allowance is in the loose volume"},
          NULL);
  l->mass_kg = sand * lw_ordering_value(t->tables, "sand-density", 1630.0);
  double cement = sand / t->o->bedding_ratio.si * lw_ordering_value(t->tables, "cement-density", 1440.0);
  l = put(t,
          &(lw_order_line){.slug = "cement",
                           .name = "cement in bags",
                           .unit = "bags",
                           .net = cement / t->o->cement_bag_mass.si,
                           .note = "dry sand and cement has no strength that is counted"},
          NULL);
  l->order = up(l->net);
  l->mass_kg = l->order * t->o->cement_bag_mass.si;
}

/* Behind the centre of a curve a strip folds over itself. */
static void note_past_centre(const taking *t, double rear_m) {
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
static double stone_height(const taking *t) {
  double below = t->c->soil_below_top.origin == LW_GIVEN ? t->c->soil_below_top.si : 0.0;
  return fmax(0.0, t->high_m - t->raised_m - below - t->o->soil_plug.si);
}

/* What is dug behind the pad, for the pipe and to work in, is filled with stone as well. */
static double behind_the_pad(const taking *t) {
  return fmax(0.0, strip(t, t->pad_rear_m, dig_rear(t))) * (t->pad_m + t->bedding_m);
}

static void drain(const taking *t) {
  if (!(t->stone_m > 0.0)) return;
  double high = stone_height(t), rear = t->rear_m + t->stone_m;
  double length = fmax(0.0, lw_plan_strip(t->laying->plan, t->rear_m, rear) / t->stone_m);
  note_past_centre(t, rear);
  lw_order_line *l = put(t,
                         &(lw_order_line){.slug = "drainage-stone",
                                          .name = "drainage stone",
                                          .unit = "m3",
                                          .net = t->stone_m * high * length + behind_the_pad(t),
                                          .note = "clean, one size; up to the soil over it"},
                         &t->o->stone_allowance);
  if (t->pad_m > 0.0)
    lw_print(l->note, sizeof l->note, "clean, one size; behind the pad and up to the soil over it");
  l->mass_kg = l->order * lw_ordering_value(t->tables, "stone-density", 1630.0);
  put(t,
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
  put(t,
      &(lw_order_line){.slug = "drain-pipe",
                       .name = "drain pipe and outlets",
                       .unit = "m",
                       .net = length + outlets * t->o->outlet_length.si,
                       .note = "one outlet is a way in for rods as well, or add one"},
      &t->o->pipe_allowance);
}

static void soil(const taking *t) {
  const lw_plan *plan = t->laying->plan;
  double top = lw_plan_offset(plan, plan->courses - 1);
  double below = t->c->soil_below_top.origin == LW_GIVEN
                     ? t->c->soil_below_top.si
                     : lw_ordering_value(t->tables, "soil-below-cap", 0.05);
  double deep = fmax(0.0, t->c->wall_height.si - below);
  double inside = lw_plan_inside(plan, t->rear_m + top / 2.0 + t->stone_m);
  double over = lw_plan_inside(plan, t->rear_m + top / 2.0) - inside; /* the stone's share of the surface */
  if (plan->closed && inside > 0.0 && t->c->site_behind.value == LW_BEHIND_BED) {
    lw_order_line *l =
        put(t,
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
  put(t,
      &(lw_order_line){.slug = "lining",
                       .name = "lining of the soil's side",
                       .unit = "m2",
                       .net = lw_plan_strip(plan, t->rear_m, t->rear_m + 1e-3) / 1e-3 * t->high_m},
      &t->o->lining_allowance);
}

static taking begin(lw_laying *laying, const lw_result *result) {
  const lw_case *c = &result->given;
  taking t = {.laying = laying, .c = c, .o = &c->order, .tables = laying->tables};
  t.rear_m = lw_plan_depth(laying->plan, 0);
  t.pad_m = c->pad_thickness.origin != LW_ABSENT ? c->pad_thickness.si : 0.0;
  t.stone_m = c->stone_width.origin == LW_GIVEN ? c->stone_width.si : 0.0;
  t.bedding_m = t.pad_m > 0.0 ? c->order.bedding_thickness.si : 0.0;
  double beyond = t.pad_m > 0.0 ? c->order.pad_beyond.si : 0.0;
  bool width = t.pad_m > 0.0 && c->pad_width.origin == LW_GIVEN;
  t.pad_front_m = width ? fmin(beyond, fmax(0.0, (c->pad_width.si - t.rear_m) / 2.0)) : beyond;
  t.pad_rear_m = width ? c->pad_width.si - t.pad_front_m : t.rear_m + beyond;
  t.embedded_m = c->wall_embedment.si;
  double cap = c->cap_height.origin != LW_ABSENT ? c->cap_height.si : 0.0;
  t.high_m = laying->plan->courses * laying->plan->course_m + cap;
  t.free_ends = laying->plan->closed ? 0 : 2;
  t.raised_m = mean_raised(laying->plan);
  return t;
}

/* What is loose, what is carried, and how it comes. */
static void carrying(const taking *t, const lw_result *result) {
  lw_order *order = t->laying->order;
  double blocks = 0.0, loose_kg = 0.0;
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    bool loose = strcmp(l->unit, "m3") == 0 && strcmp(l->slug, "dig") != 0 && strcmp(l->slug, "spoil") != 0;
    order->carried_kg += l->mass_kg;
    blocks += strcmp(l->unit, "pieces") == 0 && strcmp(l->slug, "caps") != 0 ? l->mass_kg : 0.0;
    order->loose_m3 += loose ? l->order : 0.0;
    loose_kg += loose ? l->mass_kg : 0.0;
  }
  order->barrows = barrows(t, order->loose_m3, loose_kg);
  order->pallets = (int)up(blocks / t->o->pallet_mass.si);
  /* Outside the line of influence, and outside 45 degrees from the bottom of the dig while it is open. */
  order->pallet_distance_m = fmax(t->high_m + t->pad_m + t->bedding_m, lw_influence_reach(&result->wall));
}

void lw_order_lines(lw_laying *laying, const lw_result *result) {
  taking t = begin(laying, result);
  lw_order *order = laying->order;
  const lw_plan *plan = laying->plan;
  order->unit_mass_kg = mass_of(t.c, plan->unit_m, plan->depth_m);
  order->base_unit_mass_kg = plan->base_courses > 0 ? mass_of(t.c, plan->unit_m, plan->base_depth_m) : 0.0;
  if (plan->base_courses < plan->courses) blocks_of(&t, false, order->unit_mass_kg);
  if (plan->base_courses > 0) blocks_of(&t, true, order->base_unit_mass_kg);
  caps(&t);
  digging(&t);
  pad(&t);
  drain(&t);
  soil(&t);
  carrying(&t, result);
}
