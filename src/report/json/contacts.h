/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_JSON_CONTACTS_H
#define LOWWALL_REPORT_JSON_CONTACTS_H

#include "set.h"
#include "report/figures/put.h"

/* A contact in the JSON: its plane, thrust, balance and forces, so that its checks can be made from them. */

/* "base", "pad": as it is shown in its situation. */
void lw_json_contact(json_t *situation, const char *key, const lw_result *result, const lw_free_body *body);
/* Every joint, and the one under the cap, as they are shown. */
void lw_json_joints(json_t *situation, const lw_result *result, const lw_situation *s);
/* What a contact holds, put into an object; joint: in the section, the one under the cap too; 0: none. */
void lw_json_free_body(json_t *object, const lw_result *result, const lw_free_body *body, int joint);

/* The load cases that checks of one situation were made in, beside the one that its contacts show. */
enum { LW_BASES_MAX = LW_CHECK_MAX };
typedef struct lw_bases {
  json_t *list;
  const lw_result *result;
  const lw_situation *situation;
  int count;
  struct {
    lw_at at;
    int joint;
    double divided; /* every strength by it; 0: none */
    lw_contact contact;
  } base[LW_BASES_MAX];
} lw_bases;

/* Where people press the wall down: every contact without that, all else as it is shown. */
void lw_json_lighter(lw_bases *bases);
/* On which load case a check rests, and what of its resistance the forces do not tell. */
void lw_json_basis(lw_bases *bases, json_t *entry, const lw_check *check);

#endif
