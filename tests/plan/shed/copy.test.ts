// The copy for the shed: what stops the work, the record, what comes afterward, each just at its limit and just beyond.
import { describe, expect, test } from "vitest";
import type { WorkOrder } from "../../../src/plan/index.js";
import { shedSheet } from "../../../src/plan/shed/shed-sheet.js";
import { soundOrder } from "../helpers.js";
import { liquid, oz3, sprayJob } from "./short-jobs.js";

describe("the copy for the shed", () => {
  const order = soundOrder(sprayJob(20_000, [liquid()], [oz3]));
  const sheetOf = (more: Partial<WorkOrder>) => shedSheet({ ...order, ...more });
  const section = (id: string, more: Partial<WorkOrder> = {}) => {
    const { front, back } = sheetOf(more);
    return [...front, ...back].find((one) => one.id === id);
  };
  const finding = (text: string, severity: "note" | "caution" | "warning" = "caution", code = "x/y") => ({
    code,
    severity,
    params: {},
    text,
  });
  const stop = (...findings: readonly ReturnType<typeof finding>[]) =>
    section("stop", { findings })
      ?.blocks.slice(1)
      .flatMap((block) => (block.kind === "list" ? block.items : block.kind === "text" ? [block.text] : []));
  const unchecked = "LABEL RATE NOT CHECKED for wetter: read the rate on the label before you open it.";

  test("warnings stop the work, cautions stand behind, notes are for the office", () => {
    expect(stop()).toEqual([unchecked]);
    expect(stop(finding("Note.", "note"), finding("Jar.", "caution", "jar-test"))).toEqual([unchecked]);
    expect(stop(finding("Careful on 2026-06-08."), finding("Wrong.", "warning"))).toEqual([
      "DO NOT START until the supervisor settles this:",
      "Wrong.",
      unchecked,
      "Careful on Mon Jun 8, 2026.",
    ]);
  });

  test("a label rate that is not checked is told for each product once, one that is checked is not", () => {
    const [spray] = order.sprays;
    if (spray === undefined) throw new Error("no spray");
    const told = (...rates: readonly string[]) =>
      section("stop", {
        sprays: [
          {
            ...spray,
            products: rates.map((labelRate, i) => ({
              ...spray.products[0],
              productName: `p${i % 2}`,
              labelRate,
            })) as never,
          },
        ],
      })?.blocks.flatMap((block) => (block.kind === "text" ? [block.text] : []));
    const words = (names: string) => [
      `LABEL RATE NOT CHECKED for ${names}: read the rate on the label before you open it.`,
    ];
    expect(told("within", "outside")).toEqual([]);
    expect(told("other measure", "within")).toEqual(words("p0"));
    expect(told("not stated", "other measure", "not stated")).toEqual(words("p0; p1"));
  });

  test("a long finding is told by the sentences that can be read at a glance: 160 characters", () => {
    const sentence = (length: number, first: string) => `${first}${"x".repeat(length - 2)}.`;
    const [a, b] = [sentence(100, "A"), sentence(59, "B")];
    expect(stop(finding(`${a} ${b}`))?.at(-1)).toBe(`${a} ${b}`);
    const c = sentence(60, "C");
    expect(stop(finding(`${a} ${c}`))?.at(-1)).toBe(`${a} More on the office copy.`);
    const d = sentence(20, "D");
    // The sentence that leads into a list is left out with it.
    expect(stop(finding(`${a} ${d} ${c}`))?.at(-1)).toBe(`${a} ${d} More on the office copy.`);
    expect(stop(finding(`${a} These: ${c}`))?.at(-1)).toBe(`${a} More on the office copy.`);
    // What stands before a colon says nothing without the sentence after it.
    expect(stop(finding(`${"E".repeat(70)}: ${a} ${d}`))?.at(-1)).toBe(
      `${"E".repeat(70)}: ${a} More on the office copy.`,
    );
    const long = sentence(170, "F");
    expect(stop(finding(long))?.at(-1)).toBe(long);
  });

  test("the record has a row for each load up to eight rows, and one for all loads beyond", () => {
    const [spray] = order.sprays;
    if (spray === undefined) throw new Error("no spray");
    const rows = (...counts: readonly number[]) =>
      section("record", {
        sprays: counts.map((count) => ({
          ...spray,
          tank: {
            ...spray.tank,
            count,
            loads: Array.from({ length: count }, (_, i) => ({
              ...spray.tank.loads[0],
              number: i + 1,
            })) as never,
          },
        })),
      })?.blocks.flatMap((block) => (block.kind === "table" ? block.rows.map(({ cells }) => cells[0]) : []));
    expect(rows(1)).toEqual(["Job 1"]);
    expect(rows(2, 1)).toEqual(["Job 1 load 1", "Job 1 load 2", "Job 2"]);
    expect(rows(8)).toHaveLength(8);
    expect(rows(9)).toEqual(["Job 1, all loads"]);
    expect(rows(4, 5)).toEqual(["Job 1, all loads", "Job 2, all loads"]);
  });

  test("heads and blanks, in the units of the sheet", () => {
    const record = section("record");
    expect(record?.title).toBe("RECORD: fill in the same day");
    expect(record?.blocks).toEqual([
      {
        kind: "table",
        heads: ["", "start", "end", "wind mph, from", "temp °F", "used", "left"],
        rows: [
          { cells: ["Job 1 load 1", ...Array<string>(6).fill("____")] },
          { cells: ["Job 1 load 2", ...Array<string>(6).fill("____")] },
        ],
      },
      {
        kind: "blanks",
        blanks: [
          { label: "Remarks", value: null, room: 30 },
          { label: "Signed", value: null, room: 20 },
        ],
      },
    ]);
    const metric = section("record", { units: "metric" })?.blocks[0];
    expect(metric?.kind === "table" && metric.heads.slice(3, 5)).toEqual(["wind m/s, from", "temp °C"]);
    expect(sheetOf({}).head.map(({ label, room }) => [label, room])).toEqual([
      ["Applicator", 20],
      ["Certificate no.", 12],
      ["Supervisor, phone", 24],
    ]);
    const after = section("after")?.blocks[1];
    expect(after?.kind === "blanks" && after.blanks.map(({ label, room }) => [label, room])).toEqual([
      ["Keep off until (label)", 10],
      ["Emergency no.", 10],
      ["Poison center", 10],
      ["Eyewash, spill kit", 10],
    ]);
    const abroad = section("after", { units: "metric" })?.blocks[1];
    expect(abroad?.kind === "blanks" && abroad.blanks[2]?.label).toBe("Poisons service");
  });

  test("what only the records of the United States ask for is left out of a metric sheet", () => {
    const cautions = (["back", "step"] as const).map((place, i) => ({
      code: i === 0 ? "caution/restricted-use-record" : "caution/other",
      text: `Caution ${i}, labeled.`,
      source: "s",
      place,
    }));
    const items = (more: Partial<WorkOrder>) => {
      const [block] = section("back", { cautions, ...more })?.blocks ?? [];
      return block?.kind === "list" ? block.items : [];
    };
    expect(items({})).toEqual(["Caution 0, labeled.", "Caution 1, labeled."]);
    expect(items({ units: "metric" })).toEqual(["Caution 1, labelled."]);
    expect(section("back")?.title).toBe("CAUTIONS FOR THIS JOB");
  });

  test("the last of the conditions to stop ends with a period", () => {
    const cautions = ["one;", "two;"].map((text, i) => ({
      code: `c${i}`,
      text,
      source: "s",
      place: "stop" as const,
    }));
    const [block] = section("stop", { cautions })?.blocks ?? [];
    expect(block?.kind === "list" && block.items).toEqual(["one;", "two."]);
  });
});
