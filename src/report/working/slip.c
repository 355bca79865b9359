/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/figures/slip.h"

#include <math.h>

#include "working.h"

/* The worst circle of a situation, slice by slice: few slices, which can be followed by hand. */

static void circle(const lw_page *page, const lw_slip *slip) {
  const lw_slip_circle *c = &slip->circle;
  lw_page_sayf(page, "  ",
               "The worst of %d circles: centre xc = %s, yc = %s, radius Rc = %s; out of the ground "
               "at x = %s, into it at x = %s.",
               slip->circles, lw_tell_amount(page->units, "m", c->centre_x_m, 4).text,
               lw_tell_amount(page->units, "m", c->centre_y_m, 4).text,
               lw_tell_amount(page->units, "m", c->radius_m, 4).text,
               lw_tell_amount(page->units, "m", c->exit_x_m, 3).text,
               lw_tell_amount(page->units, "m", c->entry_x_m, 3).text);
}

static const char GIVEN[] = "  |%2s |%8s |%9s |%9s |%7s |%8s |%7s |%6s |%6s|%8s";

static void given_heads(const lw_page *page, bool shaken) {
  lw_page_say(
      page, "  ",
      "Each slice: x its middle, dx its width, dl the arc below it, sl [1 + kl/6 + 3 kl^2/40 + 15 kl^3/336] "
      "over its chord sl with kl = sl^2/(4 Rc^2), al its base's slope, sin al = (x - xc)/Rc, Ws its weight "
      "with what stands on it, u, c and phi at its base.");
  if (shaken) lw_page_say(page, "  ", "yw is the level of its weight.");
  lw_page_headf(page, GIVEN, "", "x", "dx", "dl", "al", "Ws", "u", "c", "phi", shaken ? "yw" : "");
  lw_tell_name m = lw_tell_unit(page->units, "m"), weight = lw_tell_unit(page->units, "kN/m"),
               stress = lw_tell_unit(page->units, "kPa");
  lw_page_headf(page, GIVEN, "", m.text, m.text, m.text, "deg", weight.text, stress.text, stress.text, "deg",
                shaken ? m.text : "");
}

static void given(const lw_page *page, const lw_slip_view *view, int number) {
  const lw_slip_slice *s = &view->list.slice[number];
  lw_units units = page->units;
  bool us = units == LW_UNITS_US;
  char level[24] = "";
  if (view->seismic > 0.0)
    lw_number_print(level, sizeof level, lw_tell_in(page->units, "m", s->weight_y_m), 4);
  lw_page_rowf(page, LW_TONE_PLAIN,
               us ? "  |%2d |%8.4f |%#9.5g |%#9.5g |%7.2f |%8.2f |%7.1f |%6.1f |%6.2f|%8s"
                  : "  |%2d |%8.4f |%#9.5g |%#9.5g |%7.2f |%8.4f |%7.3f |%6.2f |%6.2f|%8s",
               number + 1, lw_tell_in(units, "m", s->x_m), lw_tell_in(units, "m", s->width_m),
               lw_tell_in(units, "m", s->length_m), asin(s->sine) * LW_DEG_PER_RAD,
               lw_tell_in(units, "kN/m", s->weight_kn_per_m), lw_tell_in(units, "kPa", s->pore_kpa),
               lw_tell_in(units, "kPa", s->cohesion_kpa), atan(s->tan_friction) * LW_DEG_PER_RAD, level);
}

static const char FORCES[] = "  |%4s |%9s|%9s |%9s |%9s |%9s";

static void forces_heads(const lw_page *page, const lw_slip_view *view) {
  bool shaken = view->seismic > 0.0, bishop = view->slip.bishop > 0.0;
  if (shaken)
    lw_page_sayf(page, "  ", "D = Ws sin al, De = kh Ws (yc - yw)/Rc with kh = %.4f.", view->seismic);
  lw_page_sayf(page, "  ",
               "%sTo = c dl + N tan phi with N = Ws dx/dl%s - u dl, not below 0, by ordinary slices.",
               shaken ? "" : "D = Ws sin al. ", shaken ? " - kh Ws sin al" : "");
  if (bishop)
    lw_page_sayf(
        page, "  ",
        "Tb = [c dx + (Ws - u dx) tan phi]/ma by Bishop, the bracket not below 0, with ma = dx/dl + sin "
        "al tan phi/F and F = %.6f.",
        view->slip.bishop);
  lw_page_headf(page, FORCES, "", "D", shaken ? "De" : "", "To", bishop ? "ma" : "", bishop ? "Tb" : "");
  lw_tell_name unit = lw_tell_unit(page->units, "kN/m");
  lw_page_headf(page, FORCES, "", unit.text, shaken ? unit.text : "", unit.text, "", bishop ? unit.text : "");
}

