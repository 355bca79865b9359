/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tables/find.h"
#include "tables/known.h"
#include "complete.h"
#include "values.h"

static bool soil_given(const lw_case_soil *soil) {
  return soil->name.origin == LW_GIVEN || lw_given(&soil->friction) || lw_given(&soil->cohesion) ||
         lw_given(&soil->unit_weight) || lw_given(&soil->light_unit_weight) ||
         lw_given(&soil->saturated_unit_weight) || lw_given(&soil->bottom) ||
         lw_given(&soil->overconsolidation);
}

/* Where a given soil can be shown as at fault: its name, or the first of its values. */
static const void *place_of_soil(const lw_case_soil *soil) {
  const lw_quantity *values[] = {&soil->friction,
                                 &soil->cohesion,
                                 &soil->unit_weight,
                                 &soil->light_unit_weight,
                                 &soil->saturated_unit_weight,
                                 &soil->bottom,
                                 &soil->overconsolidation};
  if (soil->name.origin == LW_GIVEN) {
    return &soil->name;
  }
  for (size_t i = 0; i < sizeof values / sizeof *values; i++) {
    if (lw_given(values[i])) {
      return values[i];
    }
  }
  return &soil->name;
}

static void from_row(lw_quantity *q, lw_kind kind, double si, int row) {
  if (!lw_given(q) && !isnan(si)) {
    *q = lw_from_table(kind, si, row);
  }
}

static const lw_soil_row *named_row(lw_completing *s, const lw_case_soil *soil) {
  if (soil->name.origin != LW_GIVEN) {
    return NULL;
  }
  const lw_soil_row *row = lw_tables_soil(s->tables, soil->name.text);
  if (row == NULL) {
    const char *nearest = lw_tables_nearest(s->tables, "soils", soil->name.text);
    lw_complete_fault(s, LW_FAULT_UNKNOWN_SOIL, &soil->name,
                      nearest != NULL ? "a soil of `lowwall list soils`; the nearest is \"%s\""
                                      : "a soil of `lowwall list soils`, or what the hand test showed%s",
                      nearest != NULL ? nearest : "");
  }
  return row;
}

/* What a row gives in this look. A soil that has no angle has no typical one either. */
static double friction_of(const lw_completing *s, const lw_soil_row *row) {
  bool typical =
      s->c->look == LW_LOOK_LIKELY && !isnan(row->friction_rad) && !isnan(row->friction_typical_rad);
  return typical ? row->friction_typical_rad : row->friction_rad;
}

static void weights_of_row(lw_completing *s, const lw_soil_row *row, int index, lw_case_soil *soil) {
  bool likely = s->c->look == LW_LOOK_LIKELY;
  double typical = row->unit_weight_typical_kn_per_m3;
  from_row(&soil->unit_weight, LW_KIND_UNIT_WEIGHT, likely ? typical : row->unit_weight_kn_per_m3, index);
  if (!lw_given(&soil->unit_weight))
    from_row(&soil->light_unit_weight, LW_KIND_UNIT_WEIGHT,
             likely ? typical : row->light_unit_weight_kn_per_m3, index);
  from_row(&soil->saturated_unit_weight, LW_KIND_UNIT_WEIGHT, row->saturated_unit_weight_kn_per_m3, index);
}

/* A given weight is used as it is, where it pushes and where it helps; wet soil is no lighter than moist. */
static void complete_weights(lw_completing *s, lw_case_soil *soil) {
  const lw_default_weights *usual = &s->defaults->weights[s->c->look];
  if (lw_given(&soil->unit_weight) && !lw_given(&soil->light_unit_weight)) {
    soil->light_unit_weight = lw_worked_out(LW_KIND_UNIT_WEIGHT, soil->unit_weight.si, true);
  }
  double moist = soil->unit_weight.origin != LW_ABSENT ? soil->unit_weight.si : usual->moist_kn_per_m3;
  if (soil->saturated_unit_weight.origin == LW_ABSENT || !lw_given(&soil->saturated_unit_weight)) {
    double wet = soil->saturated_unit_weight.origin != LW_ABSENT ? soil->saturated_unit_weight.si
                                                                 : usual->saturated_kn_per_m3;
    if (soil->saturated_unit_weight.origin == LW_ABSENT || wet < moist) {
      soil->saturated_unit_weight = lw_assumed(LW_KIND_UNIT_WEIGHT, fmax(wet, moist));
    }
  } else if (!lw_given(&soil->unit_weight)) {
    soil->unit_weight = lw_assumed(LW_KIND_UNIT_WEIGHT, fmin(moist, soil->saturated_unit_weight.si));
    moist = soil->unit_weight.si;
  }
  double light =
      soil->light_unit_weight.origin != LW_ABSENT ? soil->light_unit_weight.si : usual->light_kn_per_m3;
  if (!lw_given(&soil->light_unit_weight) && light > moist) {
    soil->light_unit_weight = lw_assumed(LW_KIND_UNIT_WEIGHT, moist);
  }
}

