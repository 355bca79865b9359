/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_FACTS_H
#define LOWWALL_VERDICT_FACTS_H

#include <lowwall/result.h>

#include "base/amount.h"
#include "tables/find.h"
#include "tables/known.h"

/* Whether something is so; open: the sheet leaves out what would tell. */
typedef enum lw_so { LW_SO_NOT, LW_SO_OPEN, LW_SO_YES } lw_so;

/* A load heavier than garden use, behind the rear of the top. */
typedef struct lw_heavy {
  double distance_m; /* INFINITY: none */
  lw_origin origin;
  bool vehicle; /* that may come, rather than what stands there */
} lw_heavy;

/* A length as it is taken, the unfavourable way where the sheet leaves something out, and what of it is
 * certain. */
typedef struct lw_span {
  double taken_m, certain_m;
  const char *left_out; /* the item that would tell; NULL: all is certain */
} lw_span;

/* What the three answers are reached from: levels and distances, worked out once. */
typedef struct lw_facts {
  const lw_case *c;
  const lw_tables *tables;
  const lw_wall *wall;
  lw_units units;                   /* those that the reader measures in */
  double height_m[LW_HEIGHT_KINDS]; /* as taken */
  lw_span height[LW_HEIGHT_KINDS];  /* total is to the underside of the pad here */
  double to_pad_m;                  /* top to the underside of the pad */
  lw_span dig;                      /* deepest the works go below the ground */
  lw_span beside_dig;               /* distance within which it undermines what stands there */
  lw_span reach;                    /* of the line up and back from the bottom rear, at the ground */
  lw_span building;                 /* the reach within which a building stands on what the wall holds up */
  double lower_wall_m;              /* height of the lower of this wall and the other one */
  lw_span lower_wall;               /* the same, where its height or side may be left out */
  double other_wall_m;  /* clear distance to the other wall, 0: left out; INFINITY: there is none */
  lw_heavy stands;      /* nearest heavy load on the sheet */
  bool other_wall_near; /* a tier */
  bool level_behind, level_in_front;
  lw_so loaded;
  const char *load_left_out; /* the item that would tell of the load; NULL: it is told */
  bool water_behind, no_way_out;
  bool people_above;
  const lw_fence *fence; /* its pushes and ratios */
  const lw_trench *trench;
  const lw_influence *influence;
  double fence_m; /* height of a fence that the wall carries or is too near to; 0: none */
  int place_row;  /* the first row of the place; -1: none is named */
  bool place_known;
  bool own_engineer; /* it has a height of its own from which an engineer is asked for */
  bool own_service, own_waterbody, own_street; /* a row about the place asks for that distance itself */
  lw_places places; /* whose limits apply; those of "default" too where no height is on file */
} lw_facts;

void lw_facts_gather(const lw_result *result, lw_facts *facts);
/* The part of it that is about heights; the fence is known. */
void lw_facts_heights(lw_facts *facts);

/* The heavy load to tell of within a distance: what is known before what is not, what stands there before a
 * vehicle that may come. */
lw_heavy lw_facts_heavy(const lw_facts *facts, double within_m);
/* Whether that load is a vehicle which the condition of vehicles sends to the engineer already. */
bool lw_facts_vehicle_told(const lw_facts *facts, const lw_heavy *heavy);
/* The distance that a row of tables/clearances.csv asks for; 0 when that row is gone. */
double lw_facts_clearance(const lw_facts *facts, lw_known_row clearance);
/* A distance of a complete case: 0 where it is left out, whatever stands in for it. */
double lw_facts_distance(const lw_quantity *q);
/* Whether it is nearer than that. */
lw_so lw_facts_nearer(const lw_quantity *q, double than_m);
/* A building is to carry the soil, or a fence is. What stands beyond real ground carries none unless
 * someone says so. */
bool lw_facts_back_is(const lw_facts *facts, lw_back back);

#endif
