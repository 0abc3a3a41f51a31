import type { Instant } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import type { Finding, Quantity } from "../../quantity/index.js";
import type { WateringInRule } from "../../water/index.js";

/** What the label of one product states of water after the application. */
export interface ProductWatering {
  readonly product: string;
  readonly productName: string;
  readonly rule: WateringInRule;
}

/** A depth of water in words: `0.25 in`, `6 mm`. */
export const depthWords = (depth: Quantity<"length", "none">): string =>
  `${Number(depth.value.toPrecision(3))} ${depth.unit}`;

/** A moment in words: `2015-06-08 14:30`, by the clock that it was written with. */
export const momentWords = (at: Instant): string => `${at.slice(0, 10)} ${at.slice(11, 16)}`;

const hours = (time: Quantity<"time", "none">): string => `${Number(time.value.toPrecision(3))} ${time.unit}`;

/**
 * Of two lists of products, one that wants water and one that must stay dry: a warning where no time is left between the
 * two, and else a caution with the time that is left.
 */
export const wetAndDry = (
  wet: readonly ProductWatering[],
  path: string,
  where: string,
  dry: readonly ProductWatering[] = wet,
): Finding[] =>
  wet.flatMap((a) =>
    dry.flatMap((b): Finding[] => {
      const { least, within } = a.rule;
      const { notBefore } = b.rule;
      if (a.product === b.product || least === undefined || notBefore === undefined) return [];
      const apart = within !== undefined && exceeds(within.in("h"), notBefore.in("h"));
      const wants = `${a.productName} has to be watered in${within === undefined ? "" : ` within ${hours(within)}`}`;
      const stays = `${b.productName} must stay dry on the leaf for ${hours(notBefore)}`;
      return [
        {
          code: "watering-in/wet-and-dry",
          severity: apart ? "caution" : "warning",
          path,
          params: { wet: a.product, dry: b.product, timeLeft: apart ? 1 : 0 },
          text: `${wants}, and ${stays}, ${where}. ${
            apart
              ? `Water only after ${hours(notBefore)}, and check both labels: washing it off may stop ${b.productName} from working.`
              : "One watering cannot do both: apply them separately."
          }`,
          source: `${a.rule.source}; ${b.rule.source}`,
        },
      ];
    }),
  );

/** Products of one treatment of which one wants more water than another takes. */
export const amountConflicts = (rules: readonly ProductWatering[], path: string): Finding[] =>
  rules.flatMap((a) =>
    rules.flatMap((b): Finding[] => {
      const { least } = a.rule;
      const { most } = b.rule;
      if (least === undefined || most === undefined) return [];
      // No product contradicts itself: such a rule is refused where it is read.
      if (!exceeds(least.in("mm"), most.in("mm"))) return [];
      return [
        {
          code: "watering-in/amounts",
          severity: "warning",
          path,
          params: { wet: a.product, dry: b.product, least: least.toString(), most: most.toString() },
          text: `${a.productName} needs at least ${depthWords(least)} of water, and ${b.productName} at most ${depthWords(most)}. One watering cannot do both: apply them separately.`,
          source: `${a.rule.source}; ${b.rule.source}`,
        },
      ];
    }),
  );
