/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOWWALL_H
#define LOWWALL_LOWWALL_H

/* Everything: site, pressure, section, checks, verdict, report. */
#include <lowwall/base.h>
#include <lowwall/tables.h>
#include <lowwall/case.h>
#include <lowwall/sheet.h>
#include <lowwall/wall.h>
#include <lowwall/pressure.h>
#include <lowwall/lateral.h>
#include <lowwall/ground.h>
#include <lowwall/checks.h>
#include <lowwall/building.h>
#include <lowwall/narrow.h>
#include <lowwall/fence.h>
#include <lowwall/influence.h>
#include <lowwall/verdict.h>
#include <lowwall/result.h>
#include <lowwall/plan.h>
#include <lowwall/order.h>
#include <lowwall/report.h>
#include <lowwall/drawing.h>
#include <lowwall/precheck.h>

#endif
