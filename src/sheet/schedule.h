/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_SCHEDULE_H
#define LOWWALL_SHEET_SCHEDULE_H

#include <lowwall/sheet.h>

/** A row is a few values in a large case: packed, it is handed to another thread, or kept, for little.
 *  gives lw_schedule_row_size: bytes of a packed row, once the header is read
 *  in    c      lw_schedule_pack: as it was handed on, read from that schedule
 *  out   c      lw_schedule_unpack: the same again; whatever stood there is gone
 *  note  1 Unpacking only reads the schedule: several threads may, while it reads on. */
size_t lw_schedule_row_size(const lw_schedule *schedule);
void lw_schedule_pack(const lw_schedule *schedule, const lw_case *c, unsigned char *bytes);
void lw_schedule_unpack(const lw_schedule *schedule, const unsigned char *bytes, lw_case *c);

/* "wall height [mm]": the name's length, and the unit copied out of its brackets. */
size_t lw_header_split(const char *text, size_t length, char *unit, size_t size);

#endif
