/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The tables of what is asked: factors, laws, cautions, distances. */
#include "known.h"
#include "shape.h"

#define FAR 1000.0 /* [m] no rule on file reaches further: a slip of units */
#define TALL 30.0  /* [m] likewise for heights */
#define MANY 20.0  /* factors and multiples of a height */

static const lw_column factor_columns[] = {
    LW_TEXT("format", lw_factor_row, factor_set),
    LW_TEXT("quantity", lw_factor_row, quantity),
    LW_TEXT("title", lw_factor_row, title),
    LW_NUMBER_MAYBE("usual", lw_factor_row, needs[LW_USUAL], 1, 0, MANY),
    LW_WORD_MAYBE("usual_seen", lw_factor_row, needs_seen[LW_USUAL], LW_SEEN_WORDS),
    LW_NUMBER_MAYBE("unusual", lw_factor_row, needs[LW_UNUSUAL], 1, 0, MANY),
    LW_WORD_MAYBE("unusual_seen", lw_factor_row, needs_seen[LW_UNUSUAL], LW_SEEN_WORDS),
    LW_NUMBER_MAYBE("extreme", lw_factor_row, needs[LW_EXTREME], 1, 0, MANY),
    LW_WORD_MAYBE("extreme_seen", lw_factor_row, needs_seen[LW_EXTREME], LW_SEEN_WORDS),
    LW_TEXT_MAYBE("clause", lw_factor_row, clause),
    LW_TEXT_MAYBE("note", lw_factor_row, note),
    LW_FROM(lw_factor_row, from),
};

#define LW_OR_SLUG(name, slug) "|" slug
/* What narrows a row, or makes it ask: that which no sheet answers, and that which one does. */
static const char CIRCUMSTANCES[] =
    "rural-zone|owner-builds|licensed-builder|building-control-area|in-setback|"
    "front-garden|part-of-a-building|"
    "near-building-access" LW_ONLY_IFS(LW_OR_SLUG);
#undef LW_OR_SLUG

