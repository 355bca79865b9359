# SPDX-License-Identifier: GPL-3.0-or-later
"""The numbers of an upright wall on level ground by numpy: Coulomb's thrust, sliding, overturning, bearing.

   python3 coulomb.py STREET.csv RESULTS.csv

A yardstick for `make bench`: the formulas of docs/theory.md, one situation (drained), nothing else looked at.
A wall has a plumb back; its front may lean. Lengths in mm, angles in degrees, as the street has them.
"""
import sys

import numpy as np


def read(name):
    with open(name, encoding="utf-8") as file:
        header = file.readline().strip().split(",")
    wanted = [i for i, item in enumerate(header) if "[" in item or item == "base friction"]
    table = np.loadtxt(name, delimiter=",", skiprows=1, usecols=wanted, ndmin=2)
    return {header[at].split(" [")[0]: table[:, k] for k, at in enumerate(wanted)}


def checks(street):
    height = (street["wall height"] + street["wall embedment"]) / 1000
    base = street["block depth" if "block depth" in street else "base width"] / 1000
    top = street["top width"] / 1000 if "top width" in street else base
    stone = street["block unit weight" if "block unit weight" in street else "wall unit weight"]
    phi = np.radians(street["soil 1 friction angle"])
    delta = np.radians(street["wall friction"])

    root = np.sqrt(np.sin(phi + delta) * np.sin(phi) / np.cos(delta))
    ka = np.cos(phi) ** 2 / (np.cos(delta) * (1 + root) ** 2)
    soil = 0.5 * ka * street["soil 1 unit weight"] * height**2
    load = ka * street["load 1 pressure"] * height
    thrust = soil + load
    across, down = thrust * np.cos(delta), thrust * np.sin(delta)

    wedge = 0.5 * (base - top) * height * stone
    block = top * height * stone
    vertical = wedge + block + down
    resisting = wedge * 2 / 3 * (base - top) + block * (base - top / 2) + down * base
    overturning = (soil / 3 + load / 2) * height * np.cos(delta)
    arm = (resisting - overturning) / vertical
    edge = np.minimum(arm, base - arm)
    with np.errstate(divide="ignore"):
        greatest = np.where(
            edge < base / 3, 2 * vertical / (3 * edge), vertical / base * (4 - 6 * edge / base)
        )
    sliding = street["base friction"] * vertical / across
    bearing = np.where(edge > 0, street["allowable bearing"] / greatest, 0)
    return thrust, sliding, resisting / overturning, bearing


def main():
    columns = checks(read(sys.argv[1]))
    np.savetxt(
        sys.argv[2],
        np.column_stack(columns),
        fmt="%.12g",
        delimiter=",",
        header="thrust,sliding,overturning,bearing",
        comments="",
    )


main()
