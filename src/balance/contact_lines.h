/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_CONTACT_LINES_H
#define LOWWALL_BALANCE_CONTACT_LINES_H

#include "contact.h"

/* The working of a contact, line by line. Each is called where its number is made; working may be NULL. */

/* Where the resultant stands, and how far from the middle. */
void lw_contact_line_resultant(const lw_contact *c, const lw_working *working);
/* Uplift under a full rectangle: the head falls over what is in compression and is whole behind it. */
void lw_contact_line_uplift(const lw_contact_terms *terms, double weight, double compressed_m, double uplift,
                            const lw_working *working);
/* An edge pressure of a straight diagram over width B: V/B (1 + 6e/B) in front, less at the rear. */
void lw_contact_line_straight(const lw_contact *c, const lw_working *working);
/* Of a triangle on the edge that is pressed. */
void lw_contact_line_triangle(const lw_contact *c, double edge_kpa, const lw_working *working);
/* Even over the effective width. */
void lw_contact_line_even(const lw_contact *c, const lw_working *working);
/* Two face shells, thick t: core, and the edges. */
void lw_contact_line_shells(const lw_contact *c, double shell_m, const lw_working *working);

#endif
