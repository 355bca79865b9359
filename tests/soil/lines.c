/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <lowwall/pressure.h>
#include <lowwall/wall.h>
#include <math.h>

#include "base/lines.h"
#include "pressure/methods.h"
#include "soil/site.h"

/* Lines from the foot of a wall up and back into the ground. */

static bool near(double a, double b) {
  return fabs(a - b) <= 1e-12 * fmax(1.0, fabs(b));
}

/* Level ground: the distance is the run times the depth, at 45 degrees the depth. By hand. */
Test(lines, on_level_ground_a_line_comes_out_at_its_run_times_the_depth) {
  cr_expect(near(lw_line_out(0.83, 1.0, 0.0), 0.83));
  cr_expect(near(lw_line_out(0.83, 0.577, 0.0), 0.47891));
  cr_expect(near(lw_line_out(0.0, 0.577, 0.25), 0.0));
}

/* Where it comes out, line and ground are at one level. */
Test(lines, on_rising_ground_the_line_meets_the_ground) {
  for (int i = 0; i < 20; i++) {
    double run = 0.3 + 0.07 * i, rise = -0.3 + 0.04 * i, depth = 0.2 + 0.13 * i;
    double out = lw_line_out(depth, run, rise);
    if (run * rise >= 1.0)
      cr_expect(isinf(out));
    else
      cr_expect(near(out / run, depth + out * rise), "run %g, rise %g", run, rise);
  }
  cr_expect(isinf(lw_line_out(0.5, 1.0, 1.0)));
}

/* Beyond the slope's run the ground is level: the line meets that level, however steep the ground was. */
Test(lines, a_slope_that_ends_is_followed_to_its_end) {
  for (int i = 0; i < 20; i++) {
    double run = 0.5 + 0.1 * i, rise = 0.06 * i, depth = 0.7;
    double out = lw_line_out_bent(depth, run, rise, 0.4), ground = depth + fmin(out, 0.4) * rise;
    cr_expect(near(out / run, ground), "run %g, rise %g: %g", run, rise, out);
  }
}

/* The square of the run is Rankine's coefficient, (1 - sin phi)/(1 + sin phi) [RANKINE1857 level ground]. */
Test(lines, the_plane_of_failure_runs_back_by_the_root_of_rankines_coefficient) {
  for (int degrees = 0; degrees <= 80; degrees += 5) {
    double friction = degrees / LW_DEG_PER_RAD, run = lw_failure_run(friction);
    cr_expect(near(run * run, (1.0 - sin(friction)) / (1.0 + sin(friction))), "%d", degrees);
  }
}

Test(lines, the_weakest_soil_behind_has_the_least_friction) {
  static lw_site site;
  cr_expect(near(lw_site_least_friction(&site), 0.0));
  site.soil_count = 3;
  site.soil[0].friction_rad = 0.61, site.soil[1].friction_rad = 0.42, site.soil[2].friction_rad = 0.55;
  cr_expect(near(lw_site_least_friction(&site), 0.42));
}
