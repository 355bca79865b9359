/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "faces.h"

#include <math.h>

#include "base/amount.h"
#include "paired.h"
#include "sheet/values.h"
#include "tables/known.h"

static const lw_soil_row *ground_row(const lw_result *result) {
  const lw_soil_row *row = lw_footing_row(&result->given, result->tables);
  return row && !isnan(row->critical_rad) ? row : NULL;
}

/* Whose undrained strength is the most that it holds: of ground that nobody names clay loam's. */
static const lw_soil_row *clay_row(const lw_result *result) {
  const lw_soil_row *row = ground_row(result);
  if (!(result->wall.site.undrained_kpa > 0.0)) return NULL;
  return row ? row : lw_known_soil(result->tables, LW_SOIL_OF_CLAY_LOAM);
}

static const lw_interface_row *stand_in(const lw_result *result, const lw_quantity *q) {
  return q->origin == LW_ASSUMED && q->table_row >= 0 ? &result->tables->interface_[q->table_row] : NULL;
}

void lw_faces_find(const lw_result *result, lw_faces *faces) {
  const lw_site *site = &result->wall.site;
  const lw_quantity *base = &result->given.ground.base_friction;
  *faces = (lw_faces){.bed = site->bed_friction,
                      .ground = site->pad_friction,
                      .undrained_kpa = site->undrained_kpa,
                      .units = result->units,
                      .bed_given = base->origin == LW_GIVEN,
                      .bed_between = result->given.pad.thickness.origin != LW_ABSENT,
                      .ground_told = lw_told(&result->given.ground.footing.friction),
                      .bed_row = stand_in(result, base),
                      .joint_row = stand_in(result, &result->given.courses.joint_friction),
                      .ground_row = ground_row(result),
                      .clay_row = clay_row(result)};
  faces->ground_decides = faces->ground < faces->bed && (faces->ground_told || faces->bed_between);
}

static void say_ground(const lw_faces *faces, lw_text *out) {
  lw_text_addf(out, "; the bed on the ground %.3f", faces->ground);
  double angle_deg = atan(faces->ground) * LW_DEG_PER_RAD;
  if (faces->ground_row)
    lw_text_addf(out, ", tan %.1f deg, by its critical angle %s", angle_deg,
                 faces->ground_row->critical_from.source);
  else if (faces->ground_told)
    lw_text_addf(out, ", tan %.1f deg, the ground's angle", angle_deg);
  else
    lw_text_add(out, ", as nobody says what the ground is");
}

static void say_clay(const lw_faces *faces, lw_text *out) {
  if (!faces->clay_row) return;
  lw_text_addf(out, "; undrained no more than %s on what bears [EN1997-1 6.5.3] %s%s",
               lw_amount_of(faces->units, LW_KIND_PRESSURE, faces->undrained_kpa, 0).text,
               faces->clay_row->undrained_from.source,
               faces->ground_row ? "" : ", as of clay loam, for nobody says that it is no clay");
}

void lw_faces_say(const lw_faces *faces, lw_text *out) {
  lw_text_addf(out, "the wall on %s %.3f",
               faces->bed_between || faces->ground_told ? "its bed" : "the ground", faces->bed);
  if (faces->bed_row)
    lw_text_addf(out, " %s", faces->bed_row->from.source);
  else
    lw_text_add(out, faces->bed_given ? ", as given" : "");
  if (!faces->ground_told && !faces->bed_between) {
    say_clay(faces, out);
    return;
  }
  say_ground(faces, out);
  say_clay(faces, out);
  lw_text_addf(out, ". The less decides: %s", faces->ground_decides ? "the ground" : "the bed");
}

int lw_faces_sources(const lw_result *result, const lw_origin_note *source[LW_FACES_SOURCES]) {
  lw_faces faces;
  int count = 0;
  lw_faces_find(result, &faces);
  if (faces.bed_row) source[count++] = &faces.bed_row->from;
  if (faces.joint_row) source[count++] = &faces.joint_row->from;
  if (faces.ground_row) source[count++] = &faces.ground_row->critical_from;
  if (faces.clay_row) source[count++] = &faces.clay_row->undrained_from;
  const lw_soil_row *paired = lw_paired_row(result);
  if (paired) source[count++] = &paired->paired_from;
  return count;
}
