/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_CONSTRUCTION_H
#define LOWWALL_STUDIES_CONSTRUCTION_H

#include <lowwall/studies.h>

/** The working of a wall that was studied: the plant's load, the worst course under it, how near it and a
 *  hand rammer may come, the whole wall.
 *  in    building   of that wall */
void lw_construction_write(const lw_wall *wall, const lw_tables *tables, const lw_construction *construction,
                           const lw_working *working);

/** Build the wall course by course.
 *  in    wall     as lw_wall_build made it, with plant, distance and layer as told
 *        tables   plant, and the set of factors: what it asks in an unusual situation
 *  out   building  not studied: a wall that is not of courses, no block depth, refused fill
 *  note  1 The fill is dry. A course is held by its own weight alone, as the next one is not there yet.
 *        2 Plant at a distance pushes by the doubled elastic stress of its foot, but never harder than plant
 *          that touches.
 *        3 Sets that factor loads or soil ask 1 of a check; the project's own figure is asked then.
 *  from  [INGOLD-1979 29(3)]; [BOUSSINESQ1885 point load, integrated]; tested by
 *        tests/studies/construction.c */
void lw_construction_run(const lw_wall *wall, const lw_tables *tables, lw_construction *construction);

/** The gravest check of the newest course's joint, of all courses, with plant at a distance from their backs.
 *  in    distance_m   0: touching
 *  out   check        unchanged when false
 *  gives false where nothing is filled or nothing is asked */
bool lw_construction_at(const lw_wall *wall, const lw_tables *tables, const lw_construction *construction,
                        const lw_plant *plant, double distance_m, lw_check *check);

#endif
