/** The grounds of an invented city, as a CSV of any length: the same rows for the same seed, on every platform. */
import { createWriteStream } from "node:fs";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { mersenne } from "pure-rand/generator/mersenne";
import { lineOf } from "./csv.js";
import { columns } from "./site-order.js";

const kinds = ["park lawn", "practice pitch", "bowling green", "meadow", "verge", "school yard"];
const feeds = ["24-0-11", "18-0-6", "46-0-0", "12-0-0-26S", "6-2-4"];

/** What clerks do to a row, in every hundredth or so: the spoilt cells by column. */
const slips: readonly Partial<Record<(typeof columns)[number], string>>[] = [
  { area: "" },
  { area: "-400 ft2" },
  { area: "12400 lb" },
  { analysis: "24-0" },
  { analysis: "0-0-60" },
  { target: "0.9 lb/1000 ft" },
  { rate: "3 oz/1000 ft2" },
  { package: "50 lbs of it", capacity: "a tank" },
  { site: "" },
  {
    site: "",
    area: "?",
    analysis: "?",
    target: "?",
    package: "?",
    applicationVolume: "?",
    capacity: "?",
    rate: "?",
  },
];

/** The lines of the file, its head first. */
export function* siteLines(rows: number, seed: number): Generator<string> {
  const random = mersenne(seed);
  const draw = (least: number, most: number): number => uniformInt(random, least, most);
  const one = <T>(list: readonly T[]): T => list[draw(0, list.length - 1)] as T;
  yield lineOf(columns);
  for (let row = 1; row <= rows; row++) {
    const us = draw(0, 3) > 0;
    const ward = draw(1, 40);
    // A name with a comma in it, as clerks write them.
    const name = draw(0, 9) === 0 ? `${one(kinds)} ${row}, ward ${ward}` : `${one(kinds)} ${row}`;
    const cells = {
      site: name,
      area: us ? `${draw(20, 900) * 100} ft2` : `${draw(200, 9000)} m2`,
      analysis: one(feeds),
      target: us ? `${draw(5, 10) / 10} lb/1000 ft2` : `${draw(20, 50)} kg/ha`,
      package: us ? "50 lb" : "25 kg",
      applicationVolume: us ? `${draw(10, 40) / 10} gal/1000 ft2` : `${draw(300, 900)} L/ha`,
      capacity: us ? `${one([25, 50, 100, 200])} gal` : `${one([100, 200, 400])} L`,
      rate: us ? `${draw(1, 60) / 10} fl oz/1000 ft2` : `${draw(2, 60) / 10} L/ha`,
    };
    const slip = draw(0, 99) === 0 ? one(slips) : {};
    yield lineOf(columns.map((column) => slip[column] ?? cells[column]));
  }
}

/** Writes the file, some thousand rows at a time. */
export const writeSites = async (path: string, rows: number, seed: number): Promise<void> => {
  function* blocks(): Generator<string> {
    let text = "";
    for (const line of siteLines(rows, seed)) {
      text += line;
      if (text.length < 65_536) continue;
      yield text;
      text = "";
    }
    yield text;
  }
  await pipeline(Readable.from(blocks()), createWriteStream(path));
};
