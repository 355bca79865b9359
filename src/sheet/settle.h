/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_SETTLE_H
#define LOWWALL_SHEET_SETTLE_H

#include "defaults.h"
#include "settle_note.h"

/* The parts of settling, in their order but for those of the order, which settle by themselves. */
void lw_settle_ranges(lw_settling *s);      /* before all else: nothing is worked out of nonsense */
void lw_settle_conventions(lw_settling *s); /* before all that follows from a method */
void lw_settle_kind(lw_settling *s);        /* courses or section, told from the items when not said */
void lw_settle_soils(lw_settling *s);
void lw_settle_loads(lw_settling *s);
void lw_settle_courses(lw_settling *s);
void lw_settle_section(lw_settling *s);
void lw_settle_bed(lw_settling *s);   /* after the soils and the wall */
void lw_settle_site(lw_settling *s);  /* after the wall: the level difference follows from its height */
void lw_settle_fence(lw_settling *s); /* after the site */
void lw_settle_wet(lw_settling *s);   /* after the soils: storm and trench */
void lw_settle_defaults(lw_settling *s);
void lw_settle_hold(lw_settling *s); /* given items held against each other */
void lw_settle_ranges_of_order(lw_settling *s);

/** As lw_case_settle, for a case that came from a sheet as it is: a cell is held against the table of items
 *  when it is read, and its value is not held again. The defaults are gathered already, and there is no copy
 *  beside the case: on faults it is left half filled in, and not settled. */
lw_status lw_case_settle_in_place(const lw_tables *tables, const lw_defaults *defaults, lw_case *c,
                                  lw_faults *faults);

#endif
