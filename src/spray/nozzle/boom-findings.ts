import { exceeds } from "../../numeric/index.js";
import type { Finding } from "../../quantity/index.js";
import type { BoomLimits, NozzleResult } from "./nozzle-check-types.js";

type Caught = Pick<NozzleResult<string>, "number" | "verdict" | "reasons">;

const numbersOf = (nozzles: readonly Caught[]): readonly string[] =>
  nozzles.map(({ number }) => String(number));

/** `nozzle 4`, `nozzles 1, 2 and 3`. */
const named = (numbers: readonly string[]): string =>
  numbers.length === 1
    ? `nozzle ${numbers[0]}`
    : `nozzles ${numbers.slice(0, -1).join(", ")} and ${numbers[numbers.length - 1]}`;

/** The flows of a boom, in one unit: its mean, that without the low nozzles, and the rated one. */
export interface BoomFlows {
  readonly mean: number;
  readonly upper: number;
  readonly rated: number | undefined;
  readonly limits: BoomLimits;
  /** Whether a nozzle counts as plugged, by the limits that it passed. */
  readonly plugged: (reasons: Caught["reasons"]) => boolean;
}

/** What the catches say of the boom as a whole. */
export const boomFindings = (nozzles: readonly Caught[], flows: BoomFlows): readonly Finding[] => [
  ...catchAgain(nozzles),
  ...cleanFirst(nozzles, flows.plugged),
  ...wholeBoom(flows),
];

const catchAgain = (nozzles: readonly Caught[]): readonly Finding[] => {
  // one that only looks worn beside plugged ones is not off, and pulls nothing
  const bad = nozzles.filter(({ verdict }) => verdict === "clean" || verdict === "replace").length;
  if (bad === 0) return [];
  return [
    {
      code: "nozzle/check-again",
      severity: "note",
      params: { nozzles: bad },
      text: `${bad} of ${nozzles.length} nozzles ${bad === 1 ? "is off, and it pulls" : "are off, and they pull"} the mean. Catch the whole boom again after cleaning and replacing.`,
    },
  ];
};

const cleanFirst = (nozzles: readonly Caught[], plugged: BoomFlows["plugged"]): readonly Finding[] => {
  const pulled = numbersOf(nozzles.filter(({ verdict }) => verdict === "check again"));
  if (pulled.length === 0) return [];
  const low = numbersOf(nozzles.filter(({ reasons }) => plugged(reasons)));
  return [
    {
      code: "nozzle/clean-first",
      severity: "caution",
      params: { nozzles: pulled, low },
      text: `Low nozzles pull the mean down (${named(low)}); without them ${named(pulled)} would be within the limit of the mean. Clean the low ones and catch the boom again before any of the others is replaced.`,
      source: "common practice, no source",
    },
  ];
};

/** What lies on the whole boom rather than on one nozzle, which only a rated flow shows. */
const wholeBoom = ({ mean: middle, upper, rated, limits }: BoomFlows): readonly Finding[] => {
  if (rated === undefined) return [];
  const off = (flow: number): number => (100 * (flow - rated)) / rated;
  const findings: Finding[] = [];
  if (exceeds(-off(upper), limits.belowRated))
    findings.push({
      code: "nozzle/boom-low",
      severity: "warning",
      params: { percent: off(upper) },
      text: `The mean of the boom, without single plugged nozzles, is ${Number((-off(upper)).toPrecision(3))} % below the rated flow: the pressure at the nozzles is less than that of the rated flow, or screens and lines are plugged.`,
      source: "common practice, no source",
    });
  if (exceeds(off(middle), limits.aboveRated))
    findings.push({
      code: "nozzle/boom-worn",
      severity: "warning",
      params: { percent: off(middle) },
      text: `The mean of the boom is ${Number(off(middle).toPrecision(3))} % above the rated flow: the set is worn, or the pressure at the nozzles is not what the gauge says.`,
    });
  return findings;
};
