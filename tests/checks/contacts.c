/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "contacts.h"

static void add(const lw_wall *wall, lw_at at, int joint, test_contact *contact) {
  contact->at = at;
  contact->joint = joint;
  if (joint > 0)
    lw_section_above(&wall->section, joint, &contact->section);
  else
    lw_section_copy(&wall->section, &contact->section);
  double pad = at == LW_AT_PAD ? wall->site.pad.thickness_m : 0.0;
  lw_push_find(wall, &contact->section, pad, NULL, &contact->push, NULL);
}

int contacts_of(const lw_wall *wall, test_contact contact[CONTACTS_MAX]) {
  const lw_section *section = &wall->section;
  int count = 0, joints = section->course_count - 1 + (section->has_cap ? 1 : 0);
  add(wall, LW_AT_BASE, 0, &contact[count++]);
  if (wall->site.pad.thickness_m > 0.0) add(wall, LW_AT_PAD, 0, &contact[count++]);
  for (int i = 1; i <= joints; i++) add(wall, LW_AT_JOINT, i, &contact[count++]);
  return count;
}

bool contact_stage(const lw_wall *wall, const test_contact *contact, const lw_actions *actions,
                   lw_stage *stage) {
  switch (contact->at) {
  case LW_AT_BASE: lw_stage_base(wall, &contact->push, actions, stage); break;
  case LW_AT_PAD: lw_stage_pad(wall, &contact->push, actions, stage); break;
  default: lw_stage_above(wall, &contact->section, &contact->push, actions, stage);
  }
  return stage->status == LW_OK;
}
