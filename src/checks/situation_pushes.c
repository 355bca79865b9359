/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation_run.h"

/* The push on every contact of a wall. */

bool lw_contact_asked(const lw_contact_name *only, lw_at at) {
  return !only || only->at == at;
}

bool lw_joint_asked(const lw_contact_name *only, const lw_section *section, int joint) {
  bool under_cap = section->has_cap && joint == section->course_count;
  if (!only) return true;
  return under_cap ? only->at == LW_AT_CAP : only->at == LW_AT_JOINT && only->joint == joint;
}

void lw_pushes_begin(const lw_section *section, const lw_contact_name *only, lw_pushes *pushes) {
  int courses = section->known ? section->course_count : 0;
  pushes->searched.known = false;
  pushes->joint_count = courses > 0 ? courses - 1 + (section->has_cap ? 1 : 0) : 0;
  for (int i = 0; i < pushes->joint_count; i++)
    if (lw_joint_asked(only, section, i + 1)) lw_section_above(section, i + 1, &pushes->above[i]);
}

void lw_pushes_find(const lw_wall *wall, const lw_contact_name *only, lw_pushes *pushes) {
  const lw_section *section = &wall->section;
  lw_wedge_known *searched = &pushes->searched;
  double pad = lw_site_under(&wall->site);
  if (!section->known) return;
  if (lw_contact_asked(only, LW_AT_BASE))
    lw_push_find(wall, section, 0.0, searched, &pushes->push[LW_PUSH_BASE], NULL);
  if (pad > 0.0 && lw_contact_asked(only, LW_AT_PAD))
    lw_push_find(wall, section, pad, searched, &pushes->push[LW_PUSH_PAD], NULL);
  for (int i = 0; i < pushes->joint_count; i++)
    if (lw_joint_asked(only, section, i + 1))
      lw_push_find(wall, &pushes->above[i], 0.0, searched, &pushes->push[LW_PUSH_FIRST_JOINT + i], NULL);
}
