/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/order.h>

#include <string.h>

#include "parts.h"

/* The order and the pegs as a page. The verdict's headline stands first: a list of blocks is no leave to
 * build. */

static void head(const lw_page *page, const lw_result *result, const char *what) {
  char title[LW_WORDS_MAX];
  lw_text_clean(result->given.title.text, title, sizeof title);
  lw_page_tone(page, LW_TONE_STRONG, "", result->verdict.headline);
  lw_page_blank(page);
  if (title[0] != '\0') lw_page_say(page, "", title);
  lw_page_say(page, "", what);
}

static void runs(const lw_page *page, const lw_order *order) {
  lw_page_heading(page, "Runs");
  for (int i = 0; i < order->plan.run_count; i++) {
    const lw_order_run *r = &order->run[i];
    lw_page_linef(page, LW_TONE_PLAIN, "  run %d   %7.3f m at the lowest course, %7.3f m at the top", i + 1,
                  r->length_m, r->top_length_m);
    if (r->shorter_known && r->longer_known)
      lw_page_linef(page, LW_TONE_PLAIN, "          no cut at %.3f m or %.3f m", r->shorter_m, r->longer_m);
    if (r->radius_m > 0.0 && r->radius_known)
      lw_page_linef(page, LW_TONE_PLAIN, "          radius %.2f m, the blocks follow %.2f m", r->radius_m,
                    r->least_radius_m);
  }
}

static void courses(const lw_page *page, const lw_order *order) {
  lw_page_heading(page, "Courses, the lowest first");
  lw_page_linef(page, LW_TONE_PLAIN,
                "  course   face m  whole   half    cut mitred   left  right  overlap mm");
  for (int i = 0; i < order->plan.courses; i++) {
    const lw_course_count *c = &order->course[i];
    char overlap[32] = "-";
    if (c->overlap_known) lw_print(overlap, sizeof overlap, "%.0f", c->overlap_m * 1000.0);
    lw_page_linef(page, LW_TONE_PLAIN, "  %6d %8.3f %6d %6d %6d %6d %6d %6d  %10s", i + 1, c->face_m,
                  c->whole, c->half, c->closer, c->mitred, c->left, c->right, overlap);
  }
}

static void cuts(const lw_page *page, const lw_order *order) {
  if (order->cut_count == 0) return;
  lw_page_heading(page, "Cutting list, the saw away from a square cut");
  for (int i = 0; i < order->cut_count; i++) {
    const lw_cut *c = &order->cut[i];
    lw_page_linef(page, LW_TONE_PLAIN, "  %4d  %-12s long edge %4.0f mm, short edge %4.0f mm, saw %.1f deg%s",
                  c->count, lw_cut_slug(c->kind), c->long_m * 1000.0, c->short_m * 1000.0, c->saw_deg,
                  c->base_unit ? ", base unit" : "");
  }
}

static void lines(const lw_page *page, const lw_order *order) {
  lw_page_heading(page, "Order: net, allowance, order");
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    char allowance[40] = "-", mass[40] = "";
    bool whole = strcmp(l->unit, "pieces") == 0;
    if (l->allowance_known && l->pieces)
      lw_print(allowance, sizeof allowance, "+%.0f", l->allowance);
    else if (l->allowance_known)
      lw_print(allowance, sizeof allowance, "%.0f %%", l->allowance * 100.0);
    if (l->mass_kg > 0.0) lw_print(mass, sizeof mass, "%.0f kg", l->mass_kg);
    lw_page_linef(page, LW_TONE_PLAIN,
                  whole ? "  %-36.36s %8.0f %6s %8.0f %-6s %s" : "  %-36.36s %8.2f %6s %8.2f %-6s %s",
                  l->name, l->net, allowance, l->order, l->unit, mass);
    if (l->note[0] != '\0') lw_page_say(page, "      ", l->note);
  }
  lw_page_sayf(page, "  ",
               "To carry: %.0f kg in all; a block weighs %.0f kg. Blocks come on %d pallets: keep them and "
               "all heaps at least %.2f m behind the wall.",
               order->carried_kg, order->unit_mass_kg, order->pallets, order->pallet_distance_m);
}

