/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "verdict/limit_own.h"
#include "limit_dates.h"
#include "parts.h"

/* Heights by every definition that laws use, and the limits on file held against them. */

static void height(const lw_page *page, double value_m, const char *sentence, const char *slug) {
  char prefix[24];
  if (page->units == LW_UNITS_US)
    lw_print(prefix, sizeof prefix, "  %13s  ", lw_metres(page->units, value_m, 2).text);
  else
    lw_print(prefix, sizeof prefix, "  %6.2f m  ", value_m);
  lw_page_sayf(page, prefix, "%s%s%s", sentence, slug[0] ? ": " : "", slug);
}

static void heights(const lw_page *page, const lw_verdict *v) {
  for (int i = 0; i < LW_HEIGHT_KINDS; i++) {
    height(page, v->height_m[i], lw_height_sentence((lw_height_kind)i), lw_height_slug((lw_height_kind)i));
  }
  if (fabs(v->total_to_pad_m - v->height_m[LW_HEIGHT_TOTAL]) > 1e-9) {
    height(page, v->total_to_pad_m, "from the underside of the pad to the top", "");
  }
}

static const char *asks(const lw_limit_row *row) {
  switch (row->trigger) {
  case LW_EXEMPT_BELOW: return "the exemption ends";
  case LW_APPROVAL_ABOVE: return "approval";
  case LW_ENGINEER_ABOVE: return "engineer";
  case LW_DESIGN_ABOVE: return row->of_standard ? "a standard begins" : "design";
  case LW_BARRIER_ABOVE: return "barrier";
  }
  return "";
}

/* An exemption that still holds does so on conditions. */
static bool is_exempt(const lw_limit_hit *hit) {
  return hit->row->trigger == LW_EXEMPT_BELOW && !hit->past && hit->kept && hit->row->conditions[0] != '\0';
}

/* What a row past its figure means stands among the reasons; here it is only named. */
static void limit(const lw_page *page, const lw_tables *tables, const lw_limit_hit *hit) {
  const lw_limit_row *row = hit->row;
  char dates[160], words[LW_LIMIT_WORDS];
  lw_text line = {0};
  lw_limit_print_dates(tables, row, dates, sizeof dates);
  const lw_apart apart = lw_metres_apart(page->units, row->height_m, hit->height_m, 2);
  lw_text_addf(&line, "%s%s: %s. Here %s (%s). %s", apart.one.text,
               lw_limit_own(page->units, row, " (", ")").text, asks(row), apart.other.text,
               lw_height_slug(row->measured), row->id);
  if (!hit->past) lw_text_addf(&line, ", %s", row->region);
  lw_text_addf(&line, " %s", row->from.source);
  lw_text_addf(&line, ", %s", dates);
  lw_text_add(&line, lw_limit_print_words(hit, page->units, words, sizeof words));
  if (line.length > 0) lw_page_say(page, hit->past ? "  past      " : "  not past  ", line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}

/* Rows that the wall is not past and that set no conditions run on: each but a figure not reached. */
static void below(const lw_page *page, const lw_tables *tables, const lw_verdict *v) {
  char dates[160];
  lw_text line = {0};
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_hit *hit = &v->limit[i];
    if (hit->past || is_exempt(hit)) continue;
    const lw_limit_row *row = hit->row;
    const lw_apart apart = lw_metres_apart(page->units, row->height_m, hit->height_m, 2);
    lw_text_addf(&line, "%s%s %s%s, here %s (%s), %s", line.length > 0 ? "; " : "", asks(row), apart.one.text,
                 lw_limit_own(page->units, row, " (", ")").text, apart.other.text,
                 lw_height_slug(row->measured), row->id);
    if (v->place_known) lw_text_addf(&line, " %s", row->from.source);
    lw_limit_print_dates(tables, row, dates, sizeof dates);
    lw_text_addf(&line, ", %s", dates);
  }
  if (line.length > 0) lw_page_say(page, "  not past  ", line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}

void lw_text_heights(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  lw_page_heading(page, "Heights");
  heights(page, v);
  if (v->limit_count == 0) return;
  lw_page_heading(page, v->place_known ? "Limits on file for this place"
                        : result->given.about.place.origin == LW_ABSENT
                            ? "Limits: the place is not known, so the cautious default"
                            : "Limits: none on file here clears a wall, so the cautious default too");
  for (int past = 1; past >= 0; past--) {
    for (int i = 0; i < v->limit_count; i++) {
      const lw_limit_hit *hit = &v->limit[i];
      if (past == 1 ? hit->past : is_exempt(hit)) limit(page, result->tables, hit);
    }
  }
  below(page, result->tables, v);
}
