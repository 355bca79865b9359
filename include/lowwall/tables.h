/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_H
#define LOWWALL_TABLES_H

#include <lowwall/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Published values, read once and passed in. Each row keeps its source and whether it was read in a
 * public copy (seen) or is from memory. A missing number is NAN inside the tables, and only there. */

enum {
  LW_NAME_MAX = 48, LW_ALIASES_MAX = 160, LW_SOURCE_MAX = 160, LW_NOTE_MAX = 320,
  LW_SOIL_ROWS = 32, LW_INTERFACE_ROWS = 48, LW_MATERIAL_ROWS = 48, LW_LOAD_ROWS = 48,
  LW_BEARING_ROWS = 64, LW_FORMAT_ROWS = 96, LW_LIMIT_ROWS = 160, LW_HAZARD_ROWS = 80
};

typedef enum lw_seen { LW_SEEN, LW_MEMORY, LW_DERIVED, LW_PROPOSAL, LW_PRACTICE } lw_seen;

typedef struct lw_origin_note {
  char source[LW_SOURCE_MAX];  /* "[KEY locator]" or "common practice, no source" */
  lw_seen seen;
} lw_origin_note;

typedef enum lw_backfill_use { LW_BACKFILL_GOOD, LW_BACKFILL_FILTER, LW_BACKFILL_REFUSED, LW_BACKFILL_WEIGHT_ONLY } lw_backfill_use;

/* tables/soils.csv: a soil by name, by plain words or by what the hand test showed. */
typedef struct lw_soil_row {
  char name[LW_NAME_MAX];          /* "silty sand" */
  char aliases[LW_ALIASES_MAX];    /* "sandy loam|ribbon 15-20|..." */
  double friction_rad;             /* cautious end: the design value; NAN when none may be given */
  double friction_typical_rad;     /* information only */
  double unit_weight_kn_per_m3;        /* moist, heavy end: it pushes */
  double light_unit_weight_kn_per_m3;  /* moist, light end: where its weight helps */
  double saturated_unit_weight_kn_per_m3;
  double allowable_bearing_kpa;    /* cautious presumptive value for this ground; NAN when none */
  lw_backfill_use use;
  bool free_draining;
  char note[LW_NOTE_MAX];          /* when refused: why and what to do */
  lw_origin_note from;             /* of the friction angle */
} lw_soil_row;

