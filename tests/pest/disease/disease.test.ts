import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  brownPatchIndex,
  brownPatchOutlook,
  brownPatchSpells,
  dailySeries,
  dollarSpotOutlook,
  dollarSpotProbability,
  hourlyWeather,
  type Instant,
  pythiumCriteria,
  pythiumOutlook,
  quantity,
  runningMean,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const c = (value: number) => quantity(value, "°C");
const percent = (value: number) => quantity(value, "%");
const daily = (values: readonly (number | null)[], unit: string, start = "2026-06-01" as const) =>
  dailySeries({ start, unit, what: "weather", source: "station", values });
const temperature = fc.double({ min: -5, max: 38, noNaN: true });
const humidity = fc.double({ min: 1.1, max: 100, noNaN: true });

describe("dollarSpotProbability", () => {
  const p = (t: number, rh: number) =>
    dollarSpotProbability({ meanTemperature: c(t), meanHumidity: percent(rh) }).in("%");

  it("is a probability whose odds grow by the same factor with each degree and each percent", () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 1.1, max: 99, noNaN: true }), (t, rh) => {
        const odds = (value: number) => value / (100 - value);
        expect(p(t, rh)).toBeGreaterThan(0);
        expect(p(t, rh)).toBeLessThan(100);
        expect(odds(p(t + 1, rh)) / odds(p(t, rh))).toBeCloseTo(Math.exp(0.1932), 6);
        expect(odds(p(t, rh + 1)) / odds(p(t, rh))).toBeCloseTo(Math.exp(0.0894), 6);
      }),
    );
  });

  it("does not depend on the scale", () => {
    const f = dollarSpotProbability({ meanTemperature: quantity(68, "°F"), meanHumidity: percent(80) });
    expect(f.in("%")).toBeCloseTo(p(20, 80), 9);
  });

  it("refuses a share taken for a percent, and what is missing", () => {
    const call = dollarSpotProbability as (input: unknown) => unknown;
    expect(complaints(() => call({ meanTemperature: c(20), meanHumidity: quantity(80, "1") }))).toEqual([
      "range meanHumidity",
    ]);
    expect(complaints(() => call({}))).toEqual(["missing meanTemperature", "missing meanHumidity"]);
  });
});

describe("dollarSpotOutlook", () => {
  const weather = fc.array(
    fc.record({ t: fc.option(temperature, { freq: 9 }), rh: fc.option(humidity, { freq: 9 }) }),
    {
      minLength: 1,
      maxLength: 20,
    },
  );

  it("is the probability of the five-day means, and nothing where a figure is missing", () => {
    fc.assert(
      fc.property(weather, (days) => {
        const [warm, humid] = [
          daily(
            days.map(({ t }) => t),
            "°C",
          ),
          daily(
            days.map(({ rh }) => rh),
            "%",
          ),
        ];
        const outlook = dollarSpotOutlook({ temperature: warm, humidity: humid });
        const means = [warm, humid].map((series) => runningMean({ series, days: 5 }).values);
        outlook.days.forEach(({ value, atOrAboveAction }, i) => {
          const [t, rh] = [means[0]?.[i], means[1]?.[i]];
          if (typeof t === "number" && typeof rh === "number") {
            const same = dollarSpotProbability({
              meanTemperature: c(t),
              meanHumidity: percent(Math.min(100, rh)),
            }).in("%");
            expect(value).toBeCloseTo(same, 9);
            expect(atOrAboveAction).toBe((value as number) >= 20 - 1e-9);
          } else expect([value, atOrAboveAction]).toEqual([null, null]);
        });
        expect(outlook.unknownDays).toBe(outlook.days.filter(({ value }) => value === null).length);
        expect(outlook.findings.map(({ code }) => code)).toEqual(["disease/no-diagnosis"]);
      }),
    );
  });

  it("matches the days of both series by their dates", () => {
    const outlook = dollarSpotOutlook({
      temperature: daily([20, 20, 20, 20, 20, 20, 20], "°C", "2026-06-01"),
      humidity: daily([80, 80, 80, 80, 80], "%", "2026-06-02" as never),
    });
    expect(outlook.days.map(({ value }) => value !== null)).toEqual([
      false,
      false,
      false,
      false,
      false,
      true,
      false,
    ]);
  });

  it("takes another action level, and tells every figure that cannot be", () => {
    const days = { temperature: daily(Array(5).fill(20), "°C"), humidity: daily(Array(5).fill(80), "%") };
    const at = (action: number) =>
      dollarSpotOutlook({ ...days, action: percent(action) }).days[4]?.atOrAboveAction;
    expect([at(40), at(41)]).toEqual([true, false]);
    expect(complaints(() => dollarSpotOutlook({ ...days, humidity: daily([80, 120, -4], "%") }))).toEqual([
      "range humidity.values[1]",
      "range humidity.values[2]",
    ]);
    expect(complaints(() => dollarSpotOutlook({ ...days, humidity: days.temperature }))).toEqual([
      "unit/mismatch humidity.unit",
    ]);
  });
});

