import { describe, expect, it } from "vitest";
import { addDays, type CivilDate, dailyTemperatures } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import {
  dailyReferenceEvapotranspiration,
  hargreavesEvapotranspiration,
  hargreavesSeries,
  hourlyReferenceEvapotranspiration,
  turfCoefficient,
} from "../../../src/water/index.js";
import { complaint } from "../../errors.js";
import { said } from "../../tells.js";
import { celsius, percent } from "../helpers.js";

const deg = (value: number) => quantity(value, "deg");
const mj = (value: number) => quantity(value, "MJ/m2/d");
const m = (value: number) => quantity(value, "m");
const day = {
  min: celsius(12),
  max: celsius(24),
  moisture: { rhMean: percent(60) },
  sunlight: { solar: mj(20) },
  wind: { speed: quantity(2, "m/s"), height: m(2) },
  latitude: deg(45),
  elevation: m(0),
  date: "2026-06-21" as CivilDate,
} as const;

describe("the series over the new year", () => {
  it("counts the days of the year anew, in common and in leap years", () => {
    for (const start of ["2026-12-29", "2024-12-29", "2023-12-30", "2024-02-27"] as const) {
      const days = 6;
      const series = hargreavesSeries({
        temperatures: dailyTemperatures({
          start,
          unit: "°F",
          sensor: "air",
          source: "probe",
          min: Array(days).fill(41),
          max: Array(days).fill(59),
        }),
        latitude: deg(40),
      });
      series.values.forEach((value, i) => {
        const date: CivilDate = addDays(start, i);
        const day = hargreavesEvapotranspiration({
          min: quantity(41, "°F"),
          max: quantity(59, "°F"),
          latitude: deg(40),
          date,
        });
        expect(value).toBeCloseTo(day.in("mm/d"), 12);
      });
      expect(series.source).toBe("computed from temperatures: probe");
    }
  });

  it("takes a mean of -17.8 °C, where it comes to zero", () => {
    const cold = { min: celsius(-17.8), max: celsius(-17.8), latitude: deg(45), date: "2026-06-21" } as const;
    expect(hargreavesEvapotranspiration(cold).value).toBe(0);
    const series = hargreavesSeries({
      temperatures: dailyTemperatures({
        start: "2026-06-21",
        unit: "°C",
        sensor: "air",
        source: "probe",
        min: [-17.8],
        max: [-17.8],
      }),
      latitude: deg(45),
    });
    expect(series.values).toEqual([0]);
  });
});

describe("remarks on a day", () => {
  const daily = (change: object) =>
    dailyReferenceEvapotranspiration({ ...day, ...change } as Parameters<
      typeof dailyReferenceEvapotranspiration
    >[0]);
  /** So many times the radiation of a clear sky, which is 0.75 of that at the top of the atmosphere at sea level. */
  const shining = (share: number) => {
    const top = daily({}).extraterrestrialRadiation.in("MJ/m2/d");
    return daily({ sunlight: { solar: mj(0.75 * top * share) } });
  };
  const paper = "FAO Irrigation and Drainage Paper 56";

  it("brighter than a clear sky is noted, and a caution from a tenth more on", () => {
    expect(shining(1).findings).toEqual([]);
    const [note] = shining(1.05).findings;
    expect(note).toMatchObject({ code: "water/brighter-than-clear-sky", severity: "note", source: paper });
    expect(note?.params.ratio).toBeCloseTo(1.05, 9);
    expect(shining(1.15).findings[0]?.severity).toBe("caution");
  });

  it("darker than the thickest cloud, 0.35 by 1.35, is a caution", () => {
    expect(shining(0.26).findings).toEqual([]);
    const [dark] = shining(0.25).findings;
    expect(dark).toMatchObject({ code: "water/darker-than-overcast", severity: "caution", source: paper });
    expect(dark?.params.ratio).toBeCloseTo(0.25, 9);
  });

  it("wind of half a meter a second is no calm, and the figures stand in the remark", () => {
    const wind = (value: number) =>
      daily({ wind: { speed: quantity(value, "m/s"), height: m(2) } }).findings.map(({ code, params }) => [
        code,
        params,
      ]);
    expect(wind(0.5)).toEqual([]);
    expect(wind(0.4)).toEqual([["water/calm", { speed: 0.4 }]]);
  });

  it("air moister than the mean of its saturation is told with both figures", () => {
    const moist = daily({ moisture: { vaporPressure: quantity(2.5, "kPa") } });
    const found = moist.findings.find(({ code }) => code === "water/moister-than-saturated");
    expect(found?.params.actual).toBe(2.5);
    // Half of 0.6108 (exp(17.27 x 12 / 249.3) + exp(17.27 x 24 / 261.3))
    expect(found?.params.saturation).toBeCloseTo(
      0.3054 * (Math.exp(207.24 / 249.3) + Math.exp(414.48 / 261.3)),
      9,
    );
    expect(moist.vaporPressureDeficit.in("kPa")).toBeLessThan(0);
  });

  it("half an hour more sun than daylight is borne, for recorders read so", () => {
    const daylight = daily({}).daylight.in("h");
    const sun = (hours: number) => complaint(() => daily({ sunlight: { sunshine: quantity(hours, "h") } }));
    expect(sun(daylight + 0.49)).toBe("nothing thrown");
    expect(sun(daylight + 0.51)).toBe("range sunlight.sunshine");
  });

  it("bounds of the moisture of the air are taken, and a field that is left out is none", () => {
    const vapor = (moisture: object) => daily({ moisture }).actualVaporPressure.in("kPa");
    const [low, high] = [12, 24].map((t) => 0.6108 * Math.exp((17.27 * t) / (t + 237.3))) as [number, number];
    expect(vapor({ rhMax: percent(100), rhMin: percent(0) })).toBeCloseTo(low / 2, 9);
    expect(vapor({ rhMax: percent(70), rhMin: percent(70) })).toBeCloseTo((0.7 * (low + high)) / 2, 9);
    expect(vapor({ rhMax: percent(70), rhMin: undefined })).toBeCloseTo(0.7 * low, 9);
    expect(vapor({ wet: celsius(12), dry: celsius(12), psychrometer: "natural" })).toBeCloseTo(low, 9);
  });
});

