/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_H
#define LOWWALL_TABLES_H

#include <lowwall/rows.h>

LW_PUBLIC_BEGIN

/* Published values, read once and passed in. Each row keeps its source and whether it was read in a
 * public copy (seen) or is from memory. A missing number is NAN inside the tables, and only there. */

typedef enum lw_backfill_use {
  LW_BACKFILL_GOOD,
  LW_BACKFILL_FILTER, /* only behind clean stone with a filter */
  LW_BACKFILL_REFUSED,
  LW_BACKFILL_WEIGHT_ONLY,
  LW_BACKFILL_BED,    /* plant soil: inside a bed, up to a height */
  LW_BACKFILL_BED_TOP /* likewise, and only the top of it: it rots and drops */
} lw_backfill_use;

/* tables/soils.csv: a soil by name, by plain words or by what the hand test showed. */
typedef struct lw_soil_row {
  char name[LW_NAME_MAX];       /* "silty sand" */
  char aliases[LW_ALIASES_MAX]; /* "sandy loam|ribbon 15-20|..." */
  double friction_rad;          /* cautious end: the design value; NAN when none may be given */
  double friction_typical_rad;  /* what is usually there: of the likely look; NAN: as the cautious end */
  double critical_rad;          /* at constant volume, under a base that slides; NAN: not known */
  double undrained_kpa;         /* cu of clay, the low end of its class; NAN: no clay */
  double paired_cohesion_kpa;   /* that its low angle is one of a pair with; NAN: none, or it may be soft */
  double unit_weight_kn_per_m3; /* moist, heavy end: it pushes */
  double light_unit_weight_kn_per_m3;   /* moist, light end: where its weight helps */
  double unit_weight_typical_kn_per_m3; /* between them: of the likely look, where it pushes and helps */
  double saturated_unit_weight_kn_per_m3;
  double allowable_bearing_kpa; /* cautious presumptive value for this ground; NAN when none */
  lw_backfill_use use;
  bool free_draining;
  bool never_swells;           /* sand and gravel: whether the ground is reactive need not be asked */
  double code_fluid_kn_per_m3; /* equivalent fluid that a code pushes with, level ground; NAN: it has none */
  bool clay; /* that stands by itself for a while and shrinks: no friction is counted along it */
  /* ribbon lengths that mean this soil: from included, to not; NAN: none, no end */
  double ribbon_from_m, ribbon_to_m;
  /* angle of a poured heap of dry grains, likewise: a floor of the friction angle */
  double heap_from_rad, heap_to_rad;
  double drainable_porosity;    /* share of its volume that rain fills: the low end */
  double permeability_m_per_s;  /* as rain soaks into it */
  char note[LW_NOTE_MAX];       /* when refused: why and what to do */
  lw_origin_note porosity_from; /* of the drainable porosity */
  lw_origin_note permeability_from;
  lw_origin_note weight_from;  /* of the unit weights */
  lw_origin_note bearing_from; /* of the presumptive bearing value, or of refusing one */
  lw_origin_note fluid_from;   /* of the equivalent fluid, where there is one */
  lw_origin_note critical_from, undrained_from, paired_from; /* where there is one */
  lw_origin_note from;                                       /* of the friction angle, or of refusing one */
} lw_soil_row;

