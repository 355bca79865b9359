/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/ground.h>
#include <math.h>
#include <string.h>

#define RAD(degrees) ((degrees)*3.14159265358979323846 / 180.0)

static bool same(double a, double b, double share) {
  return fabs(a - b) <= share * fmax(fabs(a), fabs(b)) + 1e-12;
}

static const lw_bearing_routine *author(int i) {
  return lw_bearing_routine_of((lw_bearing_method)(LW_BEARING_TERZAGHI + i));
}

enum { AUTHORS = 5 };

static lw_strip strip_at(double friction_deg) {
  return (lw_strip){.width_m = 1.37,
                    .depth_m = 0.43,
                    .overburden_kpa = 0.43 * 18.7,
                    .friction_rad = RAD(friction_deg),
                    .cohesion_kpa = 3.1,
                    .unit_weight_kn_per_m3 = 18.7,
                    .vertical_kn_per_m = 61.3};
}

static lw_bearing bearing_of(int i, const lw_strip *strip) {
  lw_bearing b;
  cr_assert_eq(author(i)->ultimate(strip, &b, NULL, NULL), LW_OK, "%s", author(i)->slug);
  return b;
}

Test(bearing_theory, presumptive_is_no_theory_and_each_author_has_a_source) {
  static const char *const slugs[] = {"terzaghi", "meyerhof", "hansen", "vesic", "en1997"};
  cr_expect_null(lw_bearing_routine_of(LW_BEARING_PRESUMPTIVE));
  for (int i = 0; i < AUTHORS; i++) {
    cr_expect_str_eq(author(i)->slug, slugs[i]);
    cr_expect_eq(author(i)->source[0], '[');
  }
}

Test(bearing_theory, three_terms_make_the_ultimate_pressure) {
  for (int i = 0; i < AUTHORS; i++) {
    lw_strip strip = strip_at(27.0);
    strip.eccentricity_m = -0.11;
    strip.horizontal_kn_per_m = 9.7;
    lw_bearing b = bearing_of(i, &strip);
    double width = 1.37 - 0.22;
    double sum = 3.1 * b.nc * b.dc * b.ic + 0.43 * 18.7 * b.nq * b.dq * b.iq +
                 0.5 * 18.7 * width * b.n_gamma * b.d_gamma * b.i_gamma;
    cr_expect(same(b.effective_width_m, width, 1e-12));
    cr_expect(same(b.ultimate_kpa, sum, 1e-12), "%s", author(i)->slug);
    cr_expect(same(b.net_kpa, sum - 0.43 * 18.7, 1e-12), "%s", author(i)->slug);
  }
}

/* A slip in the form at phi = 0 would show as a jump. Vesic's depth factor tends to 1 + 0.389 k, and is
 * 1 + 0.4 k at 0; an inclined load makes Hansen's jump by more. */
Test(bearing_theory, frictionless_soil_is_the_limit_of_little_friction) {
  for (int i = 0; i < AUTHORS; i++) {
    lw_strip none = strip_at(0.0), little = strip_at(0.001);
    none.cohesion_kpa = little.cohesion_kpa = 40.0;
    lw_bearing a = bearing_of(i, &none), b = bearing_of(i, &little);
    cr_expect(same(a.nc, b.nc, 1e-3), "%s: %g and %g", author(i)->slug, a.nc, b.nc);
    cr_expect(same(a.nq, 1.0, 1e-12) && fabs(a.n_gamma) < 1e-12);
    cr_expect(same(a.ultimate_kpa, b.ultimate_kpa, 5e-3), "%s: %g and %g", author(i)->slug, a.ultimate_kpa,
              b.ultimate_kpa);
  }
}

Test(bearing_theory, undrained_inclination_has_each_authors_form) {
  lw_strip strip = strip_at(0.0);
  strip.cohesion_kpa = 40.0;
  strip.horizontal_kn_per_m = 13.0;
  double share = 13.0 / (1.37 * 40.0), pi = 3.14159265358979323846;
  cr_expect(same(bearing_of(2, &strip).ic, 0.5 + 0.5 * sqrt(1.0 - share), 1e-12));
  cr_expect(same(bearing_of(3, &strip).ic, 1.0 - 2.0 * share / (pi + 2.0), 1e-12));
  cr_expect(same(bearing_of(4, &strip).ic, 0.5 * (1.0 + sqrt(1.0 - share)), 1e-12));
}

Test(bearing_theory, a_footing_that_slides_bears_nothing_by_its_cohesion) {
  lw_strip strip = strip_at(0.0);
  strip.cohesion_kpa = 5.0;
  strip.horizontal_kn_per_m = 1.37 * 5.0 + 0.1;
  for (int i = 2; i < AUTHORS; i++) cr_expect(fabs(bearing_of(i, &strip).ic) < 1e-12, "%s", author(i)->slug);
}

