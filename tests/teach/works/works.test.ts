import { describe, expect, it } from "vitest";
import type { Citation } from "../../../src/index.js";
import * as nutrient from "../../../src/teach/works/nutrient-works.js";
import * as season from "../../../src/teach/works/season-works.js";
import * as site from "../../../src/teach/works/site-works.js";
import * as soilAndAir from "../../../src/teach/works/soil-and-air-works.js";
import * as spray from "../../../src/teach/works/spray-works.js";
import * as spread from "../../../src/teach/works/spread-works.js";
import * as stand from "../../../src/teach/works/stand-works.js";
import * as tank from "../../../src/teach/works/tank-works.js";
import * as water from "../../../src/teach/works/water-works.js";
import { citationFaults } from "../catalogue/citation-faults.js";

const rooms: Readonly<Record<string, object>> = {
  nutrient,
  season,
  site,
  soilAndAir,
  spray,
  spread,
  stand,
  tank,
  water,
};

/** A citation says what it is and where; the few that are remembered say that instead. */
describe.each(Object.keys(rooms).map((room) => ({ room })))("the works of $room", ({ room }) => {
  // some are cited at one place or another
  const works = (Object.values(rooms[room] ?? {}) as (Citation | ((where: string) => Citation))[]).map(
    (work) => (typeof work === "function" ? work("page 1") : work),
  );
  it("can be found", () => {
    expect(works.length).toBeGreaterThan(0);
    expect(works.flatMap(citationFaults)).toEqual([]);
  });
});
