/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "words.h"

#include "base/amount.h"
#include "base/print.h"

/* Names and short words. */

typedef struct line_words {
  const char *name, *note;
} line_words;

static const line_words LINES[LW_LINE_COUNT] = {
    [LW_LINE_BLOCKS] = {"blocks, whole", ""},
    [LW_LINE_BASE_BLOCKS] = {"deeper blocks of the base courses, whole", ""},
    [LW_LINE_HALF_BLOCKS] = {"half blocks", ""},
    [LW_LINE_BASE_HALF_BLOCKS] = {"deeper half blocks", ""},
    [LW_LINE_LEFT_CORNERS] = {"left corner units", ""},
    [LW_LINE_BASE_LEFT_CORNERS] = {"deeper left corner units", ""},
    [LW_LINE_RIGHT_CORNERS] = {"right corner units", ""},
    [LW_LINE_BASE_RIGHT_CORNERS] = {"deeper right corner units", ""},
    [LW_LINE_MITRED_SPARES] = {"blocks for spare mitred units", ""},
    [LW_LINE_BASE_MITRED_SPARES] = {"deeper blocks for spare mitred units", ""},
    [LW_LINE_CAPS] = {"caps", ""},
    [LW_LINE_ADHESIVE] = {"adhesive in two beads",
                          "dry, brushed, above 5 C, beads clear of weeps; no part of the check"},
    [LW_LINE_WALL_STONE] = {"stone or concrete of the wall", ""},
    [LW_LINE_DIG] = {"dig, in the ground", "to the ground in front; a bank behind is not counted"},
    [LW_LINE_SPOIL] = {"spoil, loose",
                       "net as it lies, order as loose: what is carried away if none is used"},
    [LW_LINE_PAD_STONE] = {"pad stone", "net as compacted, order as loose"},
    [LW_LINE_BEDDING_SAND] = {"sand for dry bedding, loose", "its allowance is in the loose volume"},
    [LW_LINE_CEMENT] = {"cement in bags", "dry sand and cement has no strength that is counted"},
    [LW_LINE_DRAINAGE_STONE] = {"drainage stone", "clean, one size; up to the soil over it"},
    [LW_LINE_GEOTEXTILE] = {"geotextile around the stone", ""},
    [LW_LINE_DRAIN_PIPE] = {"drain pipe and outlets", "one outlet is a way in for rods as well, or add one"},
    [LW_LINE_SOIL] = {"soil for the bed",
                      "beside the drainage stone and over it; it settles, so more is ordered"},
    [LW_LINE_LINING] = {"lining of the soil's side", ""},
    [LW_LINE_BLOCK_FILL] = {"fill of hollow blocks", "clean stone that runs into every void"},
};

const char *lw_order_line_name(const lw_order_line *line, lw_units units, char out[LW_LINE_NAME]) {
  if (line->between_tails) return "fill of the blocks and between tails";
  if (!(line->cap_depth_m > 0.0)) return LINES[line->kind].name;
  lw_print(out, LW_LINE_NAME, "%s, %s deep", LINES[line->kind].name,
           lw_millimetres(units, line->cap_depth_m).text);
  return out;
}

/* How many are sawn, and what using offcuts again saves or has saved. */
static const char *sawn_note(const lw_order_line *l, char out[LW_LINE_NOTE]) {
  if (l->sawn == l->sawn_again)
    lw_print(out, LW_LINE_NOTE, "%d of them to be sawn; no offcut is long enough to be used again", l->sawn);
  else if (l->offcuts_used)
    lw_print(out, LW_LINE_NOTE, "%d of them to be sawn, offcuts used; %d if each piece takes a new one",
             l->sawn_again, l->sawn);
  else
    lw_print(out, LW_LINE_NOTE, "%d of them to be sawn, each for its own piece; %d if offcuts are used again",
             l->sawn, l->sawn_again);
  return out;
}

const char *lw_order_line_note(const lw_order_line *l, lw_units units, char out[LW_LINE_NOTE]) {
  if (l->sawn > 0) return sawn_note(l, out);
  if (l->behind_pad) return "clean, one size; behind the pad and up to the soil over it";
  if (l->kinds > 0)
    lw_print(out, LW_LINE_NOTE, "%.0f for each of %d kinds of mitred unit, sawn as the cutting list says",
             l->spare_each, l->kinds);
  else if (l->kind == LW_LINE_WALL_STONE)
    lw_print(out, LW_LINE_NOTE, "%s in place at %s, which is with its voids where it is stone laid dry",
             lw_amount_of(units, LW_KIND_VOLUME, l->volume_m3, 2).text,
             lw_amount_of(units, LW_KIND_UNIT_WEIGHT, l->unit_weight_kn_per_m3, 1).text);
  else
    return LINES[l->kind].note;
  return out;
}

