/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_LINES_H
#define LOWWALL_BASE_LINES_H

/** How far back a line from a foot up into the ground comes out of it, where the ground rises without end.
 *  in    depth_m   of the foot below the ground above it      m   0 or more
 *        run       of the line, back for each metre up        1   0 or more
 *        rise      of the ground, up for each metre back      1   any
 *  gives m; INFINITY where the ground is as steep as the line */
double lw_line_out(double depth_m, double run, double rise);

/** The same where the ground is level from so far back on.
 *  in    bend_m   m   0 or more; INFINITY: it rises without end */
double lw_line_out_bent(double depth_m, double run, double rise, double bend_m);

#endif
