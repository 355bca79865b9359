/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _DEFAULT_SOURCE
#include "progress.h"

#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#include <lowwall/base.h>

#include "interrupt.h"

/* What is drawn more often is a flicker; who waits no longer than this sees nothing. */
static const double DRAW_EVERY_S = 0.1;
enum { BAR = 30, USUAL_COLUMNS = 80 };

static double now_s(void) {
  struct timespec now;
  return clock_gettime(CLOCK_MONOTONIC, &now) == 0 ? (double)now.tv_sec + (double)now.tv_nsec * 1e-9 : 0.0;
}

static bool someone_sees(FILE *results) {
  const char *terminal = getenv("TERM");
  bool dumb = terminal == NULL || terminal[0] == '\0' || strcmp(terminal, "dumb") == 0;
  return !dumb && isatty(STDERR_FILENO) == 1 && isatty(fileno(results)) != 1;
}

void lw_progress_open(lw_progress *progress, FILE *sheet, FILE *results) {
  struct stat there;
  bool regular = fstat(fileno(sheet), &there) == 0 && S_ISREG(there.st_mode);
  *progress = (lw_progress){.wanted = someone_sees(results), .size = regular ? (double)there.st_size : 0.0};
  if (progress->wanted) progress->began_s = progress->drawn_s = now_s();
}

/* The share of the schedule that is done, between 0 and 1; 0 when it cannot be known. */
static double share_of(const lw_progress *progress) {
  if (progress->size <= 0.0 || progress->read <= 0.0) return 0.0;
  double share = progress->fed / progress->size * (progress->written / progress->read);
  return share < 1.0 ? share : 1.0;
}

static void add_bar(lw_text *line, double share) {
  char bar[BAR + 1] = "";
  for (int i = 0; i < BAR; i++) bar[i] = i < (int)(share * BAR) ? '#' : '.';
  lw_text_addf(line, "[%s] %3.0f %%  ", bar, 100.0 * share);
}

static void add_time_left(lw_text *line, double left_s) {
  long seconds = left_s < 360000.0 ? (long)(left_s + 0.5) : 360000;
  long minutes = seconds / 60, hours = minutes / 60;
  if (hours > 0)
    lw_text_addf(line, ", %ld:%02ld:%02ld left", hours, minutes % 60, seconds % 60);
  else
    lw_text_addf(line, ", %ld:%02ld left", minutes, seconds % 60);
}

static size_t columns(void) {
  struct winsize window;
  bool known = ioctl(STDERR_FILENO, TIOCGWINSZ, &window) == 0 && window.ws_col > 1;
  return known ? window.ws_col : USUAL_COLUMNS;
}

/* One column is left free: a line that fills the last one may wrap. */
static void draw(const lw_progress *progress, double elapsed_s) {
  lw_text line = {0};
  double share = share_of(progress);
  size_t room = columns() - 1;
  if (share > 0.0 && room >= USUAL_COLUMNS - 1) add_bar(&line, share);
  lw_text_addf(&line, "%.0f rows, %.0f a second", progress->written, progress->written / elapsed_s);
  if (share > 0.0) add_time_left(&line, elapsed_s * (1.0 - share) / share);
  int length = (int)(line.length < room ? line.length : room);
  if (!line.failed) fprintf(stderr, "\r\033[K%.*s", length, line.data);
  lw_text_free(&line);
}

void lw_progress_step(lw_progress *progress, int rows) {
  progress->written += rows;
  if (!progress->wanted) return;
  double now = now_s();
  if (now - progress->drawn_s < DRAW_EVERY_S) return;
  progress->drawn_s = now;
  if (tcgetpgrp(STDERR_FILENO) != getpgrp()) return;
  progress->drawn = true;
  lw_interrupt_wipe_line(true);
  draw(progress, now - progress->began_s);
}

void lw_progress_hide(lw_progress *progress) {
  if (!progress->drawn) return;
  fputs("\r\033[K", stderr);
  fflush(stderr);
  progress->drawn = false;
  lw_interrupt_wipe_line(false);
}
