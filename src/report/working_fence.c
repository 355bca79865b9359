/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>

/* The working of a fence that carries soil, and of wind on a fence. */

static void say(const lw_page *page, const lw_step *step, const char *inserted) {
  lw_step whole = *step;
  whole.inserted = inserted;
  lw_working_say(page, &whole);
}

static const char STATICS[] = "statics";

static void bed(const lw_page *page, const lw_fence *f) {
  char put[200];
  const lw_fence_bed *b = &f->bed;
  const double *soil = f->soil[LW_FENCE_DRY].of;
  double degrees = f->friction_rad * 180.0 / 3.14159265358979323846;
  lw_print(put, sizeof put, "1 - sin %.2f", degrees);
  say(page, &(lw_step){"K0", "1 - sin phi", NULL, b->coefficient, "", "[JAKY1944 coefficient]"}, put);
  if (isfinite(b->water_depth_m))
    lw_page_sayf(page, "  ", "Water stands %.3f m below the soil at the fence; its push is in what follows.",
                 b->water_depth_m);
  lw_print(put, sizeof put, "%.4f (%.2f x %.3f + %.2f)", b->coefficient, b->unit_weight_kn_per_m3,
           b->height_m, b->surcharge_kpa);
  say(page, &(lw_step){"p", "K0 (g h + q)", NULL, soil[LW_FENCE_BOARD], "kPa", STATICS}, put);
  lw_print(put, sizeof put, "%.4f (%.2f x %.3f^2/2 + %.2f x %.3f)", b->coefficient, b->unit_weight_kn_per_m3,
           b->height_m, b->surcharge_kpa, b->height_m);
  say(page, &(lw_step){"V", "K0 (g h^2/2 + q h)", NULL, soil[LW_FENCE_SHEAR], "kN/m", STATICS}, put);
  lw_print(put, sizeof put, "%.4f (%.2f x %.3f^3/6 + %.2f x %.3f^2/2)", b->coefficient,
           b->unit_weight_kn_per_m3, b->height_m, b->surcharge_kpa, b->height_m);
  say(page, &(lw_step){"M", "K0 (g h^3/6 + q h^2/2)", NULL, soil[LW_FENCE_GROUND], "kN m/m", STATICS}, put);
  lw_print(put, sizeof put, "%.4f + %.4f x %.3f", soil[LW_FENCE_GROUND], soil[LW_FENCE_SHEAR], b->hole_m);
  say(page, &(lw_step){"Mh", "M + V L", NULL, soil[LW_FENCE_HOLE], "kN m/m", STATICS}, put);
}

static void wind(const lw_page *page, const lw_fence *f) {
  char put[200];
  const lw_fence_gust *g = &f->built_for;
  lw_print(put, sizeof put, "%.3f x %.3f", g->pressure_kpa, g->height_m);
  say(page, &(lw_step){"Vw", "p H", NULL, f->wind.of[LW_FENCE_SHEAR], "kN/m", STATICS}, put);
  lw_print(put, sizeof put, "%.3f x %.3f^2/2", g->pressure_kpa, g->height_m);
  say(page, &(lw_step){"Mw", "p H^2/2", NULL, f->wind.of[LW_FENCE_GROUND], "kN m/m", STATICS}, put);
  lw_print(put, sizeof put, "%.3f x %.3f (%.3f/2 + %.3f)", g->pressure_kpa, g->height_m, g->height_m,
           g->hole_m);
  say(page, &(lw_step){"Mhw", "p H (H/2 + L)", NULL, f->wind.of[LW_FENCE_HOLE], "kN m/m", STATICS}, put);
}

static void ratios(const lw_page *page, const lw_fence *f) {
  lw_page_linef(page, LW_TONE_PLAIN, "  %-27s%9s%9s%10s%9s%9s", "soil over wind", "at rest", "blocked",
                "yielding", "for good", "equal m");
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++)
    lw_page_linef(page, LW_TONE_PLAIN, "  %-27s%9.4f%9.4f%10.4f%9.4f%9.4f",
                  lw_fence_measure_words((lw_fence_measure)m), f->ratio[LW_FENCE_DRY][m],
                  f->ratio[LW_FENCE_BLOCKED][m], f->ratio[LW_FENCE_YIELDING][m],
                  f->lasting_ratio[LW_FENCE_DRY][m], f->equal_m[LW_FENCE_DRY][m].value);
}

static void post(const lw_page *page, const lw_fence *f) {
  char put[240];
  const lw_fence_hole *h = &f->post.hole;
  const lw_fence_post_load *soil = &f->post.load[LW_FENCE_SOIL];
  double sine = sin(h->friction_rad), kp = (1.0 + sine) / (1.0 - sine), depth = h->depth_m;
  lw_print(put, sizeof put, "0.5 x %.2f x %.3f x %.3f^3 x %.4f/(%.4f + %.3f)", h->unit_weight_kn_per_m3,
           h->width_m, depth, kp, soil->arm_m, depth);
  say(page,
      &(lw_step){"H", "0.5 g b L^3 Kp/(e + L)", NULL, soil->broms_kn, "kN",
                 "[BROMS1964 short free-headed piles]"},
      put);
  lw_print(put, sizeof put, "%.2f x %.3f/3 x %.3f x %.3f^2/(2.34 (%.3f + 1.09 x %.4f))", h->lateral_kpa_per_m,
           depth, h->width_m, depth, depth, soil->arm_m);
  say(page, &(lw_step){"P", "S b L^2/(2.34 (L + 1.09 e))", NULL, soil->code_kn, "kN", "[IBC 1807.3.2.1]"},
      put);
  lw_page_sayf(page, "  ", "The soil pushes one post, %.2f m apart, with %.4f kN at %.4f m.",
               f->post.spacing_m, soil->push_kn, soil->arm_m);
}

static void boards(const lw_page *page, const lw_fence *f) {
  char put[200];
  const lw_fence_boards *b = &f->boards;
  lw_print(put, sizeof put, "6/8 x %.4f x %.3f^2/%.4f^2", f->soil[LW_FENCE_DRY].of[LW_FENCE_BOARD], b->span_m,
           b->thickness_m);
  say(page, &(lw_step){"s", "w l^2/8 over t^2/6", NULL, b->stress_kpa, "kPa", STATICS}, put);
}

void lw_working_fence(const lw_page *page, const lw_result *result) {
  const lw_fence *f = &result->fence;
  if (!f->back || f->status != LW_OK) return;
  lw_page_heading(page, "The fence as the back of the bed, a metre run");
  bed(page, f);
  wind(page, f);
  ratios(page, f);
  post(page, f);
  boards(page, f);
}
