/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "picture_walls.h"

/* Ground, walls, and what lies behind and below them. n: the numbers behind the word. */

#define DEPTH 10.0 /* of a block, front to back */
#define COURSE 9.0 /* its height */
#define BURIED 4.0 /* of the lowest one */
#define STONE 1.4  /* radius of a grain */

static void tinted(lw_picture *p, const double *xy, int spots) {
  lw_picture_area(p, LW_PEN_NONE, LW_FILL_TINT, xy, spots);
}

/* ground LEFT RIGHT */
static void ground(lw_picture *p, const double *n) {
  const double all[] = {0, 0, 0, n[0], LW_PICTURE_WIDE, n[1], LW_PICTURE_WIDE, 0};
  p->left = n[0];
  p->right = n[1];
  tinted(p, all, 4);
  lw_picture_line(p, LW_PEN_CUT, all + 2, 2);
}

/* bank X Y TO_X TO_Y: the surface behind a wall */
static void bank(lw_picture *p, const double *n) {
  const double all[] = {n[0], 0, n[0], n[1], n[2], n[3], n[2], 0};
  tinted(p, all, 4);
  lw_picture_line(p, LW_PEN_CUT, all + 2, 2);
}

/* soil X TO_X Y: that was brought in */
static void soil(lw_picture *p, const double *n) {
  const double all[] = {n[0], lw_picture_ground(p, n[0]), n[0], n[2], n[1], n[2],
                        n[1], lw_picture_ground(p, n[1])};
  lw_picture_area(p, LW_PEN_NONE, LW_FILL_PAPER, all, 4);
  for (double y = n[2] - 3.0; y > lw_picture_ground(p, n[0]) + 1.0; y -= 5.0)
    for (double x = n[0] + 3.0; x < n[1] - 1.0; x += 8.0) {
      const double dash[] = {x, y, x + 3.0, y};
      lw_picture_line(p, LW_PEN_FINE, dash, 2);
    }
  lw_picture_line(p, LW_PEN_CUT, all + 2, 2);
}

static void courses(lw_picture *p, double x, double bottom, int count) {
  for (int i = 0; i < count; i++)
    lw_picture_box(p, LW_FILL_PAPER, x, bottom + i * COURSE, x + DEPTH, bottom + (i + 1) * COURSE);
}

static double bottom_of(const lw_picture *p, double x) {
  return lw_picture_ground(p, x) - BURIED;
}

/* wall X COURSES */
static void wall(lw_picture *p, const double *n) {
  courses(p, n[0], bottom_of(p, n[0]), (int)n[1]);
}

/* wallon X COURSES MORE: laid on a wall that stands */
static void wall_on(lw_picture *p, const double *n) {
  courses(p, n[0], bottom_of(p, n[0]) + n[1] * COURSE, (int)n[2]);
}

/* solid X COURSES: joints that are closed */
static void solid(lw_picture *p, const double *n) {
  double bottom = bottom_of(p, n[0]), top = bottom + n[1] * COURSE;
  lw_picture_box(p, LW_FILL_PAPER, n[0], bottom, n[0] + DEPTH, top);
  for (double y = bottom + COURSE; y < top - 1.0; y += COURSE)
    lw_picture_box(p, LW_FILL_INK, n[0], y - 0.8, n[0] + DEPTH, y + 0.8);
}

/* lean X COURSES: a wall that bulges outwards */
static void lean(lw_picture *p, const double *n) {
  double bottom = bottom_of(p, n[0]);
  for (int i = 0; i < (int)n[1]; i++) {
    double x = n[0] - 2.6 * i;
    lw_picture_box(p, LW_FILL_PAPER, x, bottom + i * COURSE, x + DEPTH, bottom + (i + 1) * COURSE);
  }
}

/* cap X COURSES: on a wall there */
static void cap(lw_picture *p, const double *n) {
  double y = bottom_of(p, n[0]) + n[1] * COURSE;
  lw_picture_box(p, LW_FILL_PAPER, n[0] - 2.0, y, n[0] + DEPTH + 2.0, y + 4.0);
}

static void grains(lw_picture *p, const double *box) {
  for (double y = box[1] + 2.0; y < box[3] - 1.0; y += 4.0)
    for (double x = box[0] + 2.0 + (((int)(y / 4.0)) % 2) * 2.0; x < box[2] - 1.0; x += 4.0)
      lw_picture_ring(p, LW_FILL_PAPER, x, y, STONE);
}

/* stone X TO_X Y: from the foot of the wall up */
static void stone(lw_picture *p, const double *n) {
  const double box[] = {n[0], bottom_of(p, n[0]), n[1], n[2]};
  const double cloth[] = {n[1], box[1], n[1], n[2], n[0], n[2]};
  lw_picture_box(p, LW_FILL_PAPER, box[0], box[1], box[2], box[3]);
  grains(p, box);
  lw_picture_line(p, LW_PEN_DOTTED, cloth, 3);
}

/* pad X TO_X Y: below the wall, and dots X TO_X Y: its grains */
static void pad(lw_picture *p, const double *n) {
  lw_picture_box(p, LW_FILL_PAPER, n[0], n[2], n[1], bottom_of(p, n[0]));
}

static void dots(lw_picture *p, const double *n) {
  const double box[] = {n[0], n[2], n[1], n[2] + 12.0};
  grains(p, box);
}

/* pit Y: a hole from the ground at 62 down to Y */
static void pit(lw_picture *p, const double *n) {
  const double all[] = {0, 0, 0, 62, 36, 62, 40, n[0], 80, n[0], 84, 62, LW_PICTURE_WIDE, 62, LW_PICTURE_WIDE,
                        0};
  tinted(p, all, 8);
  lw_picture_line(p, LW_PEN_CUT, all + 2, 6);
}

/* heap HEIGHT */
static void heap(lw_picture *p, const double *n) {
  static const double floor_line[] = {0, 16, LW_PICTURE_WIDE, 16};
  const double all[] = {14, 16, 60, 16 + n[0], 106, 16};
  tinted(p, all, 3);
  lw_picture_line(p, LW_PEN_CUT, all, 3);
  lw_picture_line(p, LW_PEN_SEEN, floor_line, 2);
}

/* lumps X TO_X */
static void lumps(lw_picture *p, const double *n) {
  for (double x = n[0]; x < n[1]; x += 14.0) {
    double y = ((int)(x / 14.0)) % 2 ? 18.0 : 26.0;
    lw_picture_box(p, LW_FILL_PAPER, x, y, x + 9.0, y + 5.0);
  }
}

const lw_picture_word lw_picture_of_walls[] = {
    {"ground", 2, ground}, {"bank", 4, bank}, {"soil", 3, soil}, {"wall", 2, wall},   {"wallon", 3, wall_on},
    {"solid", 2, solid},   {"lean", 2, lean}, {"cap", 2, cap},   {"stone", 3, stone}, {"pad", 3, pad},
    {"dots", 3, dots},     {"pit", 1, pit},   {"heap", 1, heap}, {"lumps", 2, lumps}, {NULL, 0, NULL}};
