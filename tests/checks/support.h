/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_CHECKS_SUPPORT_H
#define LOWWALL_TESTS_CHECKS_SUPPORT_H

#include <lowwall/result.h>

/* A wall of `item=value` arguments, the last one NULL, run; the test fails on a fault. The caller frees. */
lw_result *checks_test_run(const char *const *arguments);

#define RUN(...) checks_test_run((const char *const[]){__VA_ARGS__, NULL})

const lw_situation *checks_test_situation(const lw_result *result, lw_situation_name name);

/* The check of a kind at the base, or NULL. */
/* A check of a situation, whole; it stays until 1024 more were asked for. */
const lw_check *checks_test_check(const lw_situation *situation, int number);
const lw_check *checks_test_at_base(const lw_situation *situation, lw_check_kind kind);

/* Equal to a share of the larger of the two. */
bool checks_test_near(double a, double b, double share);

/* Sum of one kind of force on a free body. */
double checks_test_vertical(const lw_free_body *body, lw_force_kind kind);
double checks_test_horizontal(const lw_free_body *body, lw_force_kind kind);

#endif
