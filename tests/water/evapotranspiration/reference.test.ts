import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  type CivilDate,
  dailyTemperatures,
  dayOfYear,
  type Instant,
} from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import {
  actualVaporPressure,
  dailyReferenceEvapotranspiration,
  extraterrestrialRadiation,
  hargreavesEvapotranspiration,
  hargreavesEvapotranspirationsMmPerD,
  hargreavesSeries,
  hourlyExtraterrestrialRadiation,
  hourlyReferenceEvapotranspiration,
  landscapeCoefficient,
  monthlyReferenceEvapotranspiration,
  monthlySoilHeatFlux,
  netLongwaveRadiation,
  referenceEvapotranspirationsMmPerD,
  saturationVaporPressure,
  solarRadiationFromSunshine,
  sunsetHourAngle,
  turfCoefficient,
  turfUse,
  vaporPressureSlopeKPaPerC,
} from "../../../src/water/index.js";
import { dayLength, windAtHeight } from "../../../src/weather/index.js";
import { complaints } from "../../errors.js";
import { celsius, close, percent, untyped } from "../helpers.js";

const deg = (value: number) => quantity(value, "deg");
const m = (value: number) => quantity(value, "m");
const kPa = (value: number) => quantity(value, "kPa");
const wind = { speed: quantity(2, "m/s"), height: m(2) };

const uccle = {
  min: celsius(12.3),
  max: celsius(21.5),
  moisture: { rhMax: percent(84), rhMin: percent(63) },
  sunlight: { sunshine: quantity(9.25, "h") },
  wind: { speed: quantity(10, "km/h"), height: m(10) },
  latitude: deg(50.8),
  elevation: m(100),
  date: "1998-07-06" as CivilDate,
};

const days = fc.record({
  tMin: fc.double({ min: -5, max: 25, noNaN: true }),
  range: fc.double({ min: 0, max: 20, noNaN: true }),
  rh: fc.double({ min: 10, max: 100, noNaN: true }),
  u2: fc.double({ min: 0, max: 12, noNaN: true }),
  clear: fc.double({ min: 0.2, max: 1, noNaN: true }),
  z: fc.double({ min: -200, max: 3000, noNaN: true }),
  lat: fc.double({ min: -60, max: 60, noNaN: true }),
  j: fc.integer({ min: 1, max: 365 }),
});

describe("a radiation that no day has", () => {
  const codes = (solar: number) =>
    dailyReferenceEvapotranspiration({
      ...uccle,
      sunlight: { solar: quantity(solar, "MJ/m2/d") },
    }).findings.map(({ code }) => code);
  test("darker than the thickest cloud, as of a dead sensor, is a finding", () => {
    expect(codes(0)).toEqual(["water/darker-than-overcast"]);
    // 0.35 / 1.35 of the clear sky's 30.90: from there on the sky takes heat from the turf, as it should.
    expect(codes(7.9)).toEqual(["water/darker-than-overcast"]);
    expect(codes(8.1)).toEqual([]);
  });
  test("a reference below zero is refused with what to do", () => {
    const dew = { reference: quantity(-0.1, "mm/d"), coefficient: 0.8 };
    expect(complaints(untyped(turfUse, dew))).toEqual(["range reference"]);
    expect(() => turfUse(dew)).toThrow("counts as 0");
  });
});

