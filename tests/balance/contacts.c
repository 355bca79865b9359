/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "contacts.h"

int contacts_of(const lw_wall *wall, const lw_ground *ground, test_contact contact[CONTACTS_MAX]) {
  int count = lw_place_count(wall);
  for (int i = 0; i < count; i++) {
    test_contact *c = &contact[i];
    lw_place_find(wall, i, &c->section, &c->place);
    lw_push_find(wall, ground, &c->place.stack, NULL, &c->push, NULL);
  }
  return count;
}

bool contact_stage(const lw_wall *wall, const lw_load_case *load_case, const test_contact *contact,
                   lw_free_body *body) {
  lw_place_load(wall, load_case, &contact->place, &contact->push, body, NULL);
  return body->status == LW_OK;
}
