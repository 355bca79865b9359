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
#include <lowwall/diagram.h>
#include <lowwall/ground.h>
#include <lowwall/forces.h>
#include <lowwall/checks.h>
#include <lowwall/studies.h>
#include <lowwall/result.h>
#include <lowwall/plan.h>
#include <lowwall/order.h>
#include <lowwall/report.h>
#include <lowwall/questions.h>

#endif
