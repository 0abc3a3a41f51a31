// The wet bulb a second time: the fit as its author prints it, the psychrometric equation with saturation in kelvin.
import { deltaT, wetBulb } from "../../src/interval/index.js";
import { quantity } from "../../src/quantity/index.js";
import { type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "interval";
const air = (t: number, rh: number) => ({ temperature: quantity(t, "°C"), humidity: quantity(rh, "%") });

/** R. Stull 2011, equation 1. */
const fitted = (t: number, rh: number): number =>
  t * Math.atan(0.151977 * (rh + 8.313659) ** (1 / 2)) +
  Math.atan(t + rh) -
  Math.atan(rh - 1.676331) +
  0.00391838 * rh ** (3 / 2) * Math.atan(0.023101 * rh) -
  4.686035;

/** F. W. Murray 1967: 6.1078 hPa at 273.16 K, with 17.2693882 and 35.86 over water, 21.8745584 and 7.66 over ice. */
const overWater = (k: number): number => 6.1078 * Math.exp((17.2693882 * (k - 273.16)) / (k - 35.86));
const overIce = (k: number): number => 6.1078 * Math.exp((21.8745584 * (k - 273.16)) / (k - 7.66));

/** Where `e = es(Tw) - A p (T - Tw)` holds, in °C, by the secant rule. */
const bulb = (t: number, rh: number, saturation: (k: number) => number, a: number): number => {
  // The zero of these formulas is 273.16 K, and they are stated in °C from there
  const k = (c: number): number => c + 273.16;
  const off = (w: number): number => saturation(k(w)) - a * 1013.25 * (t - w) - (rh / 100) * overWater(k(t));
  let [one, two] = [t - 1, t - 3];
  for (let n = 0; n < 60 && Math.abs(two - one) > 1e-13; n += 1) {
    const next = two - (off(two) * (two - one)) / (off(two) - off(one));
    [one, two] = [two, next];
  }
  return two;
};
const overWaterCoefficient = 6.6e-4;
const overIceCoefficient = 5.82e-4;

const fits = [
  [20, 50],
  [35, 30],
  [12, 90],
  [28, 65],
] as const;
const cold = [
  [-15, 20],
  [-5, 10],
] as const;

/** The wet bulb, by both of its ways. */
export const wetBulbConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "R. Stull, Journal of Applied Meteorology and Climatology 50 (2011), 2267-2269, equation 1; error -1 to +0.65 °C, 5 to 99 %, -20 to 50 °C",
    },
    [
      ...fits.flatMap(([t, rh]) => [
        [`wet bulb at ${t} °C, ${rh} %`, fitted(t, rh), () => wetBulb(air(t, rh)).value.in("°C")] as const,
        [`its low end`, fitted(t, rh) - 0.65, () => wetBulb(air(t, rh)).low.in("°C")] as const,
        [`its high end`, fitted(t, rh) + 1, () => wetBulb(air(t, rh)).high.in("°C")] as const,
        [
          `delta T at ${t} °C, ${rh} %`,
          t - fitted(t, rh),
          () => deltaT(air(t, rh)).value.in("°C diff"),
        ] as const,
      ]),
      ["coldest air, °C", -20, () => edge((t) => goes(() => wetBulb(air(t, 50))), 0, -30)],
      ["warmest air, °C", 50, () => edge((t) => goes(() => wetBulb(air(t, 50))), 20, 60)],
      ["driest air, %", 5, () => edge((rh) => goes(() => wetBulb(air(20, rh))), 50, 1)],
      ["moistest air, %", 99, () => edge((rh) => goes(() => wetBulb(air(20, rh))), 50, 100)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      within: 1e-9,
      source:
        "American Meteorological Society, Glossary, psychrometric formula: 6.60e-4 over water, 5.82e-4 over ice; F. W. Murray, Journal of Applied Meteorology 6 (1967), 203-204, in kelvin",
    },
    cold.flatMap(([t, rh]) => [
      [
        `iced bulb at ${t} °C, ${rh} %`,
        bulb(t, rh, overIce, overIceCoefficient),
        () => wetBulb(air(t, rh)).value.in("°C"),
      ] as const,
      [
        `low end of its band`,
        Math.min(bulb(t, rh, overWater, overWaterCoefficient), bulb(t, rh, overIce, overIceCoefficient)) -
          0.5,
        () => wetBulb(air(t, rh)).low.in("°C"),
      ] as const,
      [
        `high end of its band`,
        Math.max(bulb(t, rh, overWater, overWaterCoefficient), bulb(t, rh, overIce, overIceCoefficient)) +
          0.5,
        () => wetBulb(air(t, rh)).high.in("°C"),
      ] as const,
    ]),
  ),
];
