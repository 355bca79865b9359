/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_HANDBOOK_VALIDATION_H
#define LOWWALL_TESTS_HANDBOOK_VALIDATION_H

#include <lowwall/base.h>

/* docs/validation.md as the rows of tests/handbook/ and the library as it is make it. */
void validation_write(lw_text *out);

#endif