describe("brown patch", () => {
  it("has its top at 21.2 °C, whatever the humidity", () => {
    fc.assert(
      fc.property(temperature, humidity, (t, rh) => {
        const e = (celsius: number) =>
          brownPatchIndex({ meanHumidity: percent(rh), minimumTemperature: c(celsius) });
        expect(e(t)).toBeLessThanOrEqual(e(1.4 / 0.066) + 1e-9);
      }),
    );
  });

  it("is judged day by day against the level that is stated", () => {
    const days = { humidity: daily([80, 90], "%"), minimum: daily([17, 20], "°C") };
    const values = brownPatchOutlook(days).days.map(({ value }) => value as number);
    expect(values.map((value) => Number(value.toFixed(3)))).toEqual([4.763, 6.8]);
    expect(
      brownPatchOutlook({ ...days, action: 4.7 }).days.map(({ atOrAboveAction }) => atOrAboveAction),
    ).toEqual([true, true]);
    expect(complaints(() => brownPatchOutlook({ ...days, action: 60 }))).toEqual(["range action"]);
  });

  const hours = 60;
  const all = (value: number | null) => Array<number | null>(hours).fill(value);
  const record = (change: {
    soil?: number;
    air?: number;
    rainAt?: number;
    humidFrom?: number;
    humidFor?: number;
    gap?: number;
  }) => {
    const { soil = 22, air = 23, rainAt = 30, humidFrom = 40, humidFor = 12, gap } = change;
    return hourlyWeather({
      start: "2026-07-14T00:00-05:00",
      source: "invented",
      temperature: { unit: "°C", values: all(air) },
      soilTemperature: { unit: "°C", values: all(soil) },
      rain: { unit: "mm", values: all(0).map((none, i) => (i === gap ? null : i === rainAt ? 3 : none)) },
      humidity: {
        unit: "%",
        values: all(70).map((low, i) => (i >= humidFrom && i < humidFrom + humidFor ? 96 : low)),
      },
    });
  };
  const spells = (change: Parameters<typeof record>[0]) =>
    brownPatchSpells({ weather: record(change) }).spells;

  it("tells a spell at its tenth hour, and why it is not one of brown patch", () => {
    expect(spells({})).toEqual([
      { tenthHourEnds: "2026-07-16T02:00-05:00", favorable: true, notMet: [], notKnown: [] },
    ]);
    expect(spells({ humidFor: 9 })).toEqual([]);
    expect(spells({ soil: 18 })[0]?.notMet).toEqual(["soil mean", "soil minimum"]);
    expect(spells({ air: 15 })[0]?.notMet).toEqual(["air mean", "air minimum"]);
    expect(spells({ rainAt: 13 })[0]?.notMet).toEqual(["rain"]);
    expect(spells({ rainAt: 14 })[0]?.favorable).toBe(true);
    expect(spells({ gap: 20 })[0]).toMatchObject({ favorable: null, notKnown: ["rain"] });
    expect(spells({ gap: 20, soil: 10 })[0]?.favorable).toBe(false);
    expect(spells({ humidFrom: 2 })[0]?.notKnown).toHaveLength(5);
  });
});

