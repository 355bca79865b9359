/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_H
#define LOWWALL_REPORT_H

#include <lowwall/order.h>

LW_PUBLIC_BEGIN

/* What is made of a result: text, JSON, rows, the working, drawings, the pre-check sheet; and its structs for
 * callers that do not read C. */

/* The result flattened once: every number a report may print. */
typedef struct lw_figure {
  char key[80];      /* "drained.base.thrust_kn_per_m" */
  const char *label; /* "thrust of the soil" */
  lw_number value;
  const char *unit;
  const char *source; /* "[KEY locator]" or "" */
  lw_reason reason;   /* why the value is not known */
} lw_figure;

typedef void (*lw_figure_taker)(void *context, const lw_figure *figure);
/** Hand every figure of a result to taker, in a fixed order. */
void lw_figures_each(const lw_result *result, lw_figure_taker taker, void *context);

/* What a report for people is written as. */
typedef enum lw_as { LW_AS_TEXT, LW_AS_MARKDOWN, LW_AS_HTML, LW_AS_COUNT } lw_as;
/** "text", "markdown", "html"; NULL for what is none. */
const char *lw_as_slug(lw_as as);

typedef struct lw_text_style {
  bool colour; /* of plain text */
  int columns;
  bool every_joint; /* the working has each joint in full; else the one that is nearest to its limit */
  lw_as as;
} lw_text_style;

/** Before and after the reports that make one document of a form: in HTML its head and its end, in the others
 *  nothing.
 *  in    title   of the user's, or what it is; for the window   any */
void lw_report_begin(const lw_text_style *style, const char *title, lw_text *out);
void lw_report_end(const lw_text_style *style, lw_text *out);

enum { LW_SCREEN_LINES = 60, LW_SCREEN_COLUMNS = 80 };

/** The first screen, for whoever is on site: the answer, what would make it stand, the checks, what is worth
 *  finding out, what is assumed, the gravest cautions, what was not checked, where to read on.
 *  in    style    its columns count as LW_SCREEN_COLUMNS; colour is never the only signal
 *  out   out      at most LW_SCREEN_LINES lines of LW_SCREEN_COLUMNS columns, or their words in another form
 *  note  1 What does not fit is left out, the graver last, and counted. A caution that names a service, a
 *          collapse or a fall stays. */
lw_status lw_report_screen(const lw_result *result, const lw_text_style *style, lw_text *out);

/** All of it for a terminal: verdict, reasons, governing situation, checks, assumptions, cautions,
 *  sources. */
lw_status lw_report_text(const lw_result *result, const lw_text_style *style, lw_text *out);

/** Every step with symbol, formula, numbers, unit and source; the moment table with its check sums.
 *  Runs the wall again with a recorder. */
lw_status lw_report_working(const lw_result *result, const lw_text_style *style, lw_text *out);

/** Everything, with the keys of docs/results.md.
 *  in    indent   blanks a level, 0 to 31; 0: one line */
lw_status lw_report_json(const lw_result *result, int indent, lw_text *out);
/** Faults as JSON.
 *  in    indent   as above */
lw_status lw_report_faults_json(const lw_faults *faults, int indent, lw_text *out);

/** A result row of a schedule, and its header row: mark, headline, what, stands, who, governing situation,
 *  check, at, has, needs, ratio, exit, and so on: docs/results.md. The last are the grade and, where
 *  lw_looks_find was called, what that check has by likely values and the least that any has.
 *  in    row   its number, which is printed   any */
void lw_report_row_header(lw_text *out);
void lw_report_row(const lw_result *result, int row, lw_text *out);
void lw_report_row_faults(const lw_case *c, const lw_faults *faults, int row, lw_text *out);
/** The faults of a schedule's row as one line of JSON, with the mark of its wall. */
lw_status lw_report_row_faults_json(const lw_case *c, const lw_faults *faults, lw_text *out);

