/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Areas and volumes counted a second time, over plans made by chance: the faces are drawn corner by corner
 * where moved lines meet, their areas taken by coordinates, and bodies cut into thin slices. */

enum { SLICES = 4000, POINTS = 8 };
static const double DEGREE = 3.14159265358979323846 / 180.0;

typedef struct point {
  double x, y;
} point;

/* A wall as it was made up; lengths in metres. */
typedef struct made_up {
  int runs, courses, steps, base_courses;
  double length[3], turn[2]; /* rad */
  double at[2];
  int rise[2];
  double course, depth, base_depth, setback, stone, pad, beyond, below, embedment;
  char items[1600];
} made_up;

static point forward(point p, double heading, double by) {
  return (point){p.x + by * cos(heading), p.y + by * sin(heading)};
}

static point beside(point p, double heading, double by) {
  return (point){p.x - by * sin(heading), p.y + by * cos(heading)};
}

/* Where two lines meet. */
static point meet(point p, double heading_p, point q, double heading_q) {
  double cross = sin(heading_q - heading_p);
  double t = ((q.x - p.x) * sin(heading_q) - (q.y - p.y) * cos(heading_q)) / cross;
  return forward(p, heading_p, t);
}

/* The face between two places, moved by an offset: its corners. */
static int face(const made_up *m, double from, double to, double offset, point *at) {
  point here = {0, 0};
  double heading = 0.0, begin = 0.0, last_heading = 0.0;
  point last_begin = {0, 0};
  int count = 0;
  for (int i = 0; i < m->runs; i++) {
    double end = begin + m->length[i], low = fmax(begin, from), high = fmin(end, to);
    point start = beside(here, heading, offset);
    if (high > low + 1e-12) {
      if (count == 0)
        at[count++] = beside(forward(here, heading, low - begin), heading, offset);
      else
        at[count++] = meet(last_begin, last_heading, start, heading);
      if (to <= end + 1e-12) at[count++] = beside(forward(here, heading, high - begin), heading, offset);
      last_begin = start, last_heading = heading;
    }
    here = forward(here, heading, m->length[i]);
    heading += i + 1 < m->runs ? m->turn[i] : 0.0;
    begin = end;
  }
  return count;
}

static double length_of(const made_up *m, double from, double to, double offset) {
  point at[POINTS];
  int count = face(m, from, to, offset, at);
  double sum = 0.0;
  for (int i = 0; i + 1 < count; i++) sum += hypot(at[i + 1].x - at[i].x, at[i + 1].y - at[i].y);
  return sum;
}

static double strip_of(const made_up *m, double from, double to, double low, double high) {
  point at[2 * POINTS], back[POINTS];
  int count = face(m, from, to, low, at), other = face(m, from, to, high, back);
  for (int i = 0; i < other; i++) at[count + i] = back[other - 1 - i];
  double twice = 0.0;
  count += other;
  for (int i = 0; i < count; i++) {
    point p = at[i], q = at[(i + 1) % count];
    twice += p.x * q.y - q.x * p.y;
  }
  return twice / 2.0;
}

static double depth_of(const made_up *m, int course) {
  return course < m->base_courses ? m->base_depth : m->depth;
}

static double rear_of(const made_up *m, int course) {
  return course * m->setback + depth_of(m, course);
}

typedef struct counted {
  double dig, pad, bedding, stone, cloth, lining, fill, pipe;
} counted;

/* A part of the plan with its base `raised` courses up, in slices from its base to the top. */
static double stone_of_part(const made_up *m, double from, double to, int raised, double ends, counted *sum) {
  double low = raised * m->course, top = m->courses * m->course - m->below - 0.15, end = 0.0;
  double thin = (top - low) / SLICES, reach = 0.0, rear = 0.0;
  for (int i = 0; i < SLICES && top > low; i++) {
    int course = (int)fmin(floor((low + (i + 0.5) * thin) / m->course), m->courses - 1);
    double now_rear = rear_of(m, course), now_reach = fmax(reach, now_rear + m->stone);
    sum->stone += strip_of(m, from, to, now_rear, now_reach) * thin;
    sum->cloth += (length_of(m, from, to, now_rear) + length_of(m, from, to, now_reach)) * thin;
    if (i == 0)
      sum->cloth += strip_of(m, from, to, now_rear, now_reach);
    else
      sum->cloth +=
          fabs(strip_of(m, from, to, rear, now_rear)) + fabs(strip_of(m, from, to, reach, now_reach));
    end += (now_reach - now_rear) * thin;
    rear = now_rear, reach = now_reach;
  }
  if (top > low)
    sum->cloth += strip_of(m, from, to, rear, reach) + 0.3 * length_of(m, from, to, 0.5 * (rear + reach));
  double back = raised * m->setback, pad_rear = depth_of(m, raised) + m->beyond;
  double dig_rear = fmax(pad_rear, depth_of(m, raised) + m->stone), deep = m->pad + 0.025;
  if (dig_rear > pad_rear) {
    sum->stone +=
        (strip_of(m, from, to, back + pad_rear, back + dig_rear) + ends * m->beyond * (dig_rear - pad_rear)) *
        deep;
    sum->cloth += (length_of(m, from, to, back + pad_rear) + length_of(m, from, to, back + dig_rear)) * deep;
    end += (dig_rear - pad_rear) * deep;
  }
  sum->cloth += ends * end;
  return end;
}

