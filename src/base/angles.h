/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_ANGLES_H
#define LOWWALL_BASE_ANGLES_H

#define LW_PI 3.14159265358979323846
#define LW_HALF_PI (LW_PI / 2.0)
#define LW_QUARTER_PI (LW_PI / 4.0)

#endif