/* A number of a column, where the column is there. */
static const char *cell(char out[24], double value, bool there) {
  out[0] = '\0';
  if (there) lw_number_print(out, 24, value, 4);
  return out;
}

/* The same of a force, in nine columns. */
static const char *force_cell(const lw_page *page, char out[24], double kn_per_m, bool there) {
  double value = lw_tell_in(page->units, "kN/m", kn_per_m);
  bool many = page->units == LW_UNITS_US;
  out[0] = '\0';
  if (there) lw_number_print(out, 24, value, many ? (fabs(value) < 10000.0 ? 3 : 2) : 4);
  return out;
}

static void forces(const lw_page *page, const lw_slip_view *view, const char *name, const lw_slip_forces *f) {
  char d[24], e[24], o[24], m[24], b[24];
  bool bishop = view->slip.bishop > 0.0;
  lw_page_rowf(page, LW_TONE_PLAIN, FORCES, name, force_cell(page, d, f->driving_kn_per_m, true),
               force_cell(page, e, f->shaken_kn_per_m, view->seismic > 0.0),
               force_cell(page, o, f->ordinary_kn_per_m, true),
               cell(m, f->m_alpha, bishop && f->m_alpha > 0.0),
               force_cell(page, b, f->bishop_kn_per_m, bishop));
}

static void all_forces(const lw_page *page, const lw_slip_view *view) {
  forces_heads(page, view);
  for (int i = 0; i < view->list.count; i++) {
    char name[8];
    lw_print(name, sizeof name, "%d", i + 1);
    forces(page, view, name, &view->force[i]);
  }
  forces(page, view, "sums", &view->sum);
}

/* The factors of these slices, as the method found them. */
static void factors(const lw_page *page, const lw_result *result, const lw_slip_view *view) {
  lw_page to = *page;
  lw_working working = lw_page_working(&to);
  lw_page_sayf(page, "  ", "ST is the sum of To, SD of D%s.", view->seismic > 0.0 ? " and De" : "");
  if (view->slip.bishop > 0.0)
    lw_page_say(
        page, "  ",
        "SB is the sum of Tb with the F before, g by how much SB/SD rises with it, (sum of Tb sin al tan "
        "phi/ma)/(F^2 SD), by which Newton's rule goes on until F stays.");
  lw_again_slices(result, view, &working);
}

static void search(const lw_page *page, const lw_slip *slip) {
  char bishop[40] = "";
  if (slip->bishop > 0.0) lw_print(bishop, sizeof bishop, " and Bishop %.4f", slip->bishop);
  lw_page_sayf(page, "  ", "With the %d slices of the search: ordinary %.4f%s.", slip->slice_count,
               slip->ordinary, bishop);
}

/* What the set of factors makes of the circle's own factor. */
static void by_set(const lw_page *page, const lw_situation *s, double found) {
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    if (check.kind != LW_CHECK_SLIP || !check.has.known || !check.factored || !s->slip_set) continue;
    lw_page_sayf(page, "  ", "Strengths, loads and weights%s are those to design with under the set %s.",
                 s->slip_light ? ", favourable as a whole," : "", s->slip_set->factor_set);
    if (fabs(check.has.value / found - 1.0) > 1e-9)
      lw_page_sayf(page, "  ", "has = %.4f x %.4f = %.4f, the set's factor on what holds", found,
                   check.has.value / found, check.has.value);
  }
}

static bool bed_may_slide(const lw_situation *s) {
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    if (check.kind == LW_CHECK_SLIDING && check.at == LW_AT_GROUND && check.has.known) return true;
  }
  return false;
}

static void bed(const lw_page *page, const lw_result *result, const lw_situation *s) {
  lw_page to = *page;
  lw_working working = lw_page_working(&to);
  if (!bed_may_slide(s)) return;
  lw_page_blank(page);
  lw_page_part(page, "The bed as one body on the slope below it, in its weakest soil");
  lw_again_bed(result, s, &working);
}

void lw_working_slip(const lw_page *page, const lw_result *result, const lw_situation *s) {
  lw_slip_view view;
  bed(page, result, s);
  if (!lw_again_slip(result, s, &view)) return;
  lw_page_blank(page);
  lw_page_part(page, "Slip of wall and ground along a circle");
  circle(page, &s->slip);
  if (view.light_kn_per_m3 > 0.0)
    lw_page_sayf(page, "  ",
                 "In front of the wall the ground weighs its light end, %s moist, in each slice where that "
                 "holds more than it drives.",
                 lw_tell_amount(page->units, "kN/m3", view.light_kn_per_m3, 1).text);
  given_heads(page, view.seismic > 0.0);
  for (int i = 0; i < view.list.count; i++) given(page, &view, i);
  all_forces(page, &view);
  factors(page, result, &view);
  search(page, &s->slip);
  by_set(page, s, view.found);
}
