/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "items.h"

/* What an officer asks besides. None has a default: what is left out is not held against the wall, and what
 * is not known is taken as the gravest (complete_officer.c). */
static const lw_item items[] = {
    {.part = LW_ABOUT_OFFICER,
     .name = "rain water to",
     CHOICE(officer.rain_to, "own ground|street|soakaway|easement|next door"),
     .assumed = NAN,
     .unit = "",
     .example = "soakaway",
     .means = "Where the rain water from behind the wall ends. `next door` counts as `water sent next door`, "
              "whatever that says. Not known: `next door`.",
     .question = "Where does the rain water from behind the wall end?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "easement",
     CHOICE(officer.easement, "none|beside|under"),
     .assumed = NAN,
     .unit = "",
     .example = "none",
     .means = "A strip that somebody else may use for a drain, a cable or a way: `under` the wall or what is "
              "dug for it, or `beside` it, nearer than 1 m or than the dig is deep. Not known: `under`.",
     .question = "Does an easement lie under the wall or beside it?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "protected trees",
     YES_NO(officer.protected_trees),
     .assumed = NAN,
     .unit = "",
     .example = "no",
     .means = "Whether a protected tree, the neighbour's too, has its roots where it is dug: nearer than "
              "twelve times as far as its trunk is thick. Not known: `yes`.",
     .question = "Is a protected tree nearer to the dig than twelve times the thickness of its trunk?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "flood land",
     YES_NO(officer.flood_land),
     .assumed = NAN,
     .unit = "",
     .example = "no",
     .means = "Whether the land is mapped for floods. `yes` counts as `mapped land` too, whatever that says. "
              "Not known: `yes`.",
     .question = "Is the land on a map of floods?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "bushfire land",
     YES_NO(officer.bushfire_land),
     .assumed = NAN,
     .unit = "",
     .example = "no",
     .means = "Whether the land is mapped for bushfire. `yes` counts as `mapped land` too, whatever that "
              "says. Not known: `yes`.",
     .question = "Is the land on a map of bushfire?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "coast land",
     YES_NO(officer.coast_land),
     .assumed = NAN,
     .unit = "",
     .example = "no",
     .means = "Whether the land is mapped for the coast: erosion, storm tides, dunes. `yes` counts as "
              "`mapped land` too, whatever that says. Not known: `yes`.",
     .question = "Is the land on a map of the coast?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "neighbour consent",
     YES_NO(officer.neighbour_consent),
     .assumed = NAN,
     .unit = "",
     .example = "yes",
     .means = "Whether the neighbour has agreed, in writing, to what leans on their ground or is dug beside "
              "it. It counts where the boundary is that near. Not known: `no`.",
     .question = "Has the neighbour agreed in writing?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "sight lines",
     YES_NO(officer.sight_lines),
     .assumed = NAN,
     .unit = "",
     .example = "no",
     .means = "Whether the wall, or what grows on it, stands where drivers must see: at a corner of streets, "
              "or beside a drive. Not known: `yes`.",
     .question = "Does the wall stand at a corner of streets or beside a drive?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "other works",
     CHOICE(officer.other_works, "none|building|pool|paving|earthworks|other"),
     .assumed = NAN,
     .unit = "",
     .example = "none",
     .means = "What else is built with the wall: a `building` (a shed or deck too), a `pool`, `paving` or a "
              "drive, `earthworks` beyond the wall's own, or `other`. Not known: `other`.",
     .question = "What else is being built with it?"},
    {.part = LW_ABOUT_OFFICER,
     .name = "built by",
     CHOICE(officer.built_by, "licensed|owner|helpers"),
     .assumed = NAN,
     .unit = "",
     .example = "owner",
     .means = "Who does the work: somebody `licensed` for it, the `owner`, or `helpers` without pay. Not "
              "known: `owner`.",
     .question = "Who does the work?"},
};

const lw_item_group lw_items_officer = {items, sizeof items / sizeof *items};
