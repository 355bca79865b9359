/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_SKETCH_H
#define LOWWALL_REPORT_DRAW_SKETCH_H

#include <lowwall/report.h>

#include "base/amount.h"
#include "drawing.h"

/* A section being drawn: the paper, the window on the ground that it shows, and the numbers that the legend
 * explains. x and y are the section's own: metres from the toe, y up. */

enum { LW_NOTES_MAX = 40, LW_LABELS_MAX = 512, LW_DIMENSIONS_MAX = 12, LW_WAITING_MAX = 24 };

#define LW_MARGIN_MM 4.0
#define LW_SMALL_MM 2.5 /* letters of numbers and legend: 7 pt */
#define LW_BODY_MM 2.8
#define LW_LINE_MM 3.6 /* from line to line */

typedef struct lw_note {
  lw_xy_mm at, to; /* the number, and what it is about */
  bool aside;      /* in the air in front of the wall */
  char words[220];
} lw_note;

/* Words that wait until all lines are drawn, to keep clear of them. */
typedef struct lw_waiting {
  lw_xy_mm at;
  lw_anchor anchor;
  char words[48];
} lw_waiting;

typedef struct lw_sketch {
  lw_drawing *paper;
  const lw_result *result;
  const lw_situation *situation; /* the one that is drawn */
  double mm_per_m;
  int scale;                               /* 1 : scale */
  lw_xy_mm origin;                         /* the toe on paper */
  double left_m, right_m, bottom_m, top_m; /* the window */
  double sky_mm;                           /* what a fence or another wall may take above the ground */
  double width_mm;
  bool in_page; /* the page around it tells headline, title and what is out of the picture */
  int note_count, label_count, wait_count;
  lw_waiting wait[LW_WAITING_MAX];
  lw_note note[LW_NOTES_MAX];
  lw_box label[LW_LABELS_MAX]; /* taken by words and numbers inside the window */
} lw_sketch;

/* What is measured, in the units of the result: lengths from metres or millimetres, the figure without its
 * unit, and a length as it stands on a line of dimensions: 790, or 2'-7 1/8". */
lw_amount lw_sketch_amount(const lw_sketch *sketch, lw_kind kind, double si, int decimals);
lw_amount lw_sketch_m(const lw_sketch *sketch, double length_m, int decimals);
lw_amount lw_sketch_mm(const lw_sketch *sketch, double length_m);
lw_amount lw_sketch_figure(const lw_sketch *sketch, lw_kind kind, double si, int decimals);
lw_amount lw_sketch_dimension(const lw_sketch *sketch, double length_m);
/* The scales in use from the largest down, 1 to so many; 0 past the last. And how the one is told that was
 * chosen: "1:20", or "1/2 in to 1 ft". */
int lw_sketch_scale(const lw_sketch *sketch, int index);
lw_amount lw_sketch_scale_words(const lw_sketch *sketch);
/* "mm", or "feet and inches". */
const char *lw_sketch_lengths_in(const lw_sketch *sketch);

lw_xy_mm lw_sketch_at(const lw_sketch *sketch, double x_m, double y_m);
/* y of the ground behind at x, and in front at x. */
double lw_sketch_ground_behind(const lw_sketch *sketch, double x_m);
double lw_sketch_ground_front(const lw_sketch *sketch, double x_m);

