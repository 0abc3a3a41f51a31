import { describe, expect, test } from "vitest";
import {
  type Job,
  type JobProduct,
  type WorkOrder,
  workOrder,
  workOrderHtml,
  workOrderSheet,
  workOrderText,
} from "../../../src/plan/index.js";
import { RatewrightError } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";
import { parkJob, smallJob, soundOrder } from "../helpers.js";

/** One product of a mix, sprayed on 12,400 ft2 at 1 gal per 1000 ft2. */
const sprayJob = (product: Partial<JobProduct>, rate: object, sprayer: object = {}): Job =>
  smallJob({
    products: [{ id: "a", form: "dry", ...product }],
    sprayer: {
      tank: { value: 10, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      ...sprayer,
    },
    treatments: [{ id: "s", method: "spray", mix: [{ product: "a", rate: rate as never }] }],
  });

const codes = (order: WorkOrder): readonly string[] => order.cautions.map(({ code }) => code);

describe("the sheet for the shed, by hand", () => {
  const text = workOrderText(workOrder(parkJob()));

  test("the pass rate stands before the full rate, amounts stand per part and per pass", () => {
    expect(text).toMatch(
      /SET THE SPREADER FOR 1\.67 lb per 1,000 sq ft: 2 passes in different\s+directions, NOT 3\.33 in one/,
    );
    // 59,400 ft2 at 1.6667 lb per 1,000 are 99.0 lb; 47,025 are 78.375.
    expect(text).toMatch(/north pitch, 330 x 180 ft +59,400 sq ft +99\.0 lb +198\.0 lb/);
    expect(text).toMatch(/south pitch, trapezoid, side a +47,025 sq ft +78\.4 lb +156\.8 lb/);
  });

  test("loads are columns beside the steps, each with its area and its own water", () => {
    expect(text).toMatch(/covers +10,000 sq ft +4,400 sq ft/);
    expect(text).toMatch(/Clean water up to half the +5 gal +2\.2 gal +tank marks/);
    expect(text).toMatch(/Clean water up to +10 gal +4\.4 gal +tank marks/);
    // 35.2 oz and 15.5 oz by weight.
    expect(text).toMatch(/ADD soluble urea 46-0-0\. +2 lb 3\.2 oz +15\.5 oz wt +SCALE/);
    expect(text).toMatch(/37 mL +16 mL +JUG/);
  });

  test("the store adds up: 400.0 = 354.8 + 45.2 lb, 10 lb = 3 lb 2.7 oz + 6 lb 13.3 oz, 473 = 53 + 420 mL", () => {
    expect(text).toMatch(/feed 24-0-11 +8 x 50 lb = 400\.0 lb +354\.8 lb +45\.2 lb/);
    expect(text).toMatch(/soluble urea 46-0-0 +1 x 10 lb +3 lb 2\.7 oz +6 lb 13\.3 oz/);
    expect(text).toMatch(/1 x 1 pt = 473 mL +53 mL +420 mL/);
  });

  test("stop conditions stand on top, with the label rates that nobody checked; a day is said as people say it", () => {
    const lines = text.split("\n");
    expect(lines[1]).toBe("Mon Jun 8, 2015 (2015-06-08), Alder Bank Park: SHED COPY");
    expect(lines.findIndex((line) => line.includes("dead calm"))).toBeLessThan(12);
    expect(lines.findIndex((line) => line.startsWith("  LABEL RATE NOT CHECKED"))).toBeLessThan(18);
    expect(text).not.toMatch(/[Ss]pray only in the wind/);
  });

  test("fits 72 columns and is plain on an office copy too, which has votes, reasons, limits and what was not checked", () => {
    const office = workOrderText(workOrder(parkJob()), { copy: "office" });
    for (const line of `${text}${office}`.split("\n")) expect(line.length).toBeLessThanOrEqual(72);
    expect(office).toMatch(/published orders for/);
    expect(office).toMatch(/NOT CHECKED/);
    expect(office).toMatch(/N in a calendar year: 1\.544 of 3 lb per 1,000 sq ft/);
  });
});

describe("cautions that apply, and no others", () => {
  const oz = { value: 1, unit: "oz/1000 ft2", of: "product" };
  test("a liquid alone has no caution of dry powders, no packets and no jar test", () => {
    const order = soundOrder(
      sprayJob({ form: "liquid", formulation: "EC" }, { value: 1, unit: "fl oz/1000 ft2", of: "product" }),
    );
    expect(codes(order)).not.toContain("caution/dry-powder");
    expect(codes(order)).not.toContain("caution/water-soluble-packet");
    expect(codes(order)).not.toContain("stop/jar-test");
    expect(codes(order)).not.toContain("caution/hard-surfaces");
    expect(workOrderText(order)).not.toMatch(/dust|packets/);
  });

  test("a part of a packet is a finding and no amount: 12.4 oz from packets of 16 oz", () => {
    const order = soundOrder(
      sprayJob({ formulation: "water-soluble packet", packetSize: { value: 1, unit: "lb" } }, oz),
    );
    // 10 oz and 2.4 oz of 16: 0.625 and 0.15 packets; one packet treats 16,000 ft2.
    const finding = order.findings.find(({ code }) => code === "packet/part-of-one");
    expect(finding?.severity).toBe("warning");
    expect(finding?.params).toMatchObject({ loads: ["1", "2"], unit: "ft2" });
    expect(Number(finding?.params.areaPerPacket)).toBeCloseTo(16_000, 6);
    const text = workOrderText(order);
    expect(text).toMatch(/never cut/);
    expect(text).toMatch(/STOP: part +STOP: part +COUNT/);
    expect(text).not.toMatch(/ADD .*10\.0 oz/);
  });

  test("whole packets are counted: 2 oz per 1,000 from packets of 10 oz on loads of 10,000 ft2", () => {
    const job = sprayJob(
      { formulation: "water-soluble packet", packetSize: { value: 10, unit: "oz" } },
      { value: 2, unit: "oz/1000 ft2", of: "product" },
    );
    const order = soundOrder({
      ...job,
      site: { name: "Field", parts: [{ shape: "measured", area: { value: 20_000, unit: "ft2" } }] },
    });
    expect(order.findings.map(({ code }) => code)).not.toContain("packet/part-of-one");
    expect(workOrderText(order)).toMatch(/LOADS 1-2, EACH[\s\S]*2 packets +COUNT/);
  });

  test("a packet whose size nobody states is told, never weighed out", () => {
    const order = soundOrder(sprayJob({ formulation: "water-soluble packet" }, oz));
    expect(order.findings.map(({ code }) => code)).toContain("packet/size-not-known");
    expect(workOrderText(order)).toMatch(/ASK: packets\?/);
  });
});

test("a later load is filled on top of what the pump leaves in the tank: its marks say so", () => {
  const order = soundOrder(
    sprayJob(
      { form: "liquid", formulation: "EC" },
      { value: 1, unit: "fl oz/1000 ft2", of: "product" },
      { residualVolume: { value: 1, unit: "gal" } },
    ),
  );
  // 12.4 gal and 1 gal kept: 10 gal, then 3.4 gal on top of 1.
  expect(workOrderText(order)).toMatch(/Clean water up to +10 gal +4\.4 gal +tank marks/);
  expect(workOrderText(order)).toMatch(/half the +5 gal +2\.7 gal|half the load +5 gal +2\.7 gal/);
});

test("metric by the job or by the option, with the units of the job kept where they are metric", () => {
  const order = workOrder(parkJob());
  const metric = workOrderText(order, { units: "metric" });
  // 1.6667 lb per 1,000 ft2 are 8.14 g per m2; 14.4 gal are 54.5 L.
  expect(metric).toMatch(/Mon 8 Jun 2015/);
  expect(metric).toMatch(/SET THE SPREADER FOR 8\.14 g per m²/);
  expect(metric).toMatch(/54\.5 L of spray/);
  expect(metric).not.toMatch(/ gal | fl oz| lb per/);
  expect(workOrderSheet(order, { units: "both" }).units).toBe("both");
});

test("the page escapes what a job says, and is complete in itself", () => {
  const order = soundOrder(smallJob({ title: '<img src=x onerror="alert(1)">' }));
  const html = workOrderHtml(order);
  expect(html).toContain("&lt;img src=x onerror=&quot;alert(1)&quot;&gt;");
  expect(html).not.toMatch(/<img|<script|https?:/);
});

test("fields of the job fill the blanks", () => {
  const job = {
    ...sprayJob(
      { form: "liquid", formulation: "EC", registrationNumber: "000-000", lot: "L7" },
      { value: 1, unit: "fl oz/1000 ft2", of: "product" },
      { nozzle: "11004", pressure: { value: 40, unit: "psi" }, speed: { value: 3, unit: "mi/h" } },
    ),
    applicator: { name: "the foreman", certificate: "C-1" },
  };
  const text = workOrderText(soundOrder(job));
  expect(text).toMatch(/Applicator the foreman +Certificate no\. C-1/);
  expect(text).toMatch(/Nozzle 11004 +Pressure 40 psi +Speed 3 mph/);
  expect(text).toMatch(/000-000 +L7/);
});

describe("an order that comes back from a store is read again", () => {
  let kept: string | undefined;
  const stored = (): Record<string, unknown> => {
    kept ??= JSON.stringify(workOrder(parkJob()));
    return JSON.parse(kept);
  };
  /** Every place of a record, deep. */
  const places = (
    value: unknown,
    path: readonly (string | number)[] = [],
  ): (readonly (string | number)[])[] =>
    typeof value !== "object" || value === null
      ? [path]
      : [path, ...Object.entries(value).flatMap(([name, inner]) => places(inner, [...path, name]))];

  test("whatever place is spoilt: a text, or an error of ours", () => {
    const all = places(stored()).filter((path) => path.length > 0);
    let refused = 0;
    // Each seventh, or fewer in a run whose properties are short.
    const each = 7 * Math.ceil(all.length / 7 / runs(all.length).numRuns);
    for (const [i, path] of all.entries()) {
      if (i % each > 0) continue;
      const order = stored();
      const last = path[path.length - 1] as string;
      const holder = path.slice(0, -1).reduce<unknown>((at, name) => (at as never)[name], order);
      (holder as Record<string, unknown>)[last] = [null, { toString: 1 }, -5, "?", [7]][i % 5];
      for (const copy of ["shed", "office"] as const) {
        try {
          expect(workOrderText(order as never, { copy })).not.toMatch(/NaN|Infinity|undefined|\[object/);
        } catch (error) {
          if (!(error instanceof RatewrightError)) throw new Error(`${path.join(".")}: ${error}`);
          refused++;
        }
      }
    }
    expect(refused).toBeGreaterThan(700 / each);
  });

  test("an unknown option or field is refused with a suggestion", () => {
    const order = workOrder(parkJob());
    expect(() => workOrderText(order, { copi: "shed" } as never)).toThrow(/copy/);
    expect(() => workOrderHtml({ ...order, spreeds: [] } as never)).toThrow(/spreads/);
  });
});
