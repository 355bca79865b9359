/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "settle.h"

/* Given items held against each other. What is assumed or from a table is never a fault: where it does not
 * go together, the check cannot be shown. */

static void hold_weights(lw_settling *s, const lw_case_soil *soil) {
  if (lw_given(&soil->saturated_unit_weight) && lw_given(&soil->unit_weight) &&
      soil->saturated_unit_weight.si < soil->unit_weight.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &soil->saturated_unit_weight,
                    "%.6g kN/m3, the moist unit weight, or more: water fills what air left",
                    soil->unit_weight.si);
  }
  if (lw_given(&soil->light_unit_weight) && lw_given(&soil->unit_weight) &&
      soil->light_unit_weight.si > soil->unit_weight.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &soil->light_unit_weight,
                    "at most %.6g kN/m3, the unit weight", soil->unit_weight.si);
  }
}

static void hold_ground(lw_settling *s) {
  const lw_case *c = s->c;
  for (int i = 0; i < s->soil_count; i++) {
    hold_weights(s, &c->soil[i]);
  }
  hold_weights(s, &c->footing);
  const lw_quantity *friction = &c->soil[0].friction;
  bool cohesive = lw_given(&c->soil[0].cohesion) && c->soil[0].cohesion.si > 0.0;
  if (lw_given(&c->ground_slope) && lw_given(friction) && !cohesive &&
      c->ground_slope.si > friction->si + 1e-9) {
    char degrees[32];
    lw_number_print(degrees, sizeof degrees, friction->si / DEGREES(1.0), 1);
    lw_settle_fault(
        s, LW_FAULT_CONTRADICTION, &c->ground_slope,
        "a slope no steeper than the soil's own angle of friction, %s deg: it would slide by itself",
        degrees);
  }
  const lw_quantity *below = &c->soil_below_top;
  if (lw_given(below) && c->wall_height.origin != LW_ABSENT && lw_given(&c->wall_embedment) &&
      below->si >= c->wall_height.si + c->wall_embedment.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, below,
                    "less than the whole wall: no soil would lie behind it");
  }
}

/* Without the length of its face a tail says nothing of a block's plan. */
static void hold_tail(lw_settling *s) {
  const lw_case *c = s->c;
  const lw_quantity *tail = &c->order.tail_length;
  if (!lw_given(tail)) {
    return;
  }
  if (!lw_given(&c->block_length)) {
    lw_settle_missing(s, &c->block_length, NULL, "the block's length at its face, beside that of its tail");
  } else if (tail->si > c->block_length.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, tail, "at most the block length, %.6g mm",
                    c->block_length.si * 1000.0);
  }
}

static void hold_blocks(lw_settling *s) {
  const lw_case *c = s->c;
  hold_tail(s);
  bool depth = lw_given(&c->block_depth);
  if (depth && lw_given(&c->setback) && c->setback.si >= c->block_depth.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &c->setback, "less than the block depth, %.6g mm",
                    c->block_depth.si * 1000.0);
  }
  if (depth && lw_given(&c->face_shell_thickness) && 2.0 * c->face_shell_thickness.si >= c->block_depth.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &c->face_shell_thickness,
                    "less than half the block depth, %.6g mm", c->block_depth.si * 500.0);
  }
  if (depth && lw_given(&c->base_course_depth) && c->base_course_depth.si < c->block_depth.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &c->base_course_depth, "the block depth, %.6g mm, or more",
                    c->block_depth.si * 1000.0);
  }
  if (lw_given(&c->base_course_count) && c->course_count.origin != LW_ABSENT &&
      c->base_course_count.si > c->course_count.si + 0.5) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &c->base_course_count, "at most %.0f, the courses of the wall",
                    c->course_count.si);
  }
}

/* A cap that does not rest on the top course is not a cap. */
static void hold_cap(lw_settling *s) {
  const lw_case *c = s->c;
  if (!lw_given(&c->cap_height) || !(c->cap_height.si > 0.0)) {
    return;
  }
  bool overhang = lw_given(&c->cap_overhang);
  if (overhang && lw_given(&c->cap_depth) && c->cap_overhang.si >= c->cap_depth.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &c->cap_overhang, "less than the cap depth, %.6g mm",
                    c->cap_depth.si * 1000.0);
  } else if (!overhang && lw_given(&c->cap_depth) && lw_given(&c->block_depth) &&
             c->cap_overhang.si >= c->cap_depth.si) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, &c->cap_depth, "a cap that rests on the block");
  }
}

/* At rest nothing slides, so there is no wedge to leave a load to. */
static void hold_method(lw_settling *s) {
  const lw_choice *load = &s->c->method_load_pressure;
  if (load->origin == LW_GIVEN && load->value == LW_LOAD_PRESSURE_WEDGE &&
      s->c->method_pressure.value == LW_PRESSURE_AT_REST) {
    lw_settle_fault(s, LW_FAULT_CONTRADICTION, load, "doubled, half space or curves: at rest has no wedge");
  }
}

void lw_settle_hold(lw_settling *s) {
  hold_ground(s);
  hold_method(s);
  if (s->c->wall_kind.value == LW_WALL_COURSES) {
    hold_blocks(s);
    hold_cap(s);
  }
}
