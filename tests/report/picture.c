/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The PNG of a section against a stored one. Letters are left out of both, so that no font decides; where
 * words stand there must be ink. The grey of squares is compared, not each dot: edges may be smoothed
 * otherwise. With LW_PICTURE=FILE today's picture is written there; who has looked at it puts it in place. */
#include <lowwall/report.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "report/draw/drawing.h"
#include "walls.h"

Test(picture, without_cairo_the_png_says_what_to_install) {
  lw_drawing d = {.width_mm = 20.0, .height_mm = 20.0};
  lw_text out = {0};
  lw_error error = {0};
  lw_status status = lw_drawing_png(&d, 4.0, &out, &error);
  cr_expect_eq(status == LW_OK, lw_drawing_has_paper());
  if (!lw_drawing_has_paper()) cr_expect(strstr(error.text, "install") != NULL, "%s", error.text);
  lw_text_free(&out);
}

#ifdef LW_HAVE_CAIRO
#include <cairo.h>

static const char wall[] =
    "course count=5;block height=190 mm;block depth=433 mm;setback=17 mm;cap height=61 mm;cap depth=290 mm;"
    "cap overhang=31 mm;pad thickness=143 mm;pad width=790 mm;soil 1 name=clean sand;drain outlets=1;"
    "stone width=310 mm;stone filter=cloth;ground slope=1:9;boundary distance=1.4 m";
static const char stored[] = "tests/report/section.png";
static const double DOTS_PER_MM = 4.0;

typedef struct source {
  const lw_text *bytes;
  size_t at;
} source;

static cairo_status_t give(void *from, unsigned char *bytes, unsigned int count) {
  source *s = from;
  if (s->bytes->length - s->at < count) return CAIRO_STATUS_READ_ERROR;
  memcpy(bytes, s->bytes->data + s->at, count);
  s->at += count;
  return CAIRO_STATUS_SUCCESS;
}

/* The drawing of the wall, without words or without what is cut. */
static void draw(lw_drawing *d, bool words, bool masonry) {
  size_t kept = 0;
  cr_assert_eq(lw_draw_section(wall_of(wall), 180.0, d, NULL), LW_OK);
  for (size_t i = 0; i < d->mark_count; i++) {
    bool keep = (words || d->mark[i].kind != LW_MARK_WORDS) &&
                (masonry || d->mark[i].kind != LW_MARK_AREA || d->mark[i].pen != LW_PEN_CUT);
    if (keep) d->mark[kept++] = d->mark[i];
  }
  d->mark_count = kept;
}

static cairo_surface_t *picture(const lw_drawing *d) {
  lw_text png = {0};
  lw_error error = {0};
  cr_assert_eq(lw_drawing_png(d, DOTS_PER_MM, &png, &error), LW_OK, "%s", error.text);
  source from = {&png, 0};
  cairo_surface_t *surface = cairo_image_surface_create_from_png_stream(give, &from);
  cr_assert_eq(cairo_surface_status(surface), CAIRO_STATUS_SUCCESS);
  lw_text_free(&png);
  return surface;
}

/* Grey of a rectangle of dots, 0 black to 1 white. */
static double grey(cairo_surface_t *s, int left, int top, int right, int bottom) {
  const unsigned char *data = cairo_image_surface_get_data(s);
  int wide = cairo_image_surface_get_width(s), high = cairo_image_surface_get_height(s), count = 0;
  double sum = 0.0;
  for (int y = top; y < bottom && y < high; y++)
    for (int x = left; x < right && x < wide; x++, count++) {
      uint32_t dot;
      memcpy(&dot, data + (size_t)y * (size_t)cairo_image_surface_get_stride(s) + 4 * (size_t)x, sizeof dot);
      sum += (double)(dot & 0xff) / 255.0;
    }
  return count > 0 ? sum / count : 1.0;
}

/* The greatest difference of grey of two squares; 1 where the pictures have not one size. */
static double difference(cairo_surface_t *a, cairo_surface_t *b) {
  enum { SQUARE = 8 };
  int wide = cairo_image_surface_get_width(a), high = cairo_image_surface_get_height(a);
  double most = 0.0;
  if (cairo_image_surface_get_width(b) != wide || cairo_image_surface_get_height(b) != high) return 1.0;
  for (int y = 0; y < high; y += SQUARE)
    for (int x = 0; x < wide; x += SQUARE)
      most = fmax(most, fabs(grey(a, x, y, x + SQUARE, y + SQUARE) - grey(b, x, y, x + SQUARE, y + SQUARE)));
  return most;
}

Test(picture, the_section_looks_as_the_stored_one) {
  static const double ALIKE = 0.08;
  lw_drawing whole = {0}, without = {0};
  draw(&whole, false, true);
  draw(&without, false, false);
  const char *look = getenv("LW_PICTURE");
  cairo_surface_t *today = picture(&whole), *bare = picture(&without);
  if (look) cr_expect_eq(cairo_surface_write_to_png(today, look), CAIRO_STATUS_SUCCESS, "%s", look);
  cairo_surface_t *before = cairo_image_surface_create_from_png(stored);
  cr_assert_eq(cairo_surface_status(before), CAIRO_STATUS_SUCCESS, "%s cannot be read", stored);
  double same = difference(before, today), other = difference(before, bare);
  cr_expect(lt(dbl, same, ALIKE), "the section is no longer the stored picture");
  /* The comparison sees when the edges of the wall are gone. */
  cr_expect(lt(dbl, 2.0 * ALIKE, other));
  cairo_surface_destroy(before);
  cairo_surface_destroy(today);
  cairo_surface_destroy(bare);
  lw_drawing_free(&whole);
  lw_drawing_free(&without);
}

Test(picture, words_leave_ink_where_they_stand) {
  lw_drawing with = {0}, without = {0};
  draw(&with, true, true);
  draw(&without, false, true);
  cairo_surface_t *lettered = picture(&with), *blank = picture(&without);
  int words = 0;
  for (size_t i = 0; i < with.mark_count; i++) {
    if (with.mark[i].kind != LW_MARK_WORDS) continue;
    lw_box b = lw_drawing_box(&with, &with.mark[i]);
    int left = (int)(b.left_mm * DOTS_PER_MM), top = (int)(b.top_mm * DOTS_PER_MM);
    int right = (int)(b.right_mm * DOTS_PER_MM) + 1, bottom = (int)(b.bottom_mm * DOTS_PER_MM) + 1;
    double ink = grey(blank, left, top, right, bottom) - grey(lettered, left, top, right, bottom);
    cr_expect(lt(dbl, 0.01, ink), "no ink of \"%s\"", with.words.data + with.mark[i].words);
    words++;
  }
  cr_expect(lt(int, 20, words));
  cairo_surface_destroy(lettered);
  cairo_surface_destroy(blank);
  lw_drawing_free(&with);
  lw_drawing_free(&without);
}
#endif
