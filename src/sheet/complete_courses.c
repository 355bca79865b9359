/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"
#include "taper.h"

/* Heights of a wall of courses: wall height + embedment = courses x block height + cap. Whichever is not
 * given follows from the others. */

typedef struct heights {
  bool height_given, count_given, embedment_given, block_given;
  double height_m, embedment_m, block_m, cap_m;
  int count;
} heights;

static heights take_heights(const lw_completing *s) {
  const lw_case *c = s->c;
  heights h = {.height_given = lw_given(&c->wall.height),
               .count_given = lw_given(&c->courses.count),
               .embedment_given = lw_given(&c->wall.embedment),
               .block_given = lw_given(&c->courses.block_height)};
  h.height_m = h.height_given ? c->wall.height.si : NAN;
  h.count = h.count_given ? (int)lround(c->courses.count.si) : 0;
  h.embedment_m = h.embedment_given ? c->wall.embedment.si
                                    : lw_default(&lw_items_wall, offsetof(lw_case, wall.embedment));
  h.block_m = h.block_given ? c->courses.block_height.si
                            : lw_default(&lw_items_wall, offsetof(lw_case, courses.block_height));
  h.cap_m = lw_given(&c->courses.cap_height) ? c->courses.cap_height.si : 0.0;
  return h;
}

static void put_height(lw_completing *s, const heights *h, bool sure) {
  s->c->wall.height = h->height_given ? s->c->wall.height : lw_worked_out(LW_KIND_LENGTH, h->height_m, sure);
}

static void put_embedment(lw_completing *s, const heights *h, bool sure) {
  s->c->wall.embedment =
      h->embedment_given ? s->c->wall.embedment : lw_worked_out(LW_KIND_LENGTH, h->embedment_m, sure);
}

static void put_block(lw_completing *s, const heights *h, bool sure) {
  s->c->courses.block_height =
      h->block_given ? s->c->courses.block_height : lw_worked_out(LW_KIND_LENGTH, h->block_m, sure);
}

static void put_count(lw_completing *s, const heights *h, bool sure) {
  s->c->courses.count = h->count_given ? s->c->courses.count : lw_worked_out(LW_KIND_COUNT, h->count, sure);
}

/* Heights that whole courses give, below and above the one that does not fit. */
static void does_not_fit(lw_completing *s, const heights *h) {
  double courses = (h->height_m + h->embedment_m - h->cap_m) / h->block_m;
  int below = (int)fmax(floor(courses + LW_MILLIMETRE), 0.0);
  double low = below * h->block_m + h->cap_m - h->embedment_m;
  double high = low + h->block_m;
  if (below > 0 && low > LW_MILLIMETRE) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->wall.height,
                      "%s with %d courses or %s with %d: wall height + wall embedment = courses + cap",
                      lw_complete_exactly(s, LW_KIND_LENGTH, low, "mm").text, below,
                      lw_complete_exactly(s, LW_KIND_LENGTH, high, "mm").text, below + 1);
  } else {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->wall.height,
                      "%s with %d courses: wall height + wall embedment = courses + cap",
                      lw_complete_exactly(s, LW_KIND_LENGTH, high, "mm").text, below + 1);
  }
}

/* Courses counted, height not measured. */
static void height_from_count(lw_completing *s, heights *h) {
  double total = h->count * h->block_m + h->cap_m;
  if (!h->embedment_given) {
    h->embedment_m = fmin(h->embedment_m, total / 2.0);
  }
  h->height_m = total - h->embedment_m;
  if (h->height_m < LW_MILLIMETRE) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->wall.embedment,
                      "less than %s, the height of courses and cap: nothing stands above the ground",
                      lw_complete_exactly(s, LW_KIND_LENGTH, total, "mm").text);
    return;
  }
  put_height(s, h, h->block_given && h->embedment_given);
  put_embedment(s, h, false);
  put_block(s, h, false);
}

/* Both known: the embedment is what is left, or the block height; with all given they must agree. */
static void hold_height_and_count(lw_completing *s, heights *h) {
  double stands = h->count * h->block_m + h->cap_m;
  if (!h->embedment_given) {
    h->embedment_m = stands - h->height_m;
    if (h->embedment_m < -LW_MILLIMETRE) {
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->wall.height,
                        "at most %s with %d courses of %s, or more courses",
                        lw_complete_exactly(s, LW_KIND_LENGTH, stands, "mm").text, h->count,
                        lw_complete_exactly(s, LW_KIND_LENGTH, h->block_m, "mm").text);
      return;
    }
    h->embedment_m = fmax(0.0, h->embedment_m);
    put_embedment(s, h, h->block_given);
    put_block(s, h, false);
    return;
  }
  if (!h->block_given) {
    h->block_m = (h->height_m + h->embedment_m - h->cap_m) / h->count;
    if (h->block_m < 0.02 || h->block_m > 3.0) {
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->courses.count, "a block height of %s cannot be",
                        lw_complete_exactly(s, LW_KIND_LENGTH, h->block_m, "mm").text);
      return;
    }
    put_block(s, h, true);
  } else if (fabs(stands - h->height_m - h->embedment_m) > LW_MILLIMETRE + 1e-9) {
    does_not_fit(s, h);
  }
}

/* Height measured, courses not counted. An embedment not given takes up what whole courses leave over, never
 * less than the default; a block height not given likewise. */
