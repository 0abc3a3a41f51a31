import type { CivilDate } from "../../calendar/index.js";
import { roundedApart } from "../../numeric/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  expectText,
  type FactSource,
  type Finding,
  fail,
  frozen,
  Quantity,
  type RatewrightError,
  timesOf,
} from "../../quantity/index.js";
import type { LimeRequirementInput } from "../lime/lime-inputs.js";
import { type LimeRequirement, limeRequirement } from "../lime/lime-requirement.js";
import { limeProductRate } from "../lime-material/lime-product-rate.js";
import { type LimeQualityInput, limeQuality } from "../lime-material/lime-quality.js";
import type { ExchangeCapacity } from "../report/exchange-capacity.js";
import { type SplitAmendmentInput, splitAmendment } from "../split/split-amendment.js";
import { acidityOf } from "./exchange-section.js";
import type { LimePlan, PlanFigure, SectionNotes } from "./plan-types.js";
import type { ReadAmendmentSite, ReadReport } from "./read-plan-input.js";
import { amountText, orFinding, relocate } from "./relocate.js";

/** Lime, or `null` with a line on why there is none. */
export type LimeSection = SectionNotes & { readonly lime: LimePlan | null };

const fields = [
  "method",
  "targetPH",
  "targetSaturation",
  "perUnitPH",
  "material",
  "most",
  "first",
  "monthsApart",
] as const;
const at = "conventions.lime";

/** What of a formula's input stands in the report; the rest stands in the convention. */
const place = (path: string): string =>
  /^(pH|bufferPH|acidity|acidityPerVolume|layer|elements)\b/.test(path)
    ? `report.${path}`
    : `${at}.${path.replace(/^input\.?/, "")}`;

type LimeFields = { readonly [F in (typeof fields)[number]]?: unknown };

/** The figures that the method asks for, out of the report. */
const inputFor = (
  record: LimeFields,
  report: ReadReport,
  exchange: ExchangeCapacity | null,
): LimeRequirementInput => {
  const { method, targetPH } = record;
  const phs = { method, pH: report.pH, targetPH };
  const acidity = acidityOf(report);
  const { layer } = report;
  const input = (): object => {
    switch (method) {
      case "Mehlich buffer, North Carolina":
        return report.acidityPerVolume === undefined
          ? { ...phs, bufferPH: report.bufferPH }
          : { ...phs, acidityPerVolume: report.acidityPerVolume };
      case "Mehlich buffer, Pennsylvania turf":
      case "Mehlich buffer, Pennsylvania fields":
        return { ...phs, acidity };
      case "exchangeable acidity":
        return { method, acidity, layer };
      case "base saturation": {
        const { capacity, baseSaturation } = exchange ?? missingCharge(report);
        return {
          method,
          capacity,
          baseSaturation,
          targetSaturation: record.targetSaturation,
          layer,
        };
      }
      case "pH buffering":
        return { ...phs, perUnitPH: record.perUnitPH, layer };
      default:
        return { ...phs, bufferPH: report.bufferPH };
    }
  };
  // limeRequirement reads every field itself, and refuses what is missing.
  return input() as LimeRequirementInput;
};

/** Refuses a report without an exchange capacity, and names what it takes. */
const missingCharge = ({ elements }: ReadReport): never => {
  const bases = (["Ca", "Mg", "K"] as const).filter((name) => !elements.has(name));
  const path = bases.length > 0 ? `elements.${bases[0]}` : "acidity";
  return fail(
    "missing",
    path,
    undefined,
    "calcium, magnesium, potassium and the acidity, printed or by buffer and bufferPH: base saturation rests on all four",
  );
};

/** Whether the soil is at or above the target already: then the laboratories recommend none. */
const atTarget = (record: LimeFields, { pH }: ReadReport, exchange: ExchangeCapacity | null): string => {
  const { method, targetPH } = record;
  if (method === "base saturation" && exchange !== null && record.targetSaturation !== undefined) {
    const target = expectQuantity(
      record.targetSaturation,
      { dimension: "1", of: "none", bound: "positive" },
      `${at}.targetSaturation`,
    );
    const [now, wanted] = [exchange.baseSaturation.in("%"), target.in("%")];
    const told = roundedApart(now, wanted);
    return now < wanted
      ? ""
      : `base saturation of ${told(now)} % is at or above the target of ${told(wanted)} %: no lime is needed`;
  }
  // What is no pH of a soil is told by the formula
  return typeof targetPH === "number" && targetPH >= 3 && pH >= targetPH
    ? `soil pH ${pH} is at or above the target of ${targetPH}: no lime is called for`
    : "";
};

const nothing = { lime: null, figures: [], findings: [], checked: [], notChecked: [] };

/** Lime by the stated convention, down to the dates. */
export const limeSection = (
  input: unknown,
  report: ReadReport,
  site: ReadAmendmentSite,
  exchange: ExchangeCapacity | null,
): LimeSection => {
  if (input === undefined) return { ...nothing, notChecked: ["lime: no convention was stated"] };
  const record = expectFields(input, fields, at, "a lime convention");
  const reached = atTarget(record, report, exchange);
  if (reached !== "") return { ...nothing, checked: [reached] };
  const { value: requirement, findings } = orFinding(
    () => relocate(() => limeRequirement(inputFor(record, report, exchange)), place),
    beyondTable,
  );
  if (requirement === null) {
    return { ...nothing, findings, notChecked: [`lime: ${record.method} has no rate for this reading`] };
  }
  const lime = limeDown(record, requirement, site);
  return {
    lime,
    figures: figuresOf(lime, site),
    findings: [
      ...requirement.findings,
      ...lime.product.findings,
      ...lime.split.findings,
      ...splitFindings(lime, site),
    ],
    checked: [`lime by ${requirement.method}`],
    notChecked: depthNote(requirement, report),
  };
};

