// The array kernels beside loops by hand, and what memory they take.
import {
  accumulateEquivalentDaysC,
  productRatesKgPerHa,
  referenceEvapotranspirationsMmPerD,
  runningDegreeDaysC,
} from "ratewright";
import { coverRows } from "../kernels/cover.js";
import { degreeDayRows } from "../kernels/degree-days.js";
import { evapotranspirationRows } from "../kernels/evapotranspiration.js";
import { numberRows } from "../kernels/numbers.js";
import { rateRows } from "../kernels/rates.js";
import { releaseRows } from "../kernels/release.js";
import { swathRows } from "../kernels/swath.js";
import { raceTimes, reading } from "./race.js";
import type { KernelRow, Reading, Results } from "./rows.js";

const rows: readonly KernelRow[] = [
  ...numberRows,
  ...rateRows,
  ...releaseRows,
  ...degreeDayRows,
  ...swathRows,
  ...evapotranspirationRows,
  ...coverRows,
];

const agree = ({ name, results }: KernelRow): void => {
  const [hand = Number.NaN, own = Number.NaN] = results.map((one) => one());
  if (!(Math.abs(hand - own) <= 1e-6 * Math.abs(hand))) throw new Error(`${name}: ${own} is not ${hand}`);
};

/** Nanoseconds an item, of each kernel and of its loop. */
export const measuredKernels = (rounds: number): Results["kernels"] =>
  rows.map((row) => {
    agree(row);
    const [hand = [], own = []] = raceTimes([row.hand, row.own], { rounds, milliseconds: 6 });
    const each = (times: readonly number[]): Reading => reading(times.map((ns) => ns / row.items));
    // Round by round, for both of a round had the same machine.
    const ratio = reading(own.map((ns, i) => ns / (hand[i] as number)));
    return { name: row.name, of: row.of, hand: each(hand), own: each(own), ratio };
  });

const filled = (days: number, value: (i: number) => number): Float64Array =>
  Float64Array.from({ length: days }, (_, i) => value(i));

/** Each with arrays of so many days, made beforehand, and a list for the results. */
const calls = (days: number): readonly (readonly [string, () => unknown])[] => {
  const minC = filled(days, (i) => 8 + 7 * Math.sin(i / 58));
  const maxC = filled(days, (i) => 17 + 9 * Math.sin(i / 58) + (i % 7));
  const out = new Float64Array(days);
  const flat = (value: number): Float64Array => filled(days, () => value);
  const [vaporPressureKPa, windAtTwoMetersMPerS, solarMJPerM2D, elevationM, latitudeDeg] = [
    flat(1),
    flat(2),
    flat(12),
    flat(100),
    flat(45),
  ] as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  const dayOfYear = filled(days, (i) => (i % 365) + 1);
  return [
    ["productRatesKgPerHa", () => productRatesKgPerHa(maxC, 24, out)],
    [
      "runningDegreeDaysC",
      () => runningDegreeDaysC({ method: "single sine", maxC, minC, baseC: 10, outCDays: out }),
    ],
    [
      "accumulateEquivalentDaysC",
      () =>
        accumulateEquivalentDaysC(
          maxC,
          minC,
          {
            kind: "Arrhenius",
            activationEnergy: { low: 80, high: 80 },
            referenceC: 25,
          },
          "mid",
          out,
        ),
    ],
    [
      "referenceEvapotranspirationsMmPerD",
      () =>
        referenceEvapotranspirationsMmPerD({
          tMinC: minC,
          tMaxC: maxC,
          vaporPressureKPa,
          windAtTwoMetersMPerS,
          solarMJPerM2D,
          elevationM,
          latitudeDeg,
          dayOfYear,
          outMmPerD: out,
        }),
    ],
  ];
};

/** Bytes that a call leaves on the heap before anything is collected: the least of several calls, once it is compiled. */
const bytesOf = (run: () => unknown): number => {
  const start = process.cpuUsage().user;
  for (let i = 0; i < 60 || (i < 3000 && process.cpuUsage().user - start < 4e5); i++) run();
  let least = Number.POSITIVE_INFINITY;
  let counted = 0;
  for (let i = 0; counted < 9 && i < 90; i++) {
    globalThis.gc?.();
    const used = (): number => {
      const { heapUsed, external } = process.memoryUsage();
      return heapUsed + external;
    };
    const before = used();
    run();
    const more = used() - before;
    // Less than before: something was collected meanwhile, and nothing is known of this call.
    if (more < 0) continue;
    counted += 1;
    least = Math.min(least, more);
  }
  if (counted === 0) throw new Error("memory was collected during every call");
  return least;
};

/** What a call takes of memory, by days. */
export const measuredMemory = (): Results["memory"] => {
  if (globalThis.gc === undefined) throw new Error("memory is measured with --expose-gc");
  const days = [1_000, 10_000, 100_000, 1_000_000];
  const bySize = days.map((n) => calls(n).map(([name, run]) => [name, bytesOf(run)] as const));
  return (bySize[0] ?? []).map(([name], at) => ({
    name,
    days,
    bytes: bySize.map((list) => list[at]?.[1] ?? Number.NaN),
  }));
};
