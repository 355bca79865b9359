/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

#include "report/draw/sketch.h"

/* Words on a drawing are broken to lines at blanks that no measure is torn at. Every beginning of such words
 * stands in a block of its own size, so that the sanitizer sees a read past its end. */
Test(wrap, no_beginning_of_words_is_read_past_its_end) {
  static const char *const WORDS[] = {"push 138 lb/ft, 2 ft 7-1/2 in above 1 ft 0-3/4 in and 20 %",
                                      "3 courses of 200 mm at 19.5 kN/m3, 1:10, in 100, \xC2\xB0 5 ft 3",
                                      "1 m", " ft 1", "8 ft "};
  for (size_t i = 0; i < sizeof WORDS / sizeof *WORDS; i++) {
    for (size_t length = 0; length <= strlen(WORDS[i]); length++) {
      lw_drawing paper = {0};
      char *copy = malloc(length + 1);
      cr_assert_not_null(copy);
      memcpy(copy, WORDS[i], length);
      copy[length] = '\0';
      (void)lw_sketch_wrap(&paper, (lw_xy_mm){0.0, 0.0}, 12.0, 3.0, false, copy);
      cr_expect(!paper.failed);
      lw_drawing_free(&paper);
      free(copy);
    }
  }
}
