/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report.h"

#include <string.h>

#include "report/page.h"

static const char *who_words(lw_who who) {
  static const char *const words[] = {
      [LW_WHO_BUILDER] = "no one beyond the builder is called for; confirm with the authority",
      [LW_WHO_COUNCIL] = "the council, before building",
      [LW_WHO_ENGINEER] = "a licensed engineer",
  };
  return words[who];
}

static void name(const lw_page *page, const lw_fit *fit, int number) {
  char cleaned[LW_WORDS_MAX], prefix[16];
  lw_text_clean(fit->block->name, cleaned, sizeof cleaned);
  lw_print(prefix, sizeof prefix, "  %d. ", number);
  lw_page_sayf(page, prefix, "%s, row %d", cleaned, fit->block->row);
}

/* No item is broken between two lines, so that each can be copied as it stands. */
static void typed(const lw_page *page, const lw_fit *fit) {
  char line[80] = "     typed:";
  for (int i = 0; i < fit->items.count; i++) {
    size_t used = strlen(line);
    if (used + strlen(fit->items.item[i]) + 3 >= sizeof line) {
      lw_page_linef(page, LW_TONE_PLAIN, "%s", line);
      lw_print(line, sizeof line, "%s", "           ");
      used = strlen(line);
    }
    lw_print(line + used, sizeof line - used, " '%s'", fit->items.item[i]);
  }
  lw_page_linef(page, LW_TONE_PLAIN, "%s", line);
}

static bool is_heavy(const lw_fit *fit) {
  return fit->kind == LW_FIT_LAID && fit->unit_mass_kg > fit->lift_mass_kg;
}

/* Once for all of them. */
static void say_heavy(const lw_page *page, const lw_fit_list *list) {
  for (int i = 0; i < list->yard->count; i++) {
    if (!is_heavy(&list->fit[i])) continue;
    lw_page_sayf(page, "",
                 "What is heavy is over the %s that one person should not lift again and again: two "
                 "people or a lifter.",
                 lw_amount_of(page->units, LW_KIND_MASS, list->fit[i].lift_mass_kg, 0).text);
    return;
  }
}

/* Where it does not hold, the worst of what falls short. */
static void stands(const lw_page *page, const lw_fit *fit) {
  char ratio[48] = "";
  const char *how = fit->grade == LW_GRADE_HOLDS ? "the nearest to its limit is" : "the worst is";
  if (fit->ratio.known) lw_print(ratio, sizeof ratio, ", with %.2f times what is asked", fit->ratio.value);
  if (fit->nearest[0])
    lw_page_sayf(page, "     ", "%s; %s %s%s", lw_grade_sentence(fit->grade), how, fit->nearest, ratio);
  else
    lw_page_sayf(page, "     ", "%s; nothing pushes on it", lw_grade_sentence(fit->grade));
}

static void laid(const lw_page *page, const lw_fit_list *list, const lw_fit *fit) {
  char currency[sizeof list->yard->currency];
  lw_text_clean(list->yard->currency, currency, sizeof currency);
  lw_page_sayf(
      page, "     ", "%.2f%s%s: %d blocks%s of %s%s, %s in all", fit->cost, currency[0] != '\0' ? " " : "",
      currency, fit->whole + fit->other, fit->other > 0 ? ", halves and corner units with them," : "",
      lw_amount_of(page->units, LW_KIND_MASS, fit->unit_mass_kg, 1).text, is_heavy(fit) ? " (heavy)" : "",
      lw_amount_of(page->units, LW_KIND_MASS, fit->mass_kg, 0).text);
  lw_page_sayf(page, "     ", "%d course%s, each set back %s, the wall buried %s", fit->courses,
               fit->courses == 1 ? "" : "s",
               lw_exactly(page->units, LW_KIND_LENGTH, fit->setback_m, "mm").text,
               lw_exactly(page->units, LW_KIND_LENGTH, fit->embedment_m, "mm").text);
  stands(page, fit);
  lw_page_sayf(page, "     ", "who must see it: %s", who_words(fit->who));
  typed(page, fit);
}

typedef enum group { HOLD, SHORT, NOT_LAID } group;

static group group_of(const lw_fit *fit) {
  if (fit->kind != LW_FIT_LAID) return NOT_LAID;
  return fit->grade == LW_GRADE_HOLDS ? HOLD : SHORT;
}

static void heading(const lw_page *page, group now) {
  static const char *const titles[] = {
      [HOLD] = "These hold, the cheapest first",
      [SHORT] = "These do not hold, the least grave first",
      [NOT_LAID] = "These cannot be laid in the wall as the sheet has it",
  };
  lw_page_heading(page, titles[now]);
}

static void head(const lw_page *page, const lw_fit_list *list) {
  const lw_fit *best = &list->fit[0];
  bool holds = group_of(best) == HOLD;
  lw_page_headline(page, LW_TONE_STRONG,
                   holds ? best->headline : "None of these blocks holds in the wall of the sheet.");
  if (list->replaced[0] != '\0') lw_page_sayf(page, "", "Made with replaced tables: %s.", list->replaced);
  lw_page_blank(page);
  lw_page_sayf(
      page, "",
      "%sNothing here says that the wall may be built. Prices are those of the list, and stand for "
      "halves and corner units too: ask what those cost. Caps and all else that an order has are not "
      "counted.",
      holds ? "That is the check of the first block below. " : "");
  say_heavy(page, list);
}

lw_status lw_report_fit_text(const lw_fit_list *list, const lw_text_style *style, lw_text *out) {
  lw_text kept = {0};
  lw_page page = lw_page_open(style, list->units, out, &kept);
  char why[LW_FIT_WHY];
  head(&page, list);
  for (int i = 0; i < list->yard->count; i++) {
    const lw_fit *fit = &list->fit[i];
    if (i == 0 || group_of(fit) != group_of(fit - 1)) heading(&page, group_of(fit));
    name(&page, fit, i + 1);
    if (fit->kind == LW_FIT_LAID)
      laid(&page, list, fit);
    else
      lw_page_say(&page, "     ", lw_fit_why(list, fit, why));
  }
  return lw_page_close(&page, out);
}
