/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "parts.h"
#include "base/print.h"
#include "report/distance.h"
#include "report/text/echo.h"
#include "report/text/said.h"

/* Loads, soil, the way it was calculated; what it does to neighbours; what was assumed and given. */

static const char *origin_of(lw_origin origin) {
  return origin == LW_GIVEN ? "given" : origin == LW_TABLE ? "from the tables" : "assumed";
}

/* By its number and name on the sheet, with its size and place. */
static void load(const lw_blocks *b, const lw_site_load *load) {
  if (load->other_wall) {
    lw_block_say(b, LW_BLOCK_FACT, "now", "%s from the wall above and what it holds up, from %s on",
                 lw_block_amount(b, LW_KIND_PRESSURE, load->pressure_kpa, 1).text,
                 lw_block_m(b, load->near_m).text);
    return;
  }
  const char *given = b->result->given.load[load->number - 1].name.text;
  char name[72] = "", place[100];
  if (given[0]) lw_print(name, sizeof name, " (%.60s)", given);
  if (load->kind == LW_LOAD_CAP)
    lw_print(place, sizeof place, "on the cap");
  else if (load->kind == LW_LOAD_STRIP)
    lw_print(place, sizeof place, "from %s to %s behind the top",
             lw_amount_again(b->result->units, LW_KIND_LENGTH, load->near_m, 2).text,
             lw_block_m(b, load->far_m).text);
  else
    lw_print(place, sizeof place, "%s behind the top", lw_block_m(b, load->near_m).text);
  bool strip = load->kind == LW_LOAD_STRIP;
  lw_kind kind = strip ? LW_KIND_PRESSURE : load->kind == LW_LOAD_POINT ? LW_KIND_FORCE : LW_KIND_LINE_LOAD;
  lw_block_say(b, LW_BLOCK_FACT, "now", "load %d%s: %s, %s", load->number, name,
               lw_block_amount(b, kind, strip ? load->pressure_kpa : load->force, 1).text, place);
}

static void loads(const lw_blocks *b) {
  const lw_site *site = &b->result->wall.site;
  lw_block_say(b, LW_BLOCK_HEADING, "", "Loads behind the wall");
  if (site->surcharge_kpa > 0.0)
    lw_block_say(b, LW_BLOCK_FACT, "now", "%s all over the ground behind (%s)",
                 lw_block_amount(b, LW_KIND_PRESSURE, site->surcharge_kpa, 1).text,
                 origin_of(b->result->given.load[0].kind.origin));
  for (int i = 0; i < site->load_count; i++) load(b, &site->load[i]);
  if (site->surcharge_kpa <= 0.0 && site->load_count == 0)
    lw_block_say(b, LW_BLOCK_FACT, "now", "none, as given");
  lw_block_say(b, LW_BLOCK_FACT, "later",
               "nothing heavier than what is named above may stand, park or be stacked nearer "
               "than %s to the rear of the top: the line at %.0f deg on the drawing",
               lw_block_m(b, b->result->influence.reach_m).text,
               b->result->influence.angle_rad * LW_DEG_PER_RAD);
}

static void soil(const lw_blocks *b) {
  const lw_result *r = b->result;
  lw_block_say(b, LW_BLOCK_HEADING, "", "Soil, and where its figures come from");
  for (int i = 0; i < r->wall.site.soil_count; i++) {
    const lw_case_soil *c = &r->given.ground.soil[i];
    const lw_soil *s = &r->wall.site.soil[i];
    lw_block_say(b, LW_BLOCK_FACT, i == 0 ? "behind" : "below it",
                 "%s%sfriction angle %.1f deg (%s), cohesion %s, %s (%s)", c->name.text,
                 c->name.text[0] ? ": " : "", s->friction_rad * LW_DEG_PER_RAD, origin_of(c->friction.origin),
                 lw_block_amount(b, LW_KIND_PRESSURE, s->cohesion_kpa, 1).text,
                 lw_block_amount(b, LW_KIND_UNIT_WEIGHT, s->unit_weight_kn_per_m3, 1).text,
                 origin_of(c->unit_weight.origin));
  }
  const char *under = r->given.ground.footing.name.text;
  lw_block_say(b, LW_BLOCK_FACT, "under it", "%s%sfriction angle %.1f deg (%s), allowable bearing %s (%s)",
               under, under[0] ? ": " : "", r->wall.site.footing.friction_rad * LW_DEG_PER_RAD,
               origin_of(r->given.ground.footing.friction.origin),
               lw_block_amount(b, LW_KIND_PRESSURE, r->wall.site.allowable_bearing_kpa, 0).text,
               origin_of(r->given.ground.allowable_bearing.origin));
}

static void method(const lw_blocks *b) {
  const lw_result *r = b->result;
  const lw_factor_row *row = lw_tables_factor(r->tables, r->wall.factor_set, "sliding");
  static const char *const METHODS[] = {[LW_PRESSURE_COULOMB] = "Coulomb's earth pressure",
                                        [LW_PRESSURE_RANKINE] = "Rankine's earth pressure",
                                        [LW_PRESSURE_WEDGE] = "trial wedges",
                                        [LW_PRESSURE_AT_REST] = "earth pressure at rest"};
  lw_block_say(b, LW_BLOCK_HEADING, "", "Method");
  lw_block_say(b, LW_BLOCK_FACT, "pressure", "%s, rechecked by trial wedges where they have an answer",
               METHODS[r->wall.method.pressure]);
  lw_block_say(b, LW_BLOCK_FACT, "factors", "%s (%s)", row ? row->title : r->wall.factor_set,
               r->wall.factor_set);
}

