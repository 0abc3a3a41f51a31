// What an entry says of its substances, its codes and its columns: worked out on paper.
import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger, ledgerFromCsv, resistanceRotation } from "../../src/ledger/index.js";
import { checkLimits } from "../../src/limits/index.js";
import { problemsOf } from "../errors.js";

const source = "plan of the park (invented)";
const supply = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
const use = (of: string, supplies: readonly object[]) =>
  checkLimits({
    limits: [{ amount: supply(10, of), per: "application", source } as never],
    proposal: { date: "2026-06-08", supplies } as never,
  }).uses[0]?.adds;

describe("a nutrient in another form", () => {
  test("potash alone is potassium: 1.2 lb of K2O are 1.2 x 78.1966 / 94.196 lb of K", () => {
    expect(use("K", [supply(1.2, "K2O")])?.value).toBeCloseTo((1.2 * 78.1966) / 94.196, 5);
    expect(use("K2O", [supply(1.2, "K")])?.value).toBeCloseTo((1.2 * 94.196) / 78.1966, 5);
    expect(use("P", [supply(2, "P2O5")])?.value).toBeCloseTo((2 * 61.947524) / 141.944524, 4);
  });

  test("nitrate alone is nitrogen, quick-release, and none of it slow", () => {
    expect(use("N", [supply(0.5, "NO3-N")])?.toJSON()).toEqual({ value: 0.5, unit: "lb/1000 ft2", of: "N" });
    expect(use("N:quick", [supply(0.5, "NO3-N")])?.value).toBe(0.5);
    expect(use("N:slow", [supply(0.5, "NO3-N")])?.value).toBe(0);
  });
});

describe("substances of an entry", () => {
  const entry = (more: object) =>
    problemsOf(() => ledger([{ id: "a", date: "2026-04-20", ...more } as LedgerEntry])).map(
      ({ code, path }) => `${code} ${path}`,
    );
  const amount = (of: string) => ({
    product: "feed-a",
    area: { value: 1000, unit: "ft2" },
    amount: { value: 3, unit: "lb", of },
  });
  test("an amount is of the product, with its id or without", () => {
    expect(entry(amount("product:feed-a"))).toEqual([]);
    expect(entry(amount("product"))).toEqual([]);
    expect(entry(amount("product:feed-b"))).toEqual(["substance/mismatch entries[0].amount.of"]);
    expect(entry(amount("my product:feed-a"))[0]).toBe("substance/mismatch entries[0].amount.of");
  });
  test("a content is of an active ingredient, with its name or without", () => {
    const content = (of: string) => ({ product: "x", contents: [{ value: 65, unit: "% w/w", of }] });
    expect(entry(content("ai/product"))).toEqual([]);
    expect(entry(content("ai:prodiamine/product"))).toEqual([]);
    expect(entry(content("N/product"))).toEqual(["substance/mismatch entries[0].contents[0].of"]);
  });
  test("an analysis that is null is none", () => {
    expect(entry({ product: "x", analysis: null })[0]).toMatch(/entries\[0\]\.analysis$/);
  });
});

describe("an entry that states nothing", () => {
  test("is named by its day and its place where it was not counted", () => {
    const { notChecked } = checkLimits({
      ledger: ledger([{ id: "mystery", date: "2026-05-01" }]),
      limits: [{ amount: supply(3, "N"), per: "calendar year", source } as never],
      proposal: { date: "2026-06-08", supplies: [supply(1, "N")] } as never,
    });
    expect(notChecked.filter((text) => text.includes("2026-05-01 (mystery)"))).toHaveLength(1);
  });
});

describe("heads of a table", () => {
  const problems = (head: string) =>
    problemsOf(() => ledgerFromCsv(`id,date,${head}\na,2026-04-20,5\n`)).map(
      ({ code, path }) => `${code} ${path}`,
    );
  test("are a field and its unit, with nothing before or behind", () => {
    expect(problems("area [ft2]")).toEqual([]);
    expect(problems("my area [ft2]")).toEqual(['type head "my area [ft2]"']);
    expect(problems("area [ft2] again")).toEqual(['type head "area [ft2] again"']);
  });
});

describe("modes of action", () => {
  const year = { from: "2026-01-01", to: "2026-12-31" } as const;
  const spray = (date: string, activeIngredient: string, more: object = {}): LedgerEntry =>
    ({ id: `${date} ${activeIngredient}`, date, activeIngredient, ...more }) as LedgerEntry;
  const list = (scheme: string, group: string, names: readonly string[]) => ({
    type: "resistance-code-list",
    version: 1,
    scheme,
    source,
    groups: { [group]: names },
  });
  const groups = (entries: readonly LedgerEntry[], codeLists: readonly object[] = []) =>
    resistanceRotation({
      ledger: ledger(entries),
      ...year,
      ...(codeLists.length > 0 && { codeLists }),
    } as never).groups;

  test("of two schemes that use one number are two groups", () => {
    const found = groups(
      [
        spray("2026-05-01", "azoxystrobin"),
        spray("2026-05-15", "madeupazine"),
        spray("2026-05-29", "azoxystrobin"),
      ],
      [list("PARK", "11", ["madeupazine"])],
    );
    expect(found.map(({ scheme, group, dates, actives }) => [scheme, group, dates, actives])).toEqual([
      ["FRAC", "11", ["2026-05-01", "2026-05-29"], ["azoxystrobin"]],
      ["PARK", "11", ["2026-05-15"], ["madeupazine"]],
    ]);
  });

  test("each active ingredient once, by the alphabet", () => {
    const [group] = groups([
      spray("2026-05-01", "pyraclostrobin"),
      spray("2026-05-15", "azoxystrobin"),
      spray("2026-05-29", "pyraclostrobin"),
    ]);
    expect(group?.actives).toEqual(["azoxystrobin", "pyraclostrobin"]);
  });

  test("what is named and weighed as nothing did not go down", () => {
    const none = { contents: [{ value: 0, unit: "% w/w", of: "ai:azoxystrobin/product" }] };
    expect(groups([spray("2026-05-01", "azoxystrobin", none)])).toEqual([]);
    const some = { contents: [{ value: 50, unit: "% w/w", of: "ai:azoxystrobin/product" }] };
    expect(groups([spray("2026-05-01", "azoxystrobin", some)])[0]?.applications).toBe(1);
  });

  test("more lists or names than are read are counted in the refusal", () => {
    const told = (codeLists: readonly object[]) =>
      problemsOf(() => groups([], codeLists)).map(({ code, path, got }) => [code, path, got]);
    const names = (length: number) => Array.from({ length }, (_, i) => `name ${i}`);
    expect(told(Array.from({ length: 21 }, () => list("PARK", "1", ["a"])))).toEqual([
      ["range", "codeLists", "21 lists"],
    ]);
    expect(told([list("PARK", "1", names(5001))])).toEqual([
      ["range", "codeLists[0].groups.1", "5001 names"],
    ]);
    expect(told([list("PARK", "1", names(5000))])).toEqual([]);
    expect(told(Array.from({ length: 20 }, () => list("PARK", "1", ["a"])))).toEqual([]);
  });
});
