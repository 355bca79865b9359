# SPDX-License-Identifier: GPL-3.0-or-later
# A street of invented walls, no two alike.   awk -v sort=beds|walls|mixed -v rows=N -f street.awk
# beds: garden beds of blocks on level ground, with open joints and stone in cloth; four of five hold.
# walls: they hold up the ground behind them, so that a slip is searched.
# mixed: setbacks, slopes, people on the cap, joints and outlets of all kinds.
BEGIN {
  ground = "soil 1 friction angle [deg],soil 1 unit weight [kN/m3],wall friction [deg],base friction," \
           "allowable bearing [kPa],load 1 pressure [kPa],load 1 kind,method pressure,people on cap," \
           "drain outlets,stone width [mm],soil below top [mm],ground slope [deg],site behind,mark"
  if (sort == "beds")
    print "wall height [mm],wall embedment [mm],block height [mm],block depth [mm]," \
          "block unit weight [kN/m3],wall joints,stone filter,site back," ground
  else if (sort == "walls")
    print "wall height [mm],wall embedment [mm],wall kind,base width [mm],top width [mm]," \
          "wall unit weight [kN/m3]," ground
  else
    print "mark,site behind,site back,wall height [mm],wall embedment [mm],block height [mm]," \
          "block depth [mm],block unit weight [kN/m3],setback [mm],people on cap,ground slope [deg]," \
          "soil 1 friction angle [deg],soil 1 unit weight [kN/m3],base friction," \
          "allowable bearing [kPa],drain outlets,stone width [mm],load 1 kind,load 1 pressure [kPa]"
  for (i = 0; i < rows; i++) {
    phi = 28 + i % 701 / 100
    weight = 17 + i % 301 / 100
    load = 1 + i % (sort == "beds" ? 200 : 900) / 100
    if (sort == "beds")
      printf "%d,200,200,%d,%.2f,open,cloth,wall,", 200 * (1 + i % 2), 300 + i % 397, 19 + i % 41 / 10
    else if (sort == "walls")
      printf "%d,%d,section,%d,%d,%.2f,", 400 + i % 997, 100 + i % 89, 500 + i % 701, 300 + i % 199,
             22 + i % 31 / 10
    if (sort == "beds" || sort == "walls")
      printf "%.2f,%.2f,%.2f,%.2f,%d,%.2f,uniform,coulomb,no,2,300,0,0,%s,W%d\n", phi, weight,
             8 + i % 1103 / 100, 0.4 + i % 13 / 100, 80 + i % 71, load, sort == "beds" ? "bed" : "ground", i
    else
      printf "W%d,ground,ground,%d,200,200,%d,21,%d,yes,%d,%.2f,%.2f,0.45,100,%d,300,uniform,%.2f\n",
             i, 200 * (1 + i % 5), 300 + i % 400, i % 3 * 10, i % 11, phi, weight, i % 3, load
  }
}
