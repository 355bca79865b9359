/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"

/* Given items held against each other. What is assumed or from a table is never a fault: where it does not
 * go together, the check cannot be shown. */

static void hold_weights(lw_completing *s, const lw_case_soil *soil) {
  if (lw_given(&soil->saturated_unit_weight) && lw_given(&soil->unit_weight) &&
      soil->saturated_unit_weight.si < soil->unit_weight.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &soil->saturated_unit_weight,
                      "%s, the moist unit weight, or more: water fills what air left",
                      lw_complete_exactly(s, LW_KIND_UNIT_WEIGHT, soil->unit_weight.si, "kN/m3").text);
  }
  if (lw_given(&soil->light_unit_weight) && lw_given(&soil->unit_weight) &&
      soil->light_unit_weight.si > soil->unit_weight.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &soil->light_unit_weight, "at most %s, the unit weight",
                      lw_complete_exactly(s, LW_KIND_UNIT_WEIGHT, soil->unit_weight.si, "kN/m3").text);
  }
}

static void hold_ground(lw_completing *s) {
  const lw_case *c = s->c;
  for (int i = 0; i < s->soil_count; i++) {
    hold_weights(s, &c->ground.soil[i]);
  }
  hold_weights(s, &c->ground.footing);
  const lw_quantity *friction = &c->ground.soil[0].friction;
  bool cohesive = lw_given(&c->ground.soil[0].cohesion) && c->ground.soil[0].cohesion.si > 0.0;
  if (lw_given(&c->ground.slope) && lw_given(friction) && !cohesive &&
      c->ground.slope.si > friction->si + 1e-9) {
    char degrees[32];
    lw_number_print(degrees, sizeof degrees, friction->si / DEGREES(1.0), 1);
    lw_complete_fault(
        s, LW_FAULT_CONTRADICTION, &c->ground.slope,
        "a slope no steeper than the soil's own angle of friction, %s deg: it would slide by itself",
        degrees);
  }
  const lw_quantity *below = &c->ground.soil_below_top;
  if (lw_given(below) && c->wall.height.origin != LW_ABSENT && lw_given(&c->wall.embedment) &&
      below->si >= c->wall.height.si + c->wall.embedment.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, below,
                      "less than the whole wall: no soil would lie behind it");
  }
}

/* Without the length of its face a tail says nothing of a block's plan. */
static void hold_tail(lw_completing *s) {
  const lw_case *c = s->c;
  const lw_quantity *tail = &c->order.tail_length;
  if (!lw_given(tail)) {
    return;
  }
  if (!lw_given(&c->courses.block_length)) {
    lw_complete_missing(s, &c->courses.block_length, NULL,
                        "the block's length at its face, beside that of its tail");
  } else if (tail->si > c->courses.block_length.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, tail, "at most the block length, %s",
                      lw_complete_exactly(s, LW_KIND_LENGTH, c->courses.block_length.si, "mm").text);
  }
}

static void hold_blocks(lw_completing *s) {
  const lw_case *c = s->c;
  hold_tail(s);
  bool depth = lw_given(&c->courses.block_depth);
  if (depth && lw_given(&c->courses.setback) && c->courses.setback.si >= c->courses.block_depth.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->courses.setback, "less than the block depth, %s",
                      lw_complete_exactly(s, LW_KIND_LENGTH, c->courses.block_depth.si, "mm").text);
  }
  if (depth && lw_given(&c->courses.face_shell_thickness) &&
      2.0 * c->courses.face_shell_thickness.si >= c->courses.block_depth.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->courses.face_shell_thickness,
                      "less than half the block depth, %s",
                      lw_complete_exactly(s, LW_KIND_LENGTH, c->courses.block_depth.si / 2.0, "mm").text);
  }
  if (depth && lw_given(&c->courses.base_depth) && c->courses.base_depth.si < c->courses.block_depth.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->courses.base_depth, "the block depth, %s, or more",
                      lw_complete_exactly(s, LW_KIND_LENGTH, c->courses.block_depth.si, "mm").text);
  }
  if (lw_given(&c->courses.base_count) && c->courses.count.origin != LW_ABSENT &&
      c->courses.base_count.si > c->courses.count.si + 0.5) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->courses.base_count,
                      "at most %.0f, the courses of the wall", c->courses.count.si);
  }
}

/* A cap that does not rest on the top course is not a cap. */
static void hold_cap(lw_completing *s) {
  const lw_case *c = s->c;
  if (!lw_given(&c->courses.cap_height) || !(c->courses.cap_height.si > 0.0)) {
    return;
  }
  bool overhang = lw_given(&c->courses.cap_overhang);
  if (overhang && lw_given(&c->courses.cap_depth) && c->courses.cap_overhang.si >= c->courses.cap_depth.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->courses.cap_overhang, "less than the cap depth, %s",
                      lw_complete_exactly(s, LW_KIND_LENGTH, c->courses.cap_depth.si, "mm").text);
  } else if (!overhang && lw_given(&c->courses.cap_depth) && lw_given(&c->courses.block_depth) &&
             c->courses.cap_overhang.si >= c->courses.cap_depth.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->courses.cap_depth, "a cap that rests on the block");
  }
}

/* At rest nothing slides, so there is no wedge to leave a load to. */
static void hold_method(lw_completing *s) {
  const lw_choice *load = &s->c->method.load_pressure;
  if (load->origin == LW_GIVEN && load->value == LW_LOAD_PRESSURE_WEDGE &&
      s->c->method.pressure.value == LW_PRESSURE_AT_REST) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, load, "doubled, half space or curves: at rest has no wedge");
  }
}

void lw_complete_hold(lw_completing *s) {
  hold_ground(s);
  hold_method(s);
  if (s->c->wall.kind.value == LW_WALL_COURSES) {
    hold_blocks(s);
    hold_cap(s);
  }
}
