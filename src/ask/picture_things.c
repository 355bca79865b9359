/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "picture_things.h"

/* People, plants, water, hands and signs. n: the numbers behind the word. */

static void seen(lw_picture *p, const double *xy, int spots) {
  lw_picture_line(p, LW_PEN_SEEN, xy, spots);
}

/* fence X Y TO_Y */
static void fence(lw_picture *p, const double *n) {
  lw_picture_box(p, LW_FILL_PAPER, n[0], n[1] - 8.0, n[0] + 3.0, n[2]);
  for (double y = n[1] + 6.0; y < n[2] - 2.0; y += 8.0) {
    const double board[] = {n[0] - 2.0, y, n[0] + 5.0, y};
    lw_picture_line(p, LW_PEN_CUT, board, 2);
  }
}

/* house X Y: its wall at X and its roof */
static void house(lw_picture *p, const double *n) {
  const double roof[] = {n[0] - 8.0, 74, LW_PICTURE_WIDE, 88};
  lw_picture_box(p, LW_FILL_TINT, n[0], n[1] - 8.0, n[0] + 6.0, 76);
  lw_picture_line(p, LW_PEN_CUT, roof, 2);
}

/* plant X Y */
static void plant(lw_picture *p, const double *n) {
  const double stem[] = {n[0], n[1] - 4.0, n[0], n[1] + 10.0};
  const double leaves[] = {n[0] - 5.0, n[1] + 9.0, n[0], n[1] + 3.0, n[0] + 5.0, n[1] + 9.0};
  seen(p, stem, 2);
  seen(p, leaves, 3);
}

/* person X Y, who stands; sit X Y, who sits */
static void person(lw_picture *p, const double *n) {
  const double body[] = {n[0], n[1] + 15.0, n[0], n[1] + 7.0};
  const double legs[] = {n[0] - 3.0, n[1], n[0], n[1] + 7.0, n[0] + 3.0, n[1]};
  const double arms[] = {n[0] - 4.0, n[1] + 9.0, n[0], n[1] + 13.0, n[0] + 4.0, n[1] + 9.0};
  lw_picture_ring(p, LW_FILL_PAPER, n[0], n[1] + 18.0, 3.0);
  seen(p, body, 2);
  seen(p, legs, 3);
  seen(p, arms, 3);
}

static void sit(lw_picture *p, const double *n) {
  const double body[] = {n[0] + 3.0, n[1] + 14.0, n[0] + 3.0, n[1],
                         n[0] - 4.0, n[1],        n[0] - 4.0, n[1] - 11.0};
  const double arm[] = {n[0] + 3.0, n[1] + 10.0, n[0] - 3.0, n[1] + 4.0};
  lw_picture_ring(p, LW_FILL_PAPER, n[0] + 3.0, n[1] + 17.0, 3.0);
  lw_picture_line(p, LW_PEN_CUT, body, 4);
  seen(p, arm, 2);
}

/* car X Y */
static void car(lw_picture *p, const double *n) {
  const double body[] = {n[0],        n[1] + 4.0,  n[0],        n[1] + 11.0, n[0] + 8.0,  n[1] + 12.0,
                         n[0] + 13.0, n[1] + 19.0, n[0] + 26.0, n[1] + 19.0, n[0] + 31.0, n[1] + 11.0,
                         n[0] + 36.0, n[1] + 10.0, n[0] + 36.0, n[1] + 4.0};
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_PAPER, body, 8);
  lw_picture_ring(p, LW_FILL_PAPER, n[0] + 8.0, n[1] + 4.0, 4.0);
  lw_picture_ring(p, LW_FILL_PAPER, n[0] + 28.0, n[1] + 4.0, 4.0);
}

/* pipe X Y */
static void pipe(lw_picture *p, const double *n) {
  lw_picture_ring(p, LW_FILL_PAPER, n[0], n[1], 4.0);
  lw_picture_ring(p, LW_FILL_INK, n[0], n[1], 1.6);
}

static void arrow(lw_picture *p, const double *n) {
  lw_picture_arrow(p, n[0], n[1], n[2], n[3]);
}

/* span X TO_X Y: how far apart */
static void span(lw_picture *p, const double *n) {
  double middle = (n[0] + n[1]) / 2.0;
  lw_picture_arrow(p, middle, n[2], n[0], n[2]);
  lw_picture_arrow(p, middle, n[2], n[1], n[2]);
}

/* chain X Y TO_X TO_Y: a boundary */
static void chain(lw_picture *p, const double *n) {
  lw_picture_line(p, LW_PEN_CHAIN, n, 2);
}

/* water X TO_X Y: its surface, and two lines below it */
static void water(lw_picture *p, const double *n) {
  for (int i = 0; i < 3; i++) {
    const double line[] = {n[0] + 6.0 * i, n[2] - 5.0 * i, n[1] - 6.0 * i, n[2] - 5.0 * i};
    if (line[2] > line[0]) lw_picture_line(p, i ? LW_PEN_FINE : LW_PEN_DASHED, line, 2);
  }
}

/* pool X TO_X: water let into the ground */
static void pool(lw_picture *p, const double *n) {
  double y = lw_picture_ground(p, n[0]);
  const double basin[] = {n[0], y, n[0] + 5.0, y - 14.0, n[1] - 5.0, y - 14.0, n[1], y};
  const double level[] = {n[0], n[1], y - 3.0, 0};
  lw_picture_area(p, LW_PEN_CUT, LW_FILL_PAPER, basin, 4);
  water(p, level);
}

