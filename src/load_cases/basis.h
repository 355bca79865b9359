/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_BASIS_H
#define LOWWALL_LOAD_CASES_BASIS_H

#include <lowwall/checks.h>

/* What a check rests on. */
typedef struct lw_basis {
  const lw_wall *wall;
  lw_load_case load_case;
  lw_free_body body;
  double on_friction; /* tan φ and every friction were multiplied by this */
  double on_push;     /* and the strength of the soil that pushes by this as well */
  double wedges;      /* the factor of sliding that divides every strength, in on_friction too; 0: none */
  double on_sliding, on_passive; /* and resistances by these */
  double friction;               /* of the contact, tan of the angle to design with */
  double bond_kn_per_m; /* adhesion of what is in contact, shear of a joint, for its key the strength */
  double ground_holds_kn_per_m; /* from sliding at most, passive apart; INFINITY: no limit */
} lw_basis;

/** Load case and free body of a check, made again: a situation keeps only the free body that governs.
 *  in    check   one of the situation's
 *  gives false where the check has no numbers, or is in the ground as a whole; out is then not to be used */
bool lw_check_basis(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                    const lw_check *check, lw_basis *out);

/** The steps of a check, written by the function that makes it.
 *  in    basis     of the check, by lw_check_basis
 *        working   takes them; the last has the symbol "has" */
void lw_check_tell(const lw_basis *basis, const lw_tables *tables, const lw_check *check,
                   const lw_working *working);

#endif