/* A number in a circle at a spot of the section; the legend has the words, printf-like. */
void lw_sketch_note(lw_sketch *sketch, double x_m, double y_m, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;
/* The same for a spot on the wall: the number stands in the air in front of it, where there is room. */
void lw_sketch_note_aside(lw_sketch *sketch, double x_m, double y_m, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;
/* Words in the section, moved down until they meet no others and no line; they are put when all lines are
 * drawn. */
void lw_sketch_label(lw_sketch *sketch, lw_xy_mm at, lw_anchor anchor, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;

void lw_sketch_put_labels(lw_sketch *sketch);

/* Words where they meet no others nor any line drawn before, and stay on the page: moved by so much up to so
 * often, or in so many rings around the spot, their middle. gives false, nothing added, when there is no such
 * place */
typedef struct lw_move {
  double by_mm;
  int times;
} lw_move;
bool lw_sketch_place(lw_sketch *sketch, lw_xy_mm at, lw_anchor anchor, lw_move move, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 5, 6)))
#endif
    ;
bool lw_sketch_around(lw_sketch *sketch, lw_xy_mm at, int rings, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;
/* Whether a line from a spot goes over no words or numbers; what is kept clear around the spot does not
 * count. */
bool lw_sketch_may_lead(const lw_sketch *sketch, lw_xy_mm from, lw_xy_mm to);
/* Farther off, with a line that leads to the spot. */
bool lw_sketch_lead(lw_sketch *sketch, lw_xy_mm to, const char *words);
bool lw_sketch_is_free(const lw_sketch *sketch, const lw_box *box);
void lw_sketch_take(lw_sketch *sketch, lw_box box);

/* Below y: which tables are not the built-in ones, if any. gives y below */
double lw_sketch_replaced(lw_sketch *sketch, double y_mm);
/* The verdict's headline, and below it what is drawn. gives y below */
double lw_sketch_head(lw_sketch *sketch, const char *words);
/* A bar of whole metres or half of one, so that a picture of any size can be measured. gives y below */
double lw_sketch_bar(lw_sketch *sketch, lw_xy_mm at, double room_mm);
/* The slash at the end of a dimension; an upright chain of levels from the bottom up, values at its left
 * or right. */
void lw_sketch_slash(lw_drawing *paper, lw_xy_mm at);
/* How wide the values of such a chain are. [mm] */
double lw_sketch_upright_wide(const lw_sketch *sketch, const double *level_m, int count);
void lw_sketch_upright(lw_sketch *sketch, double x_mm, bool values_right, const double *level_m, int count);

/* The place that small words take, and words put there on paper of their own, that no line crosses. */
lw_box lw_sketch_words_box(const char *words, lw_xy_mm at, lw_anchor anchor);
void lw_sketch_put(lw_sketch *sketch, const char *words, lw_xy_mm at, lw_anchor anchor);

/* Words broken into lines of a width. gives y below the last line */
double lw_sketch_wrap(lw_drawing *paper, lw_xy_mm at, double width_mm, double size_mm, bool bold,
                      const char *words);

/* lw_draw_section for a page that tells headline, title and what is out of the picture itself. */
lw_status lw_draw_section_below(const lw_result *result, double width_mm, lw_drawing *drawing,
                                lw_error *error);

void lw_sketch_ground(lw_sketch *sketch);
void lw_sketch_wall(lw_sketch *sketch);
void lw_sketch_loads(lw_sketch *sketch);
/* Pipe, bedding, boundary. */
void lw_sketch_site(lw_sketch *sketch);
/* Another wall so near that the two act together; where its face stands, or its back when it is below. [m] */
bool lw_sketch_pair(const lw_sketch *sketch);
bool lw_sketch_pair_above(const lw_sketch *sketch);
double lw_sketch_pair_m(const lw_sketch *sketch);
/* What fence or other wall want above the ground, as much as they may have. [mm] */
double lw_sketch_sky(const lw_sketch *sketch);
void lw_sketch_other_wall(lw_sketch *sketch);
void lw_sketch_fence(lw_sketch *sketch);
/* Thickness of the bedding that is given, and of all that is built below the wall. [m] */
double lw_sketch_bedding(const lw_sketch *sketch);
double lw_sketch_under(const lw_sketch *sketch);
/* Whether there is a pressure to be drawn below the base. */
bool lw_sketch_presses(const lw_sketch *sketch);
/* Whether there is one to be drawn on the back. */
bool lw_sketch_pushes(const lw_sketch *sketch);
void lw_sketch_forces(lw_sketch *sketch);
void lw_sketch_dimensions(lw_sketch *sketch);
/* What they take of the paper left of the window. [mm] */
double lw_sketch_dimensions_wide(const lw_sketch *sketch);
/* The pressure diagram beside or below the section, its axis at x. */
void lw_sketch_pressure(lw_sketch *sketch, lw_xy_mm foot, double width_mm);
/* gives y below the legend */
double lw_sketch_legend(lw_sketch *sketch, lw_xy_mm at, double width_mm);

#endif
