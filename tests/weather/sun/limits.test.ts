import { describe, expect, it } from "vitest";
import {
  addDays,
  type CivilDate,
  dailyLightIntegral,
  dayLength,
  hoursBetween,
  lightFromRadiation,
  quantity,
  sunTimes,
} from "../../../src/index.js";
import { complaint } from "../../errors.js";

const deg = (value: number) => quantity(value, "deg");

describe("the sun at the edges", () => {
  it("the date line moves the date and not the sun", () => {
    // One moment on two clocks: 12 h behind UTC on one day, 12 h ahead on the next. In March at 60° the sun rises three
    // minutes earlier each day, so that the position of another day would show.
    for (const date of ["2026-03-10", "2026-09-20"] as const) {
      const east = sunTimes({ latitude: deg(60), longitude: deg(-179), date, offset: "+12:00" });
      const west = sunTimes({
        latitude: deg(60),
        longitude: deg(-179),
        date: addDays(date, -1),
        offset: "-12:00",
      });
      if (east.state !== "rises and sets" || west.state !== "rises and sets") throw new Error("it does");
      expect(hoursBetween(east.sunrise, west.sunrise)).toBe(0);
      expect(hoursBetween(east.sunset, west.sunset)).toBe(0);
      expect(east.dayLength.in("h")).toBeCloseTo(west.dayLength.in("h"), 9);
    }
  });

  it("four and a half hours between sun and clock are the most", () => {
    const far = (longitude: number) =>
      complaint(() =>
        sunTimes({ latitude: deg(40), longitude: deg(longitude), date: "2026-06-21", offset: "Z" }),
      );
    expect([far(67.5), far(-67.5)]).toEqual(["nothing thrown", "nothing thrown"]);
    expect([far(67.6), far(-67.6)]).toEqual(["conflict longitude", "conflict longitude"]);
  });

  it("days without a night last 24 h and nights without a day none", () => {
    const north = (date: CivilDate) =>
      sunTimes({ latitude: deg(78), longitude: deg(16), date, offset: "+01:00" }).dayLength.in("h");
    expect([north("2026-06-21"), north("2026-12-21")]).toEqual([24, 0]);
    const pole = (date: CivilDate) => dayLength({ latitude: deg(89), date }).in("h");
    expect([pole("2026-06-21"), pole("2026-12-21")]).toEqual([24, 0]);
  });

  it("both poles and both ends of the date line are places", () => {
    const at = (latitude: number, longitude: number, offset: string) =>
      complaint(() =>
        sunTimes({ latitude: deg(latitude), longitude: deg(longitude), date: "2026-06-21", offset }),
      );
    expect(at(90, 180, "+12:00")).toBe("nothing thrown");
    expect(at(-90, -180, "-12:00")).toBe("nothing thrown");
  });
});

describe("light at the limits", () => {
  it("rounding of the step makes no part of a day", () => {
    const thirds = Array(3 * 1440).fill(100) as number[];
    expect(complaint(() => dailyLightIntegral({ ppfdMicromol: thirds, everyMinutes: 1 }))).toBe(
      "range ppfdMicromol",
    );
    // 13 readings of 1440/13 minutes; 100 micromol a second for a day are 8.64 mol.
    const odd = dailyLightIntegral({ ppfdMicromol: Array(13).fill(100), everyMinutes: 110.7692307692 });
    expect(odd.molPerSquareMeter).toBeCloseTo(8.64, 6);
  });

  it("50 MJ, all of the radiation and the ends of the photons are taken", () => {
    const most = lightFromRadiation({
      radiation: quantity(50, "MJ/m2"),
      parShare: quantity(100, "%"),
      micromolPerJoule: 6,
    });
    expect(most.molPerSquareMeter).toBe(300);
  });
});