describe("remarks on an hour", () => {
  const hour = {
    temperature: celsius(20),
    humidity: percent(60),
    solar: quantity(500, "W/m2"),
    wind: day.wind,
    latitude: deg(45),
    longitude: deg(0),
    elevation: m(0),
    start: "2026-06-21T12:00Z",
    length: quantity(1, "h"),
  } as const;
  const hourly = (change: object) =>
    hourlyReferenceEvapotranspiration({ ...hour, ...change } as Parameters<
      typeof hourlyReferenceEvapotranspiration
    >[0]);
  const night = { start: "2026-06-21T23:00Z", clearnessBefore: percent(80) };

  it("the deficit is what is missing to saturation, and light of the night makes no remark", () => {
    const one = hourly({});
    expect(one.vaporPressureDeficit.in("kPa")).toBeCloseTo(0.4 * one.saturationVaporPressure.in("kPa"), 9);
    expect(hourly({ ...night, solar: quantity(0.05, "MJ/m2") }).findings).toEqual([]);
  });

  it("an instrument that is not at zero may show 0.05 MJ/m2 an hour in the night, and half of it in half an hour", () => {
    const light = (mj: number, hours: number) =>
      said(() => hourly({ ...night, solar: quantity(mj, "MJ/m2"), length: quantity(hours, "h") }))[0];
    expect(light(0.05, 1)).toBeUndefined();
    expect(light(0.051, 1)).toMatch(/^range solar: .*got 0.051 MJ\/m2$/);
    expect(light(0.025, 0.5)).toBeUndefined();
    expect(light(0.03, 0.5)).toMatch(/^range solar/);
  });

  it("a ratio above or below what the formula is made for stands in the remark", () => {
    const top = hourly({}).extraterrestrialRadiation.in("MJ/m2");
    const shining = (share: number) => hourly({ solar: quantity(0.75 * top * share, "MJ/m2") }).findings;
    expect(shining(1)).toEqual([]);
    expect(shining(0.26)).toEqual([]);
    const source = "FAO Irrigation and Drainage Paper 56";
    const found = [1.05, 1.15, 0.25].map((share) => shining(share)[0]);
    expect(found.map((one) => [one?.code, one?.severity, one?.source])).toEqual([
      ["water/brighter-than-clear-sky", "note", source],
      ["water/brighter-than-clear-sky", "caution", source],
      ["water/darker-than-overcast", "caution", source],
    ]);
    expect(found.map((one) => Number(Number(one?.params.ratio).toFixed(9)))).toEqual([1.05, 1.15, 0.25]);
  });

  it("the clearness before counts while the sun stands below 0.3 rad, and is refused above", () => {
    // At 20° on 21 December the sun has that height where cos w = (sin 0.3 - sin 20° sin d) / (cos 20° cos d) = 0.501,
    // with d = -23.4°: 59.9° before and after noon.
    const at = (minutes: number) =>
      said(() =>
        hourly({
          latitude: deg(20),
          start: `2026-12-21T${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}Z`,
          length: quantity(1, "min"),
          solar: quantity(50, "W/m2"),
          clearnessBefore: percent(50),
        }),
      )[0];
    // Noon by the sun is at 11:58 in Greenwich on that day; 59.9° are 239.6 minutes.
    expect(at(11 * 60 + 58 + 234)).toMatch(/^conflict clearnessBefore/);
    expect(at(11 * 60 + 58 + 245)).toBeUndefined();
  });

  it("three hours are the longest period", () => {
    expect(complaint(() => hourly({ length: quantity(180, "min") }))).toBe("nothing thrown");
  });
});

describe("the lists of turf coefficients", () => {
  it("name their source", () => {
    const source = (list: string, more: object = {}) =>
      turfCoefficient({ season: "warm-season", list, ...more } as Parameters<typeof turfCoefficient>[0])
        .source;
    const california = {
      title: "Turfgrass crop coefficients (Kc), after Meyer et al. 1985",
      publisher: "University of California, Center for Landscape and Urban Horticulture",
      where: "Table 1",
      url: "http://ucanr.edu/sites/urbanhort/Water_Use_of_Turfgrass_and_Landscape_Plant_Materials/Turfgrass_Crop_Coefficients_Kc",
    };
    expect(source("California, by month", { month: 12 })).toEqual(california);
    expect(source("California, year")).toEqual(california);
    expect(source("Arizona", { quality: "high" })).toEqual({
      title: "Phoenix area turf water use report",
      publisher: "University of Arizona, AZMET",
      year: 2024,
      where: "winter rye and bermudagrass",
      url: "http://www.ag.arizona.edu/azmet/data/00prptet.htm",
    });
    expect(source("New Mexico")).toEqual({
      title: "Turf water use at Farmington (ASA annual meeting, P6853)",
      publisher: "New Mexico State University",
      year: 2005,
      where: "abstract",
      url: "http://a-c-s.confex.com/crops/2005am/techprogram/P6853.HTM",
    });
  });
});
