/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/order.h>

#include <string.h>

#include "report.h"

/* The order and the pegs as a page. The verdict's headline stands first: a list of blocks is no leave to
 * build. */

static void head(const lw_page *page, const lw_result *result, const char *what) {
  char title[LW_WORDS_MAX];
  lw_text_clean(result->given.about.title.text, title, sizeof title);
  lw_page_headline(page, LW_TONE_STRONG, result->verdict.headline);
  if (result->tables->replaced[0])
    lw_page_sayf(page, "", "Made with replaced tables: %s.", result->tables->replaced);
  lw_page_blank(page);
  char mark[LW_WORDS_MAX];
  lw_text_clean(result->given.about.mark.text, mark, sizeof mark);
  if (mark[0] != '\0' || title[0] != '\0')
    lw_page_sayf(page, "", mark[0] != '\0' && title[0] != '\0' ? "%s: %s" : "%s%s", mark, title);
  lw_page_say(page, "", what);
}

static void runs(const lw_page *page, const lw_order *order) {
  lw_page_heading(page, "Runs");
  for (int i = 0; i < order->plan.run_count; i++) {
    const lw_order_run *r = &order->run[i];
    lw_page_linef(page, LW_TONE_PLAIN,
                  order->plan.solid ? "  run %d   %9s at its foot, %9s at the top"
                                    : "  run %d   %9s at the lowest course, %9s at the top",
                  i + 1, lw_metres(page->units, r->length_m, 3).text,
                  lw_metres(page->units, r->top_length_m, 3).text);
    if (r->fits)
      lw_page_sayf(page, "          ", "needs no cut as it is%s",
                   r->half_blocks ? ", half blocks apart" : "");
    if (r->shorter_known && r->longer_known)
      lw_page_linef(page, LW_TONE_PLAIN, "          without a cut: %s or %s",
                    lw_metres(page->units, r->shorter_m, 3).text,
                    lw_metres(page->units, r->longer_m, 3).text);
    else if (r->longer_known)
      lw_page_linef(page, LW_TONE_PLAIN, "          without a cut: %s",
                    lw_metres(page->units, r->longer_m, 3).text);
    if (r->no_fit != LW_NO_FIT_NONE)
      lw_page_sayf(page, "          ", "no length without cuts: %s", lw_no_fit_words(r->no_fit));
    if (r->radius_m > 0.0 && r->radius_known)
      lw_page_sayf(page, "          ",
                   "radius %s at its sharpest course; these blocks go round one of %s or more; their joints "
                   "open by %s here",
                   lw_metres(page->units, r->radius_m, 2).text,
                   lw_metres(page->units, r->least_radius_m, 2).text,
                   lw_millimetres(page->units, r->curve_gap_m).text);
  }
}

static void corners(const lw_page *page, const lw_order *order) {
  if (order->corner_count == 0) return;
  lw_page_heading(page, "Corners");
  for (int i = 0; i < order->corner_count; i++) {
    const lw_order_corner *c = &order->corner[i];
    const char *inside = c->turn_rad < 0.0 ? ", an inside corner" : "";
    if (c->made == LW_MADE_CUT)
      lw_page_sayf(page, "  ", "after run %d, turn %.1f deg%s: blocks cut on the mitre", c->run + 1,
                   c->turn_rad * LW_DEG_PER_RAD, inside);
    else
      lw_page_sayf(page, "  ",
                   "after run %d, turn %.1f deg%s: %s; the run %s runs through in the lowest course",
                   c->run + 1, c->turn_rad * LW_DEG_PER_RAD, inside, lw_corner_slug(c->made),
                   c->first_through ? "before it" : "after it");
    if (c->made == LW_MADE_HANDED)
      lw_page_sayf(page, "    ", "%d left and %d right units, seen from the front", c->left, c->right);
  }
}

