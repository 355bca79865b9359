/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_TAPER_H
#define LOWWALL_SHEET_TAPER_H

#include <lowwall/sheet.h>

/** The length of a block at its rear as a share of that at its face, the mean share of the wall's run that a
 *  block takes up between the two, and its volume.
 *  in    c        1 where `block tail length` or `block length` is not there: a full rectangle
 *        depth_m  front to back of the block */
double lw_case_tail_share(const lw_case *c);
double lw_case_mean_share(const lw_case *c);
double lw_case_block_m3(const lw_case *c, double depth_m);

#endif
