/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_DRAWING_H
#define LOWWALL_DRAWING_H

#include <lowwall/order.h>
#include <lowwall/result.h>

LW_PUBLIC_BEGIN

/* A drawing is one list of marks on paper, in millimetres from the top left corner, x to the right, y down.
 * Whoever draws adds marks; whoever writes a file format walks the list and knows nothing of walls.
 * Everything is told apart by the weight and dashes of a line, by hatching and by words, never by colour. */

typedef enum lw_pen {
  LW_PEN_CUT,     /* what is cut: the heaviest line */
  LW_PEN_SEEN,    /* edges seen beyond */
  LW_PEN_FINE,    /* dimensions, leaders, hatching */
  LW_PEN_DASHED,  /* water, failure plane */
  LW_PEN_CHAIN,   /* axes, boundaries, zones */
  LW_PEN_DOTTED,  /* the line of thrust, cloth */
  LW_PEN_FORCE,   /* forces */
  LW_PEN_NONE,    /* no edge */
  LW_PEN_COUNT
} lw_pen;

typedef enum lw_fill { LW_FILL_NONE, LW_FILL_PAPER, LW_FILL_TINT, LW_FILL_INK } lw_fill;

typedef enum lw_hatch {
  LW_HATCH_NONE,
  LW_HATCH_BLOCK,   /* lines at 45 degrees: masonry cut through */
  LW_HATCH_EARTH,   /* groups of three short lines, this way and that: ground as it lies */
  LW_HATCH_FILL,    /* scattered dots and short dashes: soil placed */
  LW_HATCH_STONE,   /* small open pebbles: clean stone */
  LW_HATCH_PAD,     /* lines both ways at 45 degrees: compacted stone */
  LW_HATCH_COUNT
} lw_hatch;

/* What a group of marks is to someone who listens. */
typedef enum lw_role { LW_ROLE_FIGURE, LW_ROLE_TITLE, LW_ROLE_HEADING, LW_ROLE_PARAGRAPH } lw_role;

typedef enum lw_mark_kind { LW_MARK_LINE, LW_MARK_AREA, LW_MARK_WORDS } lw_mark_kind;
typedef enum lw_anchor { LW_ANCHOR_START, LW_ANCHOR_MIDDLE, LW_ANCHOR_END } lw_anchor;

typedef struct lw_xy_mm { double x_mm, y_mm; } lw_xy_mm;

typedef struct lw_mark {
  lw_mark_kind kind;
  lw_pen pen;
  lw_fill fill;             /* of an area */
  lw_anchor anchor;         /* of words; y is their base line */
  bool bold;
  double size_mm;           /* height of the letters' em */
  size_t first, count;      /* spots of a line or area; of words the one where they stand */
  size_t words;             /* where they begin in the drawing's text */
  lw_role role;
  int group;                /* marks of one number belong together */
} lw_mark;

typedef struct lw_drawing {
  double width_mm, height_mm;
  size_t mark_count, mark_room, spot_count, spot_room;
  lw_mark *mark;
  lw_xy_mm *spot;
  lw_text words;            /* all words, each closed by a NUL */
  lw_text title, description;   /* for those who listen instead of looking */
  lw_role role;             /* of the marks added from now on, and the number of their group */
  int group;
  bool failed;              /* out of memory: what follows is dropped */
} lw_drawing;

/** A new group of marks begins. */
void lw_drawing_begin(lw_drawing *drawing, lw_role role);

/** Give back its memory; it is empty then. */
void lw_drawing_free(lw_drawing *drawing);

/** Add a line through spots, or an area closed through them.
 *  in    spot, count   mm; 2 or more for a line, 3 for an area */
void lw_drawing_line(lw_drawing *drawing, lw_pen pen, const lw_xy_mm *spot, size_t count);
void lw_drawing_area(lw_drawing *drawing, lw_pen pen, lw_fill fill, const lw_xy_mm *spot, size_t count);

/** Fill an area with the lines of a hatch, clipped to it; its outline is not drawn. */
void lw_drawing_hatch(lw_drawing *drawing, lw_hatch hatch, const lw_xy_mm *spot, size_t count);

/** An arrow from one spot to another with its head at the second. */
void lw_drawing_arrow(lw_drawing *drawing, lw_pen pen, lw_xy_mm from, lw_xy_mm to);

/** Words at a spot, printf-like. Control characters are left out. */
void lw_drawing_words(lw_drawing *drawing, lw_xy_mm at, lw_anchor anchor, double size_mm, const char *format,
                      ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 5, 6)))
#endif
    ;
void lw_drawing_bold(lw_drawing *drawing);   /* the words added last */

typedef struct lw_box { double left_mm, top_mm, right_mm, bottom_mm; } lw_box;
/** The box that words may take, on the wide side for any upright sans serif face. */
lw_box lw_drawing_box(const lw_drawing *drawing, const lw_mark *words);

/** Width of a string in such a face, on the wide side. [mm] */
double lw_drawing_text_width(const char *string, double size_mm);

/** The drawing as SVG, with real text, title and description. */
lw_status lw_drawing_svg(const lw_drawing *drawing, lw_text *out);

/** Whether this library was built with what PDF and PNG need. */
bool lw_drawing_has_paper(void);

/** Pages as one PDF with embedded fonts and text that can be selected; a drawing as PNG.
 *  in    page, count   1 or more
 *        dots_per_mm   4 to 40
 *  gives LW_OK · LW_NO_MEMORY · LW_NO_SOLUTION when it was built without cairo and pango; error says what
 *        to install */
lw_status lw_drawing_pdf(const lw_drawing *page, int count, lw_text *out, lw_error *error);
lw_status lw_drawing_png(const lw_drawing *drawing, double dots_per_mm, lw_text *out, lw_error *error);

/** The section of a wall to scale, with its pressure, its resultant and a legend.
 *  in    result     of lw_run
 *        width_mm   of the paper it may take; 90 or more: a phone asks for a narrow one
 *  out   drawing    empty before; to be freed by the caller
 *  gives LW_OK · LW_NO_SOLUTION where the wall's section is not known · LW_NO_MEMORY */
lw_status lw_draw_section(const lw_result *result, double width_mm, lw_drawing *drawing, lw_error *error);

/** The wall unrolled and seen from in front, block by block as the order lays it: corners, halves, cut
 *  pieces, steps of the base, ground, caps. A long one is drawn in strips.
 *  in    result, order   of lw_run and lw_order_make
 *        width_mm        as above
 *  out   drawing         empty before; to be freed by the caller
 *  gives LW_OK · LW_NO_SOLUTION where it is too long for the paper · LW_NO_MEMORY */
lw_status lw_draw_elevation(const lw_result *result, const lw_order *order, double width_mm,
                            lw_drawing *drawing, lw_error *error);

/** The wall from above: runs with their lengths, turns, curves, pegs, the distances that check them, and the
 *  side of the soil. Run 1 runs to the right, whatever its bearing is.
 *  in    result, order   of lw_run and lw_order_make
 *        width_mm        as above
 *  out   drawing         empty before; to be freed by the caller
 *  gives LW_OK · LW_NO_SOLUTION where it is too large for the paper · LW_NO_MEMORY */
lw_status lw_draw_plan(const lw_result *result, const lw_order *order, double width_mm, lw_drawing *drawing,
                       lw_error *error);

LW_PUBLIC_END

#endif