static void courses(const lw_page *page, const lw_order *order) {
  if (order->plan.solid) return;
  lw_page_heading(page, "Courses, the lowest first");
  bool us = page->units == LW_UNITS_US;
  lw_page_headf(page,
                us ? "  |%6s |%8s |%6s |%6s |%6s |%6s |%6s |%6s  |%15s"
                   : "  |%6s |%8s |%6s |%6s |%6s |%6s |%6s |%6s  |%10s",
                "course", us ? "face ft" : "face m", "whole", "half", "cut", "mitred", "left", "right",
                us ? "overlap" : "overlap mm");
  for (int i = 0; i < order->plan.courses; i++) {
    const lw_course_count *c = &order->course[i];
    char overlap[48] = "-", face[32];
    bool less = c->overlap_known && c->overlap_m < order->overlap_needs_m - 0.001;
    if (c->overlap_known)
      lw_print(overlap, sizeof overlap, "%s%s", lw_millimetres_again(page->units, c->overlap_m).text,
               less ? " less" : "");
    lw_number_print(face, sizeof face, lw_in_units(page->units, LW_KIND_LENGTH, c->face_m), us ? 2 : 3);
    lw_page_rowf(page, LW_TONE_PLAIN,
                 us ? "  |%6d |%8s |%6d |%6d |%6d |%6d |%6d |%6d  |%15s"
                    : "  |%6d |%8s |%6d |%6d |%6d |%6d |%6d |%6d  |%10s",
                 i + 1, face, c->whole, c->half, c->closer, c->mitred, c->left, c->right, overlap);
  }
  if (order->overlap_fails_at > 0)
    lw_page_sayf(page, "  ", "less: under a quarter of a unit, %s.",
                 lw_millimetres(page->units, order->overlap_needs_m).text);
}

static void cut_line(const lw_page *page, const lw_cut *c, bool several) {
  char other[40] = "", last[64] = "", prefix[32];
  const lw_amount long_edge = lw_millimetres(page->units, c->long_m),
                  short_edge = lw_millimetres(page->units, c->short_m),
                  waste = lw_millimetres(page->units, c->waste_long_m);
  if (c->base_unit) lw_print(last, sizeof last, ", base unit");
  if (several && c->cap_depth_m > 0.0)
    lw_print(last, sizeof last, ", %s deep", lw_millimetres_again(page->units, c->cap_depth_m).text);
  if (c->saw_other_deg > 0.0) lw_print(other, sizeof other, " and %.1f deg", c->saw_other_deg);
  bool us = page->units == LW_UNITS_US;
  lw_print(prefix, sizeof prefix, "  %4d  %-11s ", c->count, lw_cut_slug(c->kind));
  bool square = c->long_m - c->short_m < 0.0005;
  if (square && us)
    lw_page_sayf(page, prefix, "%s, square; waste %s%s", long_edge.text, waste.text, last);
  else if (square)
    lw_page_linef(page, LW_TONE_PLAIN, "%s%7s, square; waste %s%s", prefix, long_edge.text, waste.text, last);
  else if (us)
    lw_page_sayf(page, prefix, "%s long edge, %s short, saw %.1f deg%s; waste %s and %s%s", long_edge.text,
                 short_edge.text, c->saw_deg, other, waste.text,
                 lw_millimetres(page->units, c->waste_short_m).text, last);
  else
    lw_page_linef(page, LW_TONE_PLAIN, "%s%7s long edge, %7s short, saw %.1f deg%s; waste %.0f/%.0f mm%s",
                  prefix, long_edge.text, short_edge.text, c->saw_deg, other, c->waste_long_m * 1000.0,
                  c->waste_short_m * 1000.0, last);
}

static void blanks(const lw_page *page, const lw_order *order) {
  bool us = page->units == LW_UNITS_US;
  lw_page_say(page, "  ", "Sawn from:");
  for (int i = 0; i < order->blank_count; i++) {
    const lw_blank *b = &order->blank[i];
    char pieces[240] = "";
    for (int k = 0; k < b->pieces; k++) {
      size_t used = strlen(pieces);
      lw_print(pieces + used, sizeof pieces - used, "%s%s", k > 0 ? " + " : "",
               lw_millimetres_again(page->units, b->piece_m[k]).text);
    }
    char far[48] = "", deep[48] = "", prefix[32];
    bool several = order->cap_sort_count > 1 && b->cap_depth_m > 0.0;
    if (several)
      lw_print(deep, sizeof deep, ", %s deep", lw_millimetres_again(page->units, b->cap_depth_m).text);
    if (b->far_m > b->rest_m + 1e-9)
      lw_print(far, sizeof far, us ? "%s and " : "%s/", lw_millimetres_again(page->units, b->far_m).text);
    lw_print(prefix, sizeof prefix, "  %4d  %-11s ", b->count, lw_stock_slug(b->stock));
    lw_page_sayf(page, prefix, "%s%s, %s%s left%s", pieces, us ? "" : " mm", far,
                 lw_millimetres(page->units, b->rest_m).text, deep);
  }
}

