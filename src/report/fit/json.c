/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report.h"

#include "report/json/set.h"

/* Its keys are documented in docs/order.md. */

static void figures(json_t *object, const lw_fit *fit) {
  lw_json_set_double(object, "cost", fit->cost);
  lw_json_set_count(object, "blocks", fit->whole);
  lw_json_set_count(object, "other_units", fit->other);
  lw_json_set_double(object, "block_mass_kg", fit->unit_mass_kg);
  lw_json_set_double(object, "mass_kg", fit->mass_kg);
  lw_json_set_double(object, "lift_mass_kg", fit->lift_mass_kg);
  lw_json_set_count(object, "courses", fit->courses);
  lw_json_set_double(object, "setback_m", fit->setback_m);
  lw_json_set_double(object, "embedment_m", fit->embedment_m);
  lw_json_set_text(object, "who", lw_who_slug(fit->who));
  lw_json_set_text(object, "headline", fit->headline);
  lw_json_set_text(object, "governs", fit->governs);
  lw_json_set_real(object, "ratio", fit->ratio);
}

static void entry(json_t *object, const lw_fit_list *list, const lw_fit *fit) {
  char why[LW_FIT_WHY];
  lw_json_set_text(object, "name", fit->block->name);
  lw_json_set_count(object, "row", fit->block->row);
  lw_json_set_double(object, "price", fit->block->price);
  lw_json_set_text(object, "result", lw_fit_slug(fit));
  if (fit->kind == LW_FIT_LAID)
    figures(object, fit);
  else
    lw_json_set_text(object, "why", lw_fit_why(list, fit, why));
  if (fit->kind == LW_FIT_HEIGHT) {
    lw_json_set_real(object, "height_below_m", (lw_number){fit->below_m, fit->courses_below > 0});
    lw_json_set_double(object, "height_above_m", fit->above_m);
  }
  json_t *items = lw_json_list(object, "items");
  for (int i = 0; i < fit->items.count; i++) lw_json_append(items, json_string(fit->items.item[i]));
}

lw_status lw_report_fit_json(const lw_fit_list *list, lw_text *out) {
  json_t *root = json_object();
  lw_json_set_text(root, "currency", list->yard->currency);
  lw_json_set_text(root, "replaced_tables", list->replaced);
  json_t *blocks = lw_json_list(root, "blocks");
  for (int i = 0; i < list->yard->count; i++) entry(lw_json_entry(blocks), list, &list->fit[i]);
  return lw_json_write(root, 2, out);
}
