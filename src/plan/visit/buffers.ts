import { wholeSite } from "../../ledger/house.js";
import {
  type BufferStrip,
  bufferStrip,
  edgesFor,
  holds,
  isOfAny,
  type ReadLimit,
  slowShareOfRow,
} from "../../limits/house.js";
import {
  type Area,
  type Finding,
  inUnit,
  type Quantity,
  quantity,
  quantityOf,
  sum,
} from "../../quantity/index.js";
import { bufferArea, type SiteShape } from "../../site/index.js";
import { edgesOfShape } from "../job/read-edges.js";
import type { ReadJob } from "../job/read-job.js";
import type { ReadTreatment } from "../job/treatments.js";
import { visitRow } from "./nutrient-account.js";
import type { SprayOrder } from "./spray-order.js";
import type { SpreadOrder } from "./spread-order.js";
import { allWithFindings, type WithFindings } from "./with-findings.js";

/** The distances that a treatment keeps on one part of the site, and the area that they leave. */
export interface BufferOrder {
  readonly treatment: string;
  readonly part: string;
  /** One for each edge and each limit that the job states. */
  readonly strips: readonly Omit<BufferStrip, "fact">[];
  /** What the strips take of the part; `null` where the job does not say along which edge they lie. */
  readonly area: {
    readonly part: Area;
    readonly strips: Area;
    /** What is left to treat by the stated distances. */
    readonly left: Area;
    /** From the outline of the part, or as length times width, which leaves corners out. */
    readonly by: "outline" | "length";
  } | null;
}

/** The outline of a part in its corners, where it has them and lies level. */
const outlineOf = (shape: SiteShape): Omit<Parameters<typeof bufferArea>[0], "edges"> | undefined => {
  if (shape.slope !== undefined || edgesOfShape(shape) === 0) return undefined;
  if (shape.shape === "polygon") {
    const { points, unit, holes } = shape;
    return { points, unit, ...(holes !== undefined && { holes }) };
  }
  if (shape.shape !== "rectangle" && shape.shape !== "square") return undefined;
  const [long, wide] = shape.shape === "square" ? [shape.side, shape.side] : [shape.length, shape.width];
  const { unit } = long;
  const [x, y] = [long.value, inUnit(quantityOf(wide.value, wide.unit, "none", "width"), unit).value];
  return {
    points: [
      [0, 0],
      [x, 0],
      [x, y],
      [0, y],
    ],
    unit,
  };
};

/** What strips along the edges of a part take of it. */
const areaLeft = (
  part: Area,
  shape: SiteShape | undefined,
  strips: readonly BufferStrip[],
): BufferOrder["area"] => {
  const wide = strips.filter(({ strip }) => strip.value > 0);
  const outline = shape && outlineOf(shape);
  const widest = new Map<number, Quantity<"length", "none">>();
  let byLength = 0;
  for (const { strip, fact } of wide) {
    if (fact.along !== undefined) {
      const along = quantityOf<"length", "none">(fact.along.value, fact.along.unit, "none", "along");
      byLength += along.in("m") * strip.in("m");
    } else if (fact.edges !== undefined && outline !== undefined) {
      for (const edge of fact.edges) {
        const before = widest.get(edge);
        if (before === undefined || before.compare(strip) < 0) widest.set(edge, strip);
      }
    } else return null;
  }
  const edges = [...widest].map(([edge, distance]) => ({ edge, distance }));
  const taken =
    outline === undefined || edges.length === 0 ? 0 : bufferArea({ ...outline, edges }).buffer.in("m2");
  const whole = part.in("m2");
  const both = Math.min(whole, taken + byLength);
  const inPart = (m2: number): Area => inUnit(quantity(m2, "m2"), part.unit);
  return {
    part,
    strips: both === whole ? part : inPart(both),
    left: inPart(both >= whole * (1 - 1e-12) ? 0 : whole - both),
    by: byLength > 0 ? "length" : "outline",
  };
};

