/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Tables that were put in place of the built-in ones are told, with how much of them differs. */
#include <criterion/criterion.h>

#include <string.h>

#include "tables/replaced.h"

static void note_of(const char *file, const char *built_in, char *note, size_t size) {
  lw_text a = {0}, b = {0};
  lw_text_add(&a, file);
  lw_text_add(&b, built_in);
  note[0] = '\0';
  lw_replaced_note("limits", &a, &b, note, size);
  lw_text_free(&a);
  lw_text_free(&b);
}

Test(tables, what_was_replaced_is_told_by_rows_and_hash) {
  static const char built_in[] = "id,height\nA,0.5\nB,1.0\nC,1.2\n";
  static const struct {
    const char *file, *told;
  } rows[] = {
      {"id,height\nA,0.5\nB,1.0\nC,1.2\n", "limits.csv (0 rows changed, hash "},
      {"id,height\r\nA,0.5\r\nB,1.0\r\nC,1.2\r\n", "limits.csv (0 rows changed, hash "},
      {"id,height\nA,0.5\nB,1.5\nC,1.2\n", "limits.csv (1 row changed, hash "},
      {"id,height\nA,0.5\nB,1.0\n", "limits.csv (1 row changed, hash "},
      {"id,height\nA,0.5\nB,1.0\nC,1.2\nD,2.0\nE,3.0\n", "limits.csv (2 rows changed, hash "},
  };
  char note[160];
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    note_of(rows[i].file, built_in, note, sizeof note);
    cr_expect_eq(strncmp(note, rows[i].told, strlen(rows[i].told)), 0, "%s", note);
  }
  /* How the SHA-256 of no bytes begins; from memory. */
  note_of("", built_in, note, sizeof note);
  cr_expect_not_null(strstr(note, "4 rows changed, hash e3b0c442)"), "%s", note);
}
