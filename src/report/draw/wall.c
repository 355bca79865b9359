/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "hatch.h"
#include "sketch.h"

/* The wall itself, cut through: courses with cap and setback, or the polygon; the pad. */

static void box(lw_sketch *s, lw_pen pen, lw_hatch hatch, const lw_part *part) {
  lw_xy_mm corner[] = {
      lw_sketch_at(s, part->front_m, part->bottom_m), lw_sketch_at(s, part->rear_m, part->bottom_m),
      lw_sketch_at(s, part->rear_m, part->top_m), lw_sketch_at(s, part->front_m, part->top_m)};
  lw_drawing_area(s->paper, LW_PEN_NONE, LW_FILL_PAPER, corner, 4);
  lw_drawing_hatch(s->paper, hatch, corner, 4);
  lw_drawing_area(s->paper, pen, LW_FILL_NONE, corner, 4);
}

static void polygon(lw_sketch *s, const lw_section *section) {
  lw_xy_mm corner[LW_OUTLINE_MAX];
  for (int i = 0; i < section->outline_count; i++)
    corner[i] = lw_sketch_at(s, section->outline[i].x_m, section->outline[i].y_m);
  size_t count = (size_t)section->outline_count;
  lw_drawing_area(s->paper, LW_PEN_NONE, LW_FILL_PAPER, corner, count);
  lw_drawing_hatch(s->paper, LW_HATCH_BLOCK, corner, count);
  lw_drawing_area(s->paper, LW_PEN_CUT, LW_FILL_NONE, corner, count);
}

static void pad(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  double deep = w->site.pad.thickness_m, width = w->section.base_width_m;
  double half = 0.5 * fmax(w->site.pad.width_m - width, 0.0);
  double low = lw_sketch_under(s);
  if (deep <= 0.0) return;
  lw_part part = {.front_m = -half, .rear_m = width + half, .bottom_m = -low, .top_m = deep - low};
  box(s, LW_PEN_SEEN, LW_HATCH_PAD, &part);
  if (w->site.pad.width_m > 0.0)
    lw_sketch_note(s, width + half, 0.5 * deep - low, "compacted stone pad, %s thick, %s wide",
                   lw_sketch_mm(s, deep).text, lw_sketch_mm(s, w->site.pad.width_m).text);
  else
    lw_sketch_note(s, width, 0.5 * deep - low, "compacted stone pad, %s thick; its width is not given",
                   lw_sketch_mm(s, deep).text);
}

static void name_parts(lw_sketch *s, const lw_section *section) {
  const lw_part *first = &section->part[0];
  if (section->course_count == 0) {
    lw_sketch_note(s, first->x_m, first->y_m, "the wall, %s in all",
                   lw_sketch_amount(s, LW_KIND_LINE_LOAD, s->result->wall.weight_kn_per_m, 1).text);
    return;
  }
  const lw_part *middle = &section->part[section->course_count / 2];
  lw_sketch_note_aside(s, middle->x_m, middle->y_m, "%d course%s of blocks laid dry, %s high and %s deep%s%s",
                       section->course_count, section->course_count == 1 ? "" : "s",
                       lw_sketch_mm(s, middle->top_m - middle->bottom_m).text,
                       lw_sketch_mm(s, middle->rear_m - middle->front_m).text,
                       section->shell_m > 0.0 ? ", hollow" : "",
                       section->tail_share < 1.0 ? ", tapered to the rear" : "");
  if (!section->has_cap) return;
  const lw_part *cap = &section->part[section->part_count - 1];
  lw_sketch_note_aside(
      s, cap->x_m, cap->y_m, "cap, %s by %s, %s", lw_sketch_mm(s, cap->top_m - cap->bottom_m).text,
      lw_sketch_mm(s, cap->rear_m - cap->front_m).text, section->cap_bonded ? "bonded" : "laid dry");
}

void lw_sketch_wall(lw_sketch *sketch) {
  const lw_section *section = &sketch->result->wall.section;
  pad(sketch);
  if (section->course_count == 0) polygon(sketch, section);
  for (int i = 0; i < section->part_count && section->course_count > 0; i++)
    box(sketch, LW_PEN_CUT, LW_HATCH_BLOCK, &section->part[i]);
  name_parts(sketch, section);
}
