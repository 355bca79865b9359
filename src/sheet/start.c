/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "items.h"

/* Starter sheets. They play in an invented school kitchen garden on a hillside; their numbers are invented.
 * Rows that begin with a comma are remarks: only the note column is filled. */

#define HEADER "item,value,unit,note\n"
#define INVENTED \
  ",,,\"A place to start from: the school kitchen garden is invented and so are its numbers. Put in your " \
  "own.\"\n"
#define LEAVE_OUT \
  ",,,\"A row may be left out: the unfavourable value is then assumed, and the report asks. `lowwall list " \
  "items` has all items.\"\n"

static const char bed[] = HEADER INVENTED LEAVE_OUT
    "title,Raised bed by the kitchen door,,printed at the head of the report\n"
    "mark,B1,,short name of the wall\n"
    "site behind,bed,,\"bed: take the wall away and only the soil you brought falls out; ground: the ground "
    "itself does\"\n"
    "site back,wall,,\"wall, fence, building or ground: what carries the far side of the soil\"\n"
    "level difference,0,mm,ground beyond the far side minus ground in front\n"
    "boundary distance,6,m,\n"
    "building distance,5,m,\n"
    "other wall distance,12,m,nearest other retaining wall\n"
    "public way distance,20,m,\n"
    "service distance,8,m,\"nearest sewer, main or cable\"\n"
    "waterbody distance,300,m,\n"
    "pool barrier distance,60,m,\n"
    "fence height,0,m,\"a fence or screen on the wall, now or planned\"\n"
    "site above,household,,\"nobody, household or public: who is on the high side\"\n"
    "vehicle access,no,,could a vehicle ever reach the soil?\n"
    "water held behind,no,,a pond or tank?\n"
    "mapped land,no,,\"flood, landslip, coast, bushfire or acid-soil map\"\n"
    "heritage,no,,a heritage item or a conservation area?\n"
    "strong earthquakes,no,,is the place known for them?\n"
    "shaken ground,no,,\"by a machine, a railway or heavy traffic\"\n"
    "water sent next door,no,,will its water run onto a neighbour's land?\n"
    "reactive soil,no,,cracks wider than a pencil in a dry season?\n"
    "works,new,,\n"
    "wall height,300,mm,finished ground in front to the top of the wall\n"
    "wall embedment,100,mm,finished ground in front to the underside of the lowest course\n"
    "block height,200,mm,\n"
    "block depth,350,mm,\"front to back; without it nothing can be shown to stand\"\n"
    "block unit weight,21,kN/m3,\n"
    "people on cap,no,,\"will people sit on it? They press its edge and push it: try yes\"\n"
    "ground slope,0,deg,level\n"
    "soil below top,50,mm,\n"
    "bed use,walked,,\"planted, walked or vehicle: who or what goes on the soil\"\n"
    "front slope,0,deg,does the ground in front fall away?\n"
    "soil 1 name,sandy loam,,\"what goes behind the wall: a name, or what the hand test showed (ribbon "
    "15-20)\"\n"
    "footing soil name,stiff clay,,\"thumb at the bottom of the trench: it only dents the clay\"\n"
    "base friction,0.50,,blocks on a levelled bed of gravel or crushed rock\n"
    "pad thickness,100,mm,that bed: it slides on the clay below it before the blocks slide on it\n"
    "pad width,550,mm,front to back\n"
    "pad material,crushed rock,,\n"
    "wall joints,open,,can water pass through the joints?\n"
    "ground drains,yes,,\"a hole filled with water, empty by morning?\"\n"
    "stone width,300,mm,drainage stone right behind the wall\n"
    "stone filter,cloth,,what keeps the soil out of that stone\n"
    "drain outlets,2,,ends of drain pipe that come to daylight\n"
    "load 1 kind,uniform,,\"none, uniform, strip, line, point or cap\"\n"
    "load 1 pressure,2.5,kPa,\"people, a barrow, a mower\"\n";