describe("pythiumOutlook", () => {
  const day = (
    change: { hot?: number; night?: number; humidFrom?: number; blank?: number; start?: Instant } = {},
  ) => {
    const { hot = 31, night = 21, humidFrom = 10, blank, start = "2026-07-14T12:00-05:00" } = change;
    const hours = Array.from({ length: 24 }, (_, i) => i);
    return hourlyWeather({
      start,
      source: "invented",
      temperature: { unit: "°C", values: hours.map((hour) => (hour < 4 ? hot : night)) },
      humidity: {
        unit: "%",
        values: hours.map((hour) => (hour === blank ? null : hour < humidFrom ? 60 : 95)),
      },
    });
  };
  const favorable = (change?: Parameters<typeof day>[0]) =>
    pythiumOutlook({ weather: day(change) }).days[0]?.favorable;

  it("asks for all three, each beyond its bound", () => {
    expect(favorable()).toBe(true);
    expect(favorable({ hot: 30 })).toBe(false);
    expect(favorable({ night: 20 })).toBe(false);
    expect(favorable({ humidFrom: 11 })).toBe(false);
  });

  it("leaves open what a missing figure could turn, and only that", () => {
    expect(favorable({ blank: 12 })).toBeNull();
    expect(favorable({ blank: 12, humidFrom: 9 })).toBe(true);
    expect(favorable({ blank: 12, night: 18 })).toBe(false);
    expect(favorable({ blank: 2 })).toBe(true);
  });

  it("counts from a missing hour that may have been the first hot one", () => {
    const hours = Array.from({ length: 24 }, (_, i) => i);
    const weather = hourlyWeather({
      start: "2026-07-14T12:00-05:00",
      source: "invented",
      temperature: { unit: "°C", values: hours.map((hour) => (hour === 0 ? null : hour === 11 ? 31 : 25)) },
      humidity: { unit: "%", values: hours.map((hour) => (hour >= 5 ? 95 : 60)) },
    });
    expect(pythiumOutlook({ weather }).days[0]).toMatchObject({ humidHours: 12, favorable: null });
  });

  it("judges whole days from noon to noon of the clock of the record", () => {
    const hours = Array.from({ length: 60 }, () => 25);
    const weather = hourlyWeather({
      start: "2026-07-14T07:00+02:00",
      source: "invented",
      temperature: { unit: "°C", values: hours },
      humidity: { unit: "%", values: hours.map(() => 50) },
    });
    expect(pythiumOutlook({ weather }).days.map(({ from }) => from)).toEqual(["2026-07-14", "2026-07-15"]);
    expect(complaints(() => pythiumOutlook({ weather: day({ start: "2026-07-14T13:00-05:00" }) }))).toEqual([
      "range weather",
    ]);
  });

  it("does not guess a bound of humidity that the source does not state", () => {
    const kentucky = pythiumCriteria[1] as (typeof pythiumCriteria)[number];
    expect(complaints(() => pythiumOutlook({ weather: day(), criteria: kentucky }))).toEqual([
      "missing humidityAbove",
    ]);
    const found = pythiumOutlook({
      weather: day({ humidFrom: 14 }),
      criteria: kentucky,
      humidityAbove: percent(90),
    });
    expect(found.days[0]).toMatchObject({ favorable: true, humidHours: 10 });
    expect(found.humidityAbovePercent).toBe(90);
  });

  it("keeps its tables, and names what is missing in a record", () => {
    expect(Object.isFrozen(pythiumCriteria[0]?.maximumAbove)).toBe(true);
    const { humidity: _, ...dry } = day();
    expect(complaints(() => pythiumOutlook({ weather: dry as never }))).toEqual(["missing weather.humidity"]);
    expect(complaints(() => pythiumOutlook({ weather: { ...day(), start: "2026-07-14" } as never }))).toEqual(
      ["date weather.start"],
    );
    const bad = { ...pythiumCriteria[0], hours: 30, source: "" };
    expect(complaints(() => pythiumOutlook({ weather: day(), criteria: bad as never }))).toEqual([
      "missing criteria.source",
      "range criteria.hours",
    ]);
  });
});
