/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#define SLUG(name, slug, sentence) slug,
#define SENTENCE(name, slug, sentence) sentence,
static const char *const what_slugs[] = {LW_WHATS(SLUG)};
static const char *const what_sentences[] = {LW_WHATS(SENTENCE)};

static const char *const grade_slugs[] = {LW_GRADES(SLUG)};
static const char *const grade_sentences[] = {LW_GRADES(SENTENCE)};

static const char *const who_slugs[] = {"builder", "council", "engineer"};
static const char *const holds_slugs[] = {"holds", "falls-short", "cannot-be-shown"};

static const char *const height_slugs[LW_HEIGHT_KINDS] = {
    [LW_HEIGHT_TOTAL] = "total",     [LW_HEIGHT_EXPOSED] = "exposed",  [LW_HEIGHT_RETAINED] = "retained",
    [LW_HEIGHT_NATURAL] = "natural", [LW_HEIGHT_FENCE] = "with-fence", [LW_HEIGHT_GREATEST] = "greatest",
};
static const char *const height_sentences[LW_HEIGHT_KINDS] = {
    [LW_HEIGHT_TOTAL] = "from the underside of the lowest course to the top, cap included",
    [LW_HEIGHT_EXPOSED] = "from the ground in front to the top",
    [LW_HEIGHT_RETAINED] = "from the ground in front to the soil behind",
    [LW_HEIGHT_NATURAL] = "deepest cut or fill against the natural ground",
    [LW_HEIGHT_FENCE] = "from the ground in front to the top of the fence",
    [LW_HEIGHT_GREATEST] = "the greatest of all heights, the pad included, a fence not",
};

const char *lw_what_slug(lw_what what) {
  return what_slugs[what];
}
const char *lw_what_sentence(lw_what what) {
  return what_sentences[what];
}
const char *lw_who_slug(lw_who who) {
  return who_slugs[who];
}
const char *lw_holds_slug(lw_holds holds) {
  return holds_slugs[holds];
}
const char *lw_grade_slug(lw_grade grade) {
  return grade_slugs[grade];
}
const char *lw_grade_sentence(lw_grade grade) {
  return grade_sentences[grade];
}
const char *lw_height_slug(lw_height_kind kind) {
  return height_slugs[kind];
}
const char *lw_height_sentence(lw_height_kind kind) {
  return height_sentences[kind];
}