static const lw_soil_row *complete_soil(lw_completing *s, lw_case_soil *soil) {
  const lw_soil_row *row = named_row(s, soil);
  if (row != NULL) {
    int index = (int)(row - s->tables->soil);
    from_row(&soil->friction, LW_KIND_ANGLE, friction_of(s, row), index);
    weights_of_row(s, row, index, soil);
  }
  complete_weights(s, soil);
  return row;
}

/* What nobody names in a bed is plant soil: it has less to hold itself up with than what is dug elsewhere. */
static void complete_bed_soil(lw_completing *s, lw_case_soil *soil) {
  bool bed = lw_choice_is(&s->c->site.behind, LW_BEHIND_BED);
  if (!bed || soil->name.origin == LW_GIVEN || soil->friction.origin != LW_ABSENT) {
    return;
  }
  soil->friction = lw_assumed(LW_KIND_ANGLE, friction_of(s, lw_known_soil(s->tables, LW_SOIL_OF_TOPSOIL)));
}

static void complete_base(lw_completing *s) {
  lw_case *c = s->c;
  const lw_quantity *angle = &c->ground.footing.friction;
  if (!lw_given(&c->ground.base_friction) && lw_given(angle) && lw_told(&c->method.base_friction)) {
    c->ground.base_friction =
        lw_worked_out(LW_KIND_NUMBER, tan(c->method.base_friction.si * angle->si), true);
  }
  const lw_quantity *cohesion = &c->ground.footing.cohesion;
  if (!lw_given(&c->ground.base_adhesion) && lw_given(cohesion) && lw_told(&c->method.base_cohesion)) {
    c->ground.base_adhesion =
        lw_worked_out(LW_KIND_PRESSURE, c->method.base_cohesion.si * cohesion->si, true);
  }
}

static void complete_footing(lw_completing *s) {
  lw_case *c = s->c;
  const lw_soil_row *row = complete_soil(s, &c->ground.footing);
  if (row != NULL) {
    /* A row without a bearing value has none on purpose: none is what it gives, not the safe default. */
    double bearing = isnan(row->allowable_bearing_kpa) ? 0.0 : row->allowable_bearing_kpa;
    from_row(&c->ground.allowable_bearing, LW_KIND_PRESSURE, bearing, (int)(row - s->tables->soil));
    /* Plant soil holds itself up in a bed; under a wall it has no strength to count on. */
    if (isnan(row->friction_rad) || row->use == LW_BACKFILL_BED || row->use == LW_BACKFILL_BED_TOP)
      from_row(&c->ground.footing.friction, LW_KIND_ANGLE, 0.0, (int)(row - s->tables->soil));
  }
  complete_base(s);
}

static void hold_bottoms(lw_completing *s) {
  double above = 0.0;
  for (int i = 0; i < s->soil_count; i++) {
    const lw_quantity *bottom = &s->c->ground.soil[i].bottom;
    bool last = i + 1 == s->soil_count;
    if (last && lw_given(bottom)) {
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, bottom,
                        "no bottom for the last soil: it goes on downwards");
    } else if (!last && !lw_given(bottom)) {
      lw_complete_missing(s, bottom, NULL, "the depth of this layer's bottom below the top of the wall");
    } else if (!last && bottom->si <= above) {
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, bottom, "a depth below %s, where the layer begins",
                        lw_complete_exactly(s, LW_KIND_LENGTH, above, "m").text);
    }
    above = lw_given(bottom) ? bottom->si : above;
  }
}

/* Soils are numbered from 1 without a gap; one of them at least there is. */
static bool count_soils(lw_completing *s) {
  int gap = -1;
  s->soil_count = 1;
  for (int i = 0; i < LW_SOIL_MAX; i++) {
    bool given = soil_given(&s->c->ground.soil[i]);
    if (given && gap >= 0) {
      lw_complete_fault(s, LW_FAULT_GAP_IN_NUMBERING, place_of_soil(&s->c->ground.soil[i]), "soil %d first",
                        gap + 1);
      return false;
    }
    gap = given || gap >= 0 ? gap : i;
    s->soil_count = given ? i + 1 : s->soil_count;
  }
  return true;
}

void lw_complete_soils(lw_completing *s) {
  bool numbered = count_soils(s);
  for (int i = 0; i < s->soil_count; i++) {
    complete_soil(s, &s->c->ground.soil[i]);
    complete_bed_soil(s, &s->c->ground.soil[i]);
  }
  if (numbered) {
    hold_bottoms(s);
  }
  complete_footing(s);
}