static void cuts(const lw_page *page, const lw_order *order) {
  if (order->cut_count == 0) return;
  lw_page_heading(page, "Cutting list, the saw away from a square cut");
  for (int i = 0; i < order->cut_count; i++) cut_line(page, &order->cut[i], order->cap_sort_count > 1);
  lw_page_say(page, "  ",
              "Measure along the long edge. The waste is what lies beyond the saw, its own long edge at the "
              "piece's short one.");
  blanks(page, order);
}

static void caps(const lw_page *page, const lw_order *order) {
  if (!order->has_cap) return;
  lw_page_heading(page, "Caps");
  lw_page_sayf(page, "  ", "%s of front edge, %s forward of the top course; %d whole and uncut.",
               lw_metres(page->units, order->cap_line_m, 3).text,
               lw_millimetres(page->units, order->cap_overhang_m).text, order->cap_whole);
  if (order->cap_gap_m > 0.0)
    lw_page_sayf(page, "  ", "Between two caps an open joint of %s is counted: `joint gap`.",
                 lw_millimetres(page->units, order->cap_gap_m).text);
  else
    lw_page_say(page, "  ", "Two caps touch: no joint is counted between them (`joint gap`).");
  for (int i = 0; i < order->corner_count; i++) {
    const lw_order_corner *c = &order->corner[i];
    if (!c->mitred) continue; /* a butt joint has its note */
    lw_page_sayf(page, "  ",
                 "after run %d: a mitre %s long, %.1f and %.1f deg to the long edges, saw %.1f and %.1f "
                 "deg; long edges %s and %s over the short ones",
                 c->run + 1, lw_millimetres(page->units, c->cap_mitre_m).text, c->cap_angle_deg[0],
                 c->cap_angle_deg[1], c->cap_saw_deg[0], c->cap_saw_deg[1],
                 lw_millimetres_again(page->units, c->cap_extra_m[0]).text,
                 lw_millimetres(page->units, c->cap_extra_m[1]).text);
  }
  if (order->cap_wedge_deg > 0.0)
    lw_page_sayf(page, "  ", "On the curve each cap is cut %.1f deg at both ends.", order->cap_wedge_deg);
  for (int i = 0; i < order->plan.run_count; i++)
    if (order->run[i].cap_joint_known)
      lw_page_sayf(page, "  ", "run %d: joints at least %s from those of the blocks", i + 1,
                   lw_millimetres(page->units, order->run[i].cap_joint_m).text);
}

/* As the yard weighs it: what is loose in tonnes, or in the tons of 2000 lb that a US one has. */
static void mass_words(lw_units units, double mass_kg, bool loose, char *out, size_t size) {
  static const double TON_LB = 2000.0, TONNE_KG = 1000.0;
  double lb = lw_in_units(units, LW_KIND_MASS, mass_kg);
  if (!loose)
    lw_print(out, size, "%s", lw_amount_of(units, LW_KIND_MASS, mass_kg, 0).text);
  else if (units == LW_UNITS_US)
    lw_print(out, size, lb < 100.0 * TON_LB ? "%.2f tons" : "%.0f tons", lb / TON_LB);
  else
    lw_print(out, size, "%.2f t", mass_kg / TONNE_KG);
}

static double in_unit(lw_units units, lw_line_unit unit, double value) {
  return lw_in_units(units, lw_line_unit_kind(unit), value);
}

static const char *unit_name(lw_units units, lw_line_unit unit) {
  return units == LW_UNITS_US && lw_line_unit_kind(unit) != LW_KIND_COUNT
             ? lw_units_name(units, lw_line_unit_kind(unit))
             : lw_line_unit_slug(unit);
}

