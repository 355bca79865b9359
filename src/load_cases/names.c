/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/checks.h>

static const char *const SITUATION[] = {
#define LW_SITUATION_NAME(name, slug, sentence) [LW_SITUATION_##name] = slug,
    LW_SITUATIONS(LW_SITUATION_NAME)
#undef LW_SITUATION_NAME
};

static const char *const SENTENCE[] = {
#define LW_SITUATION_NAME(name, slug, sentence) [LW_SITUATION_##name] = sentence,
    LW_SITUATIONS(LW_SITUATION_NAME)
#undef LW_SITUATION_NAME
};

static const char *const KIND[] = {
    [LW_USUAL] = "usual", [LW_UNUSUAL] = "unusual", [LW_EXTREME] = "extreme", [LW_WHAT_IF] = "what-if"};

const char *lw_situation_slug(lw_situation_name name) {
  return SITUATION[name];
}

const char *lw_situation_sentence(lw_situation_name name) {
  return SENTENCE[name];
}

const char *lw_situation_kind_slug(lw_situation_kind kind) {
  return KIND[kind];
}

void lw_check_print_at(const lw_check *check, char *out, size_t size) {
  static const char *const AT[] = {
      [LW_AT_BASE] = "base", [LW_AT_PAD] = "pad", [LW_AT_CAP] = "cap", [LW_AT_GROUND] = "ground"};
  char number[16];
  if (check->at != LW_AT_JOINT) {
    lw_print(out, size, "%s", AT[check->at]);
    return;
  }
  lw_number_print(number, sizeof number, check->joint, 0);
  lw_print(out, size, "joint-%s", number);
}
