/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_AMOUNT_H
#define LOWWALL_BASE_AMOUNT_H

#include <lowwall/base.h>

/* Exact by definition. */
#define LW_INCH_M 0.0254
#define LW_FOOT_M 0.3048

/* A measured value as a person reads it, number and unit: "0.80 m", "2 ft 7-1/2 in", "2005 psf".
 * It is handed over by value, so that it can stand among the arguments of the sentence it belongs to:
 * lw_page_sayf(page, "", "%s high", lw_metres(units, height_m, 2).text). */
typedef struct lw_amount {
  char text[40];
} lw_amount;

/** Bytes of the unit that words begin with, a blank, a stop or their end behind it; 0: they do not. */
size_t lw_unit_written(const char *words);

/** A value in words.
 *  in    kind      a length to an area; a pure number and an angle are the sentence's own matter
 *        si        in lw_kind_unit(kind); what is no finite number is n/a
 *        decimals  of the metric figure, 0 to 9. US lengths are told to 1/8 in at two or more, to 1 in at
 *                  one, to 1 ft at none; US loads, weights and masses in whole pounds, under 10 to a tenth;
 *                  volumes and areas with as many decimals as the metric figure */
lw_amount lw_amount_of(lw_units units, lw_kind kind, double si, int decimals);
/** A value of a sheet: a length to 1/8 in or in millimetres, others with as much as they need. */
lw_amount lw_value_of(lw_units units, lw_kind kind, double si);
/** A length in metres with so many decimals, or feet and inches as above. */
lw_amount lw_metres(lw_units units, double length_m, int decimals);
/** A value that somebody is to type: with six digits in that metric unit, or in feet and inches where eighths
 *  say it exactly, in inches where they do not. */
lw_amount lw_exactly(lw_units units, lw_kind kind, double si, const char *metric_unit);
/** A value beside one of the same unit: the figure alone, with its unit for a US reader, to whom a foot of
 *  wall may weigh pounds or kips. */
lw_amount lw_amount_again(lw_units units, lw_kind kind, double si, int decimals);
/** A moment a metre of wall: "0.59 kN m/m". */
lw_amount lw_moment(lw_units units, double knm_per_m, int decimals);
/** A length beside one of the same unit: as lw_amount_again, in millimetres. */
lw_amount lw_millimetres_again(lw_units units, double length_m);
/* Two values that are compared. */
typedef struct lw_apart {
  lw_amount one, other;
} lw_apart;
/** Told so that they do not read the same where they differ: as lw_amount_of has them or, if that is not
 *  enough, with up to four decimals; US lengths in inches then. */
lw_apart lw_amounts_apart(lw_units units, lw_kind kind, double one, double other, int decimals);
lw_apart lw_metres_apart(lw_units units, double one_m, double other_m, int decimals);
lw_apart lw_millimetres_apart(lw_units units, double one_m, double other_m);
/** A length in whole millimetres, or inches to 1/8 and the feet before them. */
lw_amount lw_millimetres(lw_units units, double length_m);

/** Whether a reader who measures so has units of his own for this kind. */
bool lw_units_differ(lw_units units, lw_kind kind);
/** The figure alone, for the columns of a table: in feet, psf, lb/ft, lb, pcf, ft-lb/ft, ft-lb, yd3, ft2;
 *  masses in lb. Metric, the SI value as it is. */
double lw_in_units(lw_units units, lw_kind kind, double si);
/** The unit of that figure: "m" or "ft", as it stands in the head of a column. */
const char *lw_units_name(lw_units units, lw_kind kind);

#endif
