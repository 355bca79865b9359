/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* The page for a terminal, part by part. */

static void title(const lw_page *page, const lw_result *result) {
  char name[LW_WORDS_MAX], mark[LW_WORDS_MAX];
  lw_text_clean(result->given.about.title.text, name, sizeof name);
  lw_text_clean(result->given.about.mark.text, mark, sizeof mark);
  if (name[0] == '\0' && mark[0] == '\0') return;
  lw_page_blank(page);
  lw_page_sayf(page, "", "%s%s%s", name, name[0] && mark[0] ? " - " : "", mark);
}

static void last_word(const lw_page *page) {
  lw_page_blank(page);
  lw_page_say(
      page, "",
      "lowwall computes from what it was told; it has not seen the place. It certifies nothing and replaces "
      "no engineer, no council and no look at the ground: whoever builds, answers for it.");
}

lw_status lw_report_text(const lw_result *result, const lw_text_style *style, lw_text *out) {
  lw_text kept = {0};
  lw_page page = lw_page_open(style, result->units, out, &kept);
  lw_text_headline(&page, result);
  title(&page, result);
  lw_text_verdict(&page, result);
  lw_text_checks(&page, result);
  lw_text_narrow(&page, result);
  lw_text_water(&page, result);
  lw_text_factor_sets(&page, result);
  lw_text_remedies(&page, result);
  lw_text_costs(&page, result);
  lw_text_construction(&page, result);
  lw_text_fence(&page, result);
  lw_text_unchecked(&page, result);
  lw_text_heights(&page, result);
  lw_text_cautions(&page, result);
  lw_text_resting(&page, result);
  lw_text_assumed(&page, result, false);
  lw_text_sources(&page, result);
  last_word(&page);
  return lw_page_close(&page, out);
}
