/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"
#include "report/figures/slip.h"

static void set_figure(void *context, const lw_figure *figure) {
  if (!lw_json_set_real(context, figure->key, figure->value))
    lw_json_set_text(context, "reason", lw_reason_slug(figure->reason));
}

static lw_figures into(json_t *object, const lw_result *result) {
  return (lw_figures){.taker = set_figure, .context = object, .result = result};
}

static void add_slices(json_t *object, const lw_result *result, const lw_situation *s) {
  lw_slip_view view;
  if (!lw_again_slip(result, s, &view)) return;
  json_t *slices = lw_json_list(object, "shown");
  for (int i = 0; i < view.list.count; i++) {
    lw_figures of = into(lw_json_entry(slices), result);
    lw_figures_of_slice(&of, &view, i);
  }
}

void lw_json_slip(json_t *situation, const lw_result *result, const lw_situation *s) {
  json_t *object = lw_json_object(situation, "slip");
  lw_figures of = into(object, result);
  lw_json_set_flag(object, "searched", s->slip_known);
  lw_json_set_text(object, "method", lw_slip_method_slug(result->wall.method.slip));
  lw_figures_of_slip(&of, s);
  add_slices(object, result, s);
}

static void set_tier(void *context, const lw_figure *figure) {
  lw_json_set_real(context, figure->key + sizeof "tier." - 1, figure->value);
}

void lw_json_tier(json_t *root, const lw_result *result) {
  const lw_tier *tier = &result->wall.tier;
  json_t *object = lw_json_object(root, "tier");
  lw_figures of = {.taker = set_tier, .context = object, .result = result};
  lw_json_set_text(object, "band", lw_tier_band_slug(tier->band));
  if (tier->band != LW_TIER_NONE) lw_json_set_text(object, "other", tier->above ? "above" : "below");
  lw_figures_of_tier(&of);
}
