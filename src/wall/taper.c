/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "taper.h"

#include <math.h>

/* Blocks that taper: a course is full at its face and leaves gaps between the tails. */

void lw_part_taper(lw_part *part, double tail_share, double fill_kn_per_m3) {
  double depth = part->rear_m - part->front_m, box = part->area_m2, gaps = 0.5 * (1.0 - tail_share) * box;
  double block = box - gaps, block_x = depth * (1.0 + 2.0 * tail_share) / (3.0 * (1.0 + tail_share));
  double stone = part->unit_weight_kn_per_m3 * block, fill = fill_kn_per_m3 * gaps;
  /* The gaps are a triangle in plan: nothing at the face, widest at the rear. */
  part->x_m = part->front_m + (stone * block_x + fill * depth * 2.0 / 3.0) / (stone + fill);
  part->weight_kn_per_m = stone + fill;
  part->area_m2 = fill > 0.0 ? box : block;
  part->unit_weight_kn_per_m3 = part->weight_kn_per_m / part->area_m2;
}

/* Share of the run that a course takes up at x. A cap has none of the blocks' tails. */
static double share_at(const lw_part *part, double tail_share, double x_m) {
  if (part->kind != LW_PART_COURSE) return 1.0;
  return 1.0 - (1.0 - tail_share) * (x_m - part->front_m) / (part->rear_m - part->front_m);
}

/* Joints are laid broken, so that a gap of one course never lies over a gap of the other: what both miss is
 * missing from the contact. Where the gaps take all of the run nothing bears further back. */
void lw_section_taper(const lw_part *lower, const lw_part *upper, lw_section *above) {
  double front = upper->front_m + above->contact_front_m, rear = upper->front_m + above->contact_rear_m;
  double tail = above->tail_share;
  lw_taper up = {share_at(upper, tail, front), share_at(upper, tail, rear)};
  lw_taper low = {share_at(lower, tail, front), share_at(lower, tail, rear)};
  lw_taper both = {up.front + low.front - 1.0, up.rear + low.rear - 1.0};
  if (both.front > 0.0 && both.rear < 0.0) {
    double kept = both.front / (both.front - both.rear);
    above->contact_rear_m = above->contact_front_m + kept * (rear - front);
    up.rear = up.front + kept * (up.rear - up.front);
    both.rear = 0.0;
  }
  above->contact = (lw_taper){fmax(both.front, 0.0), fmax(both.rear, 0.0)};
  above->underside = above->tails_filled ? (lw_taper){1.0, 1.0} : up;
}
