/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>
#include <string.h>

/* Heights by every definition that laws use, and the limits on file held against them. */

static void heights(const lw_page *page, const lw_verdict *v) {
  for (int i = 0; i < LW_HEIGHT_KINDS; i++) {
    lw_page_sayf(page, "  ", "%6.2f m  %s (%s)", v->height_m[i], lw_height_sentence((lw_height_kind)i),
                 lw_height_slug((lw_height_kind)i));
  }
  if (fabs(v->total_to_pad_m - v->height_m[LW_HEIGHT_TOTAL]) > 1e-9) {
    lw_page_sayf(page, "  ", "%6.2f m  the same down to the underside of the pad", v->total_to_pad_m);
  }
}

static const char *asks(lw_trigger trigger) {
  switch (trigger) {
  case LW_EXEMPT_BELOW: return "exemption ends";
  case LW_APPROVAL_ABOVE: return "approval";
  case LW_ENGINEER_ABOVE: return "engineer";
  case LW_DESIGN_ABOVE: return "design";
  case LW_BARRIER_ABOVE: return "barrier";
  }
  return "";
}

static void limit(const lw_page *page, const lw_limit_hit *hit) {
  const lw_limit_row *row = hit->row;
  char prefix[16];
  lw_print(prefix, sizeof prefix, "  %-6s", hit->past ? "PAST" : "below");
  lw_page_sayf(page, prefix, "%.2f m, %s, against %.2f m here (%s): %s, %s %s (%s, %s)", row->height_m,
               asks(row->trigger), hit->height_m, lw_height_slug(row->measured), row->region, row->instrument,
               row->from.source, row->as_of[0] ? row->as_of : "no date", lw_seen_word(row->from.seen));
}

void lw_text_heights(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  lw_page_heading(page, "Heights");
  heights(page, v);
  if (v->limit_count == 0) return;
  lw_page_heading(page, v->place_known ? "Limits on file for this place"
                                       : "Limits: the place is not known, so the cautious default");
  for (int past = 1; past >= 0; past--) {
    for (int i = 0; i < v->limit_count; i++) {
      if (v->limit[i].past == (past == 1)) limit(page, &v->limit[i]);
    }
  }
}