static void lines(const lw_page *page, const lw_order *order) {
  lw_page_heading(page, "Order: net, allowance, order");
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    char allowance[40] = "-", mass[40] = "", name[LW_LINE_NAME], note[LW_LINE_NOTE];
    lw_line_unit unit = lw_order_line_unit(l->kind);
    bool whole = unit == LW_UNIT_PIECES, bags = unit == LW_UNIT_BAGS;
    if (l->allowance_known && l->pieces)
      lw_print(allowance, sizeof allowance, "+%.0f", l->allowance);
    else if (l->allowance_known)
      lw_print(allowance, sizeof allowance, "%.0f %%", l->allowance * 100.0);
    if (l->mass_kg > 0.0) mass_words(page->units, l->mass_kg, unit == LW_UNIT_M3, mass, sizeof mass);
    lw_page_rowf(page, LW_TONE_PLAIN,
                 whole  ? "  |%-36.36s |%8.0f |%6s |%8.0f |%-6s |%s"
                 : bags ? "  |%-36.36s |%8.2f |%6s |%8.0f |%-6s |%s"
                        : "  |%-36.36s |%8.2f |%6s |%8.2f |%-6s |%s",
                 lw_order_line_name(l, page->units, name), in_unit(page->units, unit, l->net), allowance,
                 in_unit(page->units, unit, l->order), unit_name(page->units, unit), mass);
    const char *said = lw_order_line_note(l, page->units, note);
    if (said[0] != '\0') lw_page_say(page, "      ", said);
  }
}

static void carrying(const lw_page *page, const lw_order *order) {
  lw_page_heading(page, "To carry");
  lw_page_sayf(page, "  ", "%s in all, %s of it dug and carried away.",
               lw_amount_of(page->units, LW_KIND_MASS, order->carried_kg, 0).text,
               lw_amount_of(page->units, LW_KIND_MASS, order->spoil_kg, 0).text);
  lw_page_sayf(page, "  ", "Spoil: %d trips of a barrow, %d of a skip or truck.", order->spoil_barrows,
               order->skips);
  if (order->barrows > 0)
    lw_page_sayf(page, "  ", "Stone, sand and soil: %s loose, %d trips of a barrow.",
                 lw_amount_of(page->units, LW_KIND_VOLUME, order->loose_m3, 2).text, order->barrows);
  if (order->plan.solid) {
    lw_page_sayf(page, "  ",
                 "Skip and heaps stand at least %s behind the wall, and never in front of an open dig.",
                 lw_metres(page->units, order->pallet_distance_m, 2).text);
    return;
  }
  lw_page_sayf(page, "  ", "A block weighs %s.",
               lw_amount_of(page->units, LW_KIND_MASS, order->unit_mass_kg, 0).text);
  if (order->base_unit_mass_kg > 0.0)
    lw_page_sayf(page, "  ", "A deeper block of the base courses weighs %s.",
                 lw_amount_of(page->units, LW_KIND_MASS, order->base_unit_mass_kg, 0).text);
  if (order->cap_mass_kg > 0.0)
    lw_page_sayf(page, "  ", "A cap weighs %s.",
                 lw_amount_of(page->units, LW_KIND_MASS, order->cap_mass_kg, 0).text);
  lw_page_sayf(page, "  ",
               "Pallets of blocks: %d. Pallets, skip and heaps stand at least %s behind the wall, and "
               "never in front of an open dig.",
               order->pallets, lw_metres(page->units, order->pallet_distance_m, 2).text);
}

void lw_order_notes_text(const lw_page *page, const lw_order *order) {
  if (order->note_count == 0) return;
  lw_page_heading(page, "Mind");
  char words[LW_ORDER_SENTENCE];
  for (int i = 0; i < order->note_count; i++)
    lw_page_say(page, "  - ", lw_order_note_words(order, &order->note[i], words));
}

const char *lw_order_assumed_source(const lw_result *result, const lw_echo *echo) {
  const lw_ordering_row *row = lw_tables_ordering(result->tables, echo->item->name);
  const lw_quantity *bulking = &result->given.order.spoil_bulking;
  bool by_soil = strcmp(echo->item->name, "spoil bulking") == 0 && bulking->table_row >= 0;
  if (by_soil) row = &result->tables->ordering[bulking->table_row];
  return row != NULL ? row->from.source : "";
}

