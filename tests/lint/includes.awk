# SPDX-License-Identifier: GPL-3.0-or-later
# The includes of one file.   awk -v file=NAME -f includes.awk NAME
BEGIN {
  rooms = split("base tables sheet soil wall pressure checks verdict report cli", room, " ")
  for (i = 1; i <= rooms; i++) rank[room[i]] = i
  # a header with a name of its own belongs to the room that stands here
  split("case sheet site soil section wall bearing pressure result verdict run verdict lowwall report", other, " ")
  for (i = 1; i in other; i += 2) rank[other[i]] = rank[other[i + 1]]
  n = split(file, part, "/")
  if (part[1] == "include") { mine = part[n]; sub(/\.h$/, "", mine) } else mine = part[2]
  if (!(mine in rank)) printf "%s: belongs to no room\n", file
}
/^[ \t]*#[ \t]*include/ {
  if ($0 !~ /^#include (<[a-z0-9_\/.]+>|"[a-z0-9_.]+")/) {
    printf "%s:%d: not of the form <lowwall/room.h> or \"file.h\" beside it\n", file, FNR
    next
  }
  name = $2
  gsub(/[<>"]/, "", name)
  if (name ~ /^lowwall\//) {
    target = name; sub(/^lowwall\//, "", target); sub(/\.h$/, "", target)
    if (!(target in rank)) printf "%s:%d: <%s> belongs to no room\n", file, FNR, name
    else if (rank[target] > rank[mine]) printf "%s:%d: %s is left of %s and may not include it\n", file, FNR, mine, target
  }
  if (part[1] == "include") { if (name ~ /^(gsl\/|csv\.h|jansson\.h|criterion)/) printf "%s:%d: a public header shows %s\n", file, FNR, name }
  else if (name ~ /^gsl\// && mine != "base" && mine != "cli") printf "%s:%d: GSL is called from src/base/ only\n", file, FNR
  else if (name == "csv.h" && rank[mine] > rank["sheet"]) printf "%s:%d: CSV is read in src/tables/ and src/sheet/ only\n", file, FNR
  else if (name == "jansson.h" && rank[mine] < rank["report"]) printf "%s:%d: JSON is written in src/report/ and src/cli/ only\n", file, FNR
}