/* waves X Y: what shakes */
static void waves(lw_picture *p, const double *n) {
  for (int i = 1; i <= 3; i++) {
    const double left[] = {n[0] - 5.0 * i, n[1] - 2.0 * i, n[0] - 5.0 * i - 2.0,
                           n[1] - 6.0,     n[0] - 5.0 * i, n[1] - 10.0};
    const double right[] = {n[0] + 5.0 * i, n[1] - 2.0 * i, n[0] + 5.0 * i + 2.0,
                            n[1] - 6.0,     n[0] + 5.0 * i, n[1] - 10.0};
    seen(p, left, 3);
    seen(p, right, 3);
  }
}

/* crack X Y: from the surface down */
static void crack(lw_picture *p, const double *n) {
  const double gap[] = {n[0] - 2.5, n[1],        n[0] + 1.0, n[1] - 10.0, n[0] - 1.0, n[1] - 18.0,
                        n[0] + 1.5, n[1] - 30.0, n[0] + 3.5, n[1] - 10.0, n[0] + 2.5, n[1]};
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_INK, gap, 6);
}

/* map X Y: a folded sheet with a hatched spot */
static void map(lw_picture *p, const double *n) {
  const double spot[] = {n[0] + 22.0, n[1] + 14.0, n[0] + 40.0, n[1] + 22.0,
                         n[0] + 36.0, n[1] + 34.0, n[0] + 20.0, n[1] + 30.0};
  lw_picture_box(p, LW_FILL_PAPER, n[0], n[1], n[0] + 60.0, n[1] + 46.0);
  for (double x = 20.0; x < 60.0; x += 20.0) {
    const double fold[] = {n[0] + x, n[1], n[0] + x, n[1] + 46.0};
    lw_picture_line(p, LW_PEN_FINE, fold, 2);
  }
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_TINT, spot, 4);
}

/* star X Y */
static void star(lw_picture *p, const double *n) {
  const double points[] = {n[0],        n[1] + 10.0, n[0] + 3.0, n[1] + 3.0,  n[0] + 10.0, n[1],
                           n[0] + 3.0,  n[1] - 3.0,  n[0],       n[1] - 10.0, n[0] - 3.0,  n[1] - 3.0,
                           n[0] - 10.0, n[1],        n[0] - 3.0, n[1] + 3.0};
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_TINT, points, 8);
}

/* tree X Y: with roots as wide as its crown */
static void tree(lw_picture *p, const double *n) {
  const double trunk[] = {n[0] - 2.0, n[1], n[0] + 2.0, n[1]};
  const double roots[] = {n[0] - 18.0, n[1] - 9.0, n[0], n[1] - 1.0, n[0] + 18.0, n[1] - 9.0};
  lw_picture_box(p, LW_FILL_TINT, trunk[0], n[1], trunk[2], n[1] + 30.0);
  lw_picture_ring(p, LW_FILL_PAPER, n[0], n[1] + 40.0, 16.0);
  seen(p, roots, 3);
}

/* flame X Y */
static void flame(lw_picture *p, const double *n) {
  const double outline[] = {n[0],        n[1],        n[0] - 8.0,  n[1] + 8.0, n[0] - 5.0,
                            n[1] + 16.0, n[0] - 2.0,  n[1] + 13.0, n[0] + 1.0, n[1] + 28.0,
                            n[0] + 8.0,  n[1] + 14.0, n[0] + 6.0,  n[1] + 4.0};
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_PAPER, outline, 7);
}

/* bag X Y */
static void bag(lw_picture *p, const double *n) {
  const double sack[] = {n[0] - 7.0, n[1],        n[0] + 7.0, n[1],        n[0] + 5.0, n[1] + 15.0,
                         n[0] + 8.0, n[1] + 20.0, n[0] - 8.0, n[1] + 20.0, n[0] - 5.0, n[1] + 15.0};
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_PAPER, sack, 6);
}

/* ribbon LENGTH: what hangs from thumb and finger, in millimetres, beside a ruler of 60 */
static void ribbon(lw_picture *p, const double *n) {
  static const double hand[] = {14, 88, 52, 88, 66, 80, 66, 74, 40, 74, 30, 66, 14, 66};
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_PAPER, hand, 7);
  lw_picture_box(p, LW_FILL_TINT, 58, 74 - n[0], 66, 74);
  for (int i = 0; i <= 6; i++) {
    const double tick[] = {84, 74.0 - 10.0 * i, i % 5 ? 90 : 96, 74.0 - 10.0 * i};
    lw_picture_line(p, LW_PEN_FINE, tick, 2);
  }
  static const double ruler[] = {84, 74, 84, 14};
  seen(p, ruler, 2);
}

/* thumb Y: it pushes into the bottom of a pit down to Y */
static void thumb(lw_picture *p, const double *n) {
  const double tip[] = {54,   88, 54,         n[0] + 8.0, 57,         n[0] + 2.0, 60,
                        n[0], 63, n[0] + 2.0, 66,         n[0] + 8.0, 66,         88};
  lw_picture_area(p, LW_PEN_SEEN, LW_FILL_PAPER, tip, 7);
  lw_picture_arrow(p, 80, 84, 80, 66);
}

const lw_picture_word lw_picture_of_things[] = {
    {"fence", 3, fence}, {"house", 2, house}, {"plant", 2, plant}, {"person", 2, person},
    {"sit", 2, sit},     {"car", 2, car},     {"pipe", 2, pipe},   {"arrow", 4, arrow},
    {"span", 3, span},   {"chain", 4, chain}, {"water", 3, water}, {"pool", 2, pool},
    {"waves", 2, waves}, {"crack", 2, crack}, {"map", 2, map},     {"star", 2, star},
    {"tree", 2, tree},   {"flame", 2, flame}, {"bag", 2, bag},     {"ribbon", 1, ribbon},
    {"thumb", 1, thumb}, {NULL, 0, NULL}};