/* Items that matter only where there is such a line. */
static const struct {
  const char *item;
  lw_line_kind line;
} only_with[] = {{"cap ", LW_LINE_CAPS},
                 {"adhesive", LW_LINE_ADHESIVE},
                 {"bedding", LW_LINE_BEDDING_SAND},
                 {"cement", LW_LINE_CEMENT},
                 {"pad beyond", LW_LINE_PAD_STONE},
                 {"stone compaction", LW_LINE_PAD_STONE},
                 {"stone allowance", LW_LINE_DRAINAGE_STONE},
                 {"soil plug", LW_LINE_DRAINAGE_STONE},
                 {"geotextile", LW_LINE_GEOTEXTILE},
                 {"drain ", LW_LINE_DRAIN_PIPE},
                 {"pipe allowance", LW_LINE_DRAIN_PIPE},
                 {"lining allowance", LW_LINE_LINING},
                 {"settlement", LW_LINE_SOIL}};

static bool has_line(const lw_order *order, lw_line_kind kind) {
  for (int i = 0; i < order->line_count; i++)
    if (order->line[i].kind == kind) return true;
  return false;
}

/* Of a solid wall nothing is asked that only blocks have. */
static bool of_blocks(const char *name) {
  static const char *const begins[] = {"block ", "curve ",  "spare ", "corner ", "joint gap",
                                       "half ",  "offcuts", "saw ",   "pallet ", "end setback"};
  for (size_t i = 0; i < sizeof begins / sizeof begins[0]; i++)
    if (strncmp(name, begins[i], strlen(begins[i])) == 0) return true;
  return false;
}

static bool matters(const lw_order *order, const char *name) {
  if (order->plan.solid && of_blocks(name)) return false;
  if (order->plan.solid && strcmp(name, "stone allowance") == 0) return true;
  for (size_t i = 0; i < sizeof only_with / sizeof only_with[0]; i++) {
    const char *item = only_with[i].item;
    if (strncmp(name, item, strlen(item)) == 0) return has_line(order, only_with[i].line);
  }
  return true;
}

typedef struct assuming {
  const lw_page *page;
  const lw_order *order;
  const lw_result *result;
} assuming;

/* The tail is an item of the blocks, for a check reads it; only an order fills it in. */
bool lw_order_assumes(const lw_echo *echo) {
  lw_item_part part = echo->item->part;
  bool ours = part == LW_ABOUT_PLAN || part == LW_ABOUT_ORDER || strcmp(echo->name, "block tail length") == 0;
  return ours && echo->origin == LW_ASSUMED;
}

static void add_assumed(void *context, const lw_echo *echo) {
  const assuming *a = context;
  if (!lw_order_assumes(echo) || !matters(a->order, echo->name)) return;
  const char *source = lw_order_assumed_source(a->result, echo);
  if (source[0] != '\0')
    lw_page_sayf(a->page, "  ", "%s = %s (%s)", echo->name, echo->words, source);
  else
    lw_page_sayf(a->page, "  ", "%s = %s", echo->name, echo->words);
}

lw_status lw_report_order_text(const lw_result *result, const lw_order *order, lw_order_page which,
                               const lw_text_style *style, lw_text *out) {
  lw_text kept = {0};
  lw_page page = lw_page_open(style, result->units, out, &kept);
  assuming a = {&page, order, result};
  if (which == LW_PAGE_ORDER) {
    head(&page, result,
         "Quantities for the wall as the sheet gives it. They do not say that it may be built.");
    lines(&page, order);
    carrying(&page, order);
    lw_order_notes_text(&page, order);
    runs(&page, order);
    corners(&page, order);
    courses(&page, order);
    cuts(&page, order);
    caps(&page, order);
  } else {
    head(&page, result,
         "Setting out of the wall as the sheet gives it. It does not say that it may be built.");
    lw_order_setting_out_text(&page, result, order);
    lw_order_notes_text(&page, order);
  }
  lw_page_heading(&page, "Assumed, because the sheet does not say");
  lw_echo_each(result, add_assumed, &a);
  return lw_page_close(&page, out);
}
