import { touches } from "../../ledger/house.js";
import { exceeds } from "../../numeric/index.js";
import { inUnit, type Length } from "../../quantity/index.js";
import { type WateringIn, wateringIn } from "../../water/index.js";
import type { ReadWater, ReadWaterEvent } from "../job/read-water.js";
import type { ReadTreatment } from "../job/treatments.js";
import { depthWords, type ProductWatering } from "./watering-conflicts.js";

/** Parts that get the same water, and how a rule stands to it: to all of it, and to what does not rest on a forecast. */
export interface Weighed {
  readonly parts: readonly string[];
  readonly all: WateringIn;
  readonly sure: WateringIn;
}

interface Ground {
  readonly parts: string[];
  readonly events: readonly ReadWaterEvent[];
}

/** The parts of a treatment by the water that reaches them. */
const groundOf = (treatment: ReadTreatment, { events, ground }: ReadWater): readonly Ground[] => {
  const groups = new Map<string, Ground>();
  for (const part of treatment.parts ?? ground) {
    const reaching = events.filter(({ parts = [] }) => touches(parts, part));
    const key = reaching.map((event) => events.indexOf(event)).join();
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { parts: [part], events: reaching });
    else known.parts.push(part);
  }
  return [...groups.values()];
};

/** How one rule stands to the water of the job, on each ground that gets its own; nothing where that cannot be told. */
export const weighed = (
  { rule }: ProductWatering,
  treatment: ReadTreatment,
  water: ReadWater,
): readonly Weighed[] => {
  const { end } = treatment;
  if (end === undefined || Date.parse(water.until) < Date.parse(end)) return [];
  const of = (list: readonly ReadWaterEvent[]): WateringIn => {
    const found = wateringIn({
      rule,
      end,
      until: water.until,
      water: list.map(({ at, depth, by }) => ({ at, depth, by })),
    });
    // A rule that states no depth is told in the unit in which the job writes its water.
    const unit = (rule.least ?? rule.most ?? list[0]?.depth)?.unit;
    return unit === undefined ? found : { ...found, early: inUnit(found.early, unit) };
  };
  return groundOf(treatment, water).map(({ parts, events }) => ({
    parts,
    all: of(events),
    sure: of(events.filter(({ known }) => known !== "forecast")),
  }));
};

/** The names of some parts, as they are said in a line; parts without a name are the rest. */
export const partWords = (parts: readonly string[]): string => {
  const named = parts.filter((part) => part !== "");
  const names = named.length < parts.length || named.length === 0 ? [...named, "the rest"] : named;
  return [names.slice(0, -1).join(", "), ...names.slice(-1)].filter((text) => text !== "").join(" and ");
};

/** Whether a depth is as much as the most of some: sums of the same water in another order are the same but for rounding. */
export const asMuch = (depth: Length, most: Length): boolean => !exceeds(most.in("mm"), depth.in("mm"));

/** Of the grounds that a remark is about, the one with the most of a depth, and the others in words of their own. */
export interface Told {
  readonly most: Weighed;
  /** Where it is; nothing where it is so all over. */
  readonly where: string;
  readonly others: string;
}

/** Sorts what a remark is about by a depth; nothing where it is about no ground. */
export const told = (
  among: readonly Weighed[],
  all: readonly Weighed[],
  of: (one: Weighed) => WateringIn["early"],
): Told | undefined => {
  const [first, ...rest] = among;
  if (first === undefined) return undefined;
  const most = rest.reduce((a, b) => (of(b).compare(of(a)) > 0 ? b : a), first);
  const same = (one: Weighed): boolean => asMuch(of(one), of(most));
  if (among.length === all.length && among.every(same)) return { most, where: "", others: "" };
  const less = among.filter((one) => !same(one));
  return {
    most,
    where: partWords(among.filter(same).flatMap(({ parts }) => parts)),
    others: less.map((one) => ` Also ${partWords(one.parts)}: ${depthWords(of(one))}.`).join(""),
  };
};
