/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli.h"
#include "output.h"

int lw_cli_version(int argc, char **argv) {
  if (argc > 1) return lw_cli_refuse("", "bad-option: version takes nothing, not \"%.80s\"", argv[1]);
  return lw_output_print("lowwall " LW_VERSION "\n");
}