static void rest_of_part(const made_up *m, double from, double to, int raised, double ends, counted *sum) {
  double back = raised * m->setback, pad_rear = depth_of(m, raised) + m->beyond;
  double dig_rear = fmax(pad_rear, depth_of(m, raised) + m->stone);
  double dug =
      strip_of(m, from, to, back - m->beyond, back + dig_rear) + ends * m->beyond * (m->beyond + dig_rear);
  double laid =
      strip_of(m, from, to, back - m->beyond, back + pad_rear) + ends * m->beyond * (m->beyond + pad_rear);
  sum->dig += dug * (m->embedment + 0.025 + m->pad);
  sum->pad += laid * m->pad;
  sum->pipe += length_of(m, from, to, back + depth_of(m, raised) + m->stone / 2.0);
  sum->bedding += strip_of(m, from, to, back, back + depth_of(m, raised)) * 0.025;
  for (int i = raised; i < m->courses; i++) {
    sum->lining += length_of(m, from, to, rear_of(m, i)) * m->course;
    if (i > raised) sum->lining += fabs(strip_of(m, from, to, rear_of(m, i - 1), rear_of(m, i)));
    sum->fill += strip_of(m, from, to, i * m->setback, rear_of(m, i)) * m->course;
  }
}

static counted count(const made_up *m) {
  counted sum = {0};
  int level = 0, least = 0;
  for (int i = 0; i < m->steps; i++) level += m->rise[i], least = level < least ? level : least;
  double all = m->length[0] + (m->runs > 1 ? m->length[1] : 0.0) + (m->runs > 2 ? m->length[2] : 0.0);
  double from = 0.0, last_end = 0.0;
  int raised = -least;
  for (int i = 0; i <= m->steps; i++) {
    double to = i < m->steps ? m->at[i] : all, ends = (i == 0 ? 1 : 0) + (i == m->steps ? 1 : 0);
    double end = stone_of_part(m, from, to, raised, ends, &sum);
    rest_of_part(m, from, to, raised, ends, &sum);
    if (i > 0) {
      /* 300 mm of the lower dig under the upper one, as deep as the base rises. */
      int upper = m->rise[i - 1] > 0 ? raised : raised - m->rise[i - 1];
      double more = 0.3 * fabs((double)m->rise[i - 1]) * m->course, pad_rear = depth_of(m, upper) + m->beyond;
      double dig_rear = fmax(pad_rear, depth_of(m, upper) + m->stone);
      sum.dig += more * (m->beyond + dig_rear);
      sum.pad += more * (m->beyond + pad_rear);
      sum.stone += more * (dig_rear - pad_rear);
      sum.cloth += fabs(end - last_end);
    }
    if (i < m->steps) raised += m->rise[i];
    from = to, last_end = end;
  }
  return sum;
}

static void say(made_up *m, const char *name, double value, const char *unit) {
  size_t used = strlen(m->items);
  snprintf(m->items + used, sizeof m->items - used, "%s%s=%.6f%s%s", used > 0 ? ";" : "", name, value,
           unit[0] ? " " : "", unit);
}

static double mm(double low, double high) {
  return round(order_random(low, high)) / 1000.0;
}

