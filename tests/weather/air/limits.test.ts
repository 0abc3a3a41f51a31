import { describe, expect, it } from "vitest";
import {
  dewPoint,
  heatIndex,
  humidityFromDewPoint,
  inversionReading,
  leafWetness,
  quantity,
  windAtHeight,
  windReading,
} from "../../../src/index.js";
import { complaint } from "../../errors.js";

const c = (value: number) => quantity(value, "°C");
const f = (value: number) => quantity(value, "°F");
const percent = (value: number) => quantity(value, "%");
const heat = (t: number, rh: number) => heatIndex({ temperature: f(t), humidity: percent(rh) });

describe("exactly at a bound", () => {
  it("air of -30 and 60 °C, of 1 and 100 % is taken", () => {
    expect(dewPoint({ temperature: c(60), humidity: percent(100) }).in("°C")).toBeCloseTo(60, 9);
    expect(dewPoint({ temperature: f(-22), humidity: percent(100) }).in("°F")).toBeCloseTo(-22, 9);
    expect(complaint(() => dewPoint({ temperature: c(20), humidity: percent(1) }))).toBe("nothing thrown");
  });

  it("a dew point above the air by rounding alone is that of saturated air", () => {
    const rh = (dew: number) => humidityFromDewPoint({ temperature: c(0), dewPoint: c(dew) }).in("%");
    expect(rh(1e-9)).toBe(100);
    expect(complaint(() => rh(2e-9))).toBe("conflict dewPoint");
  });

  it("the heights of the profile", () => {
    const wind = quantity(3, "m/s");
    const ends = windAtHeight({ wind, from: quantity(0.3, "m"), to: quantity(30, "m") });
    // ln(67.8 z - 5.42) at 30 m over that at 0.3 m.
    expect(ends.in("m/s")).toBeCloseTo((3 * Math.log(2028.58)) / Math.log(14.92), 9);
  });

  it("the wind at the height where it was measured is as it was told", () => {
    const wind = quantity(7.3, "mi/h");
    const height = quantity(6, "ft");
    expect(windAtHeight({ wind, from: height, to: height }).value).toBe(7.3);
    for (let tenths = 1; tenths <= 200; tenths += 1) {
      const one = quantity(tenths / 10, "mi/h");
      expect(windAtHeight({ wind: one, from: height, to: height }).value).toBe(tenths / 10);
    }
    expect(windReading({ speed: quantity(0, "mi/h"), height }).speed.value).toBe(0);
  });
});

describe("the heat index at the edges of its source", () => {
  it("takes the full equation above 79 °F of the simple one", () => {
    // 61 + 1.2 (79 - 68) + 0.094 x 51.0638 = 79: with 79 of air the mean is 79, and not above it.
    expect(heat(79, 51).equation).toBe("simple");
    expect(heat(79, 51.1).equation).toBe("regression");
  });

  it("averages the simple form with the temperature once, as the script of the service does", () => {
    // 61 + 1.2 (70 - 68) + 0.094 x 50 = 68.1, and with 70 the mean is 69.05.
    expect(heat(70, 50).value.in("°F")).toBeCloseTo(69.05, 10);
  });

  it("is the temperature up to 40 °F", () => {
    expect(heat(40, 90)).toMatchObject({ equation: "none", adjustment: "none", category: null });
    expect(heat(40, 90).value.value).toBe(40);
    // 61 + 1.2 (40.1 - 68) + 0.094 x 90 = 35.98, and with 40.1 the mean is 38.04.
    expect(heat(40.1, 90).equation).toBe("simple");
    expect(heat(40.1, 90).value.in("°F")).toBeCloseTo(38.04, 10);
    expect(heat(-20, 50).value.value).toBe(-20);
  });

  it("adds for humid air above 85 % from 80 to 87 °F, both counted", () => {
    const adjustment = (t: number, rh: number) => heat(t, rh).adjustment;
    expect(adjustment(80, 90)).toBe("humid air");
    expect(adjustment(79.9, 100)).toBe("none");
    expect(heat(79.9, 100).equation).toBe("regression");
    expect(adjustment(87, 90)).toBe("humid air");
    expect(adjustment(87.1, 90)).toBe("none");
    expect(adjustment(84, 85)).toBe("none");
    expect(adjustment(84, 85.1)).toBe("humid air");
  });

  it("takes away in dry air below 13 % up to 112 °F", () => {
    expect(heat(112, 12).adjustment).toBe("dry air");
    expect(heat(112.1, 12).adjustment).toBe("none");
    expect(heat(100, 13).adjustment).toBe("none");
  });

  it("says in its findings by which table and band", () => {
    const one = heat(95, 55);
    expect(one.findings.map(({ code, params }) => [code, params])).toEqual([
      ["heat-index/shade", { addF: 15 }],
      [
        "heat-index/category",
        {
          category: "danger",
          effect: "heat cramps or heat exhaustion likely, heat stroke possible",
          table: "from 103 and 125 °F",
        },
      ],
    ]);
    expect(heat(110, 80).findings.at(-1)?.params).toEqual({ highestF: 137 });
    const older = heatIndex({ temperature: f(92), humidity: percent(60), table: "from 105 and 130 °F" });
    expect(older.findings.at(-1)?.params).toEqual({ category: "danger", fromF: 103 });
  });

  it("names the pages that it rests on", () => {
    const sources = heat(110, 80).findings.map(({ source }) => source);
    expect(sources).toEqual([
      {
        title: "Survey manual, appendix 45-B: heat index chart",
        publisher: "U.S. Geological Survey, after the National Weather Service",
        where: "note above the bands",
        url: "https://docest.com/doc/277516/u-s-geological-survey-manual-s2",
      },
      expect.objectContaining({ year: 2015 }),
      {
        title: "The heat index equation",
        publisher: "National Weather Service, Weather Prediction Center",
        url: "https://www.wpc.ncep.noaa.gov/html/heatindex_equation.shtml",
      },
    ]);
  });
});