static void count_from_height(lw_completing *s, heights *h) {
  double courses = (h->height_m + h->embedment_m - h->cap_m) / h->block_m;
  double whole = round(courses);
  bool fits = fabs(whole - courses) * h->block_m <= LW_MILLIMETRE + 1e-9;
  if (courses < LW_MILLIMETRE / h->block_m) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->courses.cap_height,
                      "less than the height of the wall");
    return;
  }
  if (!fits && h->embedment_given && h->block_given) {
    does_not_fit(s, h);
    return;
  }
  h->count = (int)(fits ? fmax(1.0, whole) : ceil(courses));
  if (h->count > LW_COURSE_MAX) {
    lw_complete_fault(s, LW_FAULT_TOO_MANY, &s->c->wall.height, "at most %d courses", LW_COURSE_MAX);
    return;
  }
  if (!h->embedment_given) {
    h->embedment_m = h->count * h->block_m + h->cap_m - h->height_m;
  } else if (!h->block_given) {
    h->block_m = (h->height_m + h->embedment_m - h->cap_m) / h->count;
  }
  put_embedment(s, h, false);
  put_block(s, h, false);
  put_count(s, h, h->embedment_given && h->block_given);
}

static void complete_heights(lw_completing *s) {
  heights h = take_heights(s);
  if (!h.height_given && !h.count_given) {
    lw_complete_missing(s, &s->c->wall.height, &s->c->courses.count,
                        "the wall's height, or its course count");
  } else if (!h.height_given) {
    height_from_count(s, &h);
  } else if (h.count_given) {
    hold_height_and_count(s, &h);
  } else {
    count_from_height(s, &h);
  }
}

static void complete_cap(lw_completing *s) {
  lw_case *c = s->c;
  bool cap = lw_given(&c->courses.cap_height) && c->courses.cap_height.si > 0.0;
  if (!cap) {
    bool half = lw_given(&c->courses.cap_depth) || lw_given(&c->courses.cap_overhang) ||
                lw_given(&c->courses.cap_unit_weight);
    if (half && !lw_given(&c->courses.cap_height)) {
      lw_complete_missing(s, &c->courses.cap_height, NULL, "the cap's height");
    }
    return;
  }
  bool block = lw_given(&c->courses.block_depth);
  if (!lw_given(&c->courses.cap_depth) && block) {
    double overhang = lw_given(&c->courses.cap_overhang) ? c->courses.cap_overhang.si : 0.0;
    c->courses.cap_depth = lw_assumed(LW_KIND_LENGTH, c->courses.block_depth.si + overhang);
  }
  if (!lw_given(&c->courses.cap_overhang)) {
    double beyond =
        lw_given(&c->courses.cap_depth) && block ? c->courses.cap_depth.si - c->courses.block_depth.si : 0.0;
    c->courses.cap_overhang = lw_assumed(LW_KIND_LENGTH, fmax(0.0, beyond));
  }
}

/* The mass of one block over its outer volume. */
static void complete_block_weight(lw_completing *s) {
  lw_case *c = s->c;
  if (!lw_given(&c->courses.block_mass)) {
    return;
  }
  if (!lw_given(&c->courses.block_length)) {
    lw_complete_missing(s, &c->courses.block_length, NULL,
                        "the block's length, to turn its mass into a unit weight");
    return;
  }
  if (!lw_given(&c->courses.block_depth) || c->courses.block_height.origin == LW_ABSENT) {
    return;
  }
  const lw_unit *heavy = lw_unit_find(LW_KIND_UNIT_WEIGHT, "kg/m3", 5);
  double volume = lw_case_block_m3(c, c->courses.block_depth.si);
  double weight = c->courses.block_mass.si / volume * heavy->to_si;
  if (lw_given(&c->courses.block_unit_weight) &&
      fabs(c->courses.block_unit_weight.si / weight - 1.0) > 0.01) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->courses.block_mass,
                      "one of the two: this mass is %s, and a block unit weight is given",
                      lw_complete_weight(lw_case_units(c), weight).text);
  } else if (weight < 1.0 || weight > 40.0) {
    lw_complete_fault(s, LW_FAULT_OUT_OF_RANGE, &c->courses.block_mass,
                      "a mass that fits the block: this one is %s, and %s to %s can be",
                      lw_complete_weight(lw_case_units(c), weight).text,
                      lw_amount_again(lw_case_units(c), LW_KIND_UNIT_WEIGHT, 1.0, 0).text,
                      lw_amount_again(lw_case_units(c), LW_KIND_UNIT_WEIGHT, 40.0, 0).text);
  } else if (!lw_given(&c->courses.block_unit_weight)) {
    c->courses.block_unit_weight =
        lw_worked_out(LW_KIND_UNIT_WEIGHT, weight, lw_given(&c->courses.block_height));
  }
}

static void complete_base_courses(lw_completing *s) {
  lw_case *c = s->c;
  bool count = lw_given(&c->courses.base_count);
  if (count && c->courses.base_count.si > 0.0 && !lw_given(&c->courses.base_depth)) {
    lw_complete_missing(s, &c->courses.base_depth, NULL, "the depth of the deeper base courses");
  } else if (!count && lw_given(&c->courses.base_depth)) {
    c->courses.base_count = lw_assumed(LW_KIND_COUNT, 1.0);
  }
}

void lw_complete_courses(lw_completing *s) {
  complete_heights(s);
  complete_cap(s);
  complete_block_weight(s);
  complete_base_courses(s);
}
