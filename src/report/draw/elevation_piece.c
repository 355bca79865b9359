/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "elevation.h"
#include "hatch.h"

/* How a piece is drawn, and what a cut one is called. */

void lw_elevation_corners(const lw_box *b, lw_xy_mm corner[4]) {
  corner[0] = (lw_xy_mm){b->left_mm, b->bottom_mm};
  corner[1] = (lw_xy_mm){b->right_mm, b->bottom_mm};
  corner[2] = (lw_xy_mm){b->right_mm, b->top_mm};
  corner[3] = (lw_xy_mm){b->left_mm, b->top_mm};
}

void lw_elevation_piece(lw_drawing *paper, lw_piece_kind kind, const lw_box *box) {
  lw_xy_mm c[4];
  lw_elevation_corners(box, c);
  bool cut = kind == LW_PIECE_CUT || kind == LW_PIECE_MITRED;
  lw_drawing_area(paper, LW_PEN_NONE, kind == LW_PIECE_HALF ? LW_FILL_TINT : LW_FILL_PAPER, c, 4);
  if (kind == LW_PIECE_HALF) lw_drawing_hatch(paper, LW_HATCH_HALF, c, 4); /* a copier drops the grey */
  if (cut) lw_drawing_hatch(paper, LW_HATCH_BLOCK, c, 4);
  if (kind == LW_PIECE_HEAD || kind == LW_PIECE_HANDED) {
    lw_xy_mm falling[] = {c[3], c[1]}, rising[] = {c[0], c[2]};
    lw_drawing_line(paper, LW_PEN_FINE, falling, 2);
    if (kind == LW_PIECE_HEAD) lw_drawing_line(paper, LW_PEN_FINE, rising, 2);
  }
  lw_drawing_area(paper, LW_PEN_SEEN, LW_FILL_NONE, c, 4);
}

void lw_elevation_letter(int cut, char name[4]) {
  enum { LETTERS = 26 };
  if (cut < LETTERS)
    lw_print(name, 4, "%c", 'a' + cut);
  else
    lw_print(name, 4, "%c%c", 'a' + cut / LETTERS - 1, 'a' + cut % LETTERS);
}

bool lw_elevation_is_lettered(const lw_cut *cut) {
  return cut->kind == LW_CUT_CLOSER || cut->kind == LW_CUT_MITRED;
}

static bool of_kind(const lw_cut *cut, const lw_piece *piece) {
  if (piece->kind == LW_PIECE_CUT)
    return cut->kind == LW_CUT_CLOSER && fabs(cut->long_m - piece->length_m) < 0.0011;
  return cut->kind == LW_CUT_MITRED &&
         fmin(fabs(cut->long_m - piece->length_m), fabs(cut->short_m - piece->length_m)) < 0.0011;
}

bool lw_elevation_cut_name(const lw_elevation *e, const lw_piece *piece, int course, char name[4]) {
  bool base = course < e->order->plan.base_courses;
  if (piece->kind != LW_PIECE_CUT && piece->kind != LW_PIECE_MITRED) return false;
  for (int i = 0, letter = 0; i < e->order->cut_count; i++) {
    const lw_cut *cut = &e->order->cut[i];
    if (!lw_elevation_is_lettered(cut)) continue;
    lw_elevation_letter(letter++, name);
    if (cut->base_unit == base && of_kind(cut, piece)) return true;
  }
  return false;
}
