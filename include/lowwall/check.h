/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECK_H
#define LOWWALL_CHECK_H

#include <lowwall/check_kinds.h>

LW_PUBLIC_BEGIN

/* One check, whole and as a result keeps it. */

typedef enum lw_holds { LW_HOLDS, LW_FALLS_SHORT, LW_CANNOT_SHOW } lw_holds;

/* In which of its situation's load cases a check was made: enough to make that load case again. */
typedef struct lw_load_case_name {
  const lw_format_row *set;  /* a row of the set of factors; NULL: it has none */
  signed char way;           /* of an earthquake, from 0 */
  signed char leaning;       /* which factors on what acts, of those the set has, from 0 */
  bool people_down;          /* the downward part of people is there */
  bool cap_load;             /* the weight of loads of kind cap is on; their push always is */
  double divided_by;         /* every strength, where a factor on all of them is searched; 0: it is not */
} lw_load_case_name;

/* One failure mode at one place: has = resistance / demand, needs = the has required, ratio = has / needs. */
typedef struct lw_check {
  lw_check_kind kind;
  lw_at at;
  int joint;               /* 1 is the lowest; 0 elsewhere */
  lw_number demand, resistance, has, needs, ratio;
  const char *unit;        /* of demand and resistance */
  lw_holds holds;
  lw_reason reason;        /* whenever something is missing */
  bool counts;             /* false: printed, but no requirement or not checked (relies on its bond) */
  bool factored;           /* demand and resistance are design values: partial factors are in them */
  const lw_format_row *by; /* format and clause of needs; NULL when none */
  lw_load_case_name made_in;
} lw_check;

/* What a kept check knows, and is. */
enum {
  LW_KEPT_DEMAND = 1, LW_KEPT_RESISTANCE = 2, LW_KEPT_HAS = 4, LW_KEPT_NEEDS = 8, LW_KEPT_RATIO = 16,
  LW_KEPT_COUNTS = 32, LW_KEPT_FACTORED = 64,
  LW_KEPT_ASKED = 128          /* its row is that of the need */
};
/* Which loads are there, and by what every strength is divided: by 1, by what the check has, or not. */
enum { LW_KEPT_PEOPLE_DOWN = 1, LW_KEPT_CAP_LOAD = 2, LW_KEPT_FULL_STRENGTH = 4, LW_KEPT_BY_HAS = 8 };

/* A check as a result keeps it, a third as large: lw_check_kept has it whole again. */
typedef struct lw_kept_check {
  double demand, resistance, has, needs;
  const lw_format_row *row;    /* of the need; where nothing is asked, of the set; NULL: it has none */
  uint8_t kind, at, joint, holds, reason;
  uint8_t marks;               /* LW_KEPT_ ... */
  uint8_t way_and_leaning;     /* of the load case: leaning, and 32 times the way */
  uint8_t loads;               /* of it: LW_KEPT_PEOPLE_DOWN ... */
} lw_kept_check;

/** A check as its situation keeps it, whole again.
 *  gives all of it but the row that names its set of factors, which may be another of the same set */
lw_check lw_check_kept(const lw_kept_check *kept);

LW_PUBLIC_END

#endif