lw_kind lw_line_unit_kind(lw_line_unit unit) {
  return unit == LW_UNIT_M3   ? LW_KIND_VOLUME
         : unit == LW_UNIT_M2 ? LW_KIND_AREA
         : unit == LW_UNIT_M  ? LW_KIND_LENGTH
                              : LW_KIND_COUNT;
}

const char *lw_peg_name(const lw_peg *peg, char out[LW_SPOT_NAME]) {
  static const char letters[] = {
      [LW_PEG_BASE] = 'B', [LW_PEG_TOP] = 'T', [LW_PEG_CENTRE] = 'C', [LW_PEG_STEP] = 'S'};
  lw_print(out, LW_SPOT_NAME, "%c%d", letters[peg->kind], peg->number);
  return out;
}

const char *lw_peg_check_name(const lw_peg_check *check, char out[LW_SPOT_NAME]) {
  if (check->to > 0)
    lw_print(out, LW_SPOT_NAME, "B%d to B%d", check->from, check->to);
  else
    lw_print(out, LW_SPOT_NAME, "C%d to the face", check->from);
  return out;
}

const char *lw_level_name(const lw_level *level, char out[LW_SPOT_NAME]) {
  static const char *const words[LW_LEVEL_KINDS] = {
      [LW_LEVEL_TOP] = "top of the wall",
      [LW_LEVEL_UNDER_CAP] = "under the cap",
      [LW_LEVEL_GROUND] = "ground in front, lowest",
      [LW_LEVEL_UNDER_WALL] = "under the wall",
      [LW_LEVEL_UNDER_COURSE] = "under course ",
      [LW_LEVEL_BEFORE_STEP] = "under the blocks before step S",
      [LW_LEVEL_AFTER_STEP] = "under the blocks after step S",
      [LW_LEVEL_PAD_TOP] = "top of the pad, lowest",
      [LW_LEVEL_DIG_BOTTOM] = "bottom of the dig, lowest",
      [LW_LEVEL_STEP_PAD_TOP] = "top of the upper pad at step S",
      [LW_LEVEL_STEP_DIG_BOTTOM] = "bottom of the upper dig at step S",
  };
  if (level->number == 0) return words[level->kind];
  lw_print(out, LW_SPOT_NAME, "%s%d", words[level->kind], level->number);
  return out;
}

const char *lw_invert_name(const lw_invert *invert, char out[LW_SPOT_NAME]) {
  static const char *const sides[] = {
      [LW_SIDE_LEVEL] = "", [LW_SIDE_BEFORE] = ", before the step", [LW_SIDE_AFTER] = ", after the step"};
  switch (invert->kind) {
  case LW_INVERT_HIGH: return "high point";
  case LW_INVERT_LEAVES: return "where it leaves the wall";
  case LW_INVERT_OUTLET: return "outlet";
  case LW_INVERT_CORNER:
  case LW_INVERT_STEP: break;
  }
  lw_print(out, LW_SPOT_NAME, "%c%d%s", invert->kind == LW_INVERT_STEP ? 'S' : 'B', invert->number,
           sides[invert->side]);
  return out;
}

const char *lw_no_fit_words(lw_no_fit why) {
  static const char *const words[] = {
      [LW_NO_FIT_NONE] = "",
      [LW_NO_FIT_SETBACK] = "the setback makes each course shorter than the one below",
      [LW_NO_FIT_CORNERS] = "the corners take different lengths off odd and even courses",
      [LW_NO_FIT_RUNS_ON] = "the blocks run on from run to run, or around a curve"};
  return words[why];
}

const char *lw_butt_words(lw_butt why) {
  static const char *const words[] = {
      [LW_BUTT_NONE] = "",
      [LW_BUTT_NO_MITRE] = "the two widths do not meet in a mitre at this angle",
      [LW_BUTT_SHARP] = "the points of the mitre would be too sharp and break",
      [LW_BUTT_LONG] = "the mitre is longer than a cap"};
  return words[why];
}
