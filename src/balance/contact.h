/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_CONTACT_H
#define LOWWALL_BALANCE_CONTACT_H

#include <lowwall/checks.h>

typedef struct lw_contact_terms {
  double front_m, rear_m; /* of the contact, in the section's x */
  double foot_y_m;        /* moments are about this level: 0, or below it for the pad's underside */
  double shell_m;
  lw_taper contact, underside;      /* what bears between these ends, and what has an underside there */
  double rear_head_m, front_head_m; /* of water at its ends; 0: none */
  bool uplift;
  bool
      spreads; /* what presses on it spreads further: its own edge pressures are no pressures of the ground */
} lw_contact_terms;

/* Balance the forces on the contact, uplift and contact made to agree; adds the uplift to the forces. */
void lw_contact_solve(const lw_wall *wall, const lw_contact_terms *terms, lw_forces *forces,
                      lw_contact *contact, const lw_working *working);
/* Sums, resultant and pressures for the forces as they are. */
void lw_contact_balance(const lw_method *method, const lw_contact_terms *terms, const lw_forces *forces,
                        lw_contact *contact, const lw_working *working);

#endif
