import { describe, expect, test } from "vitest";
import { publishedLimits, rememberedLimits, runoffMenu } from "../../../src/limits/index.js";
import { saysOf } from "./law.js";
import { rememberedLaws } from "./laws-from-memory.js";
import { greatLakesLaws } from "./laws-great-lakes.js";
import { midAtlanticLaws } from "./laws-mid-atlantic.js";
import { northeastLaws } from "./laws-northeast.js";
import { southeastLaws } from "./laws-southeast.js";

const read = [...greatLakesLaws, ...midAtlanticLaws, ...northeastLaws, ...southeastLaws];

describe.each([...read, ...rememberedLaws].map((law) => [law.set.id, law] as const))(
  "%s",
  (_, { set, rows }) => {
    test.each(rows.map((row) => [row.limit, row] as const))("%s", (_, { limit, over, within, free = [] }) => {
      for (const [says, list] of Object.entries({ over, within, free }))
        for (const one of list) expect(saysOf(set, limit, one), JSON.stringify(one)).toBe(says);
    });

    test("no limit of it is left out here", () => {
      expect(rows.map(({ limit }) => `${set.id}/${limit}`)).toEqual(set.limits.map(({ id }) => id));
    });
  },
);

test("no set is left out here, and each says whether it was read", () => {
  const ids = (laws: readonly { readonly set: { readonly id: string } }[]): readonly string[] =>
    laws.map(({ set }) => set.id).sort();
  expect(ids(read)).toEqual(publishedLimits.map(({ id }) => id).sort());
  expect(ids(rememberedLaws)).toEqual(rememberedLimits.map(({ id }) => id).sort());
  expect(read.filter(({ reached }) => reached === "from memory")).toEqual([]);
  expect(rememberedLaws.filter(({ reached }) => reached !== "from memory")).toEqual([]);
});

test("a set that was read says on which day, and so does each of its limits; one from memory has no day", () => {
  for (const { id, readOn, limits } of publishedLimits) {
    expect(readOn, id).toBe(id === "us-ct" ? "2026-11-28" : "2026-11-25");
    expect(limits.filter((limit) => limit.readOn !== readOn)).toEqual([]);
  }
  for (const { readOn, limits } of rememberedLimits) {
    expect(readOn).toBeNull();
    expect(limits.filter((limit) => "readOn" in limit)).toEqual([]);
  }
});

/** The one thing of each law that whoever goes by its limits here has to know they do not hold. */
const notHeld: Readonly<Record<string, RegExp>> = {
  "us-fl": /Annual nitrogen by grass and region, and closed seasons, which counties set/,
  "us-fl-marion": /starter application is made only once/,
  "us-md-product": /0\.7 lb N\/1000 ft2 a month/,
  "us-md-use": /Nothing on hard surfaces/,
  "us-nj": /Heavy rainfall/,
  "us-nj-summary": /sold to consumers/,
  "us-pa": /site-specific plans/,
  "us-ny": /Whether December 1 and April 1 are blackout days themselves/,
  "us-vt": /has to call it a starter/,
  "us-ct": /exactly 20 ft from the water is still too near/,
  "ca-mb": /A soil test that shows a lack of phosphorus/,
  "us-mn": /rates of the University of Minnesota/,
  "us-wi": /Nothing on hard surfaces/,
  "us-mi": /Public Act 151 of 2013/,
  "us-il": /Lawn repair products are excepted from all of it/,
  "au-turf-fungicides": /mixed with a fungicide of another group/,
};

test("each set names what of its law no limit here states", () => {
  for (const set of [...publishedLimits, ...rememberedLimits]) {
    expect(set.notHeld.join("\n"), set.id).toMatch(notHeld[set.id] as RegExp);
  }
  expect(runoffMenu.notHeld.join("\n")).toMatch(/which measures exclude each other/);
});
