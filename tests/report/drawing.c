/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The drawn section: every wall fits its page, no words stand on others, the SVG is well-formed. */
#include "../checks/random_wall.h"

#include <lowwall/drawing.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { WALLS = 120 };
static const double WIDTHS_MM[] = {95.0, 180.0};

static const lw_tables *tables(void) {
  static lw_tables *read;
  if (!read) read = malloc(sizeof *read);
  cr_assert_not_null(read);
  cr_assert_eq(lw_tables_read(NULL, read, NULL), LW_OK);
  return read;
}

static bool meet(const lw_box *a, const lw_box *b) {
  return a->left_mm < b->right_mm && b->left_mm < a->right_mm && a->top_mm < b->bottom_mm &&
         b->top_mm < a->bottom_mm;
}

static void expect_words_apart(const lw_drawing *d, const char *wall) {
  for (size_t i = 0; i < d->mark_count; i++) {
    if (d->mark[i].kind != LW_MARK_WORDS) continue;
    lw_box a = lw_drawing_box(d, &d->mark[i]);
    for (size_t k = i + 1; k < d->mark_count; k++) {
      if (d->mark[k].kind != LW_MARK_WORDS) continue;
      lw_box b = lw_drawing_box(d, &d->mark[k]);
      cr_expect_not(meet(&a, &b), "\"%s\" stands on \"%s\": %s", d->words.data + d->mark[i].words,
                    d->words.data + d->mark[k].words, wall);
    }
    cr_expect(a.left_mm >= 0.0 && a.right_mm <= d->width_mm && a.top_mm >= 0.0 && a.bottom_mm <= d->height_mm,
              "\"%s\" leaves the page: %s", d->words.data + d->mark[i].words, wall);
  }
}

static void expect_on_page(const lw_drawing *d, const char *wall) {
  for (size_t i = 0; i < d->spot_count; i++) {
    const lw_xy_mm *s = &d->spot[i];
    bool on =
        s->x_mm > -0.01 && s->x_mm < d->width_mm + 0.01 && s->y_mm > -0.01 && s->y_mm < d->height_mm + 0.01;
    cr_expect(on, "a mark at %.1f, %.1f leaves the page of %.1f by %.1f: %s", s->x_mm, s->y_mm, d->width_mm,
              d->height_mm, wall);
    if (!on) return;
  }
}

Test(drawing, every_wall_fits_its_page_and_no_words_stand_on_others) {
  static lw_result result;
  static char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  dice d = {20261125};
  int drawn = 0;
  for (int i = 0; i < WALLS; i++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, tables(), &result, NULL), LW_OK);
    random_wall_name(&wall, name, sizeof name);
    for (size_t w = 0; w < sizeof WIDTHS_MM / sizeof *WIDTHS_MM; w++) {
      lw_drawing drawing = {0};
      lw_error error = {0};
      lw_status status = lw_draw_section(&result, WIDTHS_MM[w], &drawing, &error);
      cr_expect_eq(status == LW_OK, result.wall.section.known, "%s: %s", error.text, name);
      if (status == LW_OK) {
        drawn++;
        expect_words_apart(&drawing, name);
        expect_on_page(&drawing, name);
      }
      lw_drawing_free(&drawing);
    }
  }
  cr_expect(lt(int, WALLS, drawn));
}
