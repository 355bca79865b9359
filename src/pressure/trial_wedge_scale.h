/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_TRIAL_WEDGE_SCALE_H
#define LOWWALL_PRESSURE_TRIAL_WEDGE_SCALE_H

#include <lowwall/pressure.h>

/** The critical wedge of one plane from that of another with the same angles and friction: both are the same
 *  figure at another size, so the failure plane stays and weights follow height, unit weights and load.
 *  out   scaled   unchanged when false
 *  gives true when both planes are alike and each is plain, or level, unshaken and so but for its water
 *  note  1 Where ground is level the water's level cuts a similar figure off the wedge: it may stand at any
 *          depth. */
bool lw_trial_wedge_scale(const lw_plane *from, const lw_trial_wedge *wedge, const lw_plane *to,
                          lw_trial_wedge *scaled);

#endif