/** A reading that the table of the method does not reach. */
const beyondTable = ({ code, path, got, expected }: RatewrightError): Finding | undefined =>
  code === "range" && (path === "report.acidity" || path === "report.bufferPH")
    ? {
        code: "lime/beyond-table",
        severity: "warning",
        path,
        params: { reading: got },
        text: `No lime is planned: the method has no rate for a reading of ${got}. It wants ${expected}.`,
      }
    : undefined;

/** From the requirement to the lime at hand and its dates. */
const limeDown = (record: LimeFields, requirement: LimeRequirement, site: ReadAmendmentSite): LimePlan => {
  const { material, most } = allOf({
    material: () => {
      const given = expectFields(record.material, ["id", "quality"], `${at}.material`);
      const id = expectText(given.id, `${at}.material.id`, "an id of the material");
      const quality = relocate(
        () => limeQuality(given.quality as LimeQualityInput),
        (path) => `${at}.material.quality${path === "input" ? "" : `.${path}`}`,
      );
      return { id, quality };
    },
    most: () => {
      // Lime that is mixed into bare soil needs no maximum for the surface; one that is stated holds.
      if (record.most === undefined && !site.standing) return undefined;
      const given = expectFields(record.most, ["amount", "source"], `${at}.most`);
      const wanted = { dimension: "mass/area", of: "product", bound: "positive" } as const;
      const source =
        given.source ?? fail("missing", `${at}.most.source`, undefined, "who states the maximum");
      return {
        amount: expectQuantity(given.amount, wanted, `${at}.most.amount`),
        source: source as FactSource,
      };
    },
  });
  const { id, quality } = material;
  const product = relocate(
    () => limeProductRate({ requirement, quality, id }),
    (path) => `${at}.material.${path}`,
  );
  const split = relocate(
    () =>
      splitAmendment<`product:${string}`>({
        total: product.rate,
        ...limitOf(most, product.rate),
        first: record.first as CivilDate,
        monthsApart: record.monthsApart as number,
      }),
    (path) => `${at}.${path.replace(/^source\b/, "most.source").replace(/^total\b/, "most.amount")}`,
  );
  const total = timesOf(product.rate, site.area);
  const amount = new Quantity<"mass", `product:${string}`>(total.value, total.unit, `product:${id}`, "mass");
  return { requirement, product, split, amount };
};

/** What is stated as the most at once holds; without it bare soil takes the whole rate, mixed in. */
const limitOf = (
  most: { readonly amount: Quantity<"mass/area", "product">; readonly source: FactSource } | undefined,
  rate: Quantity<"mass/area", `product:${string}`>,
): Pick<SplitAmendmentInput<`product:${string}`>, "most" | "source"> => {
  if (most === undefined) {
    // Where none is needed any maximum will do, and zero is none.
    const whole = rate.value > 0 ? rate : new Quantity(1, rate.unit, rate.of, rate.dimension);
    return { most: whole, source: mixedIn };
  }
  const { value, unit } = most.amount;
  return { most: new Quantity(value, unit, rate.of, "mass/area"), source: most.source };
};

/** Bare soil whose lime a stated maximum divides: the maximum may have been meant for turf. */
const splitFindings = ({ split }: LimePlan, { standing }: ReadAmendmentSite): Finding[] =>
  !standing && split.applications.length > 1
    ? [
        {
          code: "lime/split-on-bare-soil",
          severity: "note",
          path: `${at}.most`,
          params: { applications: split.applications.length, most: split.most.value, unit: split.most.unit },
          text: `The stated maximum of ${amountText(split.most)} divides the lime into ${split.applications.length} applications. A maximum for the surface of standing turf does not apply to lime mixed into bare soil before planting: leave such a maximum out.`,
          source: mixedIn,
        },
      ]
    : [];

const mixedIn: FactSource = /* @__PURE__ */ frozen({
  title: "Commercial Turf - To Plant: the full rate, mixed in four to six inches deep",
  publisher: "Pennsylvania State University Agricultural Analytical Services Laboratory",
  url: "http://agsci.psu.edu/aasl/online-report/commercial-turf-to-plant",
});

const figuresOf = (
  { requirement, product, split, amount }: LimePlan,
  { standing }: ReadAmendmentSite,
): PlanFigure[] => [
  {
    section: "lime",
    of: `lime needed, as ${requirement.rate.of}`,
    value: amountText(requirement.rate),
    method: requirement.method,
    source: requirement.source,
  },
  {
    section: "lime",
    of: `lime at hand, ${product.rate.of.replace("product:", "")}`,
    value: `${amountText(product.rate)}, ${amountText(amount)} in all`,
    method: `by ${product.measure}, ${Number(product.percent.toPrecision(4))} %`,
    source: "Commercial Turf - Maintain, Pennsylvania State University: rate times 100 over CCE",
  },
  ...split.applications.map(
    ({ date, rate }): PlanFigure => ({
      section: "lime",
      of: `apply on ${date}`,
      value: amountText(rate),
      method:
        standing || split.applications.length > 1
          ? `equal parts of at most ${amountText(split.most)}`
          : "all at once, mixed in",
      source: split.source,
    }),
  ),
];

const depthNote = ({ depth, method }: LimeRequirement, { readLayer }: ReadReport): string[] =>
  depth === null || Math.abs(depth.in("cm") - readLayer.depth.in("cm")) < 1
    ? []
    : [
        `depth: ${method} is for ${amountText(depth)} of soil, the report sampled ${amountText(readLayer.depth)}; limeForDepth adjusts a rate where the lime reaches another depth`,
      ];
