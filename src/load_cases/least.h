/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_LEAST_H
#define LOWWALL_LOAD_CASES_LEAST_H

#include <lowwall/checks.h>

/** See lw_least. */
lw_least lw_situations_least(const lw_situations *situations);

#endif