static const char ground[] = HEADER INVENTED LEAVE_OUT
    "title,Terrace below the herb garden,,printed at the head of the report\n"
    "mark,T1,,short name of the wall\n"
    "site behind,ground,,\"take the wall away and the ground itself would come down\"\n"
    "site back,ground,,\n"
    "boundary distance,7,m,\n"
    "building distance,9,m,\n"
    "other wall distance,15,m,nearest other retaining wall\n"
    "public way distance,30,m,\n"
    "service distance,10,m,\"nearest sewer, main or cable\"\n"
    "waterbody distance,300,m,\n"
    "pool barrier distance,60,m,\n"
    "fence height,0,m,\n"
    "site above,household,,\n"
    "vehicle access,no,,could a vehicle ever reach the ground within one wall height behind?\n"
    "water held behind,no,,\n"
    "mapped land,no,,\n"
    "heritage,no,,\n"
    "strong earthquakes,no,,\n"
    "shaken ground,no,,\n"
    "water sent next door,no,,\n"
    "reactive soil,no,,\n"
    "works,new,,\n"
    "wall height,0.6,m,finished ground in front to the top of the wall\n"
    "wall embedment,0.2,m,\n"
    "course count,4,,buried course included\n"
    "block height,200,mm,\n"
    "block depth,400,mm,\n"
    "block unit weight,21,kN/m3,\n"
    "setback,20,mm,how far each course steps back\n"
    "people on cap,yes,,will people sit on it?\n"
    "ground slope,0,deg,\"level; where it rises, rise:run as in 1:10, or an angle in deg\"\n"
    "front slope,0,deg,does the ground in front fall away?\n"
    "bed use,walked,,\"planted, walked or vehicle\"\n"
    "cut depth,550,mm,deepest cut below the natural ground\n"
    "fill depth,0,mm,deepest fill above it\n"
    "soil below top,50,mm,\n"
    "soil 1 name,clean sand,,carried in and tamped in layers\n"
    "footing soil name,sandy loam,,the ribbon breaks at 15 to 20 mm\n"
    "base friction,0.50,,\"blocks on a bed of crushed rock; an angle in deg is taken too\"\n"
    "pad thickness,150,mm,\n"
    "pad width,700,mm,\n"
    "pad material,crushed rock,,\n"
    "wall joints,open,,\n"
    "ground drains,no,,\n"
    "stone width,300,mm,\n"
    "stone filter,cloth,,\n"
    "drain outlets,2,,\n"
    "load 1 kind,uniform,,\n"
    "load 1 pressure,2.5,kPa,\n";

static const char section[] = HEADER INVENTED LEAVE_OUT
    "title,Old stone wall behind the compost,,a solid section in place of courses\n"
    "mark,S1,,short name of the wall\n"
    "site behind,ground,,\n"
    "boundary distance,10,m,\n"
    "vehicle access,no,,\n"
    "wall kind,section,,\n"
    "wall height,0.75,m,finished ground in front to the top of the wall\n"
    "wall embedment,0.2,m,\n"
    "base width,0.7,m,\"front to back at the underside, toe and heel included\"\n"
    "top width,0.45,m,\n"
    "back batter,0,deg,\"the face takes what the widths leave; or give points: point 1 x, point 1 y ...\"\n"
    "wall unit weight,22,kN/m3,\n"
    "wall joints,open,,laid dry: water passes through\n"
    "people on cap,no,,\n"
    "wall friction,0.67,,\"a share of the soil's angle, or an angle in deg\"\n"
    "ground slope,0,deg,\n"
    "soil 1 friction angle,32,deg,values of a book or a laboratory in place of a name\n"
    "soil 1 cohesion,0,kPa,\n"
    "soil 1 unit weight,18,kN/m3,\n"
    "soil 1 saturated unit weight,20,kN/m3,\n"
    "footing soil friction angle,30,deg,\n"
    "method base friction,67,%,share of that angle under the base\n"
    "allowable bearing,100,kPa,\n"
    "ground drains,no,,\n"
    "stone width,300,mm,\n"
    "stone filter,cloth,,\n"
    "drain outlets,2,,\n"
    "method pressure,coulomb,,\"coulomb, rankine, wedge or at rest; docs/sheet.md has the other switches\"\n"
    "load 1 kind,none,,\n";

lw_status lw_sheet_start(const char *kind, lw_text *out) {
  static const struct {
    const char *kind, *sheet;
  } sheets[] = {{"bed", bed}, {"ground", ground}, {"section", section}};
  for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++) {
    if (strcmp(kind, sheets[i].kind) == 0) {
      lw_text_add(out, sheets[i].sheet);
      return LW_OK;
    }
  }
  return LW_NO_SOLUTION;
}