describe("vapor", () => {
  test("the slope is the slope of the curve", () => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 50, noNaN: true }), (t) => {
        const h = 1e-3;
        const e = (x: number) => saturationVaporPressure({ temperature: celsius(x) }).in("kPa");
        const numeric = (e(t + h) - e(t - h)) / (2 * h);
        // the paper rounds 17.27 x 237.3 = 4098.17 to 4098
        close(vaporPressureSlopeKPaPerC({ temperature: celsius(t) }), numeric, 1e-4);
      }),
    );
  });

  test("saturated air by every statement", () => {
    const day = { min: celsius(15), max: celsius(15) };
    const es = saturationVaporPressure({ temperature: celsius(15) }).in("kPa");
    for (const moisture of [
      { dewPoint: celsius(15) },
      { dewPoint: quantity(59, "°F") },
      { vaporPressure: kPa(es) },
      { rhMax: percent(100), rhMin: percent(100) },
      { rhMax: percent(100) },
      { rhMean: percent(100) },
      { saturatedAtMinimum: true as const },
    ]) {
      close(actualVaporPressure({ ...day, moisture }).in("kPa"), es, 1e-12);
    }
    const wet = { wet: celsius(15), dry: celsius(15), psychrometer: "ventilated" as const };
    close(actualVaporPressure({ ...day, moisture: wet, elevation: m(0) }).in("kPa"), es, 1e-12);
  });

  test("bad moisture", () => {
    const day = { min: celsius(15), max: celsius(25) };
    const of = (moisture: unknown, more = {}) =>
      complaints(untyped(actualVaporPressure, { ...day, moisture, ...more }));
    expect(of(undefined)).toEqual(["missing moisture"]);
    expect(of({})).toEqual(["missing moisture"]);
    expect(of({ rhMean: percent(101) })).toEqual(["range moisture.rhMean"]);
    expect(of({ rhMean: 55 })).toEqual(["type moisture.rhMean"]);
    expect(of({ rhMean: percent(55), dewPoint: celsius(9) })).toEqual(["conflict moisture"]);
    expect(of({ rhMin: percent(55) })).toEqual(["conflict moisture"]);
    expect(of({ rhMin: percent(85), rhMax: percent(55) })).toEqual(["conflict moisture.rhMin"]);
    expect(of({ saturatedAtMinimum: false })).toEqual(["type moisture.saturatedAtMinimum"]);
    const wet = { wet: celsius(12), dry: celsius(15), psychrometer: "ventilated" };
    expect(of(wet)).toEqual(["missing elevation"]);
    expect(of({ ...wet, wet: celsius(16) }, { elevation: m(0) })).toEqual(["conflict moisture.wet"]);
    expect(of({ ...wet, wet: celsius(-12) }, { elevation: m(0) })).toEqual(["infeasible moisture.wet"]);
    expect(
      complaints(untyped(actualVaporPressure, { ...day, min: celsius(26), moisture: wet, elevation: m(0) })),
    ).toEqual(["conflict min"]);
  });
});

describe("the sun", () => {
  test("the radiation of a day is the integral over its hours, whatever the length of the steps and the offset of the clock", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -85, max: 85, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.integer({ min: 1, max: 365 }),
        fc.constantFrom(0.5, 1, 2, 3),
        (lat, lon, j, step) => {
          // From solar midnight to solar midnight: the date is that of the clock, so take a clock that runs by the sun.
          const offset = Math.max(-12, Math.min(13, Math.round(lon / 15)));
          const zone = `${offset < 0 ? "-" : "+"}${String(Math.abs(offset)).padStart(2, "0")}:00`;
          const date = addDays("2001-01-01", j - 1);
          let sum = 0;
          for (let h = 0; h < 24; h += step) {
            const clock = `${String(Math.floor(h)).padStart(2, "0")}:${h % 1 === 0 ? "00" : "30"}`;
            sum += hourlyExtraterrestrialRadiation({
              latitude: deg(lat),
              longitude: deg(lon),
              start: `${date}T${clock}${zone}` as Instant,
              length: quantity(step, "h"),
            }).in("MJ/m2");
          }
          const day = extraterrestrialRadiation({ latitude: deg(lat), dayOfYear: j }).in("MJ/m2/d");
          expect(Math.abs(sum - day)).toBeLessThan(1e-9 * Math.max(1, day));
        },
      ),
    );
  });

  test("the integral over the height of the sun gives the radiation of a day", () => {
    for (const [lat, j] of [
      [50, 172],
      [0, 80],
      [-35, 355],
      [66, 172],
      [75, 172],
      [75, 355],
      [-80, 10],
    ] as const) {
      const d = 0.409 * Math.sin((2 * Math.PI * j) / 365 - 1.39);
      const dr = 1 + 0.033 * Math.cos((2 * Math.PI * j) / 365);
      const phi = (lat * Math.PI) / 180;
      const steps = 20_000;
      let sum = 0;
      for (let i = 0; i < steps; i++) {
        const w = -Math.PI + ((i + 0.5) * 2 * Math.PI) / steps;
        sum += Math.max(0, Math.sin(phi) * Math.sin(d) + Math.cos(phi) * Math.cos(d) * Math.cos(w));
      }
      const integral = (0.082 * dr * sum * 1440) / steps;
      const computed = extraterrestrialRadiation({ latitude: deg(lat), dayOfYear: j }).in("MJ/m2/d");
      expect(Math.abs(computed - integral)).toBeLessThan(1e-4);
    }
  });

  test("the length of the day is that of the weather room", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.integer({ min: 1, max: 365 }),
        (lat, j) => {
          const date = addDays("2001-01-01", j - 1);
          const hours = (24 / Math.PI) * sunsetHourAngle({ latitude: deg(lat), dayOfYear: j }).in("rad");
          expect(hours).toBeCloseTo(dayLength({ latitude: deg(lat), date, method: "FAO-56" }).in("h"), 9);
        },
      ),
    );
  });

  test("refuses a latitude beyond the pole and a day that is none", () => {
    expect(complaints(() => extraterrestrialRadiation({ latitude: deg(91), dayOfYear: 0 }))).toEqual([
      "range latitude",
      "range dayOfYear",
    ]);
    expect(complaints(() => extraterrestrialRadiation({ latitude: deg(9), dayOfYear: 1.5 }))).toEqual([
      "range dayOfYear",
    ]);
    const hour = {
      latitude: deg(9),
      longitude: deg(181),
      start: "2001-05-05T12:00",
      length: quantity(4, "h"),
    };
    expect(complaints(untyped(hourlyExtraterrestrialRadiation, hour))).toEqual([
      "range longitude",
      "date start",
      "range length",
    ]);
  });
});