static made_up by_chance(void) {
  made_up m = {.runs = 1 + (int)order_random(0, 3), .courses = 4 + (int)order_random(0, 3), .course = 0.2};
  char name[40];
  double all = 0.0;
  m.depth = mm(180, 300), m.setback = order_random(0, 1) < 0.5 ? 0.0 : mm(5, 30);
  m.stone = mm(150, 400), m.pad = mm(100, 200), m.beyond = mm(50, 200);
  m.below = mm(0, 100), m.embedment = mm(100, 200), m.base_depth = m.depth;
  if (order_random(0, 1) < 0.5)
    m.base_courses = 1 + (int)order_random(0, 2), m.base_depth = m.depth + mm(50, 250);
  for (int i = 0; i < m.runs; i++) {
    m.length[i] = mm(3500, 6000);
    all += m.length[i];
    snprintf(name, sizeof name, "run %d length", i + 1);
    say(&m, name, m.length[i], "m");
    if (i + 1 == m.runs) break;
    double turn = order_random(0, 1) < 0.5 ? 90.0 : round(order_random(-80, 80));
    m.turn[i] = (fabs(turn) < 1.0 ? 30.0 : turn) * DEGREE;
    snprintf(name, sizeof name, "turn %d angle", i + 1);
    say(&m, name, m.turn[i] / DEGREE, "deg");
  }
  m.steps = (int)order_random(0, 3);
  for (int i = 0; i < m.steps; i++) {
    m.at[i] = (i == 0 ? mm(800, 1600) : all - mm(800, 1600));
    m.rise[i] = (order_random(0, 1) < 0.3 ? 2 : 1) * (order_random(0, 1) < 0.5 ? 1 : -1);
    if (i == 1 && abs(m.rise[0] + m.rise[1]) > 2) m.rise[1] = -m.rise[1];
    snprintf(name, sizeof name, "step %d distance", i + 1);
    say(&m, name, m.at[i], "m");
    snprintf(name, sizeof name, "step %d courses", i + 1);
    say(&m, name, m.rise[i], "");
  }
  say(&m, "course count", m.courses, "");
  say(&m, "block depth", m.depth, "m");
  say(&m, "setback", m.setback, "m");
  say(&m, "stone filter=cloth;stone width", m.stone, "m");
  say(&m, "pad thickness", m.pad, "m");
  say(&m, "pad beyond", m.beyond, "m");
  say(&m, "soil below top", m.below, "m");
  say(&m, "wall embedment", m.embedment, "m");
  say(&m, "fill unit weight", 16, "kN/m3");
  say(&m, "drain outlets", 1, "");
  say(&m, "block unit weight", 12, "kN/m3");
  if (m.base_courses > 0) {
    say(&m, "base course count", m.base_courses, "");
    say(&m, "base course depth", m.base_depth, "m");
  }
  strncat(m.items, ";lining=yes", sizeof m.items - strlen(m.items) - 1);
  return m;
}

static void expect(const lw_order *order, const made_up *m, const char *slug, double counted_again) {
  const lw_order_line *line = order_line(order, slug);
  cr_assert(line != NULL, "%s: %s", slug, m->items);
  cr_expect(fabs(line->net - counted_again) <= 2e-3 * fabs(counted_again), "%s: %.5f, counted again %.5f: %s",
            slug, line->net, counted_again, m->items);
}

Test(order, areas_and_volumes_counted_again) {
  for (int i = 0; i < 30; i++) {
    made_up m = by_chance();
    const lw_order *order = order_of(m.items);
    counted c = count(&m);
    expect(order, &m, "dig", c.dig);
    expect(order, &m, "pad-stone", c.pad);
    expect(order, &m, "bedding-sand", 1.25 * c.bedding);
    expect(order, &m, "drainage-stone", c.stone);
    expect(order, &m, "geotextile", c.cloth);
    expect(order, &m, "lining", c.lining);
    /* Behind the lowest course, and one metre out to daylight. */
    expect(order, &m, "drain-pipe", c.pipe + 1.0);
    /* 12 kN/m3 of the 2400 kg/m3 of concrete are there, the rest is void. */
    expect(order, &m, "block-fill", c.fill * (1.0 - 12.0 / (2.4 * 9.80665)));
  }
}

/* Of a closed bed everything inside the face is block, stone or soil, from the ground up to the soil. */
Test(order, a_bed_is_full) {
  for (int i = 0; i < 60; i++) {
    char items[700];
    int courses = 3 + (int)order_random(0, 4);
    double a = mm(3000, 5000), b = mm(3000, 5000), setback = mm(0, 25), stone = mm(100, 300);
    double depth = mm(150, 300), deeper = depth + mm(0, 200), below = mm(0, 150), embedment = mm(0, 199);
    snprintf(
        items, sizeof items,
        "site behind=bed;run 1 length=%.3f m;run 2 length=%.3f m;run 3 length=%.3f m;run 4 length=%.3f m;"
        "turn 1 angle=90 deg;turn 2 angle=90 deg;turn 3 angle=90 deg;course count=%d;setback=%.3f m;"
        "block depth=%.3f m;base course count=1;base course depth=%.3f m;stone width=%.3f m;"
        "soil below top=%.3f m;wall embedment=%.3f m",
        a, b, a, b, courses, setback, depth, deeper, stone, below, embedment);
    const lw_order *order = order_of(items);
    double top = courses * 0.2 - below, blocks = 0.0, inside = 0.0;
    for (int k = 0; k < courses; k++) {
      double low = fmax(k * 0.2, embedment), high = fmin((k + 1) * 0.2, top), o = k * setback;
      double rear = o + (k == 0 ? deeper : depth);
      if (high <= low) continue;
      inside += (a - 2 * o) * (b - 2 * o) * (high - low);
      blocks += ((a - 2 * o) * (b - 2 * o) - (a - 2 * rear) * (b - 2 * rear)) * (high - low);
    }
    /* Stone begins at the underside of the blocks: what lies below the ground in front is no bed. */
    double buried =
        ((a - 2 * deeper) * (b - 2 * deeper) - (a - 2 * (deeper + stone)) * (b - 2 * (deeper + stone))) *
        fmin(embedment, fmax(0.0, top - 0.15));
    double net = order_line(order, "soil")->net + order_line(order, "drainage-stone")->net - buried;
    cr_expect(epsilon_eq(dbl, net, inside - blocks, 1e-9), "%s", items);
  }
}