/* The two pages made from an order: what to buy, and the pegs with the order of work. */
typedef enum lw_order_page { LW_PAGE_ORDER, LW_PAGE_PEGS } lw_order_page;

/** What would be right where there is no order, as a fault of the cell that has it.
 *  in    items    of the case that the order was asked for
 *        fault    of lw_order_make
 *  out   faults   one more */
void lw_report_plan_fault(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults);

/** An order as a page, as JSON with the keys of docs/order.md, as CSV. Each begins with the verdict's
 *  headline: quantities are for the wall as given, and no leave to build it.
 *  in    result   the one that the order was made from
 *        indent   of the JSON: blanks a level, 0 to 31; 0: one line
 *  gives LW_OK · LW_NO_MEMORY */
lw_status lw_report_order_text(const lw_result *result, const lw_order *order, lw_order_page page,
                               const lw_text_style *style, lw_text *out);
lw_status lw_report_order_json(const lw_result *result, const lw_order *order, lw_order_page page, int indent,
                               lw_text *out);
/** The header that stands once above the rows of one wall or many. */
void lw_report_order_csv_header(lw_order_page page, lw_text *out);
lw_status lw_report_order_csv(const lw_result *result, const lw_order *order, lw_order_page page,
                              lw_text *out);

/* A drawing is one list of marks on paper, in millimetres from the top left corner, x to the right, y down.
 * Whoever draws adds marks; whoever writes a file format walks the list and knows nothing of walls.
 * Everything is told apart by the weight and dashes of a line, by hatching and by words, never by colour. */

typedef enum lw_pen {
  LW_PEN_CUT,    /* what is cut: the heaviest line */
  LW_PEN_SEEN,   /* edges seen beyond */
  LW_PEN_FINE,   /* dimensions, leaders, hatching */
  LW_PEN_DASHED, /* water, failure plane */
  LW_PEN_CHAIN,  /* axes, boundaries, zones */
  LW_PEN_DOTTED, /* the line of thrust, cloth */
  LW_PEN_FORCE,  /* forces */
  LW_PEN_NONE,   /* no edge */
  LW_PEN_COUNT
} lw_pen;

typedef enum lw_fill { LW_FILL_NONE, LW_FILL_PAPER, LW_FILL_TINT, LW_FILL_INK } lw_fill;

/* What a group of marks is to someone who listens. */
typedef enum lw_role {
  LW_ROLE_FIGURE,
  LW_ROLE_TITLE,
  LW_ROLE_HEADING,
  LW_ROLE_PARAGRAPH,
  LW_ROLE_HEAD_CELL, /* of a table: says what the cells beside or below it are */
  LW_ROLE_CELL
} lw_role;

typedef enum lw_mark_kind { LW_MARK_LINE, LW_MARK_AREA, LW_MARK_WORDS } lw_mark_kind;
typedef enum lw_anchor { LW_ANCHOR_START, LW_ANCHOR_MIDDLE, LW_ANCHOR_END } lw_anchor;

typedef struct lw_xy_mm {
  double x_mm, y_mm;
} lw_xy_mm;

typedef struct lw_mark {
  lw_mark_kind kind;
  lw_pen pen;
  lw_fill fill;     /* of an area */
  lw_anchor anchor; /* of words; y is their base line */
  bool bold;
  bool shading;        /* part of a hatch: words may stand on it, with paper laid under them */
  double size_mm;      /* height of the letters' em */
  size_t first, count; /* spots of a line or area; of words the one where they stand */
  size_t words;        /* where they begin in the drawing's text */
  lw_role role;
  int group;      /* marks of one number belong together */
  int table, row; /* of a cell; a table may go on over pages */
} lw_mark;

