/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "recompute.h"

#include <stddef.h>

/* A line is looked up by what it begins with: blanks run together, each number a #, sources left out. */

const recompute_kind RECOMPUTE_STATED[] = {
    {"Section: ", "the wall as it was put in"},
    {"Soil #: ", "a soil as it was put in"},
    {"Under the base: ", "a soil as it was put in"},
    {"Ground behind b = ", "the ground as it was put in"},
    {"Clay below: # kPa of the # kPa of cohesion", "what counts of it, and what a slip has without"},
    {"Base: the wall on ", "its two faces as they were put in"},
    {"Pressure on the plane of # m", "a heading"},
    {"The joint above course #, moments about", "a heading"},
    {"layer #, below # m", "a heading"},
    {"The same without earthquake and cohesion: ", "a heading"},
    {"Earthquake, as a steady push", "a heading"},
    {"below water: ", "a heading"},
    {"Push on the base: ", "a heading"},
    {"Rankine, on a vertical plane: ", "a heading"},
    {"Coulomb, on the back: ", "a heading"},
    {"At rest, on a vertical plane: ", "a heading"},
    {"EN #-# annex C", "a heading"},
    {"Push on the base: EN #-# annex C", "a heading"},
    {"Bearing by EN #-#", "a heading"},
    {"Water stands # m below the top", "the water as it was put in"},
    {"Rain seeps to a drain at the back", "where the water leaves, as it was put in"},
    {"It decides: ", "why a case decides"},
    {"The set ", "factors as their table gives them"},
    {"What is needed follows the format ", "names a set"},
    {"at its own worst", "factors as their table gives them"},
    {"Strengths, loads and weights", "names a set"},
    {"The resultant falls outside the contact of # m", "a reason; the contact stands in the sums above"},
    {"in front # m of the ground are taken as dug away", "the ground as it was put in"},
    {"The blocks taper: ", "the blocks as they were put in"},
    {"The worst of # circles: ", "where a search found its circle"},
    {"In front of the wall the ground weighs its light end", "a soil as it was put in"},
    {"Course #, the plant touching", "a heading"},
    {"On the whole wall, ", "a heading"},
    {"Overturning, as built, with", "a heading"},
    {"Course # decides how near", "a heading"},
    {"It just holds with the", "what a search found; its push is worked out above"},
    {"The bed is Bn = #", "the bed as it was put in"},
    {"at-rest # ", "what comes of the steps above"},
    {"active # ", "what comes of the steps above"},
    {"frydman-keissar # ", "what comes of the steps above"},
    {"handy # ", "what comes of the steps above"},
    {"Arching can bring the push", "what comes of the step above"},
    {"Each slice: x its middle", "what the columns are"},
    {"SB is the sum of Tb", "what is put in for SB and g"},
    {"With the # slices of the search: ", "the same circle in more slices than are shown"},
    {"Asked, as of an unusual case: ", "factors as their table gives them"},
    {"joint #: ", "a reason"},
    {"joint # # ", "what comes of the sums of each joint, one of which is worked out below"},
    {"cap # # ", "what comes of the sums at the cap"},
    {"Head at x behind the drain", "a formula of every place; its sum along the plane is worked out"},
    {"The wedge pushes more, # kN/m", "the wedge is worked out above"},
    {NULL, NULL}};

const recompute_kind RECOMPUTE_OPEN[] = {
    /* Earth pressure, the tables of forces and of pressure. */
    {"Pe = integral of", "integrated numerically, ten points a piece"},
    {"Pe1 = integral of", "of the first of several loads"},
    {NULL, NULL}};
