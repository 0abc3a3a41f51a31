// What each mistake gives, reckoned from the figures that a problem prints: spreaders, tanks, rates and prices.
import { area, down, type SlipsOf, up, volume } from "./slip-figures.js";

export const loadSlips: Readonly<Record<string, SlipsOf>> = {
  "spread/calibration": {
    "forgot passes": ({ q }) => q(2) / (q(0) * q(1)),
    "halved twice": ({ q }) => q(2) / (q(0) * q(1)) / 4,
    "perimeter for area": ({ q, length, level }) => q(2) / (2 * (q(0) + q(1)) * length) / level,
    "acre for 1,000 sq ft": ({ a, level }) => (level === 3 ? a / 43.56 : a * 43.56),
    "hectare for 100 m²": ({ a }) => a / 100,
    "forgot the length": ({ q, length, level }) => q(2) / (q(1) * length) / level,
    "forgot the width": ({ q, length, level }) =>
      level === 3 ? q(0) * q(3) * length : q(2) / (q(0) * length) / level,
    "width without overlap": ({ q }) => q(0) * q(1) * q(3),
    "overlap added": ({ q }) => q(0) * (q(1) + (q(1) - q(2))) * q(3),
    "one unit of area only": ({ q, per }) => q(0) * per,
  },
  "spread/passes": {
    "last strip left out": ({ q, level }) => down(q(0) / (level === 1 ? q(1) : q(1) - q(2))),
    "one pass too many": ({ a }) => a + 1,
    "half the swath": ({ q }) => up(q(0) / (q(1) / 2)),
    "forgot the swath": ({ q, length }) => q(0) / length,
    "width without overlap": ({ q }) => up(q(0) / q(1)),
    "overlap added": ({ q }) => up(q(0) / (q(1) + q(2))),
    "whole rate on each pass": ({ q }) => q(0) * q(1),
    "halved twice": ({ q }) => (q(0) * q(1)) / 4,
    "one unit of area only": ({ q, per }) => (q(1) * per) / 2,
    "acre for 1,000 sq ft": ({ a }) => a / 43.56,
    "hectare for 100 m²": ({ a }) => a * 100,
  },
  "tank/coverage": {
    "tank over area": ({ q, vol, us, per }) => {
      const unit = us ? area.acre : per;
      return ((q(1) * unit) / vol / (q(0) / vol)) * unit;
    },
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "acre for 1,000 sq ft": ({ a }) => a / 43.56,
    "hectare for 100 m²": ({ a }) => a / 100,
    "whole tanks only": ({ q }) => q(0),
    "room left in the tank": ({ q, a }) => q(0) - a,
    "shared out evenly": ({ q }) => (q(2) * q(1)) / up((q(2) * q(1)) / q(0)),
    "whole job for the last load": ({ q }) => q(2) * q(1),
  },
  "tank/product-per-load": {
    "one unit of area only": ({ q, per }) => q(0) * per,
    "acre for 1,000 sq ft": ({ a }) => a / 43.56,
    "hectare for 100 m²": ({ a }) => a * 100,
    "fraction upside down": ({ q, per, level, us, vol }) => {
      const unit = us ? volume["fl oz"] : vol;
      const areas = level === 1 ? q(1) / per : q(2) / (q(1) * per);
      return (areas / ((q(0) * per) / unit)) * unit;
    },
    "divided by the area": ({ q, per }) => (q(0) * per) / (q(1) / per),
    "tank over area": ({ q, per }) => (q(0) * per * (q(1) * per)) / q(2),
    "tank times rate": ({ q, per, vol }) => q(0) * per * (q(2) / vol),
  },
  "tank/dilution": {
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "ounce for fluid ounce": ({ a }) => a / 8,
    "fluid ounces in a quart": ({ a }) => a / 4,
    "percentage as a whole number": ({ q }) => q(0) * q(1),
    "divided by the percentage": ({ q }) => (q(0) * 100) / q(1),
    "parts of water for parts of the mix": ({ q, b, level }) => q(0) / (level === 2 ? b(1) + 1 : b(1)),
    "water for product": ({ q, a }) => q(0) - a,
    // as if the stated spray were the water, one part less, or the mix one part more
    "product added on top": ({ q, b, level }) => q(0) / (level === 2 ? b(1) - 1 : b(1) + 2),
    "parts as percent": ({ q, b }) => (q(0) * b(1)) / 100,
  },
  "quantity/rates": {
    "units upside down": ({ a, us, level }) => a * (us ? 43.56 ** 2 : level === 1 ? 10_000 : 1 / 100),
    "forgot to convert": ({ a, us, level, u, q, vol, per }) =>
      level === 1
        ? a * (us ? 43.56 : 100)
        : us
          ? (q(0) / (volume.pt / area.acre) / 43.56) * u
          : (q(0) / (vol / per)) * u,
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "acre as 1,000 sq ft times 10": ({ a }) => a * 4.356,
    "acre for 1,000 sq ft": ({ a }) => a * 43.56,
    "fluid ounces in a quart": ({ a }) => a * 2,
    "hectare for 100 m²": ({ a }) => a * 100,
  },
  "quantity/rates-per-acre": {
    "units upside down": ({ a, us }) => a / (us ? 43.56 ** 2 : 10_000),
    "forgot to convert": ({ a, us }) => a / (us ? 43.56 : 100),
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "acre as 1,000 sq ft times 10": ({ a }) => (a / 43.56) * 10,
  },
  "nutrient/cost": {
    "price of the product for that of the nutrient": ({ q, level, mass }) =>
      level === 1 ? q(1) / mass : q(2) / q(0),
    "multiplied by the percentage": ({ q, level, mass }) =>
      level === 1 ? (q(1) * q(0)) / 100 / mass : ((q(2) / q(0)) * q(1)) / 100,
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "forgot the weight of the bag": ({ q, mass }) => (q(2) * 100) / q(1) / mass,
    "price upside down": ({ q, mass }) => ((q(0) / mass / q(2)) * 100) / q(1) / mass,
    "percentage taken off": ({ q, level, mass }) =>
      level === 1 ? (q(1) * (1 + (100 - q(0)) / 100)) / mass : (q(2) / q(0)) * (1 + (100 - q(1)) / 100),
  },
  "nutrient/liquids": {
    "density upside down": ({ a, q, mass, vol, level }) =>
      a * (q(level === 3 ? 2 : 1) / (mass / vol)) ** (level === 3 ? 2 : -2),
    "forgot the density": ({ a, q, mass, vol, level }) =>
      a * (q(level === 3 ? 2 : 1) / (mass / vol)) ** (level === 3 ? 1 : -1),
    "water weight for the liquid": ({ q, mass, vol }) => q(0) * 8.34 * (mass / vol),
    "decimal point one place off": ({ a, level }) => (level === 1 ? a / 10 : a * 10),
    "nutrient for product": ({ q }) => q(1),
    "divided by the percentage": ({ q }) => (q(1) * 100) / q(0),
    "product for nutrient": ({ q }) => q(0) / q(2),
    "multiplied by the percentage": ({ q, per, mass, vol }) =>
      ((((q(0) * per) / mass) * (q(2) / (mass / vol)) * q(1)) / 100) * (vol / per),
  },
  "price/per-area": {
    "divided by the price": ({ a, price }) => a / price ** 2,
    "decimal point one place off": ({ a }) => [a / 10, a * 10],
    "forgot the price": ({ a, price }) => a / price,
    "one unit of area only": ({ q, per, mass, price }) => ((q(0) * per) / mass) * price,
  },
  "spray/catch": {
    "feet for inches": ({ a }) => a / 12,
    "meters for centimeters": ({ a }) => a / 100,
    "yards for feet": ({ a }) => a / 3,
    "decimal point one place off": ({ a }) => a * 10,
    "half the swath": ({ a }) => a * 2,
    "spacing for swath": ({ a, b }) => a / b(0),
    "counted every nozzle": ({ a, b }) => a * b(0),
    "ounce for fluid ounce": ({ a }) => a * 8,
    "fluid ounces in a quart": ({ a }) => a * 4,
  },
  "spray/bands": {
    "width upside down": ({ q }) => (q(2) * q(1)) / q(0),
    "whole row for the band": ({ q }) => q(2),
    "the part that stays untreated": ({ q }) => (q(2) * (q(1) - q(0))) / q(1),
    "decimal point one place off": ({ a }) => a / 10,
  },
  "spray/heavy-liquids": {
    "ratio without the root": ({ q }) => (q(0) * q(1)) / q(2),
    "density the wrong way": ({ q }) => q(0) * Math.sqrt(q(2) / q(1)),
    "forgot the density": ({ q }) => q(0),
    "density upside down": ({ q }) => (q(0) * q(2)) / q(1),
  },
  "spread/capacity": {
    "speed and width alone": ({ q, a, level }) => (level === 1 ? (a * 100) / q(2) : (a * q(2)) / 100),
    "efficiency taken off": ({ q, level }) =>
      level === 1 ? q(0) * q(1) * (1 - q(2) / 100) : q(3) / (q(0) * q(1) * (1 - q(2) / 100)),
    "divided by the percentage": ({ q, a, level }) => a * (100 / q(2)) ** (level === 1 ? 2 : -2),
    "hours upside down": ({ a, u }) => (u / a) * u,
    "decimal point one place off": ({ a }) => a * 10,
  },
  "tank/rinsing": {
    "one part to the other": ({ q }) => (100 * q(0)) / q(1),
    "share that is gone": ({ a }) => 100 - a,
    "one rinse only": ({ q }) => (100 * q(0)) / (q(0) + q(1)),
    "all water at once": ({ q, b }) => (100 * q(0)) / (q(0) + b(0) * q(1)),
    "divided by the number of rinses": ({ q, b }) => (100 * q(0)) / (q(0) + q(1)) / b(0),
    "one rinse too many": ({ q }) => 100 * (q(0) / (q(0) + q(1))) ** 2,
    "decimal point one place off": ({ a }) => a / 10,
  },
};