static const lw_column limit_columns[] = {
    LW_TEXT("id", lw_limit_row, id),
    LW_TEXT("place", lw_limit_row, place),
    LW_TEXT_MAYBE("aliases", lw_limit_row, aliases),
    LW_TEXT_MAYBE("within", lw_limit_row, within),
    LW_YES_NO("clears_within", lw_limit_row, clears_within),
    LW_TEXT("country", lw_limit_row, country),
    LW_TEXT("region", lw_limit_row, region),
    LW_TEXT("instrument", lw_limit_row, instrument),
    LW_WORD("trigger", lw_limit_row, trigger,
            "exempt-below|approval-above|engineer-above|design-above|barrier-above"),
    LW_NUMBER("height [m]", lw_limit_row, height_m, 1, 0, TALL),
    /* le and gt: the figure itself is still within; lt and ge: it already counts. */
    {"comparison", LW_COLUMN_YES_NO, false, LW_AT(lw_limit_row, at_or_above), 0, 0, 0, "le|lt|gt|ge"},
    LW_WORD("measured", lw_limit_row, measured, "total|exposed|retained|natural|fence|greatest"),
    LW_TEXT("datum", lw_limit_row, datum),
    LW_SAID("conditions", lw_limit_row, conditions),
    LW_NUMBER_MAYBE("min_boundary [m]", lw_limit_row, min_boundary_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("min_boundary_per_height", lw_limit_row, min_boundary_per_height, 1, 0, MANY),
    LW_NUMBER_MAYBE("min_building [m]", lw_limit_row, min_building_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("min_building_per_height", lw_limit_row, min_building_per_height, 1, 0, MANY),
    LW_NUMBER_MAYBE("min_other_wall [m]", lw_limit_row, min_other_wall_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("min_other_wall_per_height", lw_limit_row, min_other_wall_per_height, 1, 0, MANY),
    LW_NUMBER_MAYBE("min_service [m]", lw_limit_row, min_service_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("min_waterbody [m]", lw_limit_row, min_waterbody_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("min_public_way [m]", lw_limit_row, min_public_way_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("surcharge_zone [m]", lw_limit_row, surcharge_zone_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("surcharge_zone_per_height", lw_limit_row, surcharge_zone_per_height, 1, 0, MANY),
    LW_YES_NO("no_surcharge", lw_limit_row, no_surcharge),
    LW_YES_NO("fence_counts", lw_limit_row, fence_counts),
    LW_YES_NO("not_a_wall_height", lw_limit_row, not_a_wall_height),
    LW_YES_NO("cut_only", lw_limit_row, cut_only),
    LW_YES_NO("tiers_add", lw_limit_row, tiers_add),
    LW_YES_NO("upper_shorter", lw_limit_row, upper_shorter),
    LW_NUMBER_MAYBE("tier_spacing [m]", lw_limit_row, tier_spacing_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("tier_spacing_per_height", lw_limit_row, tier_spacing_per_height, 1, 0, MANY),
    LW_NUMBER_MAYBE("street_within [m]", lw_limit_row, street_within_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("boundary_within [m]", lw_limit_row, boundary_within_m, 1, 0, FAR),
    LW_TEXT_OF("regime", lw_limit_row, regime, false,
               "building|planning|planning-and-building|building-and-siting|complying-development|highway|"
               "design|standard|warranty|safety|any"),
    LW_WORDS_MAYBE("only_if", lw_limit_row, only_if, CIRCUMSTANCES),
    LW_WORDS_MAYBE("any_height_if", lw_limit_row, any_height_if, CIRCUMSTANCES),
    LW_YES_NO("with_engineer", lw_limit_row, with_engineer),
    LW_YES_NO("all_read", lw_limit_row, all_read),
    LW_YES_NO("superseded", lw_limit_row, superseded),
    LW_TEXT("as_of", lw_limit_row, as_of),
    LW_TEXT_MAYBE("read", lw_limit_row, read),
    LW_TEXT_OF("status", lw_limit_row, status, false, "law|authority|second-hand|memory|own"),
    LW_TEXT_OF("confidence", lw_limit_row, confidence, false, "high|medium|low"),
    LW_FROM(lw_limit_row, from),
};

static const lw_column hazard_columns[] = {
    LW_TEXT("id", lw_hazard_row, id),
    LW_TEXT("phase", lw_hazard_row, phase),
    LW_SAID("hazard", lw_hazard_row, hazard),
    LW_SAID("caution", lw_hazard_row, caution),
    LW_SAID_MAYBE("number", lw_hazard_row, number),
    {"severity", LW_COLUMN_INTEGER, false, LW_AT(lw_hazard_row, severity), 1, 1, 5, NULL},
    LW_TEXT_OF("names", lw_hazard_row, names, true, "service|collapse|fall"),
    LW_TEXT("when", lw_hazard_row, when),
    LW_FROM(lw_hazard_row, from),
};

static const lw_column condition_columns[] = {
    LW_TEXT("slug", lw_condition_row, slug),
    LW_SAID("sentence", lw_condition_row, sentence),
    LW_TEXT_OF("who", lw_condition_row, who, false, "engineer|council|builder"),
    {"basis", LW_COLUMN_LETTER, false, LW_AT(lw_condition_row, basis), 0, 0, 0, "L|J"},
    LW_TEXT_MAYBE("note", lw_condition_row, note),
    LW_FROM(lw_condition_row, from),
};

static const lw_column clearance_columns[] = {
    LW_TEXT("slug", lw_clearance_row, slug),
    LW_TEXT("name", lw_clearance_row, name),
    LW_NUMBER("at_least [m]", lw_clearance_row, at_least_m, 1, 0, FAR),
    LW_NUMBER_MAYBE("per_height", lw_clearance_row, per_height, 1, 0, MANY),
    LW_TEXT_OF("height_of", lw_clearance_row, height_of, true, "greatest|lower-wall|total"),
    LW_TEXT_MAYBE("note", lw_clearance_row, note),
    LW_FROM(lw_clearance_row, from),
};

static const lw_column threshold_columns[] = {
    LW_TEXT("slug", lw_threshold_row, slug),
    LW_TEXT("name", lw_threshold_row, name),
    LW_NUMBER("value", lw_threshold_row, value, 1, 0, 5000),
    LW_TEXT_MAYBE("unit", lw_threshold_row, unit),
    LW_TEXT_MAYBE("note", lw_threshold_row, note),
    LW_FROM(lw_threshold_row, from),
};

static const lw_column fence_columns[] = {
    LW_TEXT("slug", lw_threshold_row, slug),
    LW_TEXT("name", lw_threshold_row, name),
    LW_NUMBER("value", lw_threshold_row, value, 1, 1e-3, 1e6),
    LW_TEXT_MAYBE("unit", lw_threshold_row, unit),
    LW_TEXT_MAYBE("note", lw_threshold_row, note),
    LW_FROM(lw_threshold_row, from),
};

static const lw_column ordering_columns[] = {
    LW_TEXT("slug", lw_ordering_row, slug),
    LW_TEXT("name", lw_ordering_row, name),
    LW_NUMBER("value", lw_ordering_row, value, 1, 0, 10000),
    LW_TEXT_MAYBE("unit", lw_ordering_row, unit),
    LW_TEXT_MAYBE("note", lw_ordering_row, note),
    LW_FROM(lw_ordering_row, from),
};

const lw_shape lw_law_shapes[] = {
    LW_SHAPE("formats", factor_columns, 2, lw_factor_row, factor, factor_count),
    LW_SHAPE("limits", limit_columns, 1, lw_limit_row, limit, limit_count),
    LW_SHAPE("hazards", hazard_columns, 1, lw_hazard_row, hazard, hazard_count),
    LW_SHAPE("conditions", condition_columns, 1, lw_condition_row, condition, condition_count),
    LW_SHAPE("clearances", clearance_columns, 1, lw_clearance_row, clearance, clearance_count),
    LW_SHAPE("thresholds", threshold_columns, 1, lw_threshold_row, threshold, threshold_count),
    LW_SHAPE("fences", fence_columns, 1, lw_threshold_row, fence, fence_count),
    LW_SHAPE("ordering", ordering_columns, 1, lw_ordering_row, ordering, ordering_count),
};

const size_t lw_law_shape_count = sizeof(lw_law_shapes) / sizeof(lw_law_shapes[0]);
