/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "advised.h"

#include "remedies/search.h"

/* What every form of report says of remedies and of answers worth finding out. */

static const char *stands_then(lw_holds stands) {
  if (stands == LW_HOLDS) return "every deciding check would hold";
  return stands == LW_FALLS_SHORT ? "it would still fall short" : "it could still not be shown to stand";
}

static const char *who_then(lw_who who) {
  if (who == LW_WHO_ENGINEER) return "an engineer would still design it";
  return who == LW_WHO_COUNCIL ? "the council would be asked" : "it would be below the limit on file";
}

void lw_asking_then(const lw_result *result, char *out, size_t size) {
  const lw_asking *a = &result->asking[0];
  const lw_verdict *v = &result->verdict;
  bool same = a->stands_then == v->stands && a->who_then == v->who, holds = v->stands == LW_HOLDS;
  if (same && a->helps == LW_HELPS_REASONS)
    lw_print(out, size, "%s%s%s, with fewer reasons. No one answer alone %s",
             holds ? "" : stands_then(v->stands), holds ? "" : "; ", who_then(v->who),
             holds ? "changes who is asked" : "helps it to stand");
  else if (same && holds)
    lw_print(out, size, "it would hold with more to spare, and no one answer changes who is asked");
  else
    lw_print(out, size, "%s; %s%s", stands_then(a->stands_then), who_then(a->who_then),
             same ? ". No one answer alone changes that; this one helps most" : "");
}

void lw_asking_words(const lw_result *result, int index, bool item_too, lw_text *out) {
  const lw_asking *a = &result->asking[index];
  char then[200];
  lw_text_addf(out, "Taken meanwhile: %s%s%s.", item_too ? a->item : "", item_too ? " = " : "", a->assumed);
  if (index > 0) return;
  lw_asking_then(result, then, sizeof then);
  lw_text_addf(out, " Were it %s: %s.", a->favourable, then);
}

static bool any_other(const lw_result *result) {
  for (int i = 0; i < result->remedy_count; i++)
    if (result->remedy[i].kind != LW_REMEDY_CURE) return true;
  return false;
}

static const char *title_of_none(const lw_result *result) {
  if (result->verdict.stands == LW_HOLDS) return "As it is every check that decides holds";
  if (lw_remedies_refusal(result)) return "No change of its measures makes it stand";
  return result->verdict.stands == LW_FALLS_SHORT ? "Nothing that was tried makes it stand"
                                                  : "Nothing that was tried shows that it stands";
}

const char *lw_remedies_title(const lw_result *result) {
  bool engineer = result->verdict.who == LW_WHO_ENGINEER;
  if (result->remedy_count == 0) return title_of_none(result);
  if (result->remedy[0].kind != LW_REMEDY_CURE)
    return "Nothing tried makes it stand as the wall it is to be; in its place would stand";
  if (any_other(result))
    return engineer ? "What would make it stand, or another wall in its place; the engineer decides"
                    : "What would make it stand, or another wall in its place";
  return engineer ? "What would make it stand, each by itself; the engineer decides all the same"
                  : "What would make it stand, each by itself";
}

const char *lw_remedies_title_before(const lw_result *result) {
  bool sought = result->verdict.stands != LW_HOLDS && !lw_remedies_refusal(result);
  return sought ? "What would make it stand" : title_of_none(result);
}

const char *lw_remedies_none(const lw_result *result) {
  bool sought = result->remedies_sought && result->verdict.stands == LW_FALLS_SHORT;
  return sought && result->remedy_count == 0 ? "Neither one change does, nor two together: it takes other "
                                               "blocks, another kind of wall or another "
                                               "place."
                                             : "";
}

static void not_shown(const lw_result *result, lw_text *out) {
  lw_check check;
  lw_text_add(out, "Nothing that was tried shows that it stands, neither one change nor two together");
  if (lw_verdict_governing(result, &check) && check.holds == LW_CANNOT_SHOW)
    lw_text_addf(out, ": %s", lw_reason_sentence(check.reason));
  lw_text_add(out, ".");
}

void lw_remedies_instead(const lw_result *result, lw_text *out) {
  const lw_verdict_reason *refusal = lw_remedies_refusal(result);
  const char *none = lw_remedies_none(result);
  if (result->remedy_count > 0) return;
  if (result->verdict.stands == LW_HOLDS)
    lw_text_addf(out, "Nothing has to change for that.%s",
                 result->verdict.who == LW_WHO_ENGINEER ? " The engineer decides all the same." : "");
  else if (refusal)
    lw_text_add(out, refusal->text);
  else if (none[0])
    lw_text_add(out, none);
  else
    not_shown(result, out);
}
