import { quantity } from "../../src/quantity/index.js";
import { pressureOfHeight, pumpPower } from "../../src/water/index.js";
import { to } from "./answer.js";
import type { PublishedCheck, Source } from "./check.js";

const companion = (where: string): Source => ({
  title: "Scilab textbook companion 3897",
  publisher: "FOSSEE, Indian Institute of Technology Bombay",
  where,
  url: "https://github.com/FOSSEE/Scilab-TBC-Uploads",
});
const whole = quantity(100, "%");

/** Pressure, head and the power of a pump. */
export const waterSupplyChecks: readonly PublishedCheck[] = [
  {
    entry: "pump-010",
    formulas: ["pumpPower"],
    source: companion("chapter 7, example 7.7 (page 201 of the book)"),
    reached: "read",
    given: "500 L/s against 25 m take 150 kW",
    answers: [to("% of efficiency", 82, 1)],
    compute: () => {
      const flow = quantity(1800, "m3/h", "water");
      const pump = pumpPower({ flow, head: quantity(25, "m"), efficiency: whole });
      return [(100 * pump.waterKilowatts) / 150];
    },
    note: "the program prints 81.67 by 9.8 m/s2, of two digits: taken to the percent",
  },
  {
    entry: "pump-011",
    formulas: ["pumpPower"],
    source: companion("chapter 7, example 7.8 (page 201 of the book)"),
    reached: "read",
    given: "1500 gpm, 100 ft of lift and 3000 ft of pipe at 0.024 ft/ft, a pump of 65 %",
    answers: [to("brake horsepower", 100, 1)],
    compute: () => [
      pumpPower({
        flow: quantity(1500, "gal/min", "water"),
        head: quantity(100 + 3000 * 0.024, "ft"),
        efficiency: quantity(65, "%"),
      }).brakeHorsepower,
    ],
    note: "the program prints 100.2; the slope is read from a nomograph to two digits",
  },
  {
    entry: "water-090",
    formulas: ["pressureOfHeight"],
    source: companion("chapter 2, example 2.2 (page 30 of the book)"),
    reached: "read",
    given: "points 5, 30 and 45 m below the water level",
    answers: [to("kPa at 5 m", 49, 1), to("kPa at 30 m", 294, 1), to("kPa at 45 m", 441, 1)],
    compute: () => [5, 30, 45].map((m) => pressureOfHeight({ height: quantity(m, "m") }).in("kPa")),
  },
];
