/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_TAPE_H
#define LOWWALL_BASE_TAPE_H

#include <lowwall/base.h>

/* A length as it is read off a tape in feet and inches: feet, whole inches below 12, and the part of one. */
typedef struct lw_tape {
  bool minus;
  long feet;
  int inches;
  const char *part; /* "3/4", to an eighth; "": none */
} lw_tape;

enum { LW_TAPE_EIGHTH = 1, LW_TAPE_INCH = 8, LW_TAPE_FOOT = 96 };

/** Rounded to so many eighths of an inch; nothing has no sign.
 *  in    length_m   below a million */
lw_tape lw_tape_read(double length_m, int eighths);

#endif
