/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "backfill.h"

#include "base/amount.h"
#include "base/canned.h"
#include "base/print.h"

static double most_of(const lw_facts *f, lw_known_row threshold) {
  return lw_known_value(f->tables, threshold);
}

/* Refused only by the height that was taken, and less of it is certain. */
static const char *height_left_out(const lw_facts *f, double most_m) {
  const lw_span *held = &f->height[LW_HEIGHT_RETAINED];
  return held->certain_m <= most_m ? held->left_out : NULL;
}

const char *lw_backfill_left_out(const lw_facts *facts) {
  switch (facts->wall->site.refused) {
  case LW_REFUSED_OUTSIDE_BED: return facts->c->site.behind.origin == LW_GIVEN ? NULL : "site behind";
  case LW_REFUSED_TOO_HIGH: return height_left_out(facts, most_of(facts, LW_THRESHOLD_PLANT_SOIL_HELD));
  case LW_REFUSED_DEEP_COMPOST: return height_left_out(facts, most_of(facts, LW_THRESHOLD_COMPOST_DEPTH));
  case LW_REFUSED_BY_TABLE:
  case LW_REFUSED_NOT: break;
  }
  return NULL;
}

static void tell_outside_bed(const lw_facts *f, const char *name, char *out, size_t size) {
  const char *bed = f->c->site.behind.origin == LW_GIVEN ? "this wall holds up more than a bed"
                                                         : "the sheet does not say that this is one";
  lw_print(out, size,
           "The soil behind (%s) is refused as backfill: plant soil counts inside a bed only, up to %s held "
           "up, and %s. Name the soil that lies against the wall below it, and leave the plant soil off the "
           "sheet.",
           name, lw_metres(f->units, most_of(f, LW_THRESHOLD_PLANT_SOIL_HELD), 2).text, bed);
}

static void tell_too_high(const lw_facts *f, const char *name, char *out, size_t size) {
  lw_print(out, size,
           "The soil behind (%s) is refused as backfill where more than %s is held up: it rots, sinks and "
           "has no strength to count on there. Fill with sand, loam or clean stone, name that as the soil "
           "behind, and leave the plant soil on top of it off the sheet.",
           name, lw_metres(f->units, most_of(f, LW_THRESHOLD_PLANT_SOIL_HELD), 2).text);
}

static void tell_compost(const lw_facts *f, const char *name, char *out, size_t size) {
  const lw_amount top = lw_metres(f->units, most_of(f, LW_THRESHOLD_COMPOST_DEPTH), 2);
  lw_print(out, size,
           "The soil behind (%s) is refused as backfill below %s: it rots and drops, and what is filled in "
           "after it pushes anew. Fill the bed below with topsoil, a planting mix or sand, name that as the "
           "next soil, and end the %s %s below the soil's surface or higher.",
           name, top.text, name, top.text);
}

/* The row of a soil that is refused everywhere says why itself. */
static void tell_why(const lw_facts *f, const lw_soil_row *row, char *out, size_t size) {
  char note[LW_NOTE_MAX];
  lw_print(out, size, "The soil behind (%s) is refused as backfill. %s", row->name,
           lw_canned_told(f->units, row->note, note, sizeof note));
}

void lw_backfill_tell(const lw_facts *facts, char *out, size_t size) {
  const lw_site *site = &facts->wall->site;
  const lw_words *name = &facts->c->ground.soil[site->refused_soil].name;
  const lw_soil_row *row = name->origin == LW_ABSENT ? NULL : lw_tables_soil(facts->tables, name->text);
  if (!row)
    lw_print(out, size, "%s",
             "The soil behind is refused as backfill: no friction angle may be given for it.");
  else if (site->refused == LW_REFUSED_OUTSIDE_BED)
    tell_outside_bed(facts, row->name, out, size);
  else if (site->refused == LW_REFUSED_TOO_HIGH)
    tell_too_high(facts, row->name, out, size);
  else if (site->refused == LW_REFUSED_DEEP_COMPOST)
    tell_compost(facts, row->name, out, size);
  else
    tell_why(facts, row, out, size);
}