describe("reference evapotranspiration of a day", () => {
  test("the units that are chosen change nothing", () => {
    const metric = dailyReferenceEvapotranspiration(uccle);
    const us = dailyReferenceEvapotranspiration({
      ...uccle,
      min: quantity(uccle.min.in("°F"), "°F"),
      max: quantity(uccle.max.in("°F"), "°F"),
      sunlight: { sunshine: quantity(555, "min") },
      wind: {
        speed: quantity(uccle.wind.speed.in("mi/h"), "mi/h"),
        height: quantity(uccle.wind.height.in("ft"), "ft"),
      },
      latitude: quantity((50.8 * Math.PI) / 180, "rad"),
      elevation: quantity(m(100).in("ft"), "ft"),
    });
    close(us.value.in("in/d"), metric.value.in("in/d"), 1e-9);
  });

  test("the steps fit together, and the array form goes the same way", () => {
    fc.assert(
      fc.property(days, (d) => {
        const date = addDays("2001-01-01", d.j - 1);
        const ra = extraterrestrialRadiation({ latitude: deg(d.lat), dayOfYear: d.j });
        const solar = quantity(ra.in("MJ/m2/d") * 0.75 * d.clear, "MJ/m2/d");
        const day = dailyReferenceEvapotranspiration({
          min: celsius(d.tMin),
          max: celsius(d.tMin + d.range),
          moisture: { rhMean: percent(d.rh) },
          sunlight: { solar },
          wind: { speed: quantity(d.u2, "m/s"), height: m(2) },
          latitude: deg(d.lat),
          elevation: m(d.z),
          date,
        });
        expect(day.value.in("mm/d")).toBeCloseTo(day.radiationTerm.in("mm/d") + day.windTerm.in("mm/d"), 12);
        expect(day.netRadiation.in("MJ/m2/d")).toBeCloseTo(
          day.netShortwave.in("MJ/m2/d") - day.netLongwave.in("MJ/m2/d"),
          12,
        );
        expect(day.netLongwave.in("MJ/m2/d")).toBeCloseTo(
          netLongwaveRadiation({
            min: celsius(d.tMin),
            max: celsius(d.tMin + d.range),
            vaporPressure: day.actualVaporPressure,
            solar,
            clearSky: day.clearSkyRadiation,
          }).in("MJ/m2/d"),
          12,
        );
        expect(day.daylight.in("h")).toBeCloseTo(
          dayLength({ latitude: deg(d.lat), date, method: "FAO-56" }).in("h"),
          9,
        );
        const of = (value: number) => Float64Array.of(value);
        const array = referenceEvapotranspirationsMmPerD({
          tMinC: of(d.tMin),
          tMaxC: of(d.tMin + d.range),
          vaporPressureKPa: of(day.actualVaporPressure.in("kPa")),
          windAtTwoMetersMPerS: of(d.u2),
          solarMJPerM2D: of(solar.in("MJ/m2/d")),
          elevationM: of(d.z),
          latitudeDeg: of(d.lat),
          dayOfYear: of(d.j),
        });
        expect(array[0]).toBeCloseTo(day.value.in("mm/d"), 10);
      }),
    );
  });

  test("more sun, more wind in dry air: more water", () => {
    const of = (solar: number, speed: number) =>
      dailyReferenceEvapotranspiration({
        ...uccle,
        sunlight: { solar: quantity(solar, "MJ/m2/d") },
        wind: { speed: quantity(speed, "m/s"), height: m(2) },
      }).value.in("mm/d");
    expect([of(10, 2), of(15, 2), of(20, 2), of(28, 2)]).toEqual(
      [of(10, 2), of(15, 2), of(20, 2), of(28, 2)].sort((a, b) => a - b),
    );
    expect(of(10, 5)).toBeGreaterThan(of(10, 1));
  });

  test("what stands in for a measurement is told", () => {
    const codes = (more: object) =>
      dailyReferenceEvapotranspiration({ ...uccle, ...more } as typeof uccle).findings.map(
        ({ code }) => code,
      );
    expect(codes({})).toEqual([]);
    expect(codes({ moisture: { saturatedAtMinimum: true }, sunlight: { temperatures: "interior" } })).toEqual(
      ["water/moisture-assumed", "water/sunlight-assumed"],
    );
    expect(
      codes({
        sunlight: { solar: quantity(36, "MJ/m2/d") },
        wind: { speed: quantity(0.2, "m/s"), height: m(2) },
      }),
    ).toEqual(["water/brighter-than-clear-sky", "water/calm"]);
    expect(codes({ moisture: { dewPoint: celsius(20) } })).toEqual(["water/moister-than-saturated"]);
  });

  test("bad weather: every problem with its path", () => {
    const of = (more: object) => complaints(untyped(dailyReferenceEvapotranspiration, { ...uccle, ...more }));
    expect(of({ min: celsius(22) })).toEqual(["conflict min"]);
    expect(
      of({ min: celsius(-999), moisture: { rhMax: percent(101), rhMin: percent(50) }, latitude: deg(91) }),
    ).toEqual(["range min", "range moisture.rhMax", "range latitude"]);
    expect(of({ wind: { speed: quantity(3, "m/s") } })).toEqual(["missing wind.height"]);
    expect(of({ wind: { speed: quantity(-3, "m/s"), height: m(2) }, date: "1998-02-30" })).toEqual([
      "range wind.speed",
      "date date",
    ]);
    expect(of({ wind: { speed: quantity(3, "m/s"), height: m(0.1) } })).toEqual(["range wind.height"]);
    expect(of({ sunlight: { sunshine: quantity(17, "h") } })).toEqual(["range sunlight.sunshine"]);
    expect(of({ sunlight: { solar: quantity(42, "MJ/m2/d") } })).toEqual(["range sunlight.solar"]);
    expect(of({ sunlight: {} })).toEqual(["missing sunlight"]);
    expect(of({ sunlight: { solar: quantity(20, "MJ/m2/d"), sunshine: quantity(9, "h") } })).toEqual([
      "conflict sunlight",
    ]);
    expect(of({ sunlight: { solar: quantity(20, "MJ/m2/d"), a: 0.2 } })).toEqual(["conflict sunlight"]);
    expect(of({ moisture: { dewPoint: celsius(23) } })).toEqual(["conflict moisture"]);
    expect(of({ latitude: deg(80), date: "1998-12-21" })).toEqual(["infeasible latitude"]);
    expect(of({ humidity: percent(50) })).toEqual(["type humidity"]);
    expect(of({ elevation: undefined })).toEqual(["missing elevation"]);
  });

  test("wind comes down as the weather room brings it", () => {
    const speed = quantity(4, "m/s");
    const day = dailyReferenceEvapotranspiration({ ...uccle, wind: { speed, height: m(10) } });
    close(day.windAtTwoMeters.in("m/s"), windAtHeight({ wind: speed, from: m(10), to: m(2) }).in("m/s"));
  });
});

