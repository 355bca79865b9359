/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_wall.h"

#include <math.h>
#include <stdlib.h>

#include "formula.h"
#include "one_wall.h"
#include "output.h"
#include "pressure_side.h"
#include "report/page.h"
#include "say.h"

/* All methods on the planes behind the wall of a sheet. */

static const char *title_of(const lw_result *result) {
  return result->given.about.title.text;
}

static void set_planes(const lw_diagram *d, json_t *out) {
  const lw_plane *back = &d->asked.back;
  json_t *plane = lw_json_object(out, "back");
  lw_formula_set(plane, "height_m", back->height_m, NULL);
  lw_formula_set(plane, "batter_deg", back->batter_rad * LW_DEG_PER_RAD, NULL);
  lw_formula_set(plane, "wall_friction_deg", back->wall_friction_rad * LW_DEG_PER_RAD, NULL);
  lw_formula_set(plane, "ground_slope_deg", back->slope_rad * LW_DEG_PER_RAD, NULL);
  lw_formula_set(plane, "ground_slope_run_m", back->slope_run_m,
                 isfinite(back->slope_run_m) ? NULL : "goes-on");
  lw_formula_set(plane, "water_depth_m", back->water_depth_m,
                 isfinite(back->water_depth_m) ? NULL : "no-water");
  lw_formula_set(plane, "surcharge_kpa", back->surcharge_kpa, NULL);
  lw_formula_set(lw_json_object(out, "upright"), "height_m", d->asked.upright.height_m, NULL);
}

static int answer_json(const lw_pressure_asked *asked, const lw_result *result,
                       const lw_diagram_asked *planes, lw_diagram *d) {
  enum { INDENT = 2 };
  json_t *out = json_object(), *steps = json_array();
  lw_text text = {0};
  lw_working working = lw_formula_json_working(steps);
  lw_diagram_find(planes, d, asked->working ? &working : NULL);
  lw_json_set_text(out, "wall", title_of(result));
  lw_json_set_text(out, "headline", result->verdict.headline);
  lw_json_set_flag(out, "backfill_refused", result->wall.site.backfill_refused);
  set_planes(d, out);
  lw_pressure_side_json(d, out);
  if (asked->working)
    lw_json_put(out, "working", steps);
  else
    json_decref(steps);
  if (lw_json_write_exact(out, INDENT, &text) != LW_OK) text.failed = true;
  return lw_output_write(asked->output, &text, LW_EXIT_DONE);
}

static void add_head(const lw_result *result, lw_text *text) {
  const lw_page page = {.out = text, .style = {.columns = 80}};
  char title[LW_WORDS_MAX];
  lw_text_clean(title_of(result), title, sizeof title);
  lw_text_addf(text, "Earth pressure behind the wall%s%s\n", title[0] ? ": " : "", title);
  lw_page_say(&page, "  ", result->verdict.headline);
  lw_page_say(
      &page, "  ",
      "As built and as its sheet is checked: cautious values where it gives none, no partial factor, "
      "no person, no earthquake, no rain on its way out. Passive is what the same ground would resist with "
      "if the wall were pushed into it; no check counts that.");
  if (result->wall.site.backfill_refused)
    lw_page_say(&page, "  ",
                "A soil behind is refused as backfill: the figures are those of the formulas and no wall "
                "rests on them.");
  lw_text_add(text, "\nThe planes and what they meet\n");
}

static int answer_text(const lw_pressure_asked *asked, const lw_result *result,
                       const lw_diagram_asked *planes, lw_diagram *d) {
  lw_text text = {0}, steps = {0};
  lw_working working = lw_formula_text_working(&steps);
  working.units = result->units;
  lw_diagram_find(planes, d, asked->working ? &working : NULL);
  add_head(result, &text);
  lw_pressure_ground_text(d, result->units, &text);
  lw_pressure_side_text(d, result->units, &text);
  lw_pressure_depths_text(d, result->units, &text);
  if (asked->working) {
    lw_text_add(&text, "\nWorking\n");
    lw_text_add(&text, steps.data != NULL ? steps.data : "");
  }
  text.failed = text.failed || steps.failed;
  lw_text_free(&steps);
  return lw_output_write(asked->output, &text, LW_EXIT_DONE);
}

static int answer(const lw_pressure_asked *asked, const lw_result *result, const lw_diagram_asked *planes,
                  lw_diagram *d) {
  lw_text text = {0};
  if (asked->json) return answer_json(asked, result, planes, d);
  if (!asked->drawn && !asked->csv) return answer_text(asked, result, planes, d);
  lw_diagram_find(planes, d, NULL);
  const lw_pressure_page page = {d, result->verdict.headline, title_of(result), result->units};
  if (asked->drawn) return lw_pressure_draw(asked, &page);
  lw_pressure_depths_csv(d, &text);
  return lw_output_write(asked->output, &text, LW_EXIT_DONE);
}

static int of_result(const lw_pressure_asked *asked, const lw_result *result) {
  lw_diagram_asked planes;
  lw_error error = {0};
  if (lw_diagram_planes(&result->wall, &planes, &error) != LW_OK)
    return lw_cli_fail("pressure", error.status, &error);
  lw_diagram *diagram = calloc(1, sizeof *diagram);
  if (diagram == NULL) return lw_cli_no_memory();
  int exit_status = answer(asked, result, &planes, diagram);
  free(diagram);
  return exit_status;
}

int lw_pressure_of_wall(const lw_arguments *arguments, const lw_pressure_asked *asked) {
  lw_wall_asked of = {
      .command = "pressure", .tables = asked->tables, .output = asked->output, .units = asked->units};
  int exit_status = LW_EXIT_OTHER;
  if (!lw_wall_take_arguments(arguments, &of)) return LW_EXIT_BAD_INPUT;
  lw_one_wall *wall = lw_wall_open(&of, &exit_status);
  if (wall == NULL) return exit_status;
  int ended = lw_wall_run(&of, wall);
  exit_status = ended > 0 ? ended - 1 : of_result(asked, &wall->result);
  lw_wall_close(wall);
  return exit_status;
}
