import { fixedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { checks, type Finding, fail, outOfRange } from "../../quantity/index.js";
import {
  anyLength,
  type Length,
  made,
  optional,
  type Pressure,
  pressure,
  type Read,
  readRecord,
} from "../read.js";
import { kPaPerMeter } from "./pressure-of-height.js";

/** What is left of the pressure of a supply at the head. */
export interface SupplyPressure {
  readonly type: "supply-pressure";
  readonly version: 1;
  /** At the head, while it runs; below zero where the losses are more than there is. */
  readonly atHead: Pressure;
  /** All losses together. */
  readonly losses: Pressure;
  /** Gained by a head below the supply, lost by one above. */
  readonly fromHeight: Pressure;
  readonly findings: readonly Finding[];
}

const most = 200;

const losses: Read<readonly Pressure[]> = (input, path) => {
  if (!Array.isArray(input))
    return fail("type", path, input, "a list of losses; an empty one where there are none");
  if (input.length > most) outOfRange(path, input, { max: most, count: "losses" });
  const problems = checks();
  const found: Pressure[] = [];
  Array.from(input as readonly unknown[]).forEach((loss, i) => {
    const one = problems.run(() => pressure(loss, `${path}[${i}]`));
    if (one !== undefined) found.push(one);
  });
  problems.done();
  return found;
};

/**
 * What is left of the pressure of a supply at a head that runs: `p = supply - sum of losses + rho g h`.
 *
 * - `supply` the pressure at the meter or pump while that much water runs: a static pressure reads too high
 * - `losses` of pipes ({@link frictionLoss}), meter, backflow preventer, valves and fittings, one by one; may be empty
 * - `drop` how far the head lies below the supply, negative where it lies above; level where left out
 * - `needed` what the head works at: less is a finding, and so is no pressure at all, whether or not it is given
 *
 * In the unit of the supply. A backflow preventer or an air gap belongs between a potable supply and any irrigation.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`, with the index of the loss
 *
 * Source: addition; common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity, supplyPressure } from "ratewright";
 * const psi = (value: number) => quantity(value, "psi");
 * const head = supplyPressure({ supply: psi(60), losses: [psi(8), psi(12)], drop: quantity(-10, "ft"), needed: psi(30) });
 * head.atHead.in("psi").toFixed(1); // => "35.7"
 * head.findings; // => []
 * ```
 */
export const supplyPressure = (input: {
  readonly supply: Pressure;
  readonly losses: readonly Pressure[];
  readonly drop?: Length;
  readonly needed?: Pressure;
}): SupplyPressure => {
  const q = readRecord(
    input,
    { supply: pressure, losses, drop: optional(anyLength), needed: optional(pressure) },
    "a record with supply and losses",
  );
  const { unit } = q.supply;
  const inUnit = (p: Pressure): number => p.in(unit as "psi");
  const lost = q.losses.reduce((sum, loss) => sum + inUnit(loss), 0);
  const height = inUnit(made((q.drop?.in("m") ?? 0) * kPaPerMeter, "kPa", "pressure"));
  const left = q.supply.value - lost + height;
  const needed = q.needed === undefined ? undefined : inUnit(q.needed);
  return {
    type: "supply-pressure",
    version: 1,
    atHead: made(left, unit, "pressure"),
    losses: made(lost, unit, "pressure"),
    fromHeight: made(height, unit, "pressure"),
    findings:
      left <= 0
        ? [nothing(left, needed ?? 0, unit)]
        : needed !== undefined && exceeds(needed, left)
          ? [tooLow(left, needed, unit)]
          : [],
  };
};

/** The losses take all that there is. */
const nothing = (left: number, needed: number, unit: string): Finding => ({
  code: "water/pressure-too-low",
  severity: "warning",
  path: "losses",
  params: { left, needed, unit },
  text: "Losses and height take all the pressure: no water comes out at the head. Fewer heads at a time, larger pipe, or a pump.",
});

const tooLow = (left: number, needed: number, unit: string): Finding => ({
  code: "water/pressure-too-low",
  severity: "warning",
  path: "needed",
  params: { left, needed, unit },
  text: `${fixedApart(left, needed, 1)(left)} ${unit} is left at the head, which works at ${fixedApart(left, needed, 1)(needed)}: run fewer heads at a time, or use larger pipe.`,
});
