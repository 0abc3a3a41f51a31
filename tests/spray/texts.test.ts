import { describe, expect, test } from "vitest";
import { type Finding, quantity } from "../../src/quantity/index.js";
import {
  asApplied,
  nozzleCheck,
  pulseWidth,
  pumpCapacity,
  rateControllerCheck,
} from "../../src/spray/index.js";

// What a person reads who uses a sprayer: each finding of the room, word for word.

const water = (value: number) => quantity(value, "gal", "water");
const boom = (catches: readonly number[], rated?: number) =>
  nozzleCheck({
    catches: catches.map(water),
    time: quantity(1, "min"),
    divisor: "n",
    ...(rated === undefined ? {} : { rated: quantity(rated, "gal/min", "water") }),
  }).findings;
/** 59.4 gal/acre at 1 mi/h on 1 in takes a hundredth of a gal/min. */
const pulse = (percent: number, least = 20, most = 90) =>
  pulseWidth({
    full: quantity(1, "gal/min", "spray"),
    applicationVolume: quantity(59.4 * percent, "gal/acre", "spray"),
    speed: quantity(1, "mi/h"),
    width: quantity(1, "in"),
    duty: { least: quantity(least, "%"), most: quantity(most, "%") },
  }).findings;
const shown = (displayed: number) =>
  rateControllerCheck({ displayed: water(displayed), measured: water(50) }).findings;
const applied = (gallons: number) =>
  asApplied({
    used: quantity(gallons, "gal", "product"),
    area: quantity(1, "acre"),
    planned: quantity(50, "gal/acre", "product"),
    tolerance: quantity(5, "%"),
  }).findings;
const again =
  "nozzle/check-again: 2 of 4 nozzles are off, and they pull the mean. Catch the whole boom again after cleaning and replacing.";
const usual = (percent: number): string =>
  `pulse/outside-usual-duty: The nozzle is open ${percent} % of the time. A published guide wants 60 to 80 % at the usual speed, to leave room for turns and slower ground.`;

const read = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ code, text }) => `${code}: ${text}`);

const rows: readonly (readonly [name: string, findings: readonly Finding[], texts: readonly string[]])[] = [
  ["an even boom", boom([1, 1, 1, 1], 1), []],
  ["one worn and one plugged nozzle", boom([1, 1, 1.2, 0.8]), [again]],
  [
    "one plugged nozzle",
    boom([1, 1, 1, 1, 1, 0.7, 1, 1, 1, 1]),
    [
      "nozzle/check-again: 1 of 10 nozzles is off, and it pulls the mean. Catch the whole boom again after cleaning and replacing.",
    ],
  ],
  [
    "a nozzle that only a plugged one makes look worn",
    boom([1, 1, 1, 0]),
    [
      "nozzle/check-again: 1 of 4 nozzles is off, and it pulls the mean. Catch the whole boom again after cleaning and replacing.",
      "nozzle/clean-first: Low nozzles pull the mean down (nozzle 4); without them nozzles 1, 2 and 3 would be within the limit of the mean. Clean the low ones and catch the boom again before any of the others is replaced.",
    ],
  ],
  [
    "a boom that is low as a whole",
    boom([0.8, 0.8], 1).filter(({ code }) => code !== "nozzle/check-again"),
    [
      "nozzle/boom-low: The mean of the boom, without single plugged nozzles, is 20 % below the rated flow: the pressure at the nozzles is less than that of the rated flow, or screens and lines are plugged.",
    ],
  ],
  [
    "a boom that is worn as a whole",
    boom([1.25, 1.25], 1).filter(({ code }) => code !== "nozzle/check-again"),
    [
      "nozzle/boom-worn: The mean of the boom is 25 % above the rated flow: the set is worn, or the pressure at the nozzles is not what the gauge says.",
    ],
  ],
  ["a duty of 70 %", pulse(70), []],
  ["a duty of 50 %", pulse(50), [usual(50)]],
  ["a duty of 85 %", pulse(85), [usual(85)]],
  [
    "more than the system takes",
    pulse(95).slice(0, 1),
    [
      "pulse/nozzle-too-small: The nozzle would be open 95 % of the time, more than the 90 % that the system takes: choose a larger nozzle or another speed.",
    ],
  ],
  [
    "less than the system takes",
    pulse(10).slice(0, 1),
    [
      "pulse/nozzle-too-large: The nozzle would be open 10 % of the time, less than the 20 % that the system takes: choose a smaller nozzle or another speed.",
    ],
  ],
  ["a display within 5 %", shown(52), []],
  [
    "a display that shows too much",
    shown(55),
    [
      "controller/off: The display shows 10 % more than was measured, beyond 5 %: the controller puts on less than it is set to. Correct the meter number and check again.",
    ],
  ],
  [
    "a display that shows too little",
    shown(45),
    [
      "controller/off: The display shows 10 % less than was measured, beyond 5 %: the controller puts on more than it is set to. Correct the meter number and check again.",
    ],
  ],
  [
    // 52.5001 over 50 is 5.0002 %
    "a display that is a hair beyond",
    shown(52.5001),
    [
      "controller/off: The display shows 5.0002 % more than was measured, beyond 5 %: the controller puts on less than it is set to. Correct the meter number and check again.",
    ],
  ],
  ["as planned", applied(51), []],
  [
    "more than planned",
    applied(55),
    [
      "as-applied/off-plan: The real rate is 10 % above the plan. Calibrate again before the next application.",
    ],
  ],
  [
    "less than planned",
    applied(45),
    [
      "as-applied/off-plan: The real rate is 10 % below the plan. Calibrate again before the next application.",
    ],
  ],
  [
    "a pump that is too small",
    pumpCapacity({
      boom: quantity(72, "L/min", "spray"),
      tank: quantity(6500, "L"),
      agitation: quantity(3, "%"),
      reserve: quantity(0, "%"),
      pump: quantity(250, "L/min"),
    }).findings,
    [
      "pump/too-small: The pump is 17 L/min short of what the boom and the agitation take: the mix settles while spraying.",
    ],
  ],
];

describe("what is told of spraying", () => {
  test.each(rows)("%s", (_, findings, texts) => {
    expect(read(findings)).toEqual(texts);
  });
});
