// What each mistake gives, reckoned from the figures that a problem prints: first of what is spread and sprayed. The names of
// the mistakes say what is done wrong; no figure here comes from the program.
import { area, down, type SlipsOf, up } from "./slip-figures.js";

/** A pound of P2O5 holds 0.4364 lb of P: the two figures that the problem prints, one by the other. */
const bagSlips: SlipsOf = {
  "rounded packages down": ({ q, g, level }) =>
    down(level === 1 ? q(0) / q(1) : level === 2 ? (q(0) * q(1)) / q(2) : (q(0) * q(1) * 100) / g(0) / q(2)),
  "one package too many": ({ a }) => a + 1,
  "counted without the package size": ({ q, g, level, mass }) =>
    up((level === 1 ? q(0) : level === 2 ? q(0) * q(1) : (q(0) * q(1) * 100) / g(0)) / mass),
  "product for nutrient": ({ q }) => up((q(0) * q(1)) / q(2)),
  "multiplied by the percentage": ({ q, g }) => up((q(0) * q(1) * g(0)) / 100 / q(2)),
};

export const applicationSlips: Readonly<Record<string, SlipsOf>> = {
  "nutrient/product-rate": {
    "multiplied by the percentage": ({ q, g, whole }) => ((q(0) * g(0)) / 100) * whole(1),
    "product for nutrient": ({ a, q, g, whole, level }) => (level === 3 ? (a * g(1)) / 100 : q(0) * whole(1)),
    "wrong number of the grade": ({ a, q, g, whole, level }) =>
      level === 3 ? (a * g(1)) / g(0) : ((q(0) * 100) / g(2)) * whole(1),
    "P for P2O5": ({ q, g }) => ((q(0) * 100) / g(1)) * q(3),
    "P2O5 for P the wrong way": ({ q, g }) => ((q(0) * q(2)) / q(1) / g(1)) * 100 * q(3),
    "one unit of area only": ({ a, q, g, per, level }) =>
      level === 3 ? (a / q(3)) * per : ((q(0) * 100) / g(0)) * per,
    "decimal point one place off": ({ a }) => a / 10,
    "acre for 1,000 sq ft": ({ a }) => a / 43.56,
    "hectare for 100 m²": ({ a }) => a * 100,
  },
  "nutrient/nutrient-supplied": {
    "divided by the percentage": ({ q, g, whole }) => ((q(0) * 100) / g(0)) * whole(1),
    "nutrient for product": ({ q, whole }) => q(0) * whole(1),
    "wrong number of the grade": ({ q, g, whole }) => ((q(0) * g(2)) / 100) * whole(1),
    "decimal point one place off": ({ a }) => a * 10,
    "one unit of area only": ({ q, g, per }) => ((q(0) * g(0)) / 100) * per,
    "acre for 1,000 sq ft": ({ a }) => a / 43.56,
  },
  "nutrient/bags": bagSlips,
  "spray/whole-boom": {
    "swath for spacing": ({ q, b, a, level }) => (level === 1 ? q(0) / (q(2) * q(3)) : a * b(0)),
    "feet for inches": ({ a, level }) => (level === 1 ? a * 12 : a / 12),
    "meters for centimeters": ({ a, level }) => (level === 1 ? a * 100 : a / 100),
    "forgot the swath": ({ q, length }) => q(0) / (q(2) * length),
    "speed the wrong way": ({ q, speed, level, b }) =>
      ((level === 1 ? q(0) / q(1) : q(0) / (b(0) * q(1))) * (q(2) / speed)) / speed,
    "minutes for hours": ({ a }) => a / 60,
    "divided by the number of nozzles": ({ a, b }) => a / b(0),
  },
  "spray/speed-for-flow": {
    "counted every nozzle": ({ a, b }) => a * b(0),
    "spacing for swath": ({ a, b }) => a / b(0),
    "feet for inches": ({ a }) => a / 12,
    "meters for centimeters": ({ a }) => a / 100,
    "fraction upside down": ({ a, speed }) => (speed / a) * speed,
    "minutes for hours": ({ a }) => a / 60,
    "decimal point one place off": ({ a }) => a * 10,
  },
  "spray/hand-gun": {
    "seconds for minutes": ({ a }) => a * 60,
    "fraction upside down": ({ q, level, vol, per, per100 }) =>
      level === 1
        ? (q(0) / (vol / 60) / (q(1) / 60)) * vol
        : (((q(2) * q(3)) / (per === area.ha ? per100 : per) / ((q(0) * q(1)) / vol)) * vol) /
          (per === area.ha ? per100 : per),
    "one minute only": ({ q }) => q(0) * 60,
    "minutes for hours": ({ a }) => a / 60,
    "decimal point one place off": ({ a }) => a * 10,
    "forgot the width": ({ q, length }) => (q(0) * q(1)) / (q(2) * length),
    "perimeter for area": ({ q, length }) => (q(0) * q(1)) / (2 * (q(2) + q(3)) * length),
    "forgot to divide by the unit of area": ({ q, u, vol }) => ((q(0) * q(1)) / vol) * u,
  },
  "tank/per-volume": {
    "fraction upside down": ({ q, u, vol, level }) =>
      level === 1 ? (q(1) / vol / (q(0) / (u / vol))) * u : ((q(0) * q(1)) / q(2) / u) * u,
    "one unit of spray only": ({ q, vol, level }) => (level === 1 ? q(0) * vol : q(0)),
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "added instead of multiplied": ({ q, u, vol }) => (q(0) / (u / vol) + q(1) / vol) * u,
    "rate for 100 as for one": ({ q, vol }) => q(0) * (q(2) / vol),
  },
  "tank/strength": {
    "product for nutrient": ({ a, strength }) => (a * strength) / 100,
    "multiplied by the percentage": ({ a, strength }) => a * (strength / 100) ** 2,
    "fraction upside down": ({ q, level }) =>
      level < 3 ? (q(0) * q(2)) / q(1) : (q(0) * q(2) * q(3)) / q(1),
    "carrier for product": ({ q, a }) => q(0) - a,
    "water for product": ({ q, a, level }) => (level === 3 ? q(0) * q(2) : q(0)) - a,
    "forgot the density": ({ q, u, vol }) => ((q(0) / vol) * u * q(1)) / q(3),
    "decimal point one place off": ({ a }) => a * 10,
  },
  "tank/spray-for-active": {
    "forgot the density": ({ q, u, per, mass, us }) =>
      ((((q(0) * (us ? area.acre : per)) / mass) * 100) / q(1)) * u,
    "multiplied by the percentage": ({ q, u, us, per, mass, vol }) =>
      ((((q(0) * (us ? area.acre : per)) / mass) * ((q(2) / mass) * vol) * q(1)) / 100) * u,
    "product for nutrient": ({ q }) => q(0) / q(2),
    "fraction upside down": ({ a, u }) => (u / a) * u,
    "percentage as a whole number": ({ a }) => a / 100,
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
  },
  "tank/spray-for-area": {
    "one unit of area only": ({ q, per, level }) => q(level === 2 ? 2 : 1) * per,
    "acre for 1,000 sq ft": ({ a }) => a / 43.56,
    "hectare for 100 m²": ({ a }) => a * 100,
    "divided by the area": ({ q, per, vol, level }) =>
      level === 2
        ? ((q(0) * q(1)) / per / ((q(2) * per) / vol)) * vol
        : (q(0) / per / ((q(1) * per) / vol)) * vol,
    "perimeter for area": ({ q, length }) => q(2) * 2 * (q(0) + q(1)) * length,
    "decimal point one place off": ({ a }) => a * 10,
  },
  "quantity/flow": {
    "ounce for fluid ounce": ({ a }) => a * 8,
    "fluid ounces in a quart": ({ a }) => a * 4,
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "time left out": ({ q }) => q(0) / 60,
    "fraction upside down": ({ a, u }) => (u / a) * u,
  },
  "nutrient/in-a-bag": {
    "wrong number of the grade": ({ a, g, text }) =>
      /potash/.test(text) ? (a * g(1)) / g(2) : (a * g(2)) / g(1),
    "nutrient for product": ({ q, bags }) => q(0) * bags,
    "potash for potassium": ({ q, g, bags }) => (q(0) * bags * g(2)) / 100,
    "oxide for element": ({ q, g, bags }) => (q(0) * bags * g(1)) / 100,
    "one bag only": ({ a, bags }) => a / bags,
    "divided by the percentage": ({ q, g, text, bags }) =>
      (q(0) * bags * 100) / g(/potash/.test(text) ? 2 : 1),
    "decimal point one place off": ({ a }) => a * 10,
  },
  "plan/season-order": {
    "forgot the number of applications": ({ q, level }) =>
      level === 1 ? q(0) * q(1) : up((q(0) * q(1)) / q(2)),
    "one unit of area only": ({ q, b, per }) => q(0) * per * b(0),
    "acre for 1,000 sq ft": ({ a }) => a / 43.56,
    "hectare for 100 m²": ({ a }) => a * 100,
    "decimal point one place off": ({ a }) => a * 10,
    "rounded packages down": ({ q, b }) => down((b(0) * q(0) * q(1)) / q(2)),
    "one package too many": ({ a }) => a + 1,
    "counted without the package size": ({ q, b, vol }) => up((b(0) * q(0) * q(1)) / vol),
    "rounded for each application": ({ q, b }) => b(0) * up((q(0) * q(1)) / q(2)),
    "ounce for fluid ounce": ({ q, b }) => up((b(0) * q(0) * q(1) * 8) / q(2)),
  },
  "spray/application-volume": {
    "counted every nozzle": ({ a, b }) => a * b(0),
    "spacing for swath": ({ a, b, level }) => (level === 1 ? a / b(0) : a * b(0)),
    "forgot the number of nozzles": ({ a, b }) => a / b(0),
    "divided by the number of nozzles": ({ a, b, level }) => a / b(0) ** (level - 1),
    "feet for inches": ({ a, level }) => (level === 1 ? a / 12 : a * 12),
    "meters for centimeters": ({ a, level }) => (level === 1 ? a / 100 : a * 100),
    "seconds for minutes": ({ a }) => a / 60,
    "speed the wrong way": ({ q, a, speed, level }) => a * (q(1) / speed) ** (level === 1 ? 2 : -2),
  },
  "spray/speed": {
    "forgot to convert": ({ q, u, speed, length, level }) =>
      level === 1
        ? (q(0) / length / q(1)) * u
        : level === 2
          ? ((2 * q(0)) / length / (q(1) + q(2))) * u
          : q(1) / length / (q(0) / speed),
    "time upside down": ({ a, u }) => (u / a) * u,
    "units upside down": ({ q, u, speed, length, level }) =>
      level === 1
        ? (q(0) / length / q(1)) * (speed / length) * u
        : q(1) / length / ((q(0) / speed) * (length / speed)),
    "yards for feet": ({ a }) => a * 3,
    "averaged speeds wrongly": ({ q }) => (q(0) / q(1) + q(0) / q(2)) / 2,
    "one run only": ({ q }) => [q(0) / q(1), q(0) / q(2)],
    "distance of one run, time of both": ({ q }) => q(0) / (q(1) + q(2)),
    "multiplied by the speed": ({ q, speed, length }) => (q(1) / length) * (q(0) / speed) * (length / speed),
  },
  "spray/refill": {
    "forgot passes": ({ q }) => q(2) / (q(0) * q(1)),
    "counted a pass twice": ({ q, b }) => q(2) / (q(0) * q(1) * (b(0) + 1)),
    "acre for 1,000 sq ft": ({ a, level }) => (level === 1 ? a * 43.56 : a / 43.56),
    "hectare for 100 m²": ({ a, level }) => (level === 1 ? a * 100 : a / 100),
    "perimeter for area": ({ q, length }) => q(2) / (2 * (q(0) + q(1)) * length),
    "forgot the width": ({ q, length, passes }) => q(2) / (q(0) * length * passes),
    "forgot the length": ({ q, length, passes }) => q(2) / (q(1) * length * passes),
  },
  "spray/pressure": {
    "pressure in proportion": ({ q }) => (q(0) * q(2)) / q(1),
    "pressure upside down": ({ q, level }) =>
      level === 2 ? q(0) * Math.sqrt(q(1) / q(2)) : q(1) * (q(0) / q(2)) ** 2,
    "pressure squared": ({ q }) => q(0) * (q(2) / q(1)) ** 2,
    "pressure the wrong way": ({ q }) => (q(0) * q(1)) / q(2),
    "forgot the square": ({ q }) => (q(1) * q(2)) / q(0),
    "square root for square": ({ q }) => q(1) * Math.sqrt(q(2) / q(0)),
    "fraction upside down": ({ q }) => (q(1) * q(0)) / q(2),
  },
  "spray/active-ingredient": {
    "multiplied by the percentage": ({ q }) => (q(0) * q(1)) / 100,
    "product for nutrient": ({ q, level, whole }) => (level === 1 ? q(0) : (q(0) * whole(2)) / 1000),
    "percentage taken off": ({ q }) => q(0) * (1 + (100 - q(1)) / 100),
    "decimal point one place off": ({ a }) => a / 10,
    "ounce for fluid ounce": ({ a }) => a / 8,
    "fluid ounces in a quart": ({ a }) => a / 4,
    // a pound a gallon, or a gram a liter: what the label states is put on the other side
    "multiplied by the strength": ({ a, q, vol, mass, us }) =>
      a * (q(1) / ((us ? mass : mass / 1000) / vol)) ** 2 * (us ? 1 : 1e-6),
    "fraction upside down": ({ a, q, vol, mass, us, per }) =>
      us
        ? a * (q(1) / (mass / vol) / ((q(0) * area.acre) / mass)) ** 2
        : a * (q(1) / (mass / vol) / ((q(0) * per) / mass)) ** 2,
    "one unit of area only": ({ q, us, per }) => (q(0) / q(1)) * (us ? area.acre : per),
    "divided by the area": ({ q, us, per }) => {
      const unit = us ? area.acre : per;
      return ((q(0) / q(1)) * unit) / (q(2) / unit);
    },
  },
};
