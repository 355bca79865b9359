/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pieces.h"

#include <assert.h>
#include <string.h>

#include "report/forms.h"

/* How the first screen keeps its length: a part after the other gives up its least grave pieces. */

/* Said below a part of which something is left out. */
static const char *const MORE[LW_SCREEN_PARTS] = {[LW_SCREEN_REMEDIES] = "and %d more",
                                                  [LW_SCREEN_CHECKS] = "and %d more, none graver",
                                                  [LW_SCREEN_ASSUMED] = "and %d more",
                                                  [LW_SCREEN_CAUTIONS] = "and %d more"};

/* Who gives up first: of its pieces that go so easily, until so many are left to the part. */
static const struct {
  lw_screen_part part;
  int least, gives;
} GIVES_UP[] = {
    {LW_SCREEN_ASSUMED, 4, 1},
    {LW_SCREEN_REMEDIES, 2, 1},
    {LW_SCREEN_ANSWER, 0, 2},
    {LW_SCREEN_ASSUMED, 3, 1},
    {LW_SCREEN_CHECKS, 10, LW_GIVES_EASILY},
    {LW_SCREEN_CAUTIONS, 4, 1},
    {LW_SCREEN_CHECKS, 6, LW_GIVES_EASILY},
    {LW_SCREEN_ASSUMED, 2, 1},
    {LW_SCREEN_COSTS, 2, 1},
    {LW_SCREEN_ANSWER, 0, 1},
    {LW_SCREEN_REMEDIES, 1, 1},
    {LW_SCREEN_CAUTIONS, 0, 1},
    {LW_SCREEN_ASSUMED, 1, 1},
    {LW_SCREEN_COSTS, 1, 1},
    {LW_SCREEN_CHECKS, 6, 1},
    {LW_SCREEN_ASKING, 0, 1},
    {LW_SCREEN_COSTS, 0, 1},
    {LW_SCREEN_REMEDIES, 0, 1},
    {LW_SCREEN_CHECKS, 0, 1},
};

static bool begins_below_a_blank(lw_screen_part part) {
  return part != LW_SCREEN_ANSWER && part != LW_SCREEN_MARKS;
}

void lw_screen_begin(lw_screen *screen, const lw_text_style *style, lw_units units) {
  memset(screen, 0, sizeof *screen);
  screen->page = (lw_page){.out = &screen->words, .style = *style, .units = units};
  screen->page.style.columns = LW_SCREEN_COLUMNS;
  screen->page.keeps = style->as != LW_AS_TEXT;
}

static int count_lines(const char *text, size_t length) {
  int lines = 0;
  for (size_t i = 0; i < length; i++) lines += text[i] == '\n' ? 1 : 0;
  return lines;
}

/* Its lines as plain text: in every form the same pieces are left out. */
static int lines_of_piece(const lw_screen *screen, size_t length) {
  const char *from = screen->words.data + screen->from;
  lw_text plain = {0};
  lw_page page = {.out = &plain, .style = {.columns = LW_SCREEN_COLUMNS}};
  if (!screen->page.keeps) return count_lines(from, length);
  lw_kept_text((lw_span){from, length}, &page);
  int lines = count_lines(plain.data, plain.length);
  screen->page.out->failed = screen->page.out->failed || plain.failed;
  lw_text_free(&plain);
  return lines;
}

void lw_screen_piece(lw_screen *screen, lw_screen_part part, int gives) {
  size_t length = screen->words.length - screen->from;
  lw_piece piece = {.part = part, .first = screen->from, .length = length, .gives = gives};
  if (length == 0) return;
  piece.lines = lines_of_piece(screen, length);
  assert(screen->count < LW_PIECES_MAX);
  screen->piece[screen->count++] = piece;
  screen->from = screen->words.length;
}

typedef struct lw_tally {
  int shown, left_out, lines;
} lw_tally;

static lw_tally tally_of(const lw_screen *screen, lw_screen_part part) {
  lw_tally all = {.left_out = screen->beyond[part]};
  for (int i = 0; i < screen->count; i++) {
    const lw_piece *piece = &screen->piece[i];
    if (piece->part != part) continue;
    all.left_out += piece->left_out ? 1 : 0;
    all.shown += piece->left_out ? 0 : 1;
    all.lines += piece->left_out ? 0 : piece->lines;
  }
  if (all.shown == 0) return all;
  all.lines += (begins_below_a_blank(part) ? 1 : 0) + (screen->heading[part] ? 1 : 0);
  all.lines += all.left_out > 0 && MORE[part] ? 1 : 0;
  return all;
}

static int lines_of(const lw_screen *screen) {
  int lines = 0;
  for (int part = 0; part < LW_SCREEN_PARTS; part++) lines += tally_of(screen, (lw_screen_part)part).lines;
  return lines;
}

/* The one that goes most easily, of those the last. false: all that are there stay. */
static bool leave_out_one(lw_screen *screen, lw_screen_part part, int gives, int number) {
  lw_piece *least = NULL;
  for (int i = 0; i < screen->count; i++) {
    lw_piece *piece = &screen->piece[i];
    if (piece->part != part || piece->left_out || piece->gives < gives) continue;
    if (!least || piece->gives >= least->gives) least = piece;
  }
  if (least) least->left_out = number;
  return least != NULL;
}

/* What went last comes back first, wherever it still fits. */
static void take_back(lw_screen *screen, int lines, int number) {
  for (; number > 0; number--) {
    for (int i = 0; i < screen->count; i++) {
      lw_piece *piece = &screen->piece[i];
      if (piece->left_out != number) continue;
      piece->left_out = 0;
      if (lines_of(screen) > lines) piece->left_out = number;
    }
  }
}

static void make_room(lw_screen *screen, int lines) {
  int number = 0;
  for (size_t step = 0; step < sizeof GIVES_UP / sizeof *GIVES_UP; step++) {
    lw_screen_part part = GIVES_UP[step].part;
    while (lines_of(screen) > lines && tally_of(screen, part).shown > GIVES_UP[step].least) {
      if (!leave_out_one(screen, part, GIVES_UP[step].gives, number + 1)) break;
      number++;
    }
  }
  take_back(screen, lines, number);
}

static void put_part(const lw_screen *screen, lw_screen_part part, const lw_page *page) {
  lw_tally all = tally_of(screen, part);
  if (all.shown == 0) return;
  if (screen->heading[part])
    lw_page_heading(page, screen->heading[part]);
  else if (begins_below_a_blank(part))
    lw_page_blank(page);
  for (int i = 0; i < screen->count; i++) {
    const lw_piece *piece = &screen->piece[i];
    if (piece->part == part && !piece->left_out)
      lw_text_add_bytes(page->out, screen->words.data + piece->first, piece->length);
  }
  if (all.left_out > 0 && MORE[part]) {
    char more[48];
    lw_print(more, sizeof more, MORE[part], all.left_out);
    lw_page_say(page, "  ", more);
  }
}

void lw_screen_put(lw_screen *screen, int lines, lw_text *out) {
  lw_text kept = {0};
  lw_page page = lw_page_open(&screen->page.style, screen->page.units, out, &kept);
  make_room(screen, lines);
  for (int part = 0; part < LW_SCREEN_PARTS; part++) put_part(screen, (lw_screen_part)part, &page);
  out->failed = out->failed || screen->words.failed;
  (void)lw_page_close(&page, out);
}
