/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_COMPRESSION_H
#define LOWWALL_CHECKS_COMPRESSION_H

#include "balance/weigh.h"

lw_check lw_check_compression(const lw_check_context *context, const lw_free_body *body,
                              const lw_working *working);

#endif
