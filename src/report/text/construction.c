/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "construction.h"

#include <string.h>

#include "parts.h"
#include "said.h"
#include "balance/weigh.h"

/* What the page says of building it: an instruction, and the numbers behind it where plant is named. */

static void plant_words(const lw_plant *plant, char *out, size_t size) {
  lw_print(out, size, "%s", plant->name[0] ? plant->name : "plant");
}

/* What compacts in the strip that the plant keeps out of. */
static void say_nearer(const lw_construction *g, lw_units units, char *out, size_t size) {
  const lw_stand_off *hand = &g->hand_stand_off;
  bool itself = g->plant.row == g->hand.row && strcmp(g->plant.name, g->hand.name) == 0;
  bool helps = !itself && hand->keep_m.known && hand->keep_m.value < g->stand_off.keep_m.value - 1e-9;
  if (!helps) {
    lw_print(out, size, "place stone by hand and leave it loose");
  } else if (hand->keep_m.value > 0.0) {
    lw_print(out, size,
             "a hand rammer and light blows, down to %s from the blocks; there place stone by hand "
             "and leave it loose",
             lw_metres(units, hand->keep_m.value, 2).text);
  } else {
    lw_print(out, size, "a hand rammer and light blows");
  }
}

static bool no_room(const lw_result *result) {
  const lw_quantity *width = &result->given.construction.bed_width;
  return width->origin == LW_GIVEN && width->si <= result->construction.stand_off.keep_m.value;
}

void lw_construction_instruction(const lw_result *result, char *out, size_t size) {
  const lw_construction *g = &result->construction;
  char plant[LW_NAME_MAX], nearer[200];
  plant_words(&g->plant, plant, sizeof plant);
  say_nearer(g, result->units, nearer, sizeof nearer);
  const lw_amount keep = lw_metres(result->units, g->stand_off.keep_m.value, 2);
  const lw_amount layer = lw_metres(result->units, g->layer_most_m, 3);
  if (!g->studied) {
    lw_print(out, size, "%s", lw_reason_sentence(g->reason));
  } else if (!g->stand_off.keep_m.known) {
    lw_print(
        out, size,
        "No plant at any distance: fill level with the newest course moves it, even loose. It wants deeper "
        "or heavier blocks");
  } else if (no_room(result)) {
    lw_print(out, size,
             "The bed leaves no room for the %s, which has to keep %s away. In it, %s. Layers of %s at "
             "most",
             plant, keep.text, nearer, lw_metres(result->units, g->hand_layer_most_m, 3).text);
  } else if (g->stand_off.keep_m.value > 0.0) {
    lw_print(out, size, "Keep the %s %s or more behind the newest course. Nearer, %s. Layers of %s at most",
             plant, keep.text, nearer, layer.text);
  } else {
    lw_print(out, size, "The newest course holds with the %s beside it. Layers of %s at most", plant,
             layer.text);
  }
}

static void say_check(const lw_page *page, const char *prefix, const lw_check *check) {
  char words[48], outcome[48], has[24], needs[24];
  lw_check_words(check, words, sizeof words);
  lw_check_outcome(check, outcome, sizeof outcome);
  lw_page_number(check->has, has, sizeof has);
  lw_page_number(check->needs, needs, sizeof needs);
  lw_page_sayf(page, prefix, "%s has %s, needs %s: %s.", words, has, needs, outcome);
}

static const lw_check *worst_touching(const lw_construction *g) {
  const lw_construction_course *course = &g->course[g->worst];
  return lw_check_graver(&course->tilting, &course->sliding) ? &course->tilting : &course->sliding;
}

static void say_numbers(const lw_page *page, const lw_construction *g) {
  lw_page_sayf(page, "  Plant            ", "%s and %s on %s: %s along the wall.",
               lw_amount_of(page->units, LW_KIND_MASS, g->plant.mass_kg, 0).text,
               lw_amount_of(page->units, LW_KIND_FORCE, g->plant.force_kn, 1).text,
               lw_metres(page->units, g->plant.width_m, 2).text,
               lw_amount_of(page->units, LW_KIND_LINE_LOAD, g->plant.line_load_kn_per_m, 1).text);
  say_check(page, "  Touching         ", worst_touching(g));
  if (g->distance_m.known) {
    char prefix[40];
    lw_print(prefix, sizeof prefix, "  At %s        ", lw_metres(page->units, g->distance_m.value, 2).text);
    say_check(page, prefix, &g->at_distance);
  }
  if (g->moves)
    lw_page_tone(page, LW_TONE_BAD, "  ",
                 "At that distance the newest course moves: so are bulges built in.");
  if (g->layer_too_thick)
    lw_page_sayf(page, "  ",
                 "Layers of %s are too thick: a course of fill, or what this plant compacts, is less.",
                 lw_metres(page->units, g->layer_m, 3).text);
  lw_page_say(page, "  ", "This is over when the wall stands, and does not decide whether it does.");
}

void lw_text_construction(const lw_page *page, const lw_result *result) {
  const lw_construction *g = &result->construction;
  char instruction[LW_INSTRUCTION_MAX];
  if (!g->studied) return;
  lw_construction_instruction(result, instruction, sizeof instruction);
  lw_page_heading(page, g->plant.named ? "While it is built" : "While it is built, with the usual plate");
  lw_page_sayf(page, "  ", "%s.", instruction);
  if (g->plant.named || g->distance_m.known || g->layer_given) say_numbers(page, g);
}

void lw_text_narrow(const lw_page *page, const lw_result *result) {
  const lw_narrow *n = &result->narrow;
  double least = 1.0;
  char published[120];
  if (!n->shown) return;
  for (int i = 0; i < LW_NARROW_COUNT; i++)
    if (n->value[i].known && n->value[i].share < least) least = n->value[i].share;
  lw_print(published, sizeof published,
           least < 0.995 ? "Published values for narrow beds, down to %.2f of it, are never counted"
                         : "Between smooth faces published values for narrow beds are no less",
           least);
  const lw_apart apart = lw_metres_apart(page->units, n->bed_width_m, n->wedge_width_m, 2);
  lw_page_sayf(page, "  ",
               "The bed is %s wide and the wedge wants %s: it is checked with the whole wedge all the "
               "same. %s; they stand in the working.",
               apart.one.text, apart.other.text, published);
}
