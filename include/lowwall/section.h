/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SECTION_H
#define LOWWALL_SECTION_H

#include <lowwall/case.h>
#include <lowwall/tables.h>

LW_PUBLIC_BEGIN

/* The wall's section: one metre run of it, cut across. x from the toe towards the retained soil, y up from
 * the base; the toe is the origin. A wall of courses is a stack of rectangles, any other wall a polygon. */

enum { LW_PART_MAX = LW_COURSE_MAX + 2, LW_OUTLINE_MAX = 4 * (LW_COURSE_MAX + 2) };

typedef enum lw_part_kind {
  LW_PART_COURSE,
  LW_PART_CAP,
  LW_PART_SLAB,
  LW_PART_FACE,
  LW_PART_STEM,
  LW_PART_BACK,
  LW_PART_POLYGON
} lw_part_kind;

typedef struct lw_corner { double x_m, y_m; } lw_corner;

typedef struct lw_part {
  lw_part_kind kind;
  int number;               /* of a course, from 1 at the bottom */
  double area_m2, x_m, y_m; /* centroid */
  double unit_weight_kn_per_m3, weight_kn_per_m;
  double front_m, rear_m, bottom_m, top_m;   /* its box */
} lw_part;

/* Share of the wall's run that blocks take up, from the front of a strip to its rear, on a straight line in
 * between: 1 and 1 is a full rectangle. */
typedef struct lw_taper {
  double front, rear;
} lw_taper;

typedef struct lw_section {
  double height_m;          /* base to top, cap included */
  lw_wall_kind kind;
  double embedment_m;       /* base below the ground in front, for levels and thrust */
  double bearing_embedment_m;  /* as given; 0 when assumed: what is not known does not help */
  double base_width_m;
  double back_foot_m;       /* x where the line of the back meets the level of the base */
  bool known;               /* false: block depth or base width is not given; nothing below is */
  double contact_front_m, contact_rear_m;    /* of the base, or of the joint under the lowest course */
  double tail_share;        /* of blocks that taper: length at the rear over that at the face; or 1 */
  bool tails_filled;        /* what stands between two tails is weighed with them */
  lw_taper contact;         /* from contact_front_m to contact_rear_m: what bears */
  lw_taper underside;       /* and what has an underside there, that water may push on */
  double shell_m;           /* hollow and unfilled: only the face shells bear, this thick; 0 otherwise */
  lw_corner crest;          /* rear end of the top: where the ground behind meets the wall */
  double rear_m;            /* rearmost x, the cap left out */
  double back_rad;          /* θ of the line from the rear of the base to the rear of the top, positive when
                               soil lies on it */
  double back_lean;         /* tan θ */
  bool has_cap, cap_bonded;
  double cap_front_m;       /* x of the cap's front edge */
  double cap_overhang_m, cap_depth_m, cap_height_m;
  double joint_friction, joint_shear_kn_per_m;
  double key_strength_kn_per_m;   /* of the key or lip of a joint; 0: not given, and not checked */
  int course_count;         /* 0 for a polygon */
  int part_count, outline_count;
  lw_part part[LW_PART_MAX];               /* from the bottom up */
  lw_corner outline[LW_OUTLINE_MAX];       /* counter-clockwise, starting at the toe; no cap overhang */
} lw_section;

/** The section of a settled case; geometry that does not close was a fault before.
 *  in    c        settled
 *        tables   of a wall of courses: what the concrete of a filled hollow block weighs; a solid section
 *                 takes nothing from them, and NULL will do
 *  out   section */
void lw_section_build(const lw_case *c, const lw_tables *tables, lw_section *section);

/** The wall of only the courses above a joint, with its own toe as origin. Joint 1 is the lowest.
 *  in    section  of courses
 *        joint    1 to course_count - 1
 *  out   above    its contact is the overlap of the two courses, in its own x */
void lw_section_above(const lw_section *section, int joint, lw_section *above);

/** Area, centroid of a simple polygon. Positive area for either sense of rotation. */
void lw_polygon_area(const lw_corner *corner, int count, double *area_m2, lw_corner *centroid);

/** The part of a polygon on one side of a level.
 *  in    corner, count   convex, or at least cut only once by the level
 *  out   kept            room for count + 1 corners
 *  gives how many corners are kept */
int lw_polygon_cut(const lw_corner *corner, int count, double level_m, bool keep_above, lw_corner *kept);

/** The polygon as seen in a mirror standing at its right: x becomes width - x. */
void lw_polygon_mirror(const lw_corner *corner, int count, double width_m, lw_corner *mirrored);

double lw_section_weight(const lw_section *section);        /* kN/m */
double lw_section_moment(const lw_section *section);        /* of the weight about the toe, kN m/m */
/** x of the rearmost point of the section at or above y, the cap left out. */
double lw_section_rear(const lw_section *section, double y_m);

LW_PUBLIC_END

#endif
