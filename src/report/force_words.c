/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "force_words.h"

/* Names of forces: a part of the wall by its kind and number, anything else by what it is. */

static const lw_part *part_of(const lw_result *result, const lw_force *force) {
  const lw_section *section = &result->wall.section;
  bool part = force->kind == LW_FORCE_PART && force->index >= 0 && force->index < section->part_count;
  return part ? &section->part[force->index] : NULL;
}

static void label_part(const lw_part *part, char *out, size_t size) {
  static const char *const words[] = {
      [LW_PART_COURSE] = "course %d",     [LW_PART_CAP] = "cap",   [LW_PART_SLAB] = "base slab",
      [LW_PART_FACE] = "face wedge",      [LW_PART_STEM] = "stem", [LW_PART_BACK] = "back wedge",
      [LW_PART_POLYGON] = "whole section"};
  if (part->kind == LW_PART_COURSE)
    lw_print(out, size, "course %d", part->number);
  else
    lw_print(out, size, "%s", words[part->kind]);
}

static void slug_part(const lw_part *part, char *out, size_t size) {
  static const char *const slugs[] = {
      [LW_PART_COURSE] = "course",  [LW_PART_CAP] = "cap",   [LW_PART_SLAB] = "slab",
      [LW_PART_FACE] = "face",      [LW_PART_STEM] = "stem", [LW_PART_BACK] = "back",
      [LW_PART_POLYGON] = "section"};
  if (part->kind == LW_PART_COURSE)
    lw_print(out, size, "course-%d", part->number);
  else
    lw_print(out, size, "%s", slugs[part->kind]);
}

static const char *label_of(lw_force_kind kind) {
  switch (kind) {
  case LW_FORCE_PART: return "stone of the pad";
  case LW_FORCE_SOIL_ON_WALL: return "soil standing on the wall";
  case LW_FORCE_SURCHARGE_ON_WALL: return "load standing on the wall";
  case LW_FORCE_THRUST: return "push of the soil";
  case LW_FORCE_SURCHARGE_THRUST: return "push of the load behind";
  case LW_FORCE_LOADS_THRUST: return "push of loads at distance";
  case LW_FORCE_LEVEL_THRUST: return "push through the ground";
  case LW_FORCE_WATER: return "water behind";
  case LW_FORCE_FRONT_WATER: return "water in front";
  case LW_FORCE_UPLIFT: return "uplift";
  case LW_FORCE_PEOPLE: return "people";
  case LW_FORCE_CAP_LOAD: return "load on the cap";
  case LW_FORCE_SEISMIC_THRUST: return "push added by the earthquake";
  case LW_FORCE_INERTIA: return "earthquake on the wall";
  case LW_FORCE_SEISMIC_WATER: return "earthquake on open water behind";
  case LW_FORCE_TRENCH: return "ground in front of the pad";
  }
  return "";
}

static const char *slug_of(lw_force_kind kind) {
  switch (kind) {
  case LW_FORCE_PART: return "pad-stone";
  case LW_FORCE_SOIL_ON_WALL: return "soil-on-wall";
  case LW_FORCE_SURCHARGE_ON_WALL: return "load-on-wall";
  case LW_FORCE_THRUST: return "soil-push";
  case LW_FORCE_SURCHARGE_THRUST: return "load-push";
  case LW_FORCE_LOADS_THRUST: return "loads-push";
  case LW_FORCE_LEVEL_THRUST: return "level-push";
  case LW_FORCE_WATER: return "water";
  case LW_FORCE_FRONT_WATER: return "front-water";
  case LW_FORCE_UPLIFT: return "uplift";
  case LW_FORCE_PEOPLE: return "people";
  case LW_FORCE_CAP_LOAD: return "cap-load";
  case LW_FORCE_SEISMIC_THRUST: return "seismic-push";
  case LW_FORCE_INERTIA: return "inertia";
  case LW_FORCE_SEISMIC_WATER: return "seismic-water";
  case LW_FORCE_TRENCH: return "trench";
  }
  return "";
}

/* An earthquake moves several things: the wall, what stands on it, the pad; water behind and in front. */
static const char *label_by_index(const lw_force *force) {
  if (force->kind == LW_FORCE_INERTIA && force->index == 1) return "earthquake on what stands on the wall";
  if (force->kind == LW_FORCE_INERTIA && force->index == 2) return "earthquake on the stone of the pad";
  if (force->kind == LW_FORCE_SEISMIC_WATER && force->index == 1) return "earthquake on open water in front";
  return label_of(force->kind);
}

static const char *slug_by_index(const lw_force *force) {
  if (force->kind == LW_FORCE_INERTIA && force->index == 1) return "inertia-on-wall";
  if (force->kind == LW_FORCE_INERTIA && force->index == 2) return "inertia-pad";
  if (force->kind == LW_FORCE_SEISMIC_WATER && force->index == 1) return "seismic-front-water";
  return slug_of(force->kind);
}

void lw_force_label(const lw_result *result, const lw_force *force, char *out, size_t size) {
  const lw_part *part = part_of(result, force);
  if (part)
    label_part(part, out, size);
  else
    lw_print(out, size, "%s", label_by_index(force));
}

void lw_force_slug(const lw_result *result, const lw_force *force, char *out, size_t size) {
  const lw_part *part = part_of(result, force);
  if (part)
    slug_part(part, out, size);
  else
    lw_print(out, size, "%s", slug_by_index(force));
}

double lw_free_body_foot(const lw_result *result, const lw_free_body *body) {
  const lw_site *site = &result->wall.site;
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    if (f->kind == LW_FORCE_PART && f->index < 0) return -site->pad.thickness_m;
  }
  return 0.0;
}
