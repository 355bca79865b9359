/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "on_paper.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <string.h>

#include "report/draw/drawing.h"
#include "markup.h"

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

static void expect_marks_on_page(const lw_drawing *d, const char *wall) {
  for (size_t i = 0; i < d->spot_count; i++) {
    const lw_xy_mm *s = &d->spot[i];
    bool on =
        s->x_mm > -0.01 && s->x_mm < d->width_mm + 0.01 && s->y_mm > -0.01 && s->y_mm < d->height_mm + 0.01;
    cr_expect(on, "a mark at %.1f, %.1f leaves the page of %.1f by %.1f: %s", s->x_mm, s->y_mm, d->width_mm,
              d->height_mm, wall);
    if (!on) return;
  }
}

void expect_on_paper(const lw_drawing *drawing, const char *name) {
  lw_text svg = {0};
  expect_words_apart(drawing, name);
  expect_marks_on_page(drawing, name);
  cr_expect_eq(lw_drawing_svg(drawing, &svg), LW_OK, "%s", name);
  cr_expect(svg.data != NULL && markup_is_closed(svg.data), "not well-formed: %s", name);
  cr_expect(svg.data != NULL && strstr(svg.data, "<title id=\"title\"></title>") == NULL, "no title: %s",
            name);
  cr_expect(svg.data != NULL && strstr(svg.data, "<desc id=\"description\"></desc>") == NULL, "%s", name);
  cr_expect(svg.data != NULL && strstr(svg.data, "<text ") != NULL, "no words: %s", name);
  lw_text_free(&svg);
}

bool on_paper_says(const lw_drawing *drawing, const char *words) {
  lw_text all = {0};
  for (size_t i = 0; i < drawing->mark_count; i++)
    if (drawing->mark[i].kind == LW_MARK_WORDS)
      lw_text_addf(&all, "%s ", drawing->words.data + drawing->mark[i].words);
  bool says = all.data != NULL && strstr(all.data, words) != NULL;
  lw_text_free(&all);
  return says;
}
