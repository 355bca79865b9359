/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "base/tape.h"
#include "sketch.h"

/* Measures on a drawing, in the units of its reader. */

lw_amount lw_sketch_amount(const lw_sketch *sketch, lw_kind kind, double si, int decimals) {
  return lw_amount_of(sketch->result->units, kind, si, decimals);
}

lw_amount lw_sketch_m(const lw_sketch *sketch, double length_m, int decimals) {
  return lw_metres(sketch->result->units, length_m, decimals);
}

lw_amount lw_sketch_mm(const lw_sketch *sketch, double length_m) {
  return lw_millimetres(sketch->result->units, length_m);
}

lw_amount lw_sketch_figure(const lw_sketch *sketch, lw_kind kind, double si, int decimals) {
  lw_amount amount = lw_sketch_amount(sketch, kind, si, decimals);
  char *unit = strrchr(amount.text, ' ');
  if (unit) *unit = '\0';
  return amount;
}

/* As drawings have it: 2'-7 1/2", 2'-0 3/4", 2'-0", 7 1/2", 3/4". */
static lw_amount with_primes(double length_m) {
  lw_amount out;
  const lw_tape tape = lw_tape_read(length_m, LW_TAPE_EIGHTH);
  const char *minus = tape.minus ? "-" : "", *gap = tape.part[0] != '\0' ? " " : "";
  if (tape.feet > 0)
    lw_print(out.text, sizeof out.text, "%s%ld'-%d%s%s\"", minus, tape.feet, tape.inches, gap, tape.part);
  else if (tape.inches > 0 || tape.part[0] == '\0')
    lw_print(out.text, sizeof out.text, "%s%d%s%s\"", minus, tape.inches, gap, tape.part);
  else
    lw_print(out.text, sizeof out.text, "%s%s\"", minus, tape.part);
  return out;
}

lw_amount lw_sketch_dimension(const lw_sketch *sketch, double length_m) {
  static const double MM = 1000.0;
  lw_amount out;
  if (sketch->result->units == LW_UNITS_US) return with_primes(length_m);
  lw_print(out.text, sizeof out.text, "%.0f", length_m * MM);
  return out;
}

const char *lw_sketch_lengths_in(const lw_sketch *sketch) {
  return sketch->result->units == LW_UNITS_US ? "feet and inches" : "mm";
}

/* The scales of architects' and engineers' rules: common practice, no source. */
int lw_sketch_scale(const lw_sketch *sketch, int index) {
  static const int METRIC[] = {5,   10,  15,  20,  25,   30,   40,   50,    75, 100,
                               150, 200, 300, 500, 1000, 2000, 5000, 10000, 0};
  static const int US[] = {4,   8,   12,  16,  24,  32,   48,   64,   96,    128,
                           192, 240, 360, 480, 600, 1200, 2400, 6000, 12000, 0};
  return sketch->result->units == LW_UNITS_US ? US[index] : METRIC[index];
}

lw_amount lw_sketch_scale_words(const lw_sketch *sketch) {
  enum { INCHES = 12 };
  static const int FEET_TO_AN_INCH = 240; /* from this scale on */
  int scale = sketch->scale, whole = INCHES / scale, rest = INCHES % scale, of = scale;
  lw_amount out;
  if (sketch->result->units != LW_UNITS_US) {
    lw_print(out.text, sizeof out.text, "1:%d", scale);
    return out;
  }
  if (scale >= FEET_TO_AN_INCH) {
    lw_print(out.text, sizeof out.text, "1 in to %d ft", scale / INCHES);
    return out;
  }
  for (int k = INCHES; k > 1; k--)
    if (rest % k == 0 && of % k == 0) {
      rest /= k;
      of /= k;
    }
  if (rest == 0)
    lw_print(out.text, sizeof out.text, "%d in to 1 ft", whole);
  else if (whole > 0)
    lw_print(out.text, sizeof out.text, "%d-%d/%d in to 1 ft", whole, rest, of);
  else
    lw_print(out.text, sizeof out.text, "%d/%d in to 1 ft", rest, of);
  return out;
}
