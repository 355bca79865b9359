/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The tables of what ground, blocks, loads and plant are like, and how books compute. */
#include "shape.h"

#define LIGHT 0.0  /* [kN/m3] no unit weight is negative */
#define HEAVY 40.0 /* [kN/m3] heavier than any stone: a slip of units */

static const lw_column soil_columns[] = {
    LW_TEXT("name", lw_soil_row, name),
    LW_TEXT_MAYBE("aliases", lw_soil_row, aliases),
    LW_WORD("use", lw_soil_row, use, "good|filter|refused|weight only|bed|bed top"),
    LW_YES_NO("free_draining", lw_soil_row, free_draining),
    LW_YES_NO("never_swells", lw_soil_row, never_swells),
    LW_YES_NO("clay", lw_soil_row, clay),
    LW_NUMBER_MAYBE("friction_angle [deg]", lw_soil_row, friction_rad, LW_DEGREE, 0, 60),
    LW_NUMBER_MAYBE("friction_angle_typical [deg]", lw_soil_row, friction_typical_rad, LW_DEGREE, 0, 60),
    LW_NUMBER("unit_weight [kN/m3]", lw_soil_row, unit_weight_kn_per_m3, 1, LIGHT, HEAVY),
    LW_NUMBER("light_unit_weight [kN/m3]", lw_soil_row, light_unit_weight_kn_per_m3, 1, LIGHT, HEAVY),
    LW_NUMBER("unit_weight_typical [kN/m3]", lw_soil_row, unit_weight_typical_kn_per_m3, 1, LIGHT, HEAVY),
    LW_NUMBER("saturated_unit_weight [kN/m3]", lw_soil_row, saturated_unit_weight_kn_per_m3, 1, LIGHT, HEAVY),
    LW_NUMBER_MAYBE("allowable_bearing [kPa]", lw_soil_row, allowable_bearing_kpa, 1, 0, 20000),
    LW_NUMBER_MAYBE("ribbon_from [mm]", lw_soil_row, ribbon_from_m, LW_MM, 0, 1000),
    LW_NUMBER_MAYBE("ribbon_to [mm]", lw_soil_row, ribbon_to_m, LW_MM, 0, 1000),
    LW_NUMBER_MAYBE("heap_from [deg]", lw_soil_row, heap_from_rad, LW_DEGREE, 0, 60),
    LW_NUMBER_MAYBE("heap_to [deg]", lw_soil_row, heap_to_rad, LW_DEGREE, 0, 60),
    LW_SAID_MAYBE("note", lw_soil_row, note),
    LW_NUMBER("drainable_porosity", lw_soil_row, drainable_porosity, 1, 0.001, 1),
    LW_TEXT("porosity_source", lw_soil_row, porosity_from.source),
    LW_WORD("porosity_seen", lw_soil_row, porosity_from.seen, LW_SEEN_WORDS),
    LW_NUMBER("permeability [m/s]", lw_soil_row, permeability_m_per_s, 1, 1e-12, 1),
    LW_TEXT("permeability_source", lw_soil_row, permeability_from.source),
    LW_WORD("permeability_seen", lw_soil_row, permeability_from.seen, LW_SEEN_WORDS),
    LW_TEXT("weight_source", lw_soil_row, weight_from.source),
    LW_WORD("weight_seen", lw_soil_row, weight_from.seen, LW_SEEN_WORDS),
    LW_TEXT("bearing_source", lw_soil_row, bearing_from.source),
    LW_WORD("bearing_seen", lw_soil_row, bearing_from.seen, LW_SEEN_WORDS),
    LW_NUMBER_MAYBE("code_fluid [kN/m3]", lw_soil_row, code_fluid_kn_per_m3, 1, 1, HEAVY),
    LW_TEXT_MAYBE("fluid_source", lw_soil_row, fluid_from.source),
    LW_WORD_MAYBE("fluid_seen", lw_soil_row, fluid_from.seen, LW_SEEN_WORDS),
    LW_NUMBER_MAYBE("critical_angle [deg]", lw_soil_row, critical_rad, LW_DEGREE, 0, 60),
    LW_TEXT_MAYBE("critical_source", lw_soil_row, critical_from.source),
    LW_WORD_MAYBE("critical_seen", lw_soil_row, critical_from.seen, LW_SEEN_WORDS),
    LW_NUMBER_MAYBE("undrained_strength [kPa]", lw_soil_row, undrained_kpa, 1, 0, 1000),
    LW_TEXT_MAYBE("undrained_source", lw_soil_row, undrained_from.source),
    LW_WORD_MAYBE("undrained_seen", lw_soil_row, undrained_from.seen, LW_SEEN_WORDS),
    LW_NUMBER_MAYBE("paired_cohesion [kPa]", lw_soil_row, paired_cohesion_kpa, 1, 0, 200),
    LW_TEXT_MAYBE("paired_source", lw_soil_row, paired_from.source),
    LW_WORD_MAYBE("paired_seen", lw_soil_row, paired_from.seen, LW_SEEN_WORDS),
    LW_FROM(lw_soil_row, from),
};

