import { describe, expect, it } from "vitest";
import {
  hargreavesEvapotranspirationsMmPerD,
  referenceEvapotranspirationsMmPerD,
  type StationDays,
} from "../../../src/water/index.js";
import { complaint } from "../../errors.js";
import { tellsEach } from "../../tells.js";

/** One station-day from plain numbers. */
const one = (day: Readonly<Record<keyof typeof least, number>>) =>
  Object.fromEntries(
    Object.entries(day).map(([name, value]) => [name, Float64Array.of(value)]),
  ) as unknown as StationDays;
/** A summer day on which every figure is the least that is taken; the sun stands over the south pole in January. */
const least = {
  tMinC: -90,
  tMaxC: -90,
  vaporPressureKPa: 0,
  windAtTwoMetersMPerS: 0,
  solarMJPerM2D: 0,
  elevationM: -500,
  latitudeDeg: -90,
  dayOfYear: 1,
};
/** The most that is taken; in the north, on the longest of its days that the year has left. */
const most = {
  tMinC: 60,
  tMaxC: 60,
  vaporPressureKPa: 20,
  windAtTwoMetersMPerS: 120,
  solarMJPerM2D: 50,
  elevationM: 9000,
  latitudeDeg: -90,
  dayOfYear: 366,
};
const usual = {
  tMinC: 12,
  tMaxC: 24,
  vaporPressureKPa: 1.4,
  windAtTwoMetersMPerS: 2,
  solarMJPerM2D: 20,
  elevationM: 100,
  latitudeDeg: 45,
  dayOfYear: 172,
};
const words = {
  tMinC: "an air temperature of -90 to 60 °C",
  tMaxC: "an air temperature of -90 to 60 °C",
  vaporPressureKPa: "a vapor pressure of 0 to 20 kPa",
  windAtTwoMetersMPerS: "a wind speed of 0 to 120 m/s",
  solarMJPerM2D: "a radiation of 0 to 50 MJ/m2/d",
  elevationM: "an elevation of -500 to 9000 m",
  latitudeDeg: "a latitude of -90 to 90 deg",
  dayOfYear: "a day of the year of 1 to 366 d",
};
const names = Object.keys(words) as readonly (keyof typeof words)[];
const hargreavesNames = ["tMinC", "tMaxC", "latitudeDeg", "dayOfYear"] as const;
const four = (day: StationDays) =>
  ({
    tMinC: day.tMinC,
    tMaxC: day.tMaxC,
    latitudeDeg: day.latitudeDeg,
    dayOfYear: day.dayOfYear,
  }) as const;

