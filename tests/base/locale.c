/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _POSIX_C_SOURCE 200809L
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <locale.h>
#include <string.h>

#include <lowwall/base.h>

/* Some system locale with a decimal comma, for this thread only; false when the system has none. */
static bool enter_comma_locale(locale_t *comma) {
  static const char *const names[] = {"de_DE.UTF-8", "de_DE.utf8", "de_DE", "fr_FR.UTF-8", "nl_NL.UTF-8"};
  for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
    *comma = newlocale(LC_ALL_MASK, names[i], (locale_t)0);
    if (*comma != (locale_t)0) {
      uselocale(*comma);
      return true;
    }
  }
  return false;
}

Test(base, a_decimal_comma_in_the_hosts_locale_changes_nothing) {
  locale_t comma;
  if (!enter_comma_locale(&comma)) {
    cr_skip("no locale with a decimal comma on this system");
  }
  double value = 0.0;
  cr_expect(lw_number_read("0.12345678901234567", 19, &value));
  cr_expect(value > 0.12 && value < 0.13);
  char number[64];
  lw_number_print(number, sizeof number, 1e20 + 0.5, 1);
  cr_expect(strchr(number, ',') == NULL);
  lw_text text = {0};
  lw_text_addf(&text, "%.3f", 2.385);
  cr_expect(eq(str, text.data, "2.385"));
  lw_text_free(&text);
  cr_expect(eq(str, localeconv()->decimal_point, ","), "the host's own locale is still in force");
  uselocale(LC_GLOBAL_LOCALE);
  freelocale(comma);
}