/* What the ground holds from sliding is V tan φ + B' c: past it no author's footing bears, before it none
 * bears more than without the push. */
Test(bearing_theory, a_footing_that_slides_bears_nothing_by_any_author) {
  for (int i = 0; i < AUTHORS; i++)
    for (double phi = 0.0; phi < 49.0; phi += 3.5)
      for (double c = 0.0; c < 30.0; c += 7.3) {
        lw_strip strip = strip_at(phi), none;
        strip.cohesion_kpa = c;
        double width = strip.width_m - 2.0 * fabs(strip.eccentricity_m);
        double held = strip.vertical_kn_per_m * tan(strip.friction_rad) + width * c;
        none = strip;
        none.inclination_factors = LW_NONE;
        for (double share = 0.1; share < 3.0; share += 0.3) {
          strip.horizontal_kn_per_m = none.horizontal_kn_per_m = share * held;
          lw_bearing b = bearing_of(i, &strip), book = bearing_of(i, &none);
          bool slides = held > 0.0 && share > 1.0;
          cr_expect_eq(b.slides, slides, "%s phi %g c %g share %g", author(i)->slug, phi, c, share);
          cr_expect_eq(book.slides, slides, "whatever factors are taken");
          cr_expect(!slides || b.ultimate_kpa <= 1e-12, "%s bears %g", author(i)->slug, b.ultimate_kpa);
          cr_expect(b.ultimate_kpa <= book.ultimate_kpa + 1e-9 && book.ultimate_kpa >= 0.0);
        }
      }
}

Test(bearing_theory, never_more_with_more_push_or_eccentricity) {
  for (int i = 0; i < AUTHORS; i++)
    for (double phi = 0.0; phi < 46.0; phi += 9.0) {
      double before = INFINITY;
      for (double h = 0.0; h < 80.0; h += 2.3) {
        lw_strip strip = strip_at(phi);
        strip.horizontal_kn_per_m = h;
        double now = bearing_of(i, &strip).ultimate_kpa;
        cr_expect(now <= before + 1e-9 && now >= -1e-9, "%s phi %g H %g: %g", author(i)->slug, phi, h, now);
        before = now;
      }
      before = INFINITY;
      for (double e = 0.0; e < 0.68; e += 0.05) {
        lw_strip strip = strip_at(phi);
        strip.eccentricity_m = e;
        strip.horizontal_kn_per_m = 5.0;
        lw_bearing b = bearing_of(i, &strip);
        double load = b.ultimate_kpa * b.effective_width_m;
        cr_expect(load <= before + 1e-9, "%s phi %g e %g: %g", author(i)->slug, phi, e, load);
        before = load;
      }
    }
}

Test(bearing_theory, never_less_with_more_friction_cohesion_or_depth) {
  for (int i = 0; i < AUTHORS; i++) {
    double before = 0.0;
    for (double phi = 0.0; phi < 50.0; phi += 0.5) {
      lw_strip strip = strip_at(phi);
      double now = bearing_of(i, &strip).ultimate_kpa;
      cr_expect_lt(before, now, "%s phi %g", author(i)->slug, phi);
      before = now;
    }
    lw_strip strip = strip_at(28.0), more = strip;
    more.cohesion_kpa += 1.0;
    cr_expect_lt(bearing_of(i, &strip).ultimate_kpa, bearing_of(i, &more).ultimate_kpa);
    more = strip;
    more.depth_m += 0.2;
    cr_expect(bearing_of(i, &strip).ultimate_kpa <= bearing_of(i, &more).ultimate_kpa);
  }
}

Test(bearing_theory, signs_do_not_matter) {
  for (int i = 0; i < AUTHORS; i++) {
    lw_strip one = strip_at(31.0), other;
    one.eccentricity_m = 0.12;
    one.horizontal_kn_per_m = 7.0;
    other = one;
    other.eccentricity_m = -0.12;
    other.horizontal_kn_per_m = -7.0;
    cr_expect(same(bearing_of(i, &one).ultimate_kpa, bearing_of(i, &other).ultimate_kpa, 1e-14));
  }
}

Test(bearing_theory, factors_can_be_left_out) {
  for (int i = 0; i < AUTHORS; i++) {
    lw_strip strip = strip_at(31.0);
    strip.horizontal_kn_per_m = 7.0;
    strip.depth_factors = strip.inclination_factors = LW_NONE;
    lw_bearing b = bearing_of(i, &strip);
    double all[] = {b.dc, b.dq, b.d_gamma, b.ic, b.iq, b.i_gamma};
    for (int k = 0; k < 6; k++) cr_expect(same(all[k], 1.0, 1e-15), "%s", author(i)->slug);
    strip.inclination_factors = LW_OWN;
    cr_expect_lt(bearing_of(i, &strip).iq, 1.0, "%s", author(i)->slug);
  }
}

