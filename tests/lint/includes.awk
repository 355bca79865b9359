# SPDX-License-Identifier: GPL-3.0-or-later
# The includes of files.   awk -f includes.awk FILE...
BEGIN {
  rooms = split("base tables sheet soil wall pressure standards balance slip checks load_cases studies " \
                "verdict run remedies order fit report report/text report/figures report/json report/order " \
                "report/fit report/draw report/working report/precheck ask page cli", room, " ")
  for (i = 1; i <= rooms; i++) rank[room[i]] = i
  # a public header belongs to a room
  belongs("base", "base")
  belongs("rows tables", "tables")
  belongs("case sheet", "sheet")
  belongs("wall", "soil") # what a site, a section and the wall on its site are
  belongs("pressure lateral diagram ground", "pressure")
  belongs("forces checks", "standards") # what a load case, a force, a contact and a check are
  belongs("studies", "load_cases") # storm and trench are found there, the rest in studies
  belongs("result", "verdict")
  belongs("plan order", "order")
  belongs("report", "report")
  belongs("questions lowwall", "ask")
}
FNR == 1 {
  n = split(FILENAME, part, "/")
  if (part[1] == "include") { mine = "<" part[n]; sub(/\.h$/, "", mine) }
  else mine = n > 3 ? part[2] "/" part[3] : part[2]
  if (!(mine in rank)) printf "%s: belongs to no room\n", FILENAME
}
/^[ \t]*#[ \t]*include/ {
  if ($0 !~ /^#include (<[a-z0-9_\/.-]+>|"([a-z_]+\/)?([a-z]+\/)?[a-z0-9_]+\.h")/) {
    say("neither <lowwall/room.h>, \"file.h\" beside it nor \"room/file.h\"")
    next
  }
  name = $2
  gsub(/[<>"]/, "", name)
  if (name ~ /^lowwall\// || $2 ~ /^"[a-z_]+\//) {
    target = name
    if ($2 ~ /^"/) sub(/\/[^\/]*$/, "", target)
    else { sub(/^lowwall\//, "<", target); sub(/\.h$/, "", target) }
    if (!(target in rank)) say($2 " belongs to no room")
    else if (rank[target] > rank[mine])
      say(name_of(mine) " is left of " name_of(target) " and may not include it")
  }
  if (mine ~ /^(verdict|report)/ &&
      name ~ /^(soil|wall|pressure|standards|balance|slip|checks|load_cases|studies)\// &&
      name !~ /^(balance\/weigh|load_cases\/kinds|pressure\/given|studies\/water_limits|wall\/measure)\.h$/)
    say("verdict and report read the result: what is not in it, run/again.h gives")
  if (part[1] == "include") {
    if (name ~ /^(gsl\/|csv\.h|jansson\.h|criterion)/) say("a public header shows " name)
  } else if (name ~ /^gsl\// && mine != "base" && mine != "cli") say("GSL is called from base only")
  else if (name == "csv.h" && rank[mine] > rank["sheet"]) say("CSV is read by tables and sheet only")
  else if (name ~ /^(cairo|pango)/ && mine != "report/draw") say("drawing on paper is for report")
  else if (name == "jansson.h" && rank[mine] < rank["report"]) say("JSON is for report and cli")
}
function say(words) { printf "%s:%d: %s\n", FILENAME, FNR, words }
function belongs(headers, to,    i, count, header) {
  count = split(headers, header, " ")
  for (i = 1; i <= count; i++) rank["<" header[i]] = rank[to]
}
function name_of(place) { sub(/^</, "", place); return place }
