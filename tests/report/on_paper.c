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

/* Letters may fill their box or not: a line along its edge is no line through them. */
static lw_box letters_of(const lw_drawing *d, const lw_mark *words) {
  static const double EDGE_MM = 0.1;
  lw_box b = lw_drawing_box(d, words);
  return (lw_box){b.left_mm + EDGE_MM, b.top_mm + EDGE_MM, b.right_mm - EDGE_MM, b.bottom_mm - EDGE_MM};
}

/* Inside of an area with corners that all turn the same way. */
static bool inside(const lw_drawing *d, const lw_mark *area, double x, double y) {
  int left = 0, right = 0;
  for (size_t i = 0; i < area->count; i++) {
    lw_xy_mm a = d->spot[area->first + i], b = d->spot[area->first + (i + 1) % area->count];
    double side = (b.x_mm - a.x_mm) * (y - a.y_mm) - (b.y_mm - a.y_mm) * (x - a.x_mm);
    left += side > 0.0 ? 1 : 0;
    right += side < 0.0 ? 1 : 0;
  }
  return left == 0 || right == 0;
}

/* The paper laid under words: how many marks there were before it; 0: none. */
static size_t paper_under(const lw_drawing *d, size_t words, const lw_box *b) {
  for (size_t i = words; i > 0; i--) {
    const lw_mark *m = &d->mark[i - 1];
    if (m->kind == LW_MARK_AREA && m->fill == LW_FILL_PAPER && inside(d, m, b->left_mm, b->top_mm) &&
        inside(d, m, b->right_mm, b->top_mm) && inside(d, m, b->left_mm, b->bottom_mm) &&
        inside(d, m, b->right_mm, b->bottom_mm))
      return i;
  }
  return 0;
}

/* Whether a line lies inside a box somewhere, by halving it. */
static bool line_meets(const lw_box *box, lw_xy_mm a, lw_xy_mm b) {
  static const double SMALL_MM = 0.05;
  lw_box own = {a.x_mm < b.x_mm ? a.x_mm : b.x_mm, a.y_mm < b.y_mm ? a.y_mm : b.y_mm,
                a.x_mm < b.x_mm ? b.x_mm : a.x_mm, a.y_mm < b.y_mm ? b.y_mm : a.y_mm};
  if (own.left_mm >= box->right_mm || own.right_mm <= box->left_mm || own.top_mm >= box->bottom_mm ||
      own.bottom_mm <= box->top_mm)
    return false;
  if (own.right_mm - own.left_mm < SMALL_MM || own.bottom_mm - own.top_mm < SMALL_MM) return true;
  lw_xy_mm middle = {0.5 * (a.x_mm + b.x_mm), 0.5 * (a.y_mm + b.y_mm)};
  return line_meets(box, a, middle) || line_meets(box, middle, b);
}

static bool mark_meets(const lw_drawing *d, const lw_mark *m, const lw_box *box) {
  size_t sides = m->kind == LW_MARK_AREA ? m->count : m->count - 1;
  for (size_t i = 0; i < sides; i++)
    if (line_meets(box, d->spot[m->first + i], d->spot[m->first + (i + 1) % m->count])) return true;
  return false;
}

