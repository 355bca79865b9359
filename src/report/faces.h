/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FACES_H
#define LOWWALL_REPORT_FACES_H

#include <lowwall/report.h>

/* The two faces on which a wall may slide: on its bed, and the bed with it on the ground. */
typedef struct lw_faces {
  double bed, ground; /* tan of the angle */
  double undrained_kpa;
  lw_units units;              /* that it is told in */
  bool bed_given, bed_between; /* a bed or pad lies between wall and ground */
  bool ground_told, ground_decides;
  const lw_interface_row *bed_row;   /* that stands in; NULL: given, or worked out */
  const lw_interface_row *joint_row; /* the same of the joints */
  const lw_soil_row *ground_row;     /* whose critical angle it is; NULL: of an angle given, or not told */
  const lw_soil_row *clay_row;       /* whose undrained strength is the most that it holds; NULL: no such */
} lw_faces;

void lw_faces_find(const lw_result *result, lw_faces *faces);
/** Which decides and why, each with its source, as one line without its full stop. Appended. */
void lw_faces_say(const lw_faces *faces, lw_text *out);
/** What they, the joints and the clay below rest on. gives how many */
enum { LW_FACES_SOURCES = 5 };
int lw_faces_sources(const lw_result *result, const lw_origin_note *source[LW_FACES_SOURCES]);

#endif
