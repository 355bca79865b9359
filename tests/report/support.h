/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_SUPPORT_H
#define TESTS_REPORT_SUPPORT_H

#include <lowwall/report.h>

#include <jansson.h>

/* A wall for the reports: a starter sheet (or NULL) and what is changed on it. */
typedef struct report_wall {
  const char *name, *starter;
  const char *change[20];
} report_wall;

/** The i-th wall, or NULL past the last. They differ in all that shapes a report. */
const report_wall *report_test_wall(size_t index);

/** Its result, remedies and questions included; the test fails on a fault. Owned by the support. */
const lw_result *report_test_result(const report_wall *wall);
/** The same for the wall of that name. */
const lw_result *report_test_named(const char *name);

/** Its JSON, read back; the caller gives it up. */
json_t *report_test_json(const lw_result *result);

/** Called for every value within a JSON text: its parent (an object or a list), its path with the numbers of
 *  lists left out ("situations[].checks[].has"), and itself. */
typedef void (*report_visit)(void *context, const json_t *parent, const char *path, const json_t *value);
void report_test_walk(const json_t *value, const json_t *parent, const char *path, report_visit visit,
                      void *context);

#endif