/* tables/interfaces.csv: friction of wall on soil, base on ground, block on block. */
typedef struct lw_interface_row {
  char name[LW_NAME_MAX];
  char use[16];                       /* base · wall · joint · geotextile */
  double friction_low, friction_high; /* tan of the angle, ultimate; NAN when given as a share */
  double friction_likely; /* of a default, as tan or as share: what is usually there; NAN otherwise */
  double angle_low_rad, angle_high_rad; /* the same as angles, where the source prints them; NAN otherwise */
  double share_of_friction_angle;       /* of the soil's angle; NAN when given otherwise */
  double share_of_tan_friction;         /* of the tangent of the soil's angle; NAN when given otherwise */
  /* ultimate · allowable · characteristic · design · nominal · test · default */
  char nature[16];
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_interface_row;

typedef struct lw_material_row {
  char name[LW_NAME_MAX], aliases[LW_ALIASES_MAX];
  double unit_weight_low_kn_per_m3, unit_weight_high_kn_per_m3;
  double unit_weight_likely_kn_per_m3; /* of the likely look; NAN where nothing takes it */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_material_row;

/* tables/loads.csv: `slug` is what code and sheet ask for. */
/* push: outward at the cap. */
typedef enum lw_load_row_kind {
  LW_LOAD_ROW_UNIFORM,
  LW_LOAD_ROW_STRIP,
  LW_LOAD_ROW_LINE,
  LW_LOAD_ROW_POINT,
  LW_LOAD_ROW_CAP,
  LW_LOAD_ROW_PUSH
} lw_load_row_kind;

typedef struct lw_load_row {
  /* garden · vehicle · people-sitting-down · people-sitting-out · people-leaning ... */
  char slug[LW_NAME_MAX];
  char name[LW_NAME_MAX];
  lw_load_row_kind kind;
  double value;         /* in `unit`, SI */
  char unit[8];         /* kPa · kPa/m, times a height · kN/m · kN */
  double push_kn_per_m; /* of a cap load, outward; NAN: none */
  double width_m;       /* of a strip; NAN: not known */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_load_row;

typedef struct lw_bearing_row {
  char name[LW_NAME_MAX];
  double allowable_kpa; /* NAN: refused */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_bearing_row;

/* tables/plant.csv: what compacts or drives behind a wall while it is built, by general class. */
typedef struct lw_plant_row {
  char name[LW_NAME_MAX], aliases[LW_ALIASES_MAX];
  double mass_kg;
  double force_kn; /* dynamic, on top of the weight; 0: it does not vibrate */
  double width_m;  /* of its contact, along the wall */
  double layer_m;  /* thickest loose layer it is used on */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_plant_row;

/* tables/conventions.csv: the method items that repeat a book, as a sheet has them, parted by semicolons. */
typedef struct lw_conventions_row {
  char name[LW_NAME_MAX], items[LW_NOTE_MAX], note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_conventions_row;

/* tables/formats.csv: a row a set and check; what `has` must reach in each kind of situation. */
typedef enum lw_situation_kind { LW_USUAL, LW_UNUSUAL, LW_EXTREME, LW_WHAT_IF } lw_situation_kind;

typedef struct lw_factor_row {
  char factor_set[LW_NAME_MAX]; /* slug: lowwall · ibc · navfac-dm7 · em-1110-2-2502 ... */
  char title[LW_SOURCE_MAX];    /* "USACE EM 1110-2-2502 (1989)" */
  /* sliding · slip · sliding-with-passive · overturning · compression · bearing-theory · bearing-presumptive:
   *   what `has` must reach
   * passive-as (0 a resistance, 1 off the push) · decides (0: never says that a wall holds)
   * friction (divides tan phi) · cohesion · sliding-resistance · slip-resistance · bearing-resistance ·
   *   passive-resistance: divide; with -times behind them they multiply
   * permanent- · wall-weight- · soil-weight- · earth-pressure- · water- · variable-, each -unfavourable and
   *   -favourable; at-rest-pressure-unfavourable, variable-on-wall-unfavourable: multiply what acts
   * includes-NAME: the set NAME must hold as well */
  char quantity[LW_NAME_MAX];
  double needs[3];       /* by lw_situation_kind; NAN: this set says nothing */
  lw_seen needs_seen[3]; /* of each number; means nothing where the number is missing */
  char clause[LW_NAME_MAX];
  char note[LW_NOTE_MAX];
  lw_origin_note from;
  /* Not in the file: read once, so that a wall need not compare names. */
  short need;     /* which quantity it is: lw_factor of src/tables/known.h */
  int set, next;  /* the first and the next row of the same set; -1: no next */
  int includes;   /* the first row of the set taken in; -1: none, or it has no row */
  bool taken_in;  /* another set takes this one's set in */
  double reserve; /* what may be allowed breaks the ground this many times over; 1: it holds none */
} lw_factor_row;

enum { LW_FORMAT_PARTS_MAX = 5 }; /* how many sets a set may take in */

/* tables/limits.csv: what the law of a place says about height. */
typedef enum lw_trigger {
  LW_EXEMPT_BELOW,
  LW_APPROVAL_ABOVE,
  LW_ENGINEER_ABOVE,
  LW_DESIGN_ABOVE,
  LW_BARRIER_ABOVE
} lw_trigger;
typedef enum lw_height_kind {
  LW_HEIGHT_TOTAL,
  LW_HEIGHT_EXPOSED,
  LW_HEIGHT_RETAINED,
  LW_HEIGHT_NATURAL,
  LW_HEIGHT_FENCE,
  LW_HEIGHT_GREATEST,
  LW_HEIGHT_KINDS
} lw_height_kind;

typedef struct lw_limit_row {
  char id[24];
  /* slug of the place: "new-south-wales"; "default" for the conservative default */
  char place[64];
  char aliases[LW_ALIASES_MAX]; /* other names of the place, "|"-separated, on its first row */
  char within[64];              /* slugs of the places around it, "|"-separated: their rows apply too */
  bool clears_within;           /* it is law there too, so that it may clear a wall in a place within */
  char country[32], region[64];
  char instrument[LW_SOURCE_MAX];
  lw_trigger trigger;
  double height_m;
  bool at_or_above;          /* ge / lt rows: the figure itself already triggers */
  lw_height_kind measured;   /* LW_HEIGHT_GREATEST when the text does not say: the largest is used */
  char datum[LW_SOURCE_MAX]; /* how the text measures, in words */
  char conditions[640];      /* in our words */
  double min_boundary_m, min_boundary_per_height, min_building_m, min_building_per_height;
  double min_other_wall_m, min_other_wall_per_height, min_service_m, min_waterbody_m, min_public_way_m,
      surcharge_zone_m;
  double surcharge_zone_per_height; /* a load nearer than this many wall heights counts as one */
  bool cut_only;                    /* of a natural height only the cut counts, not the fill */
  bool tiers_add;                   /* tiers always count as one wall */
  bool upper_shorter;               /* and so do two of which the upper is not the shorter */
  double tier_spacing_m, tier_spacing_per_height; /* tiers nearer than this count as one wall */
  double boundary_within_m; /* the row is only about walls this near to a boundary; NAN: anywhere */
  double street_within_m;   /* the row is only about walls this near to a street; NAN: anywhere */
  /* building · planning · highway · design · warranty · safety ...: each must pass */
  char regime[32];
  /* slugs that narrow the row, "|"-separated: "next-to-highway"; "" applies always */
  char only_if[LW_ALIASES_MAX];
  char any_height_if[LW_ALIASES_MAX]; /* likewise what makes it ask whatever the height; "": nothing does */
  bool with_engineer;                 /* what it asks for comes with an engineer's certificate */
  bool all_read;                      /* all that its words ask for stands in columns */
  bool superseded;                    /* a later text stands in its place: it clears no wall */
  char confidence[8];                 /* high · medium · low: how sure it is that the text says this */
  bool no_surcharge;                  /* any load behind ends the exemption */
  bool fence_counts;                  /* the row is about wall plus fence */
  /* cut or fill depth, change of level and the like: shown, compared with that height */
  bool not_a_wall_height;
  char as_of[48];  /* date or edition of the text */
  char read[8];    /* the month in which it was read, "2019-08"; "": not on file */
  char status[16]; /* where it was seen: law · authority · second-hand · memory · own */
  lw_origin_note from;
  /* Found when the tables are read: the index of the first row of its place, and of the places around it;
   * only_if as bits, 1u << lw_only_if each; and what its words say. */
  int place_row, around_count, around[LW_AROUND_MAX];
  unsigned narrows, any_height;
  bool of_default, unsure, of_standard;
  bool of_the_wall; /* for certain about its height: no fence, fall, dig, street */
  bool clears;      /* and a wall below it may be left to the builder */
  bool keeps_off;   /* it asks for a distance, or for no load */
} lw_limit_row;

/* tables/hazards.csv */
typedef struct lw_hazard_row {
  char id[8];
  char phase[8]; /* design · build · use */
  char hazard[LW_SOURCE_MAX];
  char caution[LW_NOTE_MAX];
  char number[LW_SOURCE_MAX];
  int severity;   /* 1 to 5 */
  char names[16]; /* what it names that no report leaves out: service · collapse · fall; "": none of them */
  /* cue slugs, any of which brings it up: "always|digging|load-behind|..." */
  char when[LW_ALIASES_MAX];
  lw_origin_note from;
  unsigned cues; /* the same, 1u << lw_cue each; found when the tables are read */
} lw_hazard_row;

/* tables/conditions.csv: what sends a wall to an engineer or the council whatever its height. */
typedef struct lw_condition_row {
  char slug[LW_NAME_MAX];     /* supports-building · vehicle-load · water-held · ... */
  char sentence[LW_NOTE_MAX]; /* the reason, in plain words */
  char who[16];               /* engineer · council · builder: it is said, and calls nobody */
  char basis;                 /* 'L' from a law or an authority, 'J' a judgement of this project */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
  bool for_engineer, for_council; /* what `who` says; found when the tables are read */
} lw_condition_row;

/* tables/clearances.csv: distances to keep, and heights of fall, where the place is not known. */
typedef enum lw_height_of { LW_OF_GREATEST, LW_OF_LOWER_WALL, LW_OF_TOTAL } lw_height_of;

typedef struct lw_clearance_row {
  /* boundary · building · other-wall · load · service · waterbody · public-way · fall · ... */
  char slug[LW_NAME_MAX];
  char name[LW_NOTE_MAX]; /* to what, in plain words */
  double at_least_m;      /* the larger of this ... */
  double per_height;      /* ... and this many heights; NAN: only the distance */
  /* which height: greatest · lower-wall · total; "" when per_height is NAN */
  char height_of[16];
  char note[LW_NOTE_MAX];
  lw_origin_note from;
  lw_height_of of; /* what height_of says; found when the tables are read */
} lw_clearance_row;

/* tables/thresholds.csv, the figures between one word and another, mostly proposals of this project; and
 * tables/fences.csv. */
typedef struct lw_threshold_row {
  /* level-ground · level-difference · bed-slope · stone-width · lean-height · lift-mass ... */
  char slug[LW_NAME_MAX], name[LW_NOTE_MAX];
  double value; /* in `unit`, SI; slopes are rise over run */
  char unit[8]; /* m · kg · "" */
  char note[LW_NOTE_MAX];
  lw_origin_note from;
} lw_threshold_row;

/* tables/ordering.csv: allowances, loose volumes, densities: what an order needs beyond the wall itself. A
 * row with the name of an item of the sheet is what that item is when it is left out. */
typedef lw_threshold_row lw_ordering_row; /* slug: block-allowance · settlement ... */

/* One name of any list and its row, for finding it by a hash. */
typedef struct lw_name_slot {
  bool taken;
  short list, row;
} lw_name_slot;

/* clang-format off */
typedef struct lw_tables {
  int soil_count;      lw_soil_row soil[LW_SOIL_ROWS];
  int interface_count; lw_interface_row interface_[LW_INTERFACE_ROWS];
  int material_count;  lw_material_row material[LW_MATERIAL_ROWS];
  int load_count;      lw_load_row load[LW_LOAD_ROWS];
  int bearing_count;   lw_bearing_row bearing[LW_BEARING_ROWS];
  int plant_count;     lw_plant_row plant[LW_PLANT_ROWS];
  int conventions_count; lw_conventions_row conventions[LW_CONVENTIONS_ROWS];
  int factor_count;    lw_factor_row factor[LW_FACTOR_ROWS];
  int limit_count;     lw_limit_row limit[LW_LIMIT_ROWS];
  int hazard_count;    lw_hazard_row hazard[LW_HAZARD_ROWS];
  int condition_count; lw_condition_row condition[LW_CONDITION_ROWS];
  int clearance_count; lw_clearance_row clearance[LW_CLEARANCE_ROWS];
  int threshold_count; lw_threshold_row threshold[LW_THRESHOLD_ROWS];
  int fence_count;     lw_threshold_row fence[LW_FENCE_ROWS];
  int ordering_count;  lw_ordering_row ordering[LW_ORDERING_ROWS];
  int question_count;  lw_question_row question[LW_QUESTION_ROWS];
  int choice_count;    lw_choice_row choice[LW_CHOICE_ROWS];
  short limit_place[LW_LIMIT_ROWS];    /* place_row of each limit, side by side: see lw_places */
  short known[LW_KNOWN_MAX];           /* the rows that code asks for; -1: it is gone */
  lw_name_slot slot[LW_NAME_SLOTS];
  /* Those that are not the built-in ones: "limits.csv (1 row changed, hash 1f00c0de)"; "": all are */
  char replaced[LW_REPLACED_MAX];
} lw_tables;
/* clang-format on */

/** Read the tables.
 *  in    directory   NULL: those built into the library. Otherwise each CSV file found there replaces its
 *                    built-in one whole and the others stay; a file that is no table of ours is a fault
 *  out   tables      unchanged on failure
 *        error       may be NULL; on LW_FAULTS its text names file, row, column, what stood there, the cure
 *  gives LW_OK · LW_NOT_READ · LW_TOO_MANY · LW_NO_MEMORY · LW_FAULTS
 *  note  lw_tables is some 1.5 MB of plain values: keep it static or on the heap, not on a small stack. */
lw_status lw_tables_read(const char *directory, lw_tables *tables, lw_error *error);

/** The CSV text of one table in effect, as it stands in its file.
 *  in    directory   as for lw_tables_read
 *        name        "soils" · "limits" · ...: see lw_tables_name_at
 *  out   text        appended to
 *  gives LW_OK · LW_NOT_READ · LW_TOO_MANY · LW_NO_MEMORY · LW_NO_SOLUTION when there is no such table */
lw_status lw_tables_csv(const char *directory, const char *name, lw_text *text, lw_error *error);

/** The name of the i-th table ("soils"), or NULL past the last: to list them. */
const char *lw_tables_name_at(size_t index);

/* Look-ups; a name matches its row's name, slug or one of its aliases; case, hyphens, underscores and
 * extra blanks are folded. NULL: none. */

/** A soil by name, alias or hand test. Besides the names: "ribbon 25", "ribbon 25 mm", "ribbon 10-20" (length
 *  of the ribbon, mm when no unit stands there; of a range the least favourable row) and "heap 34 deg" (the
 *  angle of a poured heap of dry grains, a floor of the friction angle; deg when no unit stands there).
 *  gives the row, or NULL: no such soil, or the test result says nothing */
const lw_soil_row *lw_tables_soil(const lw_tables *tables, const char *name);
const lw_load_row *lw_tables_load(const lw_tables *tables, const char *slug);
const lw_material_row *lw_tables_material(const lw_tables *tables, const char *name);
const lw_plant_row *lw_tables_plant(const lw_tables *tables, const char *name);
const lw_conventions_row *lw_tables_conventions(const lw_tables *tables, const char *name);
const lw_interface_row *lw_tables_interface(const lw_tables *tables, const char *name);
const lw_factor_row *lw_tables_factor(const lw_tables *tables, const char *set, const char *quantity);
const lw_condition_row *lw_tables_condition(const lw_tables *tables, const char *slug);
const lw_clearance_row *lw_tables_clearance(const lw_tables *tables, const char *slug);
const lw_threshold_row *lw_tables_threshold(const lw_tables *tables, const char *slug);
const lw_threshold_row *lw_tables_fence(const lw_tables *tables, const char *slug);
const lw_ordering_row *lw_tables_ordering(const lw_tables *tables, const char *slug);
bool lw_tables_has_factor_set(const lw_tables *tables, const char *set);
bool lw_tables_has_place(const lw_tables *tables, const char *place);

/** The slug of a place given by slug or by another of its names ("NSW"), or NULL. */
const char *lw_tables_place(const lw_tables *tables, const char *place);

/** "seen", "memory", "derived", "proposal" or "practice". */
const char *lw_seen_word(lw_seen seen);

LW_PUBLIC_END

#endif