static void notes(const lw_page *page, const lw_order *order) {
  if (order->note_count == 0) return;
  lw_page_heading(page, "Mind");
  for (int i = 0; i < order->note_count; i++) lw_page_say(page, "  - ", order->note[i].text);
}

static void add_assumed(void *context, const lw_echo *echo) {
  const lw_page *page = context;
  bool ours = strcmp(echo->item->part, "plan") == 0 || strcmp(echo->item->part, "order") == 0;
  if (ours && echo->origin == LW_ASSUMED) lw_page_sayf(page, "  ", "%s = %s", echo->name, echo->words);
}

static void pegs(const lw_page *page, const lw_pegs *p) {
  lw_page_heading(page, "Pegs: X along run 1, Y towards the soil, level above the lowest course's underside");
  for (int i = 0; i < p->peg_count; i++)
    lw_page_linef(page, LW_TONE_PLAIN, "  %-4s %9.3f %9.3f %8.3f m", p->peg[i].name, p->peg[i].at.x_m,
                  p->peg[i].at.y_m, p->peg[i].level_m);
  if (p->base_offset_m > 0.0)
    lw_page_sayf(page, "  ", "The base line (B) stands %.0f mm in front of the top line (T).",
                 p->base_offset_m * 1000.0);
  for (int i = 0; i < p->check_count; i++)
    lw_page_sayf(page, "  ", "%s: %.3f m, within %.0f mm, which is %.2f deg at the corner.", p->check[i].name,
                 p->check[i].distance_m, p->check[i].tolerance_m * 1000.0, p->check[i].angle_deg);
  for (int i = 0; i < p->square_count; i++)
    lw_page_sayf(page, "  ", "Corner B%d: %.2f, %.2f and %.2f m make it square.", p->square[i].corner,
                 3.0 * p->square[i].unit_m, 4.0 * p->square[i].unit_m, 5.0 * p->square[i].unit_m);
  lw_page_heading(page, "Levels");
  for (int i = 0; i < p->level_count; i++)
    lw_page_linef(page, LW_TONE_PLAIN, "  %8.3f m  %s", p->level[i].level_m, p->level[i].name);
  if (p->pipe_known)
    lw_page_sayf(page, "  ",
                 "Pipe: inside bottom %.3f m at its high end, %.3f m at the outlet, %.2f m long. The "
                 "outlet must lie above where it drains to.",
                 p->pipe_high_m, p->pipe_outlet_m, p->pipe_length_m);
}

static void work(const lw_page *page, const lw_order *order) {
  const lw_pegs *p = &order->pegs;
  lw_page_heading(page, "Order of work (common practice)");
  for (int i = 0; i < order->work_count; i++)
    lw_page_say(page, order->work[i].hold ? "  # " : "  - ", order->work[i].text);
  lw_page_heading(page, "After hand-over");
  lw_page_sayf(page, "  ",
               "Plumb from the top of the face to its base: %.0f mm as built. Act when it has come out by "
               "%.0f mm, or when a joint has stepped by %.0f mm.",
               p->batter_reading_m * 1000.0, p->lean_alarm_m * 1000.0, p->joint_alarm_m * 1000.0);
}

lw_status lw_report_order_text(const lw_result *result, const lw_order *order, lw_order_page which,
                               const lw_text_style *style, lw_text *out) {
  lw_page page = {.out = out, .style = *style};
  if (which == LW_PAGE_ORDER) {
    head(&page, result,
         "Quantities for the wall as the sheet gives it. They do not say that it may be built.");
    runs(&page, order);
    courses(&page, order);
    cuts(&page, order);
    lines(&page, order);
  } else {
    head(&page, result,
         "Setting out of the wall as the sheet gives it. It does not say that it may be built.");
    pegs(&page, &order->pegs);
    work(&page, order);
  }
  notes(&page, order);
  lw_page_heading(&page, "Assumed, because the sheet does not say");
  lw_echo_each(result, add_assumed, &page);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
