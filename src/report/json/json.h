/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_JSON_JSON_H
#define LOWWALL_REPORT_JSON_JSON_H

#include "set.h"

/* The parts of the document, in their order. */
void lw_json_verdict(json_t *root, const lw_result *result);
void lw_json_influence(json_t *root, const lw_result *result);
void lw_json_situations(json_t *root, const lw_result *result);
void lw_json_construction(json_t *root, const lw_result *result); /* and the narrow bed */
void lw_json_water(json_t *root, const lw_result *result);
void lw_json_trench(json_t *root, const lw_result *result);
void lw_json_given(json_t *root, const lw_result *result);
void lw_json_advice(json_t *root, const lw_result *result);
void lw_json_factor_set(json_t *root, const lw_result *result);
void lw_json_factor_sets(json_t *root, const lw_result *result);
void lw_json_method(json_t *root, const lw_result *result);
void lw_json_sources(json_t *root, const lw_result *result);
void lw_json_sources_cited(json_t *root); /* and what else the document cites, when all of it is there */
void lw_json_slip(json_t *situation, const lw_result *result, const lw_situation *s);
void lw_json_tier(json_t *root, const lw_result *result);
void lw_json_fence(json_t *root, const lw_result *result);
void lw_json_figures(json_t *root, const lw_result *result);
void lw_json_faults(json_t *root, const lw_faults *faults);

#endif