/* tables/interfaces.csv: friction of wall on soil, base on ground, block on block. */
typedef struct lw_interface_row {
  char name[LW_NAME_MAX];
  char use[16];                    /* base · wall · joint · geotextile */
  double friction_low, friction_high;  /* tan of the angle, ultimate; NAN when given as a share */
  double share_of_friction_angle;      /* NAN when given as a coefficient */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_interface_row;

typedef struct lw_material_row {
  char name[LW_NAME_MAX];
  char aliases[LW_ALIASES_MAX];
  double unit_weight_low_kn_per_m3, unit_weight_high_kn_per_m3;
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_material_row;

/* tables/loads.csv: `slug` is what code and sheet ask for. */
typedef struct lw_load_row {
  char slug[LW_NAME_MAX];          /* garden · vehicle · people-sitting-down · people-sitting-out · people-leaning ... */
  char name[LW_NAME_MAX];
  double value;                    /* in `unit`, SI */
  char unit[8];                    /* kPa · kN/m · kN */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_load_row;

typedef struct lw_bearing_row {
  char name[LW_NAME_MAX];
  double allowable_kpa;            /* NAN: refused */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_bearing_row;

/* tables/formats.csv: one row a format and check; what `has` must reach in each kind of situation. */
typedef enum lw_situation_kind { LW_USUAL, LW_UNUSUAL, LW_EXTREME, LW_WHAT_IF } lw_situation_kind;

typedef struct lw_format_row {
  char format[LW_NAME_MAX];        /* slug: lowwall · ibc · navfac-dm7 · em-1110-2-2502 ... */
  char title[LW_SOURCE_MAX];       /* "USACE EM 1110-2-2502 (1989)" */
  char quantity[LW_NAME_MAX];      /* sliding · sliding-with-passive · overturning · compression · bearing-theory ·
                                      bearing-presumptive · friction (divides tan phi) · cohesion · passive-as ... */
  double needs[3];                 /* by lw_situation_kind; NAN: this format says nothing */
  char clause[LW_NAME_MAX];
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_format_row;

/* tables/limits.csv: what the law of a place says about height. */
typedef enum lw_trigger { LW_EXEMPT_BELOW, LW_APPROVAL_ABOVE, LW_ENGINEER_ABOVE, LW_DESIGN_ABOVE, LW_BARRIER_ABOVE } lw_trigger;
typedef enum lw_height_kind { LW_HEIGHT_TOTAL, LW_HEIGHT_EXPOSED, LW_HEIGHT_RETAINED, LW_HEIGHT_NATURAL, LW_HEIGHT_FENCE,
                              LW_HEIGHT_GREATEST, LW_HEIGHT_KINDS } lw_height_kind;

typedef struct lw_limit_row {
  char id[24];
  char place[64];                  /* slug of the place: "new-south-wales"; "default" for the conservative default */
  char country[32], region[64];
  char instrument[LW_SOURCE_MAX];
  lw_trigger trigger;
  double height_m;
  bool at_or_above;                /* ge / lt rows: the figure itself already triggers */
  lw_height_kind measured;         /* LW_HEIGHT_GREATEST when the text does not say: the largest is used */
  char datum[LW_SOURCE_MAX];       /* how the text measures, in words */
  char conditions[640];            /* in our words */
  double min_boundary_m, min_boundary_per_height, min_building_m, min_building_per_height;
  double min_other_wall_m, min_other_wall_per_height, min_service_m, min_waterbody_m, surcharge_zone_m;
  bool no_surcharge;               /* any load behind ends the exemption */
  bool fence_counts;               /* the row is about wall plus fence */
  bool not_a_wall_height;          /* cut or fill depth, change of level and the like: shown, compared with that height */
  char as_of[48];
  lw_origin_note from;
} lw_limit_row;

/* tables/hazards.csv */
typedef struct lw_hazard_row {
  char id[8];
  char phase[8];                   /* design · build · use */
  char hazard[LW_SOURCE_MAX];
  char caution[LW_NOTE_MAX];
  char number[LW_SOURCE_MAX];
  int severity;                    /* 1 to 5 */
  char when[LW_ALIASES_MAX];       /* cue slugs, any of which brings it up: "always|digging|load-behind|..." */
  lw_origin_note from;
} lw_hazard_row;

typedef struct lw_tables {
  int soil_count;      lw_soil_row soil[LW_SOIL_ROWS];
  int interface_count; lw_interface_row interface_[LW_INTERFACE_ROWS];
  int material_count;  lw_material_row material[LW_MATERIAL_ROWS];
  int load_count;      lw_load_row load[LW_LOAD_ROWS];
  int bearing_count;   lw_bearing_row bearing[LW_BEARING_ROWS];
  int format_count;    lw_format_row format[LW_FORMAT_ROWS];
  int limit_count;     lw_limit_row limit[LW_LIMIT_ROWS];
  int hazard_count;    lw_hazard_row hazard[LW_HAZARD_ROWS];
} lw_tables;

/** Read the tables. With directory NULL those built into the library; otherwise each CSV file found in
 *  directory replaces its built-in one, the others stay.
 *  gives LW_OK · LW_NOT_READ · LW_TOO_MANY · LW_FAULTS with file, row, column and cure in error->text */
lw_status lw_tables_read(const char *directory, lw_tables *tables, lw_error *error);

/* Look-ups; a name matches its row's name, slug or one of its aliases, case and blanks folded. NULL: none. */
const lw_soil_row *lw_tables_soil(const lw_tables *tables, const char *name);
const lw_load_row *lw_tables_load(const lw_tables *tables, const char *slug);
const lw_material_row *lw_tables_material(const lw_tables *tables, const char *name);
const lw_interface_row *lw_tables_interface(const lw_tables *tables, const char *name);
const lw_format_row *lw_tables_format(const lw_tables *tables, const char *format, const char *quantity);
bool lw_tables_has_format(const lw_tables *tables, const char *format);
bool lw_tables_has_place(const lw_tables *tables, const char *place);

/** The name in a list nearest to what stood there (edit distance), or NULL when nothing is near.
 *  list: "soils", "materials", "loads", "places", "formats" */
const char *lw_tables_nearest(const lw_tables *tables, const char *list, const char *stood);

#ifdef __cplusplus
}
#endif
#endif
