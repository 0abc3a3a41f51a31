// What each mistake gives, reckoned from the figures that a problem prints: the ground, the stand, water and the season.
import { area, down, len, mean, type Seen, type SlipsOf, some, sum, up } from "./slip-figures.js";

const cans = (seen: Seen): readonly number[] =>
  [...some(seen, 0, seen.level === 2 ? 8 : 12)].sort((a, b) => a - b);
const widths = (seen: Seen): readonly number[] => some(seen, 1, seen.level === 2 ? 5 : 7);

export const groundSlips: Readonly<Record<string, SlipsOf>> = {
  "site/area": {
    "rectangle for triangle": ({ q }) => q(0) * q(1),
    "halved twice": ({ q }) => (q(0) * q(1)) / 4,
    "perimeter for area": ({ q, length }) => 2 * (q(0) + q(1)) * length,
    "diameter for radius": ({ q, level }) =>
      level === 2 ? Math.PI * q(0) ** 2 : q(0) * q(1) - Math.PI * q(2) ** 2,
    "circumference for area": ({ q, length, level }) =>
      level === 2 ? Math.PI * q(0) * length : q(0) * q(1) - Math.PI * q(2) * length,
    "forgot the square of the radius": ({ q, length }) => (Math.PI * q(0) * length) / 2,
    "square for circle": ({ q }) => q(0) ** 2,
    "forgot to take the part out": ({ q }) => q(0) * q(1),
    "added the part": ({ q }) => q(0) * q(1) + (Math.PI * q(2) ** 2) / 4,
  },
  "site/offsets": {
    "ends counted in full": (seen) => sum(widths(seen)) * seen.q(0),
    "ends left out": (seen) => sum(widths(seen).slice(1, -1)) * seen.q(0),
    "forgot the distance between widths": (seen) => sum(widths(seen)) * seen.length,
    "wrong number of readings": (seen) => mean(widths(seen)) * (widths(seen).length + 1) * seen.q(0),
  },
  "site/topdressing": {
    "27 for 9": ({ a }) => a * 3,
    "feet for inches": ({ a }) => a * 12,
    "cubic feet for cubic yards": ({ a }) => a * 27,
    "depth in the wrong unit": ({ a }) => [a * 10, a / 10],
    "forgot the depth": ({ q, length }) => q(0) * length,
    "perimeter for area": ({ q, length, level }) =>
      2 * (q(0) + q(1)) * length * q(2) * (level === 3 ? q(3) : 1),
    "density upside down": ({ q, u, us }) => {
      const cube = us ? len.yd ** 3 : 1;
      return ((q(0) * q(1) * q(2)) / cube / (q(3) / (u / cube))) * u;
    },
    "forgot the density": ({ q, u, us }) => ((q(0) * q(1) * q(2)) / (us ? len.yd ** 3 : 1)) * u,
  },
  "site/pond": {
    "forgot the depth": ({ a, q, length }) => a / (q(1) / length),
    "divided by the depth": ({ a, q, length }) => a / (q(1) / length) ** 2,
    "feet for inches": ({ a }) => a / 12,
    "yards for feet": ({ a }) => a / 3,
    "units upside down": ({ a }) => a / 1e6,
    "meters for centimeters": ({ a }) => a / 100,
    "forgot the dose": ({ a, q }) => a / (q(2) / 0.001),
    // acres times feet times milligrams per liter
    "forgot to convert": ({ q, u, level, strength }) =>
      (q(0) / area.acre) * (q(1) / len.ft) * (q(2) / 0.001) * (level === 3 ? 100 / strength : 1) * u,
    "decimal point one place off": ({ a }) => a / 10,
    "forgot the percent active": ({ a, strength }) => (a * strength) / 100,
    "multiplied by the percentage": ({ a, strength }) => a * (strength / 100) ** 2,
  },
  "stand/seed": {
    "purity only": ({ q, level }) => (level === 1 ? q(0) : (q(2) * q(3) * 100) / q(0)),
    "germination only": ({ q, level }) => (level === 1 ? q(1) : (q(2) * q(3) * 100) / q(1)),
    "average of purity and germination": ({ q }) => (q(0) + q(1)) / 2,
    "subtracted the losses": ({ q }) => 100 - (100 - q(0)) - (100 - q(1)),
    "live seed for bulk seed": ({ q, level }) => (level === 2 ? q(2) * q(3) : up((q(2) * q(3)) / q(4))),
    "multiplied by the live share": ({ q, level }) => {
      const less = (q(2) * q(3) * q(0) * q(1)) / 10_000;
      return level === 2 ? less : up(less / q(4));
    },
    "one unit of area only": ({ q, per }) => (q(2) * per * 10_000) / (q(0) * q(1)),
    "rounded packages down": ({ q }) => down((q(2) * q(3) * 10_000) / (q(0) * q(1)) / q(4)),
    "one package too many": ({ a }) => a + 1,
    "counted without the package size": ({ q, mass }) => up((q(2) * q(3) * 10_000) / (q(0) * q(1)) / mass),
  },
  "stand/mowing": {
    "share of the cut height": ({ q }) => ((q(0) - q(1)) * 100) / q(1),
    "share that stays": ({ q }) => (q(1) * 100) / q(0),
    "fraction upside down": ({ q }) => (q(0) * 100) / q(1),
    "a third on top": ({ q, level }) => (level === 2 ? (q(0) * 4) / 3 : q(0) / 3 / q(1)),
    "two thirds of the cut": ({ q }) => (q(0) * 2) / 3,
    "whole height again": ({ q, level }) => (level === 2 ? q(0) * 2 : q(0) / q(1)),
    "three times the cut": ({ q }) => q(0) * 3,
    "forgot the growth before": ({ q }) => (q(0) * 1.5) / q(1),
    "multiplied by the rate": ({ q, u, us }) => {
      const unit = us ? len.in : 0.001;
      return (q(0) / 2 / unit) * (q(1) / (unit / u)) * u;
    },
    "decimal point one place off": ({ a }) => a * 10,
  },
  "stand/plugs": {
    "spacing not squared": ({ q, length, whole }) =>
      up((q(0) / length / q(1)) * (1 + (whole(2) > 1 ? whole(2) : 0) / 100)),
    "feet for inches": ({ q, whole }) =>
      up((q(0) / q(1) ** 2 / 12) * (1 + (whole(2) > 1 ? whole(2) : 0) / 100)),
    "meters for centimeters": ({ q, whole }) =>
      up((q(0) / q(1) ** 2 / 100) * (1 + (whole(2) > 1 ? whole(2) : 0) / 100)),
    "one plant a unit of area": ({ q, length, whole }) =>
      up((q(0) / length ** 2) * (1 + (whole(2) > 1 ? whole(2) : 0) / 100)),
    "forgot the extra": ({ q }) => up(q(0) / q(1) ** 2),
    "percent taken off": ({ q }) => up((q(0) / q(1) ** 2) * (1 - q(2) / 100)),
  },
  "water/depth-and-time": {
    "forgot 0.623": ({ q, u }) => (((q(0) / len.in) * q(1)) / len.ft ** 2) * u,
    "divided by 0.623": ({ q, u }) => (((q(0) / len.in) * q(1)) / len.ft ** 2 / 0.6234) * u,
    "feet for inches": ({ a }) => a * 12,
    "forgot the depth": ({ q, u, us }) => (us ? (q(1) / len.ft ** 2) * 0.6234 : q(1)) * u,
    "depth in the wrong unit": ({ a }) => a / 10,
    "forgot to convert": ({ q, u }) => q(0) * q(1) * u,
    "divided by the depth": ({ q, u }) => (q(1) / (q(0) / 0.001)) * u,
    "forgot efficiency": ({ q }) => q(0) / q(1),
    "multiplied by efficiency": ({ q }) => ((q(0) / q(1)) * q(2)) / 100,
    "decimal point one place off": ({ q }) => (q(0) / q(1)) * 10,
    "fraction upside down": ({ q }) => 3600 * (q(1) / (q(0) / 3600)),
    "minutes for hours": ({ q, u }) => (q(0) / q(1) / 3600) * 100 * u,
    "forgot the depth of water": ({ q, us }) => (us ? len.in : 0.001) / q(1),
    "multiplied by the rate": ({ q, us }) => {
      const unit = us ? len.in : 0.001;
      return (q(0) / unit) * (q(1) / (unit / 3600)) * 3600;
    },
  },
  "water/uniformity": {
    "driest can only": (seen) => ((cans(seen)[0] ?? 0) * 100) / mean(cans(seen)),
    "all cans for the lowest quarter": (seen) =>
      (mean(cans(seen).slice(0, cans(seen).length / 2)) * 100) / mean(cans(seen)),
    "fraction upside down": ({ a }) => 10_000 / a,
    "driest against wettest": (seen) =>
      (mean(cans(seen).slice(0, cans(seen).length / 4)) * 100) / (cans(seen).at(-1) ?? 0),
  },
  "water/reserve": {
    "all water for the part used": ({ q, level }) => (level === 1 ? q(0) : q(0) / q(2)),
    "divided by the percentage": ({ q, level }) => (q(0) * 100) / q(1) / (level === 1 ? 1 : q(2)),
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "multiplied by the rate": ({ q, u, us }) => {
      const unit = us ? len.in : 0.001;
      return ((q(0) * q(1)) / 100 / unit) * (q(2) / (unit / u)) * u;
    },
    "the part that stays": ({ q }) => (q(0) * (100 - q(1))) / 100 / q(2),
  },
  "interval/degree-days": {
    "high for mean": ({ q, level }) =>
      level === 1 ? q(0) - q(2) : sum([0, 2, 4].map((i) => Math.max(0, q(i) - q(6)))),
    "forgot the base": (seen) => (seen.level === 1 ? mean(some(seen, 0, 2)) : sum(some(seen, 0, 6)) / 2),
    "range for mean": ({ q }) => q(0) - q(1),
    "sum for mean": ({ q }) => q(0) + q(1) - q(2),
    "low for mean": ({ q }) => q(1) - q(2),
    "negative days counted": (seen) => sum(some(seen, 0, 6)) / 2 - 3 * seen.q(6),
    "one day only": ({ q }) => (q(0) + q(1)) / 2 - q(6),
    // the cold day's shortfall is put on top
    "added instead of taken away": ({ q, a }) => a + q(6) - (q(2) + q(3)) / 2,
  },
  "limits/nitrogen-left": {
    "what is used for what is left": ({ q, a }) => q(0) - a,
    "forgot an entry": ({ q, a, level }) => a + q(level + 1),
    "added instead of taken away": ({ q, a }) => 2 * q(0) - a,
    "forgot what is gone already": ({ q }) => q(0),
  },
  "price/margin": {
    "markup for margin": ({ q }) => q(0) / (1 - q(1) / 100),
    "margin for markup": ({ q }) => q(0) * (1 + q(1) / 100),
    "percent alone": ({ q }) => (q(0) * q(1)) / 100,
    "percent taken off": ({ q }) => q(0) * (1 - q(1) / 100),
    "divided by the percent alone": ({ q }) => (q(0) * 100) / q(1),
  },
  "soil/lime": {
    "multiplied by the rating": ({ q, whole }) => ((q(0) * q(1)) / 100) * whole(2),
    "forgot the rating": ({ q, whole }) => q(0) * whole(2),
    "percentage taken off": ({ q, whole }) => q(0) * (1 + (100 - q(1)) / 100) * whole(2),
    "one unit of area only": ({ q, per }) => ((q(0) * 100) / q(1)) * per,
    "decimal point one place off": ({ a }) => a / 10,
  },
};