describe("months, hours, temperatures only", () => {
  test("a month without a change of temperature is a day", () => {
    const { date: _, ...weather } = uccle;
    const month = monthlyReferenceEvapotranspiration({ ...weather, month: 7, before: celsius(16.9) });
    const day = dailyReferenceEvapotranspiration({ ...uccle, date: "1998-07-15" });
    close(month.value.in("mm/d"), day.value.in("mm/d"), 1e-9);
    expect(month.dayOfYear).toBe(196);
    const warming = monthlyReferenceEvapotranspiration({
      ...weather,
      month: 7,
      before: celsius(10),
      after: celsius(20),
    });
    close(
      warming.soilHeatFlux.in("MJ/m2/d"),
      monthlySoilHeatFlux({ before: celsius(10), after: celsius(20) }).in("MJ/m2/d"),
    );
    expect(warming.value.in("mm/d")).toBeLessThan(month.value.in("mm/d"));
    expect(complaints(untyped(monthlySoilHeatFlux, { before: celsius(1) }))).toEqual(["missing after"]);
    expect(
      complaints(untyped(monthlySoilHeatFlux, { before: celsius(1), after: celsius(1), month: celsius(1) })),
    ).toEqual(["conflict month"]);
    expect(
      complaints(untyped(monthlyReferenceEvapotranspiration, { ...weather, month: 13, before: celsius(1) })),
    ).toEqual(["range month"]);
  });

  const hour = {
    temperature: celsius(25),
    humidity: percent(50),
    solar: quantity(600, "W/m2"),
    wind,
    latitude: deg(40),
    longitude: deg(-105),
    elevation: m(1600),
    start: "2026-06-21T12:00-06:00" as Instant,
    length: quantity(1, "h"),
  };

  test("radiation as a mean and as an amount; a clock on summer time and on standard time", () => {
    const mean = hourlyReferenceEvapotranspiration(hour);
    close(
      hourlyReferenceEvapotranspiration({ ...hour, solar: quantity(2.16, "MJ/m2") }).value.in("mm/h"),
      mean.value.in("mm/h"),
      1e-12,
    );
    close(
      hourlyReferenceEvapotranspiration({ ...hour, start: "2026-06-21T11:00-07:00" }).value.in("mm/h"),
      mean.value.in("mm/h"),
      1e-12,
    );
    const half = hourlyReferenceEvapotranspiration({ ...hour, length: quantity(30, "min") });
    close(half.depth.in("mm"), half.value.in("mm/h") / 2);
  });

  test("a low sun takes how clear it was, and a dark noon is a finding", () => {
    const dawn = { ...hour, solar: quantity(1, "W/m2"), start: "2026-06-21T05:15-06:00" as Instant };
    const measured = hourlyReferenceEvapotranspiration(dawn);
    const codes = (found: typeof measured) => found.findings.map(({ code }) => code);
    expect(measured.extraterrestrialRadiation.value).toBeGreaterThan(0);
    expect(codes(measured)).toEqual(["water/darker-than-overcast"]);
    const stated = hourlyReferenceEvapotranspiration({ ...dawn, clearnessBefore: percent(80) });
    close(stated.clearness.in("%"), 80);
    expect(stated.netLongwave.in("MJ/m2")).toBeGreaterThan(0);
    expect(codes(stated)).toEqual([]);
    const noon = hourlyReferenceEvapotranspiration({ ...hour, solar: quantity(0, "W/m2") });
    expect(codes(noon)).toEqual(["water/darker-than-overcast"]);
  });

  test("a night asks how clear it is, and a day does not", () => {
    const night = { ...hour, solar: quantity(0, "W/m2"), start: "2026-06-21T00:00-06:00" as Instant };
    expect(complaints(() => hourlyReferenceEvapotranspiration(night))).toEqual(["missing clearnessBefore"]);
    const dark = hourlyReferenceEvapotranspiration({ ...night, clearnessBefore: percent(80) });
    expect(dark.netRadiation.in("MJ/m2")).toBeLessThan(0);
    close(dark.soilHeatFlux.in("MJ/m2"), dark.netRadiation.in("MJ/m2") / 2);
    expect(
      complaints(() => hourlyReferenceEvapotranspiration({ ...hour, clearnessBefore: percent(80) })),
    ).toEqual(["conflict clearnessBefore"]);
    expect(
      complaints(() => hourlyReferenceEvapotranspiration({ ...hour, solar: quantity(1500, "W/m2") })),
    ).toEqual(["range solar"]);
    expect(
      complaints(
        untyped(hourlyReferenceEvapotranspiration, {
          ...hour,
          humidity: percent(120),
          solar: quantity(-1, "MJ/m2"),
        }),
      ),
    ).toEqual(["range humidity", "range solar"]);
  });

  test("a season by temperatures is its days one by one, across the turn of a leap year", () => {
    const n = 800;
    const min = Array.from({ length: n }, (_, i) => 5 + 8 * Math.sin(i / 58));
    const max = min.map((t, i) => t + 6 + (i % 9));
    const temperatures = dailyTemperatures({
      start: "2023-11-20",
      unit: "°C",
      sensor: "air",
      source: "computed",
      min,
      max,
    });
    const series = hargreavesSeries({ temperatures, latitude: deg(45) });
    for (const i of [0, 41, 42, 100, 407, 408, 409, 799]) {
      const date = addDays("2023-11-20", i);
      const day = hargreavesEvapotranspiration({
        min: celsius(min[i] as number),
        max: celsius(max[i] as number),
        latitude: deg(45),
        date,
      });
      close(series.values[i] as number, day.in("mm/d"), 1e-12);
      const of = (value: number) => Float64Array.of(value);
      close(
        hargreavesEvapotranspirationsMmPerD({
          tMinC: of(min[i] as number),
          tMaxC: of(max[i] as number),
          latitudeDeg: of(45),
          dayOfYear: of(dayOfYear(date)),
        })[0] as number,
        day.in("mm/d"),
        1e-12,
      );
    }
    const fahrenheit = dailyTemperatures({
      start: "2023-11-20",
      unit: "°F",
      sensor: "air",
      source: "computed",
      min: min.map((t) => (t * 9) / 5 + 32),
      max: max.map((t) => (t * 9) / 5 + 32),
    });
    close(
      hargreavesSeries({ temperatures: fahrenheit, latitude: deg(45) }).values[9] as number,
      series.values[9] as number,
      1e-9,
    );
  });

  test("no answer for cold and for soil", () => {
    const cold = { min: celsius(-40), max: celsius(-20), latitude: deg(60), date: "2026-01-15" as CivilDate };
    expect(complaints(() => hargreavesEvapotranspiration(cold))).toEqual(["range max"]);
    const soil = dailyTemperatures({
      start: "2026-01-01",
      unit: "°C",
      sensor: "soil at 5 cm",
      source: "x",
      min: [1],
      max: [2],
    });
    expect(complaints(() => hargreavesSeries({ temperatures: soil, latitude: deg(45) }))).toEqual([
      "type temperatures.sensor",
    ]);
    expect(complaints(untyped(hargreavesSeries, { latitude: deg(45) }))).toEqual(["missing temperatures"]);
  });

  test("sunshine: none is a quarter of the top, all day three quarters", () => {
    const top = { extraterrestrial: quantity(40, "MJ/m2/d"), daylight: quantity(12, "h") };
    expect(solarRadiationFromSunshine({ ...top, sunshine: quantity(0, "h") }).in("MJ/m2/d")).toBe(10);
    expect(solarRadiationFromSunshine({ ...top, sunshine: quantity(12, "h") }).in("MJ/m2/d")).toBe(30);
    expect(
      solarRadiationFromSunshine({ ...top, sunshine: quantity(6, "h"), a: 0.2, b: 0.6 }).in("MJ/m2/d"),
    ).toBe(20);
  });
});