/** The limits of a job that keep a distance from an edge, as far as they are meant for what goes down. */
const meant = (
  limits: readonly ReadLimit[],
  { value: { row, facts } }: ReturnType<typeof visitRow>,
  job: ReadJob,
): readonly Extract<ReadLimit, { kind: "buffer" }>[] => {
  const known = { date: job.date, facts, slowShare: slowShareOfRow(row) };
  return limits.flatMap((limit) =>
    limit.kind === "buffer" &&
    isOfAny(row, limit.of) !== false &&
    (limit.scope === undefined || holds(limit.scope, known) !== "no") &&
    !(limit.exemptIf ?? []).some((condition) => holds(condition, known) === "yes")
      ? [limit]
      : [],
  );
};

const treatsStrip = (treatment: ReadTreatment, left: Area, parts: readonly string[]): Finding => ({
  code: "buffer/treats-strip",
  severity: "warning",
  path: `${treatment.path}.area`,
  params: {
    treatment: treatment.id,
    area: treatment.area.value,
    left: inUnit(left, treatment.area.unit).value,
    unit: treatment.area.unit,
  },
  text: `${treatment.id}: ${areaWords(treatment.area)} is treated on ${parts.join(", ")}, but the stated distances leave ${areaWords(inUnit(left, treatment.area.unit))}. Every amount here is for the larger area: state the area of the treatment without the strip.`,
});

const areaWords = ({ value, unit }: Area): string => `${Number(value.toPrecision(5))} ${unit}`;

/** What is cut out of the site is not treated either; it may lie in a strip, so the rest is never too large. */
const lessCutOuts = (left: Area, { parts }: ReadTreatment, { site }: ReadJob): Area => {
  if (parts !== undefined || site.area.cutOuts.length === 0) return left;
  const rest = left.in("m2") - site.area.cutOut.in("m2");
  return inUnit(quantity(Math.max(0, rest), "m2"), left.unit);
};

const buffersOf = (order: SpreadOrder | SprayOrder, job: ReadJob): WithFindings<readonly BufferOrder[]> => {
  const none = { value: [], findings: [], notChecked: [] };
  const treatment = job.treatments.find(({ id }) => id === order.treatment);
  const row = visitRow(order, job);
  const limits = meant(job.limits, row, job);
  if (treatment === undefined || limits.length === 0) return none;
  const { facts } = row.value;
  const named = [...job.site.parts.keys()];
  const parts = treatment.parts ?? (named.length === job.site.area.parts.length ? named : [wholeSite]);
  const buffers = parts.flatMap((part): BufferOrder[] => {
    const strips = limits.flatMap((limit) =>
      (edgesFor(limit, facts, part) ?? []).map((edge) => bufferStrip(limit, edge)),
    );
    if (strips.length === 0) return [];
    const area = areaLeft(job.site.parts.get(part) ?? job.site.area.net, job.site.shapes.get(part), strips);
    return [{ treatment: order.treatment, part, strips: strips.map(({ fact, ...strip }) => strip), area }];
  });
  const lefts = parts.map((part) => {
    const buffer = buffers.find((one) => one.part === part);
    return buffer === undefined
      ? (job.site.parts.get(part) ?? job.site.area.net)
      : buffer.area === null
        ? undefined
        : buffer.area.left;
  });
  const known = lefts.filter((left) => left !== undefined);
  const left = known.length === parts.length ? lessCutOuts(sum(known), treatment, job) : undefined;
  const over = left !== undefined && treatment.area.in("m2") > left.in("m2") + 1e-9 * treatment.area.in("m2");
  return {
    value: buffers,
    findings: over ? [treatsStrip(treatment, left, parts)] : [],
    notChecked: buffers.flatMap(({ part, area, strips }) =>
      area === null
        ? [
            `${order.treatment} on ${part}: the area within the distance from ${[...new Set(strips.map(({ from }) => from))].join(", ")}, because the job does not say which edge it follows (edges, or along).`,
          ]
        : [],
    ),
  };
};

/** The distances from water and other edges that the job states, and the area that they leave of each part. */
export const bufferOrders = (
  job: ReadJob,
  orders: readonly (SpreadOrder | SprayOrder)[],
): WithFindings<readonly BufferOrder[]> => {
  const each = allWithFindings(orders.map((order) => buffersOf(order, job)));
  return { ...each, value: each.value.flat() };
};
