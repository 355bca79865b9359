% SPDX-License-Identifier: GPL-3.0-or-later
% The numbers of an upright wall on level ground by Octave: Coulomb's thrust, sliding, overturning, bearing.
%   octave-cli coulomb.m STREET.csv RESULTS.csv
% A yardstick for `make bench`: what coulomb.py beside it computes, by the same formulas of docs/theory.md.
1;

function street = read(name)
  file = fopen(name, "r");
  header = strsplit(fgetl(file), ",");
  wanted = ! cellfun(@isempty, strfind(header, "[")) | strcmp(header, "base friction");
  form = cell(size(header));
  form(:) = "%*s";
  form(wanted) = "%f";
  table = textscan(file, strjoin(form, " "), "Delimiter", ",");
  fclose(file);
  items = regexprep(header(wanted), " \\[.*", "");
  street = containers.Map();
  for k = 1:numel(items)
    street(items{k}) = table{k};
  end
end

function value = either(street, one, other)
  if isKey(street, one)
    value = street(one);
  else
    value = street(other);
  end
end

function columns = checks(street)
  height = (street("wall height") + street("wall embedment")) / 1000;
  base = either(street, "block depth", "base width") / 1000;
  top = base;
  if isKey(street, "top width")
    top = street("top width") / 1000;
  end
  stone = either(street, "block unit weight", "wall unit weight");
  phi = deg2rad(street("soil 1 friction angle"));
  delta = deg2rad(street("wall friction"));

  root = sqrt(sin(phi + delta) .* sin(phi) ./ cos(delta));
  ka = cos(phi) .^ 2 ./ (cos(delta) .* (1 + root) .^ 2);
  soil = 0.5 * ka .* street("soil 1 unit weight") .* height .^ 2;
  load = ka .* street("load 1 pressure") .* height;
  thrust = soil + load;
  across = thrust .* cos(delta);
  down = thrust .* sin(delta);

  wedge = 0.5 * (base - top) .* height .* stone;
  block = top .* height .* stone;
  vertical = wedge + block + down;
  resisting = wedge * 2 / 3 .* (base - top) + block .* (base - top / 2) + down .* base;
  overturning = (soil / 3 + load / 2) .* height .* cos(delta);
  arm = (resisting - overturning) ./ vertical;
  edge = min(arm, base - arm);
  greatest = vertical ./ base .* (4 - 6 * edge ./ base);
  part = edge < base / 3;
  greatest(part) = 2 * vertical(part) ./ (3 * edge(part));
  has = street("allowable bearing") ./ greatest;
  has(edge <= 0) = 0;
  columns = [thrust, street("base friction") .* vertical ./ across, resisting ./ overturning, has];
end

given = argv();
columns = checks(read(given{1}));
file = fopen(given{2}, "w");
fprintf(file, "thrust,sliding,overturning,bearing\n");
fprintf(file, "%.12g,%.12g,%.12g,%.12g\n", columns');
fclose(file);