void lw_blocks_ground(const lw_blocks *blocks) {
  loads(blocks);
  soil(blocks);
  lw_blocks_water(blocks);
  method(blocks);
}

/* How far it is to each, two in a row. */
static void distances(const lw_blocks *b) {
  const lw_case_site *site = &b->result->given.site;
  const struct {
    const lw_quantity *far;
    const char *to;
  } asked[] = {{&site->boundary_distance, "boundary"},
               {&site->building_distance, "building"},
               {&site->service_distance, "pipe or cable"},
               {&site->public_way_distance, "street, footpath"},
               {&site->pool_barrier_distance, "pool barrier"}};
  for (size_t i = 0; i < sizeof asked / sizeof *asked; i++) {
    bool given = asked[i].far->origin == LW_GIVEN;
    lw_block_say(b, LW_BLOCK_ITEM, asked[i].to, "%s",
                 given ? lw_distance_told(b->result->units, asked[i].far).text : "ask how far");
  }
  lw_block_say(b, LW_BLOCK_ITEM, "fall from the top", "%s",
               lw_block_m(b, b->result->verdict.height_m[LW_HEIGHT_EXPOSED]).text);
}

void lw_blocks_neighbours(const lw_blocks *blocks) {
  lw_block_say(blocks, LW_BLOCK_HEADING, "", "Distances, fall and digging");
  distances(blocks);
  lw_blocks_consent(blocks);
  double deep = blocks->result->wall.section.embedment_m + blocks->result->wall.site.pad.thickness_m;
  if (deep > 0.0)
    lw_block_say(blocks, LW_BLOCK_FACT, "digging",
                 "the trench goes %s below the ground in front; ground and footings beside it, a "
                 "neighbour's too, must stay held while it is open",
                 lw_block_m(blocks, deep).text);
  else
    lw_block_say(blocks, LW_BLOCK_FACT, "digging",
                 "none is given: the wall stands on the ground in front. Ask what is dug before it is laid");
  lw_blocks_untold(blocks);
}

/* As it was written where that is in other units than the page: "8 in, 203 mm". */
static const char *as_written(const lw_blocks *b, const lw_echo *said, char *out, size_t size) {
  lw_case c = b->result->given;
  out[0] = '\0';
  if (said->item->type != LW_ITEM_QUANTITY || said->origin != LW_GIVEN) return out;
  const lw_quantity *q = lw_item_quantity(said->item, said->number, &c);
  bool alike = said->likely || said->worked_out || q->table_row == LW_MORE_THAN || q->in == b->result->units;
  if (alike || !(fabs(q->si) > 0.0) || !lw_units_differ(LW_UNITS_US, q->kind)) return out;
  lw_print(out, size, "%s, ", lw_value_of(q->in, q->kind, q->si).text);
  return out;
}

static bool is_asked(const lw_echo *said) {
  return said->origin == LW_ASSUMED && said->item->question[0] != '\0';
}

static void count(void *context, const lw_echo *said) {
  int *sum = context;
  *sum += is_asked(said) ? 1 : 0;
}

/* Whether its question stands among the reasons. */
static bool is_asked_above(const lw_verdict *v, const char *question) {
  for (int i = 0; i < v->reasons.count; i++)
    if (strstr(v->reasons.reason[i].text, question) && !lw_reason_said_before(v, i)) return true;
  return false;
}

static void assumed(void *context, const lw_echo *said) {
  const lw_blocks *b = context;
  char before[64];
  if (!is_asked(said)) return;
  bool above = is_asked_above(&b->result->verdict, said->item->question);
  lw_block_say(b, LW_BLOCK_ITEM, said->name, "%s%s%s%s", as_written(b, said, before, sizeof before),
               said->words, above ? "" : ". ", above ? "" : said->item->question);
}

static void given(void *context, const lw_echo *said) {
  const lw_blocks *b = context;
  char before[64];
  if (said->origin != LW_GIVEN || said->item->part == LW_ABOUT_HEADING) return;
  lw_block_say(b, LW_BLOCK_ITEM, said->name, "%s%s", as_written(b, said, before, sizeof before), said->words);
}

void lw_blocks_inputs(const lw_blocks *blocks) {
  lw_blocks copy = *blocks;
  lw_block_say(blocks, LW_BLOCK_HEADING, "", "Assumed, because the sheet does not say");
  int all = 0;
  lw_echo_each(blocks->result, count, &all);
  if (all == 0) lw_block_say(blocks, LW_BLOCK_WORDS, "", "Nothing that a question would settle.");
  lw_echo_each(blocks->result, assumed, &copy);
  lw_block_say(blocks, LW_BLOCK_HEADING, "", "Given on the sheet");
  lw_echo_each(blocks->result, given, &copy);
}
