/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_TYPED_H
#define LOWWALL_REMEDIES_TYPED_H

#include <lowwall/sheet.h>
#include <lowwall/result.h>

/* Put an item and its value, printf-like, in place of the same item's earlier value. An item is forgotten by
 * the value "unknown". false: the list is full. */
bool lw_typed_put(lw_typed *typed, const char *item, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
/* A measure, in SI or in feet and pounds. */
bool lw_typed_put_amount(lw_typed *typed, const char *item, lw_kind kind, double si);
/* A length, in millimetres or inches. */
bool lw_typed_put_mm(lw_typed *typed, const char *item, double metres);
/* Forget all that the sheet has of an item's part with this number: "soil", 2. */
bool lw_typed_forget_part(lw_typed *typed, lw_item_part part, int number, const lw_case *c);
/* Type them in, over what the case has; false on a fault. */
bool lw_typed_enter(const lw_typed *typed, lw_case *c);

#endif
