/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_COMPLETE_H
#define LOWWALL_SHEET_COMPLETE_H

#include "defaults.h"
#include "complete_note.h"

/* The parts of completing, in their order but for those of the order, which complete by themselves. */
void lw_complete_ranges(lw_completing *s);      /* before all else: nothing is worked out of nonsense */
void lw_complete_conventions(lw_completing *s); /* before all that follows from a method */
void lw_complete_kind(lw_completing *s);        /* courses or section, told from the items when not said */
void lw_complete_soils(lw_completing *s);
void lw_complete_loads(lw_completing *s);
void lw_complete_courses(lw_completing *s);
void lw_complete_section(lw_completing *s);
void lw_complete_back(lw_completing *s);     /* after the soils */
void lw_complete_friction(lw_completing *s); /* after the soils and the wall */
void lw_complete_use(lw_completing *s);      /* after the loads and the wall: the load behind */
void lw_complete_date(lw_completing *s);     /* the day of issue is a day */
void lw_complete_site(lw_completing *s); /* after the wall: the level difference follows from its height */
void lw_complete_officer(lw_completing *s);
void lw_complete_fence(lw_completing *s); /* after the site */
void lw_complete_wet(lw_completing *s);   /* after the soils: storm and trench */
void lw_complete_defaults(lw_completing *s);
void lw_complete_hold(lw_completing *s); /* given items held against each other */
void lw_complete_ranges_of_order(lw_completing *s);

/** As lw_case_complete, for a case that came from a sheet as it is: a cell is held against the table of items
 *  when it is read, and its value is not held again. The defaults are gathered already, and there is no copy
 *  beside the case: on faults it is left half filled in, and not complete. */
lw_status lw_case_complete_in_place(const lw_tables *tables, const lw_defaults *defaults, lw_case *c,
                                    lw_faults *faults);

#endif