describe("array forms", () => {
  const one = {
    tMinC: Float64Array.of(12.3, 10),
    tMaxC: Float64Array.of(21.5, 20),
    vaporPressureKPa: Float64Array.of(1.409, 1),
    windAtTwoMetersMPerS: Float64Array.of(2.078, 1),
    solarMJPerM2D: Float64Array.of(22.07, 18),
    elevationM: Float64Array.of(100, 100),
    latitudeDeg: Float64Array.of(50.8, 50.8),
    dayOfYear: Float64Array.of(187, 188),
  };
  test("the first bad day is named, with its index", () => {
    const of = (more: object) => complaints(untyped(referenceEvapotranspirationsMmPerD, { ...one, ...more }));
    const bad = (good: Float64Array, value: number) => Float64Array.of(good[0] as number, value);
    for (const name of Object.keys(one) as (keyof typeof one)[]) {
      expect(of({ [name]: bad(one[name], Number.NaN) })).toEqual([`not-finite ${name}[1]`]);
      expect(of({ [name]: bad(one[name], Number.POSITIVE_INFINITY) })).toEqual([`not-finite ${name}[1]`]);
      expect(of({ [name]: bad(one[name], 1e6) })).toEqual([`range ${name}[1]`]);
      expect(of({ [name]: Float64Array.of(1) })[0]).toMatch(/^conflict/);
      expect(of({ [name]: [1, 2] })[0]).toBe(`type ${name}`);
    }
    expect(of({ tMinC: bad(one.tMinC, 30) })).toEqual(["conflict tMinC[1]"]);
    expect(of({ latitudeDeg: bad(one.latitudeDeg, 85), dayOfYear: bad(one.dayOfYear, 355) })).toEqual([
      "infeasible latitudeDeg[1]",
    ]);
    expect(of({ tminC: one.tMinC })).toEqual(["type input.tminC"]);
    const out = new Float64Array(2);
    expect(referenceEvapotranspirationsMmPerD({ ...one, outMmPerD: out })).toBe(out);
    expect(out.every((x) => x > 0)).toBe(true);
    expect(of({ outMmPerD: new Float64Array(3) })).toEqual(["conflict outMmPerD"]);
    expect(
      complaints(
        untyped(hargreavesEvapotranspirationsMmPerD, {
          tMinC: Float64Array.of(-40),
          tMaxC: Float64Array.of(-30),
          latitudeDeg: Float64Array.of(50),
          dayOfYear: Float64Array.of(9),
        }),
      ),
    ).toEqual(["range tMaxC[0]"]);
  });
});

