/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FORCE_WORDS_H
#define LOWWALL_REPORT_FORCE_WORDS_H

#include <lowwall/report.h>

/* A force in words: "course 2", "push of the soil"; and in a key: "course-2", "thrust". */
void lw_force_label(const lw_result *result, const lw_force *force, char *out, size_t size);
void lw_force_slug(const lw_result *result, const lw_force *force, char *out, size_t size);
/* The level that moments of a free body are about: 0, or the underside of the pad. */
double lw_free_body_foot(const lw_result *result, const lw_free_body *body);

#endif