/* By hand: three courses of 200 mm, no pad: 0.6 m deep behind 250 mm of stone; with 150 mm of pad and 25 mm
 * of bedding 0.775 m behind 550 mm. */
Test(order, pallets_keep_off_where_the_dig_ends) {
  const char *near = "run 1 length=4 m;stone width=250 mm;method influence line=60 deg";
  cr_expect(epsilon_eq(dbl, order_of(near)->pallet_distance_m, 0.85, 1e-9));
  const char *far = "run 1 length=4 m;stone width=550 mm;pad thickness=150 mm;method influence line=60 deg";
  cr_expect(epsilon_eq(dbl, order_of(far)->pallet_distance_m, 0.775 + 0.55, 1e-9));
}

/* A solid wall in level slices, each between its face and its rear along the plan. */
Test(order, stone_of_a_solid_wall_counted_again) {
  for (int i = 0; i < 20; i++) {
    made_up m = {.runs = 2, .stone = mm(150, 400)};
    double base = mm(500, 900), top = mm(250, 450), lean = mm(0, 200), below = mm(0, 100);
    m.length[0] = mm(3500, 6000), m.length[1] = mm(3500, 6000);
    m.turn[0] = round(order_random(20, 80)) * (i % 2 ? 1 : -1) * DEGREE;
    say(&m, "run 1 length", m.length[0], "m");
    say(&m, "turn 1 angle", m.turn[0] / DEGREE, "deg");
    say(&m, "run 2 length", m.length[1], "m");
    say(&m, "base width", base, "m");
    say(&m, "top width", top, "m");
    say(&m, "back batter", atan(lean / 1.2) / DEGREE, "deg");
    say(&m, "stone filter=cloth;stone width", m.stone, "m");
    say(&m, "soil below top", below, "m");
    const lw_order *order = order_of_solid(m.items);
    double all = m.length[0] + m.length[1], thin = 1.2 / SLICES, volume = 0.0, stone = 0.0;
    for (int k = 0; k < SLICES; k++) {
      double y = (k + 0.5) * thin, front = (base - top - lean) * y / 1.2, rear = base - lean * y / 1.2;
      volume += strip_of(&m, 0.0, all, front, rear) * thin;
      /* The stone's rear stands upright over that of the foot. */
      if (y < 1.2 - below - 0.15) stone += strip_of(&m, 0.0, all, rear, base + m.stone) * thin;
    }
    expect(order, &m, "wall-stone", volume * 18.0 / 9.80665);
    expect(order, &m, "drainage-stone", stone);
    cr_expect(epsilon_eq(dbl, order->setting_out.base_offset_m, base - top - lean, 1e-6), "%s", m.items);
    cr_expect(eq(int, order->row_count, 0));
    cr_expect(order_line(order, "blocks") == NULL && order_line(order, "bedding-sand") == NULL);
  }
}

/* By hand: 10 m of a rectangle 0.6 x 1.2 m is 7.2 m3; at 18 kN/m3 13.22 t, a tenth more is ordered. */
Test(order, stone_by_the_tonne_by_hand) {
  const lw_order_line *stone =
      order_line(order_of_solid("run 1 length=10 m;base width=600 mm;top width=600 mm"), "wall-stone");
  cr_assert(stone != NULL);
  cr_expect(epsilon_eq(dbl, stone->net, 13.2155, 1e-3));
  cr_expect(epsilon_eq(dbl, stone->order, 1.1 * stone->net, 1e-9));
  cr_expect(epsilon_eq(dbl, stone->mass_kg, 1000.0 * stone->order, 1e-6));
  cr_expect_str_eq(lw_line_unit_slug(lw_order_line_unit(stone->kind)), "t");
}
