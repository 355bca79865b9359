/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WATER_H
#define LOWWALL_WATER_H

#include <lowwall/checks.h>
#include <lowwall/lateral.h>

LW_PUBLIC_BEGIN

/* Water in a bed: where a storm lifts it to, and how high it may stand before each check falls short. */

/* A storm on a bed that cannot drain. */
typedef struct lw_storm {
  double rain_m;          /* 0: no storm is given, and nothing below holds */
  double porosity;        /* share of the soil that fills from field-moist */
  double rise_m;          /* rain over porosity */
  double from_depth_m;    /* where the water stands before, below the top of the wall */
  double water_depth_m;   /* where it stands after, below the top of the wall */
  bool spills;            /* it would rise beyond the soil or the overflow, and runs off */
} lw_storm;

/** Where a storm lifts the water to, in a bed whose floor lets none through: rain over drainable porosity.
 *  in    wall    site.storm_rain_m and site.drainable_porosity
 *  out   storm
 *  note  1 The bed's floor is taken at the ground in front, the wall's own trench below it as full: a lower
 *          floor would leave the water lower. Water that stands behind already is risen from.
 *        2 Never above the lower of soil top and overflow: the rest runs off.
 *        3 Rain that falls on the bed itself; a slope or a downpipe above brings more.
 *  from  [LOWWALL water]; tested by tests/load_cases/storm.c */
void lw_storm_find(const lw_wall *wall, lw_storm *storm);

#define LW_WATER_STATES(X) \
  X(STANDS_FULL, "stands-full", "stands with water up to the top of the soil or the overflow") \
  X(FALLS_AT, "falls-at", "stands until the water reaches this level") \
  X(FALLS_DRY, "falls-dry", "falls short with no more water than stands there already") \
  X(NOT_SHOWN, "not-shown", "cannot be shown whatever the water")
typedef enum lw_water_state {
#define LW_WATER_NAME(name, slug, sentence) LW_WATER_##name,
  LW_WATER_STATES(LW_WATER_NAME)
#undef LW_WATER_NAME
} lw_water_state;

/** Slug and sentence of a state, from the one list. */
const char *lw_water_state_slug(lw_water_state state);
const char *lw_water_state_sentence(lw_water_state state);

/* How high the water behind may stand before one check falls short of what `outlet-blocked` asks. */
typedef struct lw_water_limit {
  lw_check_kind kind;
  lw_at at;
  int joint;
  lw_water_state state;
  lw_number depth_m;      /* of that level below the top of the wall; known in FALLS_AT and STANDS_FULL */
  lw_number ratio;        /* of the check with the water at that level */
  bool jumps;             /* it does not pass through 1 there: a base that opens gives way at once */
  lw_reason reason;       /* of NOT_SHOWN */
} lw_water_limit;

typedef struct lw_water_limits {
  bool found;             /* searched for: see lw_water_find in result.h */
  int count;
  lw_water_limit limit[LW_CHECK_MAX];
} lw_water_limits;

/** The water level at which each check of base, pad, joints and cap first falls short, by a scan of levels
 *  and Brent's method on one contact at a time.
 *  in    blocked   the situation outlet-blocked of this wall, as run: kind, full level and its checks
 *        scratch   a situation to run in
 *  out   limits    a check that does not count has none
 *  note  1 From the foot of the contact up, or from the water that stands there anyway, to the full level.
 *        2 The first level where it falls short counts, should it hold again above.
 *  from  [LOWWALL water]; tested by tests/studies/water_limits.c */
void lw_water_limits_find(const lw_wall *wall, const lw_tables *tables, const lw_situation *blocked,
                          lw_situation *scratch, lw_water_limits *limits);

/** True when a falls short at a lower level than b, or is the less sure: which of two to tell. */
bool lw_water_limit_graver(const lw_water_limit *a, const lw_water_limit *b);

/* Steady rain on soil that drains badly, seeping to a drain that works. */
typedef struct lw_rain_seepage {
  bool looked_at;         /* the soil drains badly and water has an outlet or open joints to go to */
  lw_status status;       /* not LW_OK: no numbers, and reason says why */
  lw_reason reason;
  lw_seepage push;        /* on the plane of the whole wall */
} lw_rain_seepage;

/** The push of rain seeping to a working drain beside that of dry and of flooded soil, for this wall.
 *  note  1 Information, and decides nothing: a drain that works is not a blocked one, which decides; but in
 *          heavy rain the soil it drains is not dry either.
 *        2 The drain has to stand on the upright plane of the push: at the wall's own back, or stone that
 *          fills what lies between. */
void lw_rain_seepage_find(const lw_wall *wall, lw_rain_seepage *seepage, const lw_working *working);

LW_PUBLIC_END

#endif
