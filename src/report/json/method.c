/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include <lowwall/pressure.h>

#include "json.h"
#include "pressure/given.h"
#include "report/difference.h"
#include "report/text/echo.h"

/* By which factors and which switches the wall was checked. */

static void add_needs(json_t *list, const lw_factor_row *row) {
  static const char *const kinds[] = {"usual", "unusual", "extreme"};
  json_t *entry = lw_json_entry(list);
  bool all = true;
  lw_json_set_text(entry, "quantity", row->quantity);
  for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++) {
    char key[24];
    bool there = lw_json_set_double(entry, kinds[i], row->needs[i]);
    lw_print(key, sizeof key, "%s_seen", kinds[i]);
    lw_json_set_text(entry, key, there ? lw_seen_word(row->needs_seen[i]) : "");
    all = there && all;
  }
  if (!all) lw_json_set_text(entry, "reason", lw_reason_slug(LW_REASON_NO_REQUIREMENT));
  lw_json_set_text(entry, "clause", row->clause);
  lw_json_set_text(entry, "note", row->note);
  lw_json_set_text(entry, "source", row->from.source);
}

/* From the case, whose words the result owns. */
static const char *format_of(const lw_result *result) {
  const lw_words *factor_set = &result->given.method.factor_set;
  return factor_set->origin == LW_ABSENT ? "lowwall" : factor_set->text;
}

void lw_json_factor_set(json_t *root, const lw_result *result) {
  const lw_tables *tables = result->tables;
  const char *slug = format_of(result);
  json_t *object = lw_json_object(root, "format");
  lw_json_set_text(object, "slug", slug);
  lw_json_set_text(object, "title", "");
  json_t *list = lw_json_list(object, "rows");
  for (int i = 0; i < tables->factor_count; i++) {
    const lw_factor_row *row = &tables->factor[i];
    if (strcmp(row->factor_set, slug) != 0) continue;
    lw_json_set_text(object, "title", row->title);
    add_needs(list, row);
  }
}

static void add_switch(void *context, const lw_echo *echo) {
  static const char beginning[] = "method_";
  size_t length = sizeof beginning - 1;
  if (strncmp(echo->key, beginning, length) == 0) lw_json_set_text(context, echo->key + length, echo->words);
}

void lw_json_method(json_t *root, const lw_result *result) {
  const lw_method *method = &result->wall.method;
  const lw_pressure_routine *pressure = lw_active_routine_of(method->pressure, method->active_by);
  const lw_bearing_routine *bearing = lw_bearing_routine_of(method->bearing);
  bool given = method->coefficient > 0.0;
  json_t *object = lw_json_object(root, "method");
  lw_echo_each(result, add_switch, object);
  lw_json_set_text(object, "pressure_title", given ? lw_given_routine()->title : pressure->title);
  lw_json_set_text(object, "pressure_source", given ? "" : lw_thrust_source(result));
  lw_json_set_text(object, "bearing_title", bearing ? bearing->title : "presumptive values");
  lw_json_set_text(object, "bearing_source", bearing ? bearing->source : "");
}