describe("thermometers at the limits", () => {
  const read = (low: number, high: number, at: readonly [number, number] = [0.2, 2.7], accuracy?: number) =>
    inversionReading({
      lower: { temperature: c(low), height: quantity(at[0], "m") },
      upper: { temperature: c(high), height: quantity(at[1], "m") },
      ...(accuracy === undefined ? {} : { accuracy: quantity(accuracy, "°C diff") }),
    });
  const codes = (...given: Parameters<typeof read>) => read(...given).findings.map(({ code }) => code);

  it("thermometers without an error measure equal air as equal", () => {
    expect(read(15, 15, [0.2, 2.7], 0).state).toBe("no inversion measured");
    expect(read(15, 15.5, [0.2, 2.7], 0).state).toBe("inversion");
    expect(read(0, 1e-9).state).toBe("no inversion measured");
    expect(read(0, 1e-8).state).toBe("inversion");
    expect(Object.is(read(15, 15).difference.value, 0)).toBe(true);
  });

  it("two errors apart says nothing yet", () => {
    expect(read(10, 12, [0.2, 2.7], 1).state).toBe("within the error of the thermometers");
  });

  it("half a meter and two meters are the heights that still do", () => {
    expect(codes(10, 12, [0.5, 2], 0.5)).toEqual(["inversion/measured"]);
    expect(read(10, 12, [0.51, 2.5]).findings.at(-1)).toMatchObject({
      code: "inversion/heights",
      params: { low: 0.51, high: 2.5 },
      source: {
        title:
          "Air temperature inversions: causes, characteristics and potential effects on pesticide spray drift (AE1705)",
        publisher: "North Dakota State University Extension",
        year: 2024,
      },
    });
  });

  it("an accuracy that is not stated is told at its field", () => {
    expect(read(10, 12).findings.find(({ code }) => code === "inversion/accuracy-not-stated")?.path).toBe(
      "accuracy",
    );
  });
});

describe("wet hours at the bound", () => {
  const hours = (input: object) => leafWetness({ humidity: { unit: "%", values: [] }, ...input }).hours;

  it("a humidity at the bound is wet, and 90 % is the bound where none is stated", () => {
    const humidity = { unit: "%", values: [89.9, 90, 90.1] };
    expect(hours({ humidity })).toEqual([false, true, true]);
    expect(hours({ humidity, humidityAtOrAbove: percent(90.1) })).toEqual([false, false, true]);
  });

  it("saturated air has no depression, and air of 0 % no dew point", () => {
    const humidity = { unit: "%", values: [100, 99, 0] };
    const temperature = { unit: "°C", values: [20, 20, 20] };
    const at = (bound: number) =>
      hours({ humidity, temperature, depressionAtOrBelow: quantity(bound, "°C diff") });
    expect(at(0)).toEqual([true, false, false]);
    // 20 °C and 99 %: the dew point lies 0.16 °C below.
    expect(at(0.2)).toEqual([true, true, false]);
  });

  it("no rain is no answer on its own: dry air without rain is dry, and without a figure open", () => {
    const humidity = { unit: "%", values: [50, 50, 95, 50] };
    const rain = { unit: "mm", values: [0, null, null, 0.1] };
    expect(hours({ humidity, rain })).toEqual([false, null, true, true]);
  });

  it("names the paper that the estimate rests on", () => {
    const { findings } = leafWetness({ humidity: { unit: "%", values: [50] } });
    expect(findings[0]?.source).toEqual({
      title: "Suitability of relative humidity as an estimator of leaf wetness duration",
      publisher: "XVI Congresso Brasileiro de Agrometeorologia (Sentelhas et al.)",
      where: "abstract",
    });
  });

  it("columns at the ends of what air can be", () => {
    const humidity = { unit: "%", values: [0, 100] };
    const temperature = { unit: "°F", values: [-112, 140] };
    const rain = { unit: "mm", values: [0, 500] };
    expect(hours({ humidity, temperature, rain })).toEqual([false, true]);
  });
});
