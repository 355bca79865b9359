/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_BALANCE_CONTACTS_H
#define LOWWALL_TESTS_BALANCE_CONTACTS_H

#include "balance/place.h"

/* Base, pad and every joint of a wall, pushed and loaded as the situations do it. */
typedef struct test_contact {
  lw_place place;
  lw_section section; /* the courses above a joint */
  lw_push push;
} test_contact;

enum { CONTACTS_MAX = LW_COURSE_MAX + 3 };

/* Of a wall in the ground of a load case. gives how many */
int contacts_of(const lw_wall *wall, const lw_ground *ground, test_contact contact[CONTACTS_MAX]);
/* With what else acts. False: it cannot be shown. */
bool contact_stage(const lw_wall *wall, const lw_load_case *load_case, const test_contact *contact,
                   lw_free_body *body);

#endif
