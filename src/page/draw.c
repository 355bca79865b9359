/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "replies.h"
#include "wall.h"

/* The drawings as SVG, to a width that the page has. */

enum { NARROWEST_MM = 90, WIDEST_MM = 400, PHONE_MM = 95 };

typedef lw_status (*lw_view)(const lw_result *, const lw_order *, double, lw_drawing *, lw_error *);

static lw_status section(const lw_result *result, const lw_order *order, double width_mm, lw_drawing *drawing,
                         lw_error *error) {
  (void)order;
  return lw_draw_section(result, width_mm, drawing, error);
}

static const struct {
  const char *name;
  lw_status (*run)(lw_request *asked, const lw_request_wall **wall);
  lw_view draw;
} VIEWS[] = {{"section", lw_request_run, section},
             {"elevation", lw_request_run_order, lw_draw_elevation},
             {"plan", lw_request_run_order, lw_draw_plan}};

static lw_status draw(lw_request *asked, lw_view view, double width_mm, const lw_request_wall *wall) {
  lw_drawing drawing = {0};
  lw_text svg = {0};
  lw_status status = view(&wall->result, &wall->order, width_mm, &drawing, &asked->error);
  if (status == LW_OK) status = lw_drawing_svg(&drawing, &svg);
  lw_reply_put(asked->reply, "title", &drawing.title);
  lw_reply_put(asked->reply, "description", &drawing.description);
  lw_drawing_free(&drawing);
  lw_reply_put(asked->reply, "svg", &svg);
  return status;
}

lw_status lw_reply_draw(lw_request *asked) {
  const char *name = lw_request_text_of(asked, "view");
  double width_mm = lw_request_number_of(asked, "width_mm", PHONE_MM);
  size_t at = 0;
  while (at < sizeof VIEWS / sizeof *VIEWS && strcmp(VIEWS[at].name, name) != 0) at++;
  if (at == sizeof VIEWS / sizeof *VIEWS)
    return lw_request_refuse(asked, "view: section, elevation or plan is wanted");
  if (!(width_mm >= NARROWEST_MM && width_mm <= WIDEST_MM))
    return lw_request_refuse(asked, "width_mm: %d to %d is wanted", NARROWEST_MM, WIDEST_MM);
  const lw_request_wall *wall;
  lw_status status = VIEWS[at].run(asked, &wall);
  if (status == LW_OK) status = draw(asked, VIEWS[at].draw, width_mm, wall);
  return status;
}