Test(bearing_theory, n_gamma_may_be_anothers) {
  lw_strip strip = strip_at(33.0);
  for (int who = LW_N_GAMMA_MEYERHOF; who <= LW_N_GAMMA_EN1997; who++) {
    lw_strip own = strip;
    double theirs = bearing_of(who - LW_N_GAMMA_MEYERHOF + 1, &own).n_gamma;
    strip.n_gamma = (lw_n_gamma)who;
    for (int i = 0; i < AUTHORS; i++) cr_expect(same(bearing_of(i, &strip).n_gamma, theirs, 1e-14));
    own.n_gamma = LW_N_GAMMA_OWN;
    strip.n_gamma = LW_N_GAMMA_OWN;
  }
}

Test(bearing_theory, meyerhofs_factors_stand_in_for_terzaghis_inclined_load) {
  lw_strip strip = strip_at(30.0);
  strip.horizontal_kn_per_m = 61.3 * tan(RAD(12.0));
  lw_bearing t = bearing_of(0, &strip), m = bearing_of(1, &strip);
  cr_expect(same(t.iq, pow(1.0 - 12.0 / 90.0, 2.0), 1e-12));
  cr_expect(same(t.i_gamma, pow(1.0 - 12.0 / 30.0, 2.0), 1e-12));
  cr_expect(same(t.ic, m.ic, 1e-14) && same(t.i_gamma, m.i_gamma, 1e-14));
  cr_expect(same(t.dq, 1.0, 1e-15));
}

static void refuse(const lw_strip *strip, lw_reason reason) {
  for (int i = 0; i < AUTHORS; i++) {
    lw_bearing b = {.nc = 0.123};
    lw_error error = {0};
    cr_expect_eq(author(i)->ultimate(strip, &b, &error, NULL), LW_NO_SOLUTION, "%s", author(i)->slug);
    cr_expect_eq(error.reason, reason, "%s: %s", author(i)->slug, lw_reason_slug(error.reason));
    cr_expect(same(b.nc, 0.123, 1e-15), "%s changed its output", author(i)->slug);
  }
}

Test(bearing_theory, no_answer_has_its_reason) {
  lw_strip strip = strip_at(51.0);
  refuse(&strip, LW_REASON_ANGLE_OUT_OF_RANGE);
  strip = strip_at(-1.0);
  refuse(&strip, LW_REASON_ANGLE_OUT_OF_RANGE);
  strip = strip_at(30.0);
  strip.cohesion_kpa = NAN;
  refuse(&strip, LW_REASON_ANGLE_OUT_OF_RANGE);
  strip = strip_at(30.0);
  strip.eccentricity_m = 0.5 * strip.width_m;
  refuse(&strip, LW_REASON_OUTSIDE_BASE);
  strip = strip_at(30.0);
  strip.vertical_kn_per_m = 0.0;
  strip.horizontal_kn_per_m = 1.0;
  refuse(&strip, LW_REASON_NO_WEIGHT);
}

typedef struct heard {
  int headings, steps, incomplete;
  double last;
} heard;

static void hear_heading(void *context, const char *title) {
  heard *h = context;
  h->headings++;
  h->incomplete += title[0] == '\0';
}

static void hear_step(void *context, const lw_step *step) {
  heard *h = context;
  h->steps++;
  h->last = step->value;
  bool whole = step->formula != NULL && step->inserted[0] != '\0' && step->unit != NULL;
  h->incomplete += !whole || step->source == NULL || !isfinite(step->value);
}

Test(bearing_theory, recorder_hears_every_factor_and_changes_nothing) {
  /* B', three of capacity, three of the load's slope, two sums; a passive coefficient, an angle, a ratio of
   * depths and two or three factors of depth where the author has them. */
  static const int STEPS[AUTHORS] = {11, 13, 12, 12, 9};
  for (int i = 0; i < AUTHORS; i++) {
    heard h = {0};
    lw_working working = {.context = &h, .heading = hear_heading, .step = hear_step};
    lw_strip strip = strip_at(30.0);
    lw_bearing quiet = {0}, told = {0};
    strip.horizontal_kn_per_m = 6.0;
    cr_assert_eq(author(i)->ultimate(&strip, &quiet, NULL, NULL), LW_OK);
    cr_assert_eq(author(i)->ultimate(&strip, &told, NULL, &working), LW_OK);
    cr_expect_eq(memcmp(&quiet, &told, sizeof quiet), 0, "%s", author(i)->slug);
    cr_expect_eq(h.headings, 1);
    cr_expect_eq(h.steps, STEPS[i], "%s: %d steps", author(i)->slug, h.steps);
    cr_expect_eq(h.incomplete, 0, "%s", author(i)->slug);
    cr_expect(same(h.last, told.net_kpa, 1e-15));
  }
}