static const lw_column interface_columns[] = {
    LW_TEXT("name", lw_interface_row, name),
    LW_TEXT("use", lw_interface_row, use),
    LW_TEXT("nature", lw_interface_row, nature),
    LW_NUMBER_MAYBE("friction_low", lw_interface_row, friction_low, 1, 0, 2),
    LW_NUMBER_MAYBE("friction_high", lw_interface_row, friction_high, 1, 0, 2),
    LW_NUMBER_MAYBE("friction_likely", lw_interface_row, friction_likely, 1, 0, 2),
    LW_NUMBER_MAYBE("angle_low [deg]", lw_interface_row, angle_low_rad, LW_DEGREE, 0, 60),
    LW_NUMBER_MAYBE("angle_high [deg]", lw_interface_row, angle_high_rad, LW_DEGREE, 0, 60),
    LW_NUMBER_MAYBE("share_of_friction_angle", lw_interface_row, share_of_friction_angle, 1, 0, 1),
    LW_NUMBER_MAYBE("share_of_tan_friction", lw_interface_row, share_of_tan_friction, 1, 0, 1),
    LW_SAID_MAYBE("note", lw_interface_row, note),
    LW_FROM(lw_interface_row, from),
};

static const lw_column material_columns[] = {
    LW_TEXT("name", lw_material_row, name),
    LW_TEXT_MAYBE("aliases", lw_material_row, aliases),
    LW_NUMBER("unit_weight_low [kN/m3]", lw_material_row, unit_weight_low_kn_per_m3, 1, LIGHT, HEAVY),
    LW_NUMBER("unit_weight_high [kN/m3]", lw_material_row, unit_weight_high_kn_per_m3, 1, LIGHT, HEAVY),
    LW_NUMBER_MAYBE("unit_weight_likely [kN/m3]", lw_material_row, unit_weight_likely_kn_per_m3, 1, LIGHT,
                    HEAVY),
    LW_TEXT_MAYBE("note", lw_material_row, note),
    LW_FROM(lw_material_row, from),
};

static const lw_column load_columns[] = {
    LW_TEXT("slug", lw_load_row, slug),
    LW_TEXT("name", lw_load_row, name),
    LW_WORD("kind", lw_load_row, kind, "uniform|strip|line|point|cap|push"),
    LW_NUMBER("value", lw_load_row, value, 1, 0, 1000),
    LW_TEXT("unit", lw_load_row, unit),
    LW_NUMBER_MAYBE("push [kN/m]", lw_load_row, push_kn_per_m, 1, 0, 100),
    LW_NUMBER_MAYBE("width [m]", lw_load_row, width_m, 1, 0, 100),
    LW_TEXT_MAYBE("note", lw_load_row, note),
    LW_FROM(lw_load_row, from),
};

static const lw_column bearing_columns[] = {
    LW_TEXT("name", lw_bearing_row, name),
    LW_NUMBER_MAYBE("allowable [kPa]", lw_bearing_row, allowable_kpa, 1, 0, 20000),
    LW_TEXT_MAYBE("note", lw_bearing_row, note),
    LW_FROM(lw_bearing_row, from),
};

static const lw_column plant_columns[] = {
    LW_TEXT("name", lw_plant_row, name),
    LW_TEXT_MAYBE("aliases", lw_plant_row, aliases),
    LW_NUMBER("mass [kg]", lw_plant_row, mass_kg, 1, 0, 50000),
    LW_NUMBER("force [kN]", lw_plant_row, force_kn, 1, 0, 1000),
    LW_NUMBER("width [mm]", lw_plant_row, width_m, LW_MM, 10, 10000),
    LW_NUMBER("layer [mm]", lw_plant_row, layer_m, LW_MM, 10, 1000),
    LW_TEXT_MAYBE("note", lw_plant_row, note),
    LW_FROM(lw_plant_row, from),
};

static const lw_column conventions_columns[] = {
    LW_TEXT("name", lw_conventions_row, name),
    LW_TEXT("items", lw_conventions_row, items),
    LW_TEXT_MAYBE("note", lw_conventions_row, note),
    LW_FROM(lw_conventions_row, from),
};

const lw_shape lw_ground_shapes[] = {
    LW_SHAPE("soils", soil_columns, 1, lw_soil_row, soil, soil_count),
    LW_SHAPE("interfaces", interface_columns, 1, lw_interface_row, interface_, interface_count),
    LW_SHAPE("materials", material_columns, 1, lw_material_row, material, material_count),
    LW_SHAPE("loads", load_columns, 1, lw_load_row, load, load_count),
    LW_SHAPE("bearing", bearing_columns, 1, lw_bearing_row, bearing, bearing_count),
    LW_SHAPE("plant", plant_columns, 1, lw_plant_row, plant, plant_count),
    LW_SHAPE("conventions", conventions_columns, 1, lw_conventions_row, conventions, conventions_count),
};

const size_t lw_ground_shape_count = sizeof(lw_ground_shapes) / sizeof(lw_ground_shapes[0]);
