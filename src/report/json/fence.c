/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "json.h"
#include "report/figures/parts.h"

/* A figure's key is its place: "fence.board.ratio". */
static void set_figure(void *context, const lw_figure *figure) {
  static const char mine[] = "fence.";
  char part[64];
  json_t *object = context;
  const char *at = figure->key + sizeof mine - 1;
  const char *dot = strchr(at, '.');
  if (dot != NULL) {
    lw_print(part, sizeof part, "%.*s", (int)(dot - at), at);
    json_t *inner = json_object_get(object, part);
    object = inner != NULL ? inner : lw_json_object(object, part);
    at = dot + 1;
  }
  lw_json_set_real(object, at, figure->value);
}

static void set_units(json_t *object, const lw_fence *fence) {
  for (int m = 0; fence->back && fence->status == LW_OK && m < LW_FENCE_MEASURE_COUNT; m++) {
    json_t *inner = lw_json_object(object, lw_fence_measure_slug((lw_fence_measure)m));
    lw_json_set_text(inner, "words", lw_fence_measure_words((lw_fence_measure)m));
    lw_json_set_text(inner, "unit", lw_fence_measure_unit((lw_fence_measure)m));
  }
}

void lw_json_fence(json_t *root, const lw_result *result) {
  const lw_fence *fence = &result->fence;
  json_t *object = lw_json_object(root, "fence");
  lw_figures figures = {.taker = set_figure, .context = object, .result = result};
  lw_json_set_flag(object, "back", fence->back);
  lw_json_set_flag(object, "on_wall", fence->on.present && fence->on.on_wall);
  lw_json_set_flag(object, "behind", fence->on.present && !fence->on.on_wall);
  lw_json_set_flag(object, "computed", fence->back && fence->status == LW_OK);
  if (fence->back) {
    lw_json_set_flag(object, "height_known", fence->height_known);
    lw_json_set_flag(object, "exposure_known", fence->exposure_known);
  }
  if (fence->status != LW_OK) lw_json_set_text(object, "reason", lw_reason_slug(fence->reason));
  set_units(object, fence);
  lw_figures_of_fence(&figures);
}
