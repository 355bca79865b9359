/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SOIL_METHOD_H
#define LOWWALL_SOIL_METHOD_H

#include <lowwall/wall.h>

/** The switches of a complete case. */
void lw_method_build(const lw_case *c, lw_method *method);

#endif