describe("turf", () => {
  test("lists of coefficients", () => {
    expect(turfCoefficient({ season: "warm-season", list: "California, by month", month: 12 }).value).toBe(
      0.55,
    );
    expect(turfCoefficient({ season: "cool-season", list: "New Mexico" }).value).toBe(0.85);
    expect(turfCoefficient({ season: "cool-season", list: "FAO-56" }).source).toMatchObject({
      where: "table 12, turf grass, cool and warm season",
    });
    expect(
      complaints(untyped(turfCoefficient, { season: "cool-season", list: "California, by month" })),
    ).toEqual(["missing month"]);
    expect(
      complaints(untyped(turfCoefficient, { season: "cool-season", list: "Arizona", month: 3 })),
    ).toEqual(["conflict month", "missing quality"]);
    expect(complaints(untyped(turfCoefficient, { season: "cool", list: "Ohio" }))).toEqual([
      "type season",
      "type list",
    ]);
  });
  test("the use is the reference by the coefficients", () => {
    const reference = quantity(0.2, "in/d");
    expect(turfUse({ reference, coefficient: 0.8, microclimate: 0.5 }).in("in/d")).toBeCloseTo(0.08, 15);
    expect(landscapeCoefficient({ species: 0.5, density: 1.2, microclimate: 1.4 })).toBeCloseTo(0.84, 15);
    expect(complaints(untyped(turfUse, { reference, coefficient: 80 }))).toEqual(["range coefficient"]);
    expect(complaints(untyped(landscapeCoefficient, { species: 0 }))).toEqual(["range species"]);
  });
});