/* Paper under words hides a hatch; only the circle of a number may hide a line, which goes on behind it. */
static void expect_no_line_through_words(const lw_drawing *d, const char *wall) {
  for (size_t i = 0; i < d->mark_count; i++) {
    if (d->mark[i].kind != LW_MARK_WORDS) continue;
    lw_box box = letters_of(d, &d->mark[i]);
    size_t hidden = paper_under(d, i, &box);
    bool circle = hidden > 0 && d->mark[hidden - 1].pen != LW_PEN_NONE;
    for (size_t k = 0; k < d->mark_count; k++) {
      const lw_mark *m = &d->mark[k];
      bool seen = m->kind != LW_MARK_WORDS && (m->pen != LW_PEN_NONE || m->fill == LW_FILL_INK);
      if (!seen || (k < hidden && (m->shading || circle)) || !mark_meets(d, m, &box)) continue;
      cr_expect(false, "a line of pen %d goes through \"%s\" at %.1f, %.1f: %s", m->pen,
                d->words.data + d->mark[i].words, box.left_mm, box.top_mm, wall);
      return;
    }
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

/* A line that ends in a figure is not followed by one that begins with its unit. */
static void expect_units_with_figures(const lw_drawing *d, const char *wall) {
  static const char *const UNITS[] = {"m",  "mm", "kPa", "kN/m", "kN/m3", "deg",
                                      "ft", "in", "psf", "pcf",  "lb/ft"};
  for (size_t i = 0; i + 1 < d->mark_count; i++) {
    const lw_mark *above = &d->mark[i], *below = above + 1;
    if (above->kind != LW_MARK_WORDS || below->kind != LW_MARK_WORDS || above->anchor != LW_ANCHOR_START ||
        d->spot[above->first].x_mm != d->spot[below->first].x_mm)
      continue;
    const char *before = d->words.data + above->words, *after = d->words.data + below->words;
    size_t length = strlen(before), unit = strcspn(after, " ,;.:)");
    for (size_t k = 0; k < sizeof UNITS / sizeof *UNITS && length > 0; k++)
      cr_expect_not(before[length - 1] >= '0' && before[length - 1] <= '9' && strlen(UNITS[k]) == unit &&
                        strncmp(after, UNITS[k], unit) == 0,
                    "\"%s\" and \"%s\" are torn apart: %s", before, after, wall);
  }
}

void expect_on_paper(const lw_drawing *drawing, const char *name) {
  lw_text svg = {0};
  expect_words_apart(drawing, name);
  expect_no_line_through_words(drawing, name);
  expect_units_with_figures(drawing, name);
  expect_marks_on_page(drawing, name);
  cr_expect_eq(lw_drawing_svg(drawing, &svg), LW_OK, "%s", name);
  cr_expect(svg.data != NULL && markup_is_closed(svg.data), "not well-formed: %s", name);
  cr_expect(svg.data != NULL && strstr(svg.data, "<title id=\"title\"></title>") == NULL, "no title: %s",
            name);
  cr_expect(svg.data != NULL && strstr(svg.data, "<desc id=\"description\"></desc>") == NULL, "%s", name);
  cr_expect(svg.data != NULL && strstr(svg.data, "<text ") != NULL, "no words: %s", name);
  lw_text_free(&svg);
}

/* All words of so many letters or more, joined however they are broken into lines. */
static void add_words(const lw_drawing *drawing, size_t least, lw_text *all) {
  for (size_t i = 0; i < drawing->mark_count; i++) {
    const char *words = drawing->words.data + drawing->mark[i].words;
    if (drawing->mark[i].kind == LW_MARK_WORDS && strlen(words) >= least) lw_text_addf(all, "%s ", words);
  }
}

/* Behind a figure and before no letter. */
static const char *metric_in(const char *all) {
  static const char *const UNITS[] = {" m", " mm", " cm", " kg", " m3"};
  static const char *const NEVER[] = {"kN", "kPa", "metre", "in mm"};
  for (size_t i = 0; i < sizeof NEVER / sizeof *NEVER; i++)
    if (strstr(all, NEVER[i])) return strstr(all, NEVER[i]);
  for (size_t i = 0; i < sizeof UNITS / sizeof *UNITS; i++)
    for (const char *at = strstr(all + 1, UNITS[i]); at; at = strstr(at + 1, UNITS[i])) {
      char next = at[strlen(UNITS[i])];
      bool letter = (next >= 'a' && next <= 'z') || (next >= 'A' && next <= 'Z');
      if (!letter && at[-1] >= '0' && at[-1] <= '9') return at;
    }
  return NULL;
}

void expect_no_metric(const lw_drawing *drawing, const char *name) {
  lw_text all = {0};
  add_words(drawing, 3, &all); /* shorter ones are names of pegs and cut pieces */
  lw_text_addf(&all, "%s %s %s ", drawing->title.data, drawing->description.data,
               drawing->figure.data ? drawing->figure.data : "");
  cr_assert_not_null(all.data);
  const char *found = metric_in(all.data);
  cr_expect(found == NULL, "\"%.60s\" is metric: %s",
            found ? (found - all.data > 20 ? found - 20 : all.data) : "", name);
  lw_text_free(&all);
}

bool on_paper_says(const lw_drawing *drawing, const char *words) {
  lw_text all = {0};
  add_words(drawing, 0, &all);
  bool says = all.data != NULL && strstr(all.data, words) != NULL;
  lw_text_free(&all);
  return says;
}
