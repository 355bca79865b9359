/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "take_off.h"

#include <math.h>

#include "base/print.h"
#include "tables/known.h"
#include "laying.h"
#include "plan.h"
#include "plan_area.h"
#include "steps.h"

/* What the lines of an order are taken off from: the parts of the base between its steps, and the rear of the
 * wall level by level. */

lw_order_line *lw_line_put(const lw_take_off *t, const lw_order_line *line, const lw_quantity *allowance) {
  lw_order *order = t->laying->order;
  if (order->line_count >= LW_ORDER_LINE_MAX) return &order->line[LW_ORDER_LINE_MAX - 1];
  lw_order_line *l = &order->line[order->line_count++];
  *l = *line;
  l->order = l->net;
  if (allowance == NULL) return l;
  l->allowance_known = true;
  l->allowance = allowance->si;
  l->order = l->pieces ? l->net + allowance->si : l->net * (1.0 + allowance->si);
  bool ours = allowance->origin == LW_ASSUMED && allowance->table_row >= 0;
  lw_print(l->source, sizeof l->source, "%s",
           ours ? t->tables->ordering[allowance->table_row].from.source : "given");
  return l;
}

int lw_barrows(const lw_take_off *t, double loose_m3, double mass_kg) {
  return (int)lw_pieces_up(fmax(loose_m3 / t->o->barrow_volume.si, mass_kg / t->o->barrow_mass.si));
}

/* Where the ground falls the base is nowhere less deep than at the low end, and deeper between steps. */
static double ground_over(const lw_plan *plan, double middle_m, int raised, double embedded_m) {
  if (!plan->falls) return embedded_m;
  double from_low = plan->fall_m > 0.0 ? plan->length_m - middle_m : middle_m;
  return embedded_m + fabs(plan->fall_m) * from_low / plan->length_m - raised * plan->course_m;
}

static lw_base_part part_of(const lw_take_off *t, double from_m, double to_m) {
  const lw_plan *plan = t->laying->plan;
  double middle = (from_m + to_m) / 2.0;
  lw_base_part p = {.face = lw_face_between(plan, from_m, to_m),
                    .raised = lw_plan_raised(plan, middle, true)};
  p.offset_m = lw_plan_offset(plan, p.raised);
  p.depth_m = lw_plan_depth(plan, p.raised);
  p.free_ends = plan->closed ? 0 : (from_m <= 0.0 ? 1 : 0) + (to_m >= plan->length_m ? 1 : 0);
  double beyond = t->pad_m > 0.0 ? t->o->pad_beyond.si : 0.0;
  double wide = t->laying->pad_wide_m;
  p.pad_front_m = wide > 0.0 ? fmin(beyond, fmax(0.0, (wide - p.depth_m) / 2.0)) : beyond;
  p.pad_rear_m = wide > 0.0 ? wide - p.pad_front_m : p.depth_m + beyond;
  p.dig_rear_m = fmax(p.pad_rear_m, p.depth_m + t->stone_m);
  p.ground_m = ground_over(plan, middle, p.raised, t->laying->embedment_m);
  return p;
}

double lw_part_strip(const lw_base_part *p, double from_m, double to_m) {
  return lw_face_strip(&p->face, p->offset_m + from_m, p->offset_m + to_m) +
         p->free_ends * p->pad_front_m * (to_m - from_m);
}

int lw_part_rise(const lw_take_off *t, int part) {
  return part + 1 < t->part_count ? t->part[part + 1].raised - t->part[part].raised : 0;
}

static void rears_of_courses(lw_take_off *t) {
  const lw_plan *plan = t->laying->plan;
  for (int i = 0; i < plan->courses; i++) {
    double high = i + 1 == plan->courses ? t->high_m : (i + 1) * plan->course_m;
    double rear = lw_plan_offset(plan, i) + lw_plan_depth(plan, i);
    t->rear[t->rear_count++] = (lw_rear){i * plan->course_m, high, rear};
  }
}

/* The rearmost place of a section at a level. */
static double rear_at(const lw_section *section, double y_m) {
  double rear = 0.0;
  for (int i = 0; i < section->outline_count; i++) {
    lw_corner a = section->outline[i], b = section->outline[(i + 1) % section->outline_count];
    if ((a.y_m - y_m) * (b.y_m - y_m) > 0.0 || fabs(a.y_m - b.y_m) < 1e-12) continue;
    rear = fmax(rear, a.x_m + (b.x_m - a.x_m) * (y_m - a.y_m) / (b.y_m - a.y_m));
  }
  return rear;
}

static void rears_of_solid(lw_take_off *t, const lw_section *section) {
  double thin = t->high_m / LW_SOLID_SLICES;
  for (int i = 0; i < LW_SOLID_SLICES; i++)
    t->rear[t->rear_count++] = (lw_rear){i * thin, (i + 1) * thin, rear_at(section, (i + 0.5) * thin)};
}

lw_take_off lw_take_off_begin(const lw_laying *laying) {
  const lw_plan *plan = laying->plan;
  lw_take_off t = {.laying = laying, .o = laying->items, .tables = laying->tables};
  t.pad_m = laying->pad_m;
  t.stone_m = laying->stone_m;
  t.bedding_m = laying->bedding_m;
  t.step_under_m = t.pad_m > 0.0 ? lw_known_value(t.tables, LW_ORDERING_STEP_UNDER) : 0.0;
  t.high_m = plan->courses * plan->course_m + laying->cap_m;
  if (plan->solid)
    rears_of_solid(&t, laying->section);
  else
    rears_of_courses(&t);
  for (double from = 0.0, to; t.part_count <= plan->step_count; from = to) {
    to = t.part_count < plan->step_count ? plan->step[t.part_count].at_m : plan->length_m;
    t.part[t.part_count] = part_of(&t, from, to);
    t.part_count++;
  }
  return t;
}
