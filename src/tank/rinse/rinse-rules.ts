import { exceeds } from "../../numeric/index.js";
import { type Citation, frozen } from "../../quantity/index.js";

/** A published rule for rinsing an empty container. */
export interface RinseRule {
  readonly source: Citation;
  /** Water of one rinse as a share of the container, least and most; by size where the rule says so. */
  readonly fraction: (gallons: number) => readonly [number, number];
  readonly rinses: number;
  /** Seconds of draining; left out where the rule gives none. */
  readonly drainSeconds?: number;
  /** Whether the seconds of draining count from when the flow begins to drip. */
  readonly fromDrip?: boolean;
  /** Seconds of shaking; left out where the rule says only to shake. */
  readonly shakeSeconds?: number;
  /** Containers above so many gallons are rolled instead of shaken, for so many seconds. */
  readonly roll?: { readonly aboveGallons: number; readonly seconds: number };
  /** Rinsing with a pressure nozzle instead: seconds, or the least water as a share of the container. */
  readonly pressure?: { readonly seconds?: number; readonly fraction?: number };
  readonly withinHours?: number;
}

/** Within the guard of a comparison 5 gal are 5 gal, in whatever unit they were given. */
const quarterOrFifth = (gallons: number): readonly [number, number] =>
  exceeds(5, gallons) ? [0.25, 0.25] : [0.2, 0.2];

/**
 * Published rules for rinsing containers. They disagree: the definition of 1974 takes a tenth of the
 * container, the states and the federal archive a fifth to a quarter, and the text that a federal rule puts
 * on US labels a quarter, whatever the size. That text was read on a label, for containers that can be
 * shaken; rolling the larger ones is from memory, and the 30 s of its pressure rinse are those of a recycling council. What
 * stands on the label comes first.
 */
export const rinseRules: Readonly<
  Record<"US federal label text" | "Illinois" | "Montana" | "US EPA archive" | "1974 definition", RinseRule>
> = /* @__PURE__ */ frozen({
  "US federal label text": {
    source: {
      title:
        "Residue removal instructions for nonrefillable containers, 40 CFR 156.146, as a US label prints them",
      publisher: "US Environmental Protection Agency",
      where:
        "triple rinse of a container that can be shaken; larger containers from memory; the pressure rinse of at least 30 s, at 40 psi or more, from the Ag Container Recycling Council, pressure rinsing",
    },
    fraction: () => [0.25, 0.25],
    rinses: 3,
    drainSeconds: 10,
    fromDrip: true,
    shakeSeconds: 10,
    roll: { aboveGallons: 5, seconds: 30 },
    pressure: { seconds: 30 },
  },
  Illinois: {
    source: {
      title: "50 Ways Farmers Can Protect Their Groundwater, no. 30, Rinse Chemical Containers Thoroughly",
      publisher: "University of Illinois",
      url: "http://www.thisland.illinois.edu/50ways/50ways_30.html",
    },
    fraction: quarterOrFifth,
    rinses: 3,
    drainSeconds: 30,
    pressure: { seconds: 60 },
  },
  Montana: {
    source: {
      title: "Administrative Rules of Montana 4.10, Rinsing of pesticide containers",
      publisher: "State of Montana",
      where: "(1)-(2)",
      url: "https://rules.mt.gov/gateway/ShowRuleFile.asp?RID=16614",
    },
    fraction: quarterOrFifth,
    rinses: 3,
    drainSeconds: 30,
    pressure: { fraction: 0.5 },
    withinHours: 48,
  },
  "US EPA archive": {
    source: {
      title: "Farm pesticide container rinsing (archived compliance library)",
      publisher: "US Environmental Protection Agency",
      where: "triple-rinse steps",
      url: "https://webarchive.library.unt.edu/eot2008/20090827135059/http:/www.epa.gov/seahome/library/farmpest.zip",
    },
    fraction: () => [0.2, 0.25],
    rinses: 3,
    drainSeconds: 30,
    shakeSeconds: 30,
    pressure: { seconds: 30 },
  },
  "1974 definition": {
    source: {
      title: "Triple rinsing, definition of 1974",
      publisher: "compliance digest",
    },
    fraction: () => [0.1, 0.1],
    rinses: 3,
  },
});

/** Whose rule for rinsing a container. */
export type RinseRuleId = keyof typeof rinseRules;
