import { described } from "../../quantity/house.js";
import { checks, expectFields, expectRecord, type Finding, fail } from "../../quantity/index.js";
import { expectPercent, short } from "../report/expect-ph.js";
import type { FinenessScheme } from "./fineness-schemes.js";

/**
 * A sieve test: percent by weight that passes each sieve of the scheme, keyed by mesh number, or percent in each
 * fraction, coarse to fine, first what stays on the coarsest sieve.
 */
export type SieveTest =
  | { readonly passing: Readonly<Record<number, number>> }
  | { readonly fractions: readonly number[] };

/** A sieve test, read both ways. */
export interface ReadSieves {
  /** Percent passing each sieve, coarse to fine. */
  readonly passing: readonly number[];
  /** Percent between sieves, coarse to fine; one more than sieves. */
  readonly fractions: readonly number[];
  readonly findings: readonly Finding[];
}

/** What a printed figure may be off by: half of its last place, which is a tenth of a percent. */
const rounding = 0.05;
/** Percent that may be missing from a test before it is no test. */
const mostMissing = 2;

/** Takes a sieve test of a scheme, or throws with its path. */
export const readSieves = (input: unknown, scheme: FinenessScheme): ReadSieves => {
  const record = expectFields(input, ["passing", "fractions"], "sieves");
  if (record.passing !== undefined && record.fractions !== undefined) {
    fail("conflict", "sieves.fractions", described("both"), "passing or fractions, not both");
  }
  if (record.passing !== undefined) return byPassing(record.passing, scheme);
  if (record.fractions !== undefined) return byFractions(record.fractions, scheme);
  return fail("missing", "sieves", undefined, "{ passing } by mesh number, or { fractions } coarse to fine");
};

const byPassing = (input: unknown, { sieves }: FinenessScheme): ReadSieves => {
  const record = expectRecord(input, "sieves.passing", "percent passing by mesh number");
  const problems = checks();
  for (const name of Object.keys(record)) {
    if (sieves.map(String).includes(name)) continue;
    problems.run(() =>
      fail("type", `sieves.passing.${name}`, name, `a sieve of the scheme: ${sieves.join(", ")}`),
    );
  }
  const passing = sieves.map((mesh) => {
    const path = `sieves.passing.${mesh}`;
    const given = record[mesh];
    return problems.run(() =>
      given === undefined
        ? fail("missing", path, undefined, `percent that passes mesh ${mesh}`)
        : expectPercent(given, path),
    );
  });
  problems.done();
  const read = passing as readonly number[];
  read.forEach((percent, i) => {
    const coarser = i === 0 ? 100 : (read[i - 1] as number);
    if (percent > coarser) {
      const expected = `at most the ${coarser} % that passes the coarser mesh: percent between sieves goes into fractions`;
      fail("conflict", `sieves.passing.${sieves[i]}`, percent, expected);
    }
  });
  const fractions = [100, ...read].map((percent, i) => percent - (read[i] ?? 0));
  return { passing: read, fractions, findings: [] };
};

const byFractions = (input: unknown, { sieves }: FinenessScheme): ReadSieves => {
  const path = "sieves.fractions";
  const count = sieves.length + 1;
  if (!Array.isArray(input) || input.length !== count) {
    const names = `over ${sieves.join(", ")} mesh, and finer`;
    return fail("type", path, input, `a list of ${count} percentages, coarse to fine: ${names}`);
  }
  const problems = checks();
  const read = Array.from(input as readonly unknown[], (percent, i) =>
    problems.run(() => expectPercent(percent, `${path}[${i}]`)),
  );
  problems.done();
  const fractions = read as readonly number[];
  const total = fractions.reduce((sum, percent) => sum + percent, 0);
  const slack = rounding * count + 1e-9;
  if (total > 100 + slack || total < 100 - mostMissing - 1e-9) {
    const expected = "100 % in all: percent that passes each sieve goes into passing";
    fail("conflict", path, described(`${short(total)} % in all`), expected);
  }
  // What passes a sieve is all that is finer.
  const passing = sieves.map((_, i) => fractions.slice(i + 1).reduce((sum, percent) => sum + percent, 0));
  const findings: Finding[] =
    total < 100 - slack
      ? [
          {
            code: "lime/fractions-short",
            severity: "caution",
            path,
            params: { total: short(total) },
            text: `The sieve fractions add up to ${short(total)} %: what is missing counts as lime that does not react.`,
          },
        ]
      : [];
  return { passing, fractions, findings };
};