typedef struct lw_drawing {
  double width_mm, height_mm;
  size_t mark_count, mark_room, spot_count, spot_room;
  lw_mark *mark;
  lw_xy_mm *spot;
  lw_text words;              /* all words, each closed by a NUL */
  lw_text title, description; /* for those who listen instead of looking */
  lw_text figure;             /* in place of what is drawn, where the description is of more than that */
  lw_role role;               /* of the marks added from now on, and the number of their group */
  int group, table, row;
  bool failed; /* out of memory: what follows is dropped */
} lw_drawing;

/** Give back its memory; it is empty then. */
void lw_drawing_free(lw_drawing *drawing);

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

/* What a drawing of pressures is of; who must see the wall, and its title, "" for a plane of no wall. */
typedef struct lw_pressure_page {
  const lw_diagram *diagram;
  const char *headline, *title;
  lw_units units; /* those that its reader measures in */
} lw_pressure_page;

/** Pressure against depth, with the ground beside it: layers, water, loads, each method's line told by its
 *  dashes and a letter, what each load at a distance and the water send, axes with units, a legend.
 *  in    page       a diagram that lw_diagram_find filled
 *        width_mm   as above; under 140 the diagrams stand in two rows
 *  out   drawing    empty before; to be freed by the caller
 *  gives LW_OK · LW_NO_SOLUTION where it is too high for the paper · LW_NO_MEMORY */
lw_status lw_draw_pressure(const lw_pressure_page *page, double width_mm, lw_drawing *drawing,
                           lw_error *error);

/* The pre-check sheet: pages an officer can file, and rerun. It is one list of blocks; HTML and paper are
 * made of the same list. */

/** What tells whether a sheet, the tables in effect and the program are the ones a pre-check was made of.
 *  in    c           complete: what was given counts, not how or in which order it was written
 *        directory   as for lw_tables_read
 *  out   hex
 *  gives LW_OK · LW_NO_MEMORY · as lw_tables_csv */
lw_status lw_precheck_hash(const lw_case *c, const char *directory, char hex[LW_HASH_HEX], lw_error *error);

/** The sheet as one HTML page with the drawing inside; it asks for nothing from elsewhere. */
lw_status lw_precheck_html(const lw_result *result, const char *hash, lw_text *out);

typedef enum lw_paper { LW_PAPER_A4, LW_PAPER_LETTER } lw_paper;

typedef struct lw_drawing_pages {
  int count;
  lw_drawing *page;
} lw_drawing_pages;

/** Give back their memory; there are none then. */
void lw_drawing_pages_free(lw_drawing_pages *pages);

/** The sheet on paper, on as many pages as letters of 7 pt take; on two where larger ones allow it.
 *  in    hash    of lw_precheck_hash
 *  out   pages   none before; to be freed by the caller
 *  gives LW_OK · LW_NO_MEMORY */
lw_status lw_precheck_pages(const lw_result *result, const char *hash, lw_paper paper,
                            lw_drawing_pages *pages, lw_error *error);

/* For callers from another language, which do not read these headers: structs by name, on the heap, and what
 * they say as plain bytes. A program in C declares them itself. docs/library.md has an example of each. */

/** How large a struct is.
 *  in    type   its name, as "lw_case"
 *  gives bytes; 0 for a name that is none of lw_case, lw_tables, lw_faults, lw_error, lw_text, lw_result,
 *        lw_order, lw_plane, lw_thrust, lw_trial_wedge, lw_strip, lw_bearing, lw_slip_ground, lw_slip,
 *        lw_diagram_asked, lw_diagram */
size_t lw_size_of(const char *type);

/** A struct as a program in C would begin it: all zero, and begun by its _init where it has one.
 *  in    type   as above
 *  gives where it lies, NULL for another name and without memory; lw_delete gives it back */
void *lw_new(const char *type);
/** Give it back. What it owns goes first: lw_text_free for a text. */
void lw_delete(void *made);

/** What a text, or an error, says: its bytes up to a NUL, never NULL. They stay while it is left as it is. */
const char *lw_text_says(const lw_text *text);
const char *lw_error_says(const lw_error *error);

LW_PUBLIC_END

#endif
