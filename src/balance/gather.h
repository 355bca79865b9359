/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_GATHER_H
#define LOWWALL_BALANCE_GATHER_H

#include "push.h"

/* The forces on the wall above a contact; uplift is added by lw_contact_solve. */
void lw_forces_gather(const lw_wall *wall, const lw_load_case *load_case, const lw_section *section,
                      const lw_push *push, lw_forces *forces);

#endif
