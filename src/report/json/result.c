/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"
#include "report/text/unchecked.h"

/* The whole result as one object; its keys are documented in docs/results.md. */

static void heights(json_t *root, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  json_t *object = lw_json_object(root, "heights");
  for (int i = 0; i < LW_HEIGHT_KINDS; i++) {
    char key[32];
    lw_print(key, sizeof key, "%s_m", lw_height_slug((lw_height_kind)i));
    for (char *c = key; *c; c++) *c = *c == '-' ? '_' : *c;
    lw_json_set_double(object, key, v->height_m[i]);
  }
  lw_json_set_double(object, "total_to_pad_m", v->total_to_pad_m);
}

static void add_figure(void *context, const lw_figure *figure) {
  json_t *entry = lw_json_entry(context);
  lw_json_set_text(entry, "key", figure->key);
  lw_json_set_text(entry, "label", figure->label);
  bool there = lw_json_set_real(entry, "value", figure->value);
  lw_json_set_text(entry, "unit", figure->unit);
  lw_json_set_text(entry, "source", figure->source);
  if (!there) lw_json_set_text(entry, "reason", lw_reason_slug(figure->reason));
}

void lw_json_figures(json_t *root, const lw_result *result) {
  lw_figures_each(result, add_figure, lw_json_list(root, "figures"));
}

static void add_unchecked(void *context, const lw_unchecked *unchecked) {
  json_t *entry = lw_json_entry(context);
  lw_json_set_text(entry, "slug", unchecked->slug);
  lw_json_set_text(entry, "text", unchecked->text);
}

lw_status lw_report_json(const lw_result *result, int indent, lw_text *out) {
  json_t *root = json_object();
  lw_json_set_text(root, "version", LW_VERSION);
  lw_json_set_text(root, "headline", result->verdict.headline);
  lw_json_set_text(root, "units", result->units == LW_UNITS_US ? "us" : "metric");
  lw_json_set_count(root, "exit", result->verdict.exit_status);
  lw_json_set_text(root, "tables_replaced", result->tables->replaced);
  lw_json_set_text(root, "title", result->given.about.title.text);
  lw_json_set_text(root, "mark", result->given.about.mark.text);
  lw_json_set_text(root, "place", result->given.about.place.text);
  lw_json_verdict(root, result);
  heights(root, result);
  lw_json_situations(root, result);
  lw_json_construction(root, result);
  lw_json_water(root, result);
  lw_json_trench(root, result);
  lw_json_influence(root, result);
  lw_json_tier(root, result);
  lw_unchecked_each(result, add_unchecked, lw_json_list(root, "not_checked"));
  lw_json_fence(root, result);
  lw_json_advice(root, result);
  lw_json_given(root, result);
  lw_json_factor_set(root, result);
  lw_json_factor_sets(root, result);
  lw_json_method(root, result);
  lw_json_sources(root, result);
  lw_json_figures(root, result);
  lw_json_sources_cited(root);
  return lw_json_write(root, indent, out);
}
