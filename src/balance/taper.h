/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_TAPER_H
#define LOWWALL_BALANCE_TAPER_H

#include "contact.h"

/* A contact under blocks that taper: what bears is a trapezium in plan, a share of the run at its front and
 * another at its rear. Lengths run from the edge named, areas are of a metre of run. */

/* Its area, the first and the second moment of it about the front edge. */
typedef struct lw_plan_sums {
  double area_m2, first_m3, second_m4;
} lw_plan_sums;

lw_plan_sums lw_taper_sums(lw_taper taper, double length_m);
/* Sums of a load that falls from 1 at the front edge in a straight line to nothing at compressed_m. */
lw_plan_sums lw_taper_triangle(lw_taper taper, double length_m, double compressed_m);
/* How long the part in compression is when the resultant stands at x from the front edge: past length_m, all
 * of it is, and by how much tells how far inside the resultant stands. */
double lw_taper_compressed(lw_taper taper, double length_m, double resultant_m);
/* The same contact looked at from its rear. */
lw_taper lw_taper_turned(lw_taper taper);
/* The area of that part, from either edge on, whose centroid is the resultant. */
double lw_taper_effective(lw_taper taper, double length_m, double resultant_m);
bool lw_taper_whole(lw_taper taper);

/* Water under such a contact: between the tails it stands as high as behind, under what bears its head falls
 * over what is in compression, or is nothing in a joint that is open. */
lw_force lw_taper_uplift(const lw_contact_terms *terms, double factor, double weight, double compressed_m);

/* Area and core of a contact whose width is known. */
void lw_taper_measure(lw_taper taper, lw_contact *contact);

/* Share in compression and edge pressures of a contact whose resultant is known and inside; shell_m: only
 * face shells as thick bear, 0 for all of it. */
void lw_taper_press(const lw_method *method, lw_taper taper, double shell_m, lw_contact *contact,
                    const lw_working *working);

/* How the uplift of lw_taper_uplift comes about. */
void lw_taper_line_uplift(const lw_contact_terms *terms, double weight, double compressed_m, double uplift,
                          const lw_working *working);

#endif
