/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "balance/taper.h"

#include <criterion/criterion.h>

#include "../checks/support.h"

enum { SLICES = 4000 };

/* Two face shells of blocks that taper, pressed all over by straight pressures: what they carry is the load,
 * where it stands. Summed slice by slice. */
Test(tapered, two_shells_carry_the_load_where_it_stands) {
  static const lw_method method = {0};
  const lw_taper taper = {1.0, 0.7};
  double width = 0.3, shell = 0.035;
  for (double r = 0.13; r < 0.156; r += 0.005) {
    lw_contact c = {
        .width_m = width, .taper = taper, .vertical_kn_per_m = 12.0, .resultant_m = r, .inside = true};
    double carried = 0.0, moment = 0.0, step = shell / SLICES;
    lw_taper_press(&method, taper, shell, &c, NULL);
    cr_assert(c.inside && c.share_in_compression > 0.999, "%g", r);
    for (int i = 0; i < 2 * SLICES; i++) {
      double x = i < SLICES ? (i + 0.5) * step : width - shell + (i - SLICES + 0.5) * step;
      double share = taper.front + (taper.rear - taper.front) * x / width;
      double pressed = share * (c.front_kpa + (c.rear_kpa - c.front_kpa) * x / width) * step;
      carried += pressed;
      moment += pressed * x;
    }
    cr_expect(checks_test_near(carried, 12.0, 1e-6), "%g: %g", r, carried);
    cr_expect(checks_test_near(moment, 12.0 * r, 1e-6), "%g: %g", r, moment);
  }
}
