/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BUILDING_H
#define LOWWALL_BUILDING_H

#include <lowwall/checks.h>
#include <lowwall/lateral.h>

LW_PUBLIC_BEGIN

/* The wall while it is built: course by course, with fill and plant level with the newest one. What is found
 * here is over when the wall stands, and whoever builds can avoid it: it decides nothing of the finished
 * wall, it says how near the plant may come. */

/* The plant, as given, from its row, or the usual plate where nobody said. */
typedef struct lw_plant {
  char name[LW_NAME_MAX];      /* "" when only its numbers are given */
  bool named;                  /* by the sheet: a name, or numbers of its own */
  const lw_plant_row *row;     /* that the numbers not given came from; NULL: none */
  double mass_kg, force_kn;    /* force: dynamic, on top of the weight */
  double width_m;              /* of its contact, along the wall */
  double layer_m;              /* thickest loose layer that it compacts */
  double line_load_kn_per_m;   /* (weight + force)/width */
} lw_plant;

/* How near a piece of plant may come to the newest course. */
typedef struct lw_stand_off {
  lw_number distance_m;   /* there it holds by just what is needed; 0: even touching */
  lw_number keep_m;       /* no less than the thresholds have, rounded up to what can be kept on site */
  lw_reason reason;       /* why there is none */
} lw_stand_off;

/* One course newly laid, the fill just compacted level with it, the plant touching. */
typedef struct lw_building_course {
  int course;               /* 1 is the lowest, on its bed */
  double height_m;          /* of fill against it; 0: none */
  double friction_rad, unit_weight_kn_per_m3;   /* of that fill */
  lw_compaction_diagram diagram;
  lw_lateral push, earth;   /* with the plant touching; of the layer of earth alone */
  lw_check sliding, tilting;   /* on the joint or bed below it, by its own weight only */
  bool has_lower;
  lw_check lower;           /* the gravest of the contacts below, earth that has yielded pushing there */
} lw_building_course;

typedef struct lw_building {
  bool studied;             /* false: reason says why nothing below is there */
  lw_reason reason;
  lw_plant plant, hand;     /* hand: the hand rammer of the table */
  double layer_m;           /* thickness of a layer, as given or as it should be */
  bool layer_given, layer_too_thick;
  int layers;               /* a course is filled in so many */
  double layer_most_m, hand_layer_most_m;   /* thickest for each: never more than a course */
  int course_count;
  lw_building_course course[LW_COURSE_MAX];
  int worst;                /* the course whose joint is nearest to its limit or furthest past it: an index */
  lw_stand_off stand_off, hand_stand_off;
  lw_number distance_m;     /* at which the plant will run, as given */
  lw_check at_distance;     /* the gravest newest joint then; means nothing where distance_m is not known */
  bool moves;               /* it falls short at the distance given */
  lw_lateral whole, settled;   /* on the whole wall: nothing having given way; once it has */
} lw_building;

/** The working of a wall that was studied: the plant's load, the worst course under it, how near it and a
 *  hand rammer may come, the whole wall.
 *  in    building   of that wall */
void lw_building_write(const lw_wall *wall, const lw_tables *tables, const lw_building *building,
                       const lw_working *working);

/** Build the wall course by course.
 *  in    wall     as lw_wall_build made it, with plant, distance and layer as told
 *        tables   plant, and the set of factors: what it asks in an unusual situation
 *  out   building  not studied: a wall that is not of courses, no block depth, refused fill
 *  note  1 The fill is dry. A course is held by its own weight alone, as the next one is not there yet.
 *        2 Plant at a distance pushes by the doubled elastic stress of its foot, but never harder than plant
 *          that touches.
 *        3 Sets that factor loads or soil ask 1 of a check; the project's own figure is asked then.
 *  from  [INGOLD-1979 29(3)]; [BOUSSINESQ1885 point load, integrated]; tested by tests/studies/building.c */
void lw_building_run(const lw_wall *wall, const lw_tables *tables, lw_building *building);

/** The gravest check of the newest course's joint, of all courses, with plant at a distance from their backs.
 *  in    distance_m   0: touching
 *  out   check        unchanged when false
 *  gives false where nothing is filled or nothing is asked */
bool lw_building_at(const lw_wall *wall, const lw_tables *tables, const lw_building *building,
                    const lw_plant *plant, double distance_m, lw_check *check);

LW_PUBLIC_END

#endif
