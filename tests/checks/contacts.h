/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_CHECKS_CONTACTS_H
#define LOWWALL_TESTS_CHECKS_CONTACTS_H

#include "checks/situation.h"

/* Base, pad and every joint of a wall, pushed and loaded as the situations do it. */
typedef struct test_contact {
  lw_at at;
  int joint;
  lw_section section; /* the wall, or the courses above the joint */
  lw_push push;
} test_contact;

enum { CONTACTS_MAX = LW_COURSE_MAX + 3 };

/* Of a wall as it stands in a situation. gives how many */
int contacts_of(const lw_wall *wall, test_contact contact[CONTACTS_MAX]);
/* With what else acts. False: it cannot be shown. */
bool contact_stage(const lw_wall *wall, const test_contact *contact, const lw_actions *actions,
                   lw_stage *stage);

#endif
