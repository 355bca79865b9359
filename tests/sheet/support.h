/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_SHEET_SUPPORT_H
#define TESTS_SHEET_SUPPORT_H

#include <lowwall/sheet.h>

/* The built-in tables, read once a test. */
const lw_tables *sheet_test_tables(void);

/* A whole file; the caller frees text. An empty text when it cannot be read. */
lw_text sheet_test_file(const char *path);

/* Read and complete an upright sheet; faults are collected and not judged. */
lw_status sheet_test_settled(const char *sheet, lw_case *c, lw_faults *faults);

/* A case of `item=value` arguments, the last one NULL, complete; the test fails on a fault. */
lw_case sheet_test_case(const char *const *arguments);

/* Are two cases the same wall? Where a value stood on its sheet does not matter. */
bool sheet_test_same(const lw_case *a, const lw_case *b, char *difference, size_t size);

#define CASE(...) sheet_test_case((const char *const[]){__VA_ARGS__, NULL})

#endif