describe("the array of days", () => {
  it("takes each figure at its least and at its most", () => {
    expect(complaint(() => referenceEvapotranspirationsMmPerD(one(least)))).toBe("nothing thrown");
    expect(complaint(() => referenceEvapotranspirationsMmPerD(one(most)))).toBe("nothing thrown");
    expect(complaint(() => referenceEvapotranspirationsMmPerD(one({ ...usual, latitudeDeg: 90 })))).toBe(
      "nothing thrown",
    );
    const mild = { ...least, tMinC: -17.8, tMaxC: -17.8 };
    expect(complaint(() => hargreavesEvapotranspirationsMmPerD(four(one(mild))))).toBe("nothing thrown");
    expect(complaint(() => hargreavesEvapotranspirationsMmPerD(four(one(most))))).toBe("nothing thrown");
    const cold = { ...most, tMinC: -90, latitudeDeg: 90 };
    expect(complaint(() => hargreavesEvapotranspirationsMmPerD(four(one(cold))))).toBe("nothing thrown");
  });

  // Beyond a bound, with all others at theirs: only the bad one may be named.
  tellsEach(
    names.flatMap((name) => [
      [
        () => referenceEvapotranspirationsMmPerD(one({ ...least, [name]: least[name] - 1 })),
        `range ${name}[0]: expected ${words[name]}, got ${least[name] - 1}`,
      ],
      [
        () =>
          referenceEvapotranspirationsMmPerD(
            one({ ...most, [name]: name === "latitudeDeg" ? 91 : most[name] + 1 }),
          ),
        `range ${name}[0]: expected ${words[name]}, got ${name === "latitudeDeg" ? 91 : most[name] + 1}`,
      ],
      [
        () => referenceEvapotranspirationsMmPerD(one({ ...usual, [name]: Number.NaN })),
        `not-finite ${name}[0]: expected a finite number, got not a number`,
      ],
    ]),
  );
  tellsEach(
    hargreavesNames.flatMap((name) => [
      [
        () => hargreavesEvapotranspirationsMmPerD(four(one({ ...least, [name]: least[name] - 1 }))),
        `range ${name}[0]: expected ${words[name]}, got ${least[name] - 1}`,
      ],
      [
        () =>
          hargreavesEvapotranspirationsMmPerD(
            four(one({ ...most, [name]: name === "latitudeDeg" ? 91 : most[name] + 1 })),
          ),
        `range ${name}[0]: expected ${words[name]}, got ${name === "latitudeDeg" ? 91 : most[name] + 1}`,
      ],
      [
        () => hargreavesEvapotranspirationsMmPerD(four(one({ ...usual, [name]: Number.NaN }))),
        `not-finite ${name}[0]: expected a finite number, got not a number`,
      ],
    ]),
  );
  tellsEach([
    [
      () => referenceEvapotranspirationsMmPerD(one({ ...usual, tMinC: 25 })),
      "conflict tMinC[0]: expected not more than tMaxC[0], which is 24, got 25",
    ],
    [
      () => hargreavesEvapotranspirationsMmPerD(four(one({ ...usual, tMinC: 25 }))),
      "conflict tMinC[0]: expected not more than tMaxC[0], which is 24, got 25",
    ],
    [
      () => referenceEvapotranspirationsMmPerD(one({ ...usual, tMinC: 24, latitudeDeg: 89, dayOfYear: 1 })),
      "infeasible latitudeDeg[0]: expected a day on which the sun rises, got 89",
    ],
    [
      () => hargreavesEvapotranspirationsMmPerD(four(one({ ...usual, tMinC: -20, tMaxC: -20 }))),
      "range tMaxC[0]: expected a mean temperature of -17.8 °C or more, got -20",
    ],
    [
      () => referenceEvapotranspirationsMmPerD({ ...one(usual), outMmPerD: new Float64Array(2) }),
      "conflict outMmPerD: expected 1 places, one for each day, got 2",
    ],
    [
      () => hargreavesEvapotranspirationsMmPerD({ ...four(one(usual)), outMmPerD: new Float64Array(2) }),
      "conflict outMmPerD: expected 1 places, one for each day, got 2",
    ],
    [
      () => hargreavesEvapotranspirationsMmPerD({ ...four(one(usual)), outMM: new Float64Array(1) } as never),
      'type input.outMM: expected one of the fields tMinC, tMaxC, latitudeDeg, dayOfYear, outMmPerD, got a field "outMM"',
    ],
  ]);

  it("fills the array that is handed in", () => {
    const out = new Float64Array(1);
    expect(hargreavesEvapotranspirationsMmPerD({ ...four(one(usual)), outMmPerD: out })).toBe(out);
    expect(out[0]).toBeGreaterThan(3);
    expect(referenceEvapotranspirationsMmPerD({ ...one(usual), outMmPerD: out })).toBe(out);
    expect(out[0]).toBeGreaterThan(3);
  });

  it("equal temperatures make zero by Hargreaves, and no zero below zero", () => {
    const [value] = hargreavesEvapotranspirationsMmPerD(four(one({ ...usual, tMinC: 24 })));
    expect(Object.is(value, 0)).toBe(true);
  });
});
