/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/report.h>

#include <stdlib.h>
#include <string.h>

#include <lowwall/result.h>
#include <lowwall/ground.h>

typedef struct lw_made {
  const char *type;
  size_t size;
} lw_made;

#define MADE(type) \
  { #type, sizeof(type) }
static const lw_made all[] = {
    MADE(lw_case),   MADE(lw_tables),      MADE(lw_faults),        MADE(lw_error),
    MADE(lw_text),   MADE(lw_result),      MADE(lw_order),         MADE(lw_plane),
    MADE(lw_thrust), MADE(lw_trial_wedge), MADE(lw_strip),         MADE(lw_bearing),
    MADE(lw_slip),   MADE(lw_slip_ground), MADE(lw_diagram_asked), MADE(lw_diagram)};

size_t lw_size_of(const char *type) {
  for (size_t i = 0; i < sizeof all / sizeof *all; i++)
    if (strcmp(all[i].type, type) == 0) return all[i].size;
  return 0;
}

void *lw_new(const char *type) {
  size_t size = lw_size_of(type);
  void *made = size > 0 ? calloc(1, size) : NULL;
  if (made == NULL) return NULL;
  if (strcmp(type, "lw_plane") == 0) lw_plane_init(made);
  if (strcmp(type, "lw_slip_ground") == 0) lw_slip_ground_init(made);
  return made;
}

void lw_delete(void *made) {
  free(made);
}

const char *lw_text_says(const lw_text *text) {
  return text->data != NULL ? text->data : "";
}

const char *lw_error_says(const lw_error *error) {
  return error->text;
}
