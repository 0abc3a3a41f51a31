import type { Finding } from "../../quantity/index.js";
import { inWords } from "../sheet/british-words.js";
import { dayText, spokenDates } from "../sheet/day-text.js";
import { nextText } from "../sheet/next-text.js";
import {
  blank,
  penned,
  type SheetBlock,
  type SheetRow,
  type SheetSection,
  type WorkOrderSheet,
} from "../sheet/sheet-types.js";
import { type FirstUnits, firstUnits } from "../sheet/sheet-units.js";
import type { WorkOrder } from "../visit/work-order.js";
import type { Watering } from "../watering/watering.js";
import { withBuffers } from "./buffer-lines.js";
import { jarSection } from "./jar-section.js";
import { spraySection } from "./spray-section.js";
import { spreadSection } from "./spread-section.js";
import { storeSection } from "./store-section.js";

const textsOf = (order: WorkOrder, place: string, first: FirstUnits): readonly string[] =>
  order.cautions.filter((caution) => caution.place === place).map(({ text }) => inWords(text, first));

/** Products whose rate nobody held against the label. */
const notOnFile = (order: WorkOrder): readonly string[] => [
  ...new Set(
    [...order.spreads, ...order.sprays.flatMap(({ products }) => products)]
      .filter(({ labelRate }) => labelRate === "not stated" || labelRate === "other measure")
      .map(({ productName }) => productName),
  ),
];

/** What a crew must know before it starts: warnings, and cautions that are about the turf and the work. */
const shown = (finding: Finding): boolean =>
  finding.severity === "warning" || (finding.severity === "caution" && finding.code !== "jar-test");

/** The most of a finding that a crew reads at a glance; its reasons and sources stand on the office copy. */
const longestFinding = 160;

/** A finding for the crew: as many of its sentences as can be read at a glance. */
const inShort = ({ text }: Finding, metric: boolean): string => {
  const spoken = spokenDates(text, metric);
  if (spoken.length <= longestFinding) return spoken;
  const sentences = spoken.replace(/([.:]) (?=[A-Z0-9])/g, "$1\n").split("\n");
  // What stands before a colon is only whom or what it is about: the sentence after it is told, however long.
  const head = sentences.findIndex((sentence) => !sentence.endsWith(":"));
  let kept = sentences.slice(0, head + 1).join(" ");
  for (const sentence of sentences.slice(head + 1)) {
    if (sentence.endsWith(":") || kept.length + sentence.length >= longestFinding) break;
    kept = `${kept} ${sentence}`;
  }
  return kept === "" || kept === spoken ? spoken : `${kept} More on the office copy.`;
};

/** A list of conditions ends with a period, whichever is the last of them. */
const ended = (items: readonly string[]): readonly string[] =>
  items.map((item, i) => (i === items.length - 1 ? item.replace(/;$/, ".") : item));

const stopSection = (order: WorkOrder, first: FirstUnits): SheetSection => {
  const metric = first === "metric";
  const missing = notOnFile(order);
  const findings = order.findings.filter(shown);
  const warnings = findings.filter(({ severity }) => severity === "warning");
  const rest = findings.filter(({ severity }) => severity === "caution");
  const blocks: SheetBlock[] = [{ kind: "list", mark: "-", items: ended(textsOf(order, "stop", first)) }];
  if (warnings.length > 0)
    blocks.push(
      { kind: "text", strong: true, text: "DO NOT START until the supervisor settles this:" },
      { kind: "list", mark: "!", items: warnings.map(({ text }) => spokenDates(text, metric)) },
    );
  if (missing.length > 0)
    blocks.push({
      kind: "text",
      strong: true,
      text: `LABEL RATE NOT CHECKED for ${missing.join("; ")}: read the rate on the label before you open it.`,
    });
  if (rest.length > 0)
    blocks.push({ kind: "list", mark: "!", items: rest.map((finding) => inShort(finding, metric)) });
  return { id: "stop", title: "STOP and call the supervisor if", blocks };
};

/** How many rows of a record a front page holds; more loads share their rows. */
const mostRecordRows = 8;

const recordSection = (order: WorkOrder, first: FirstUnits): SheetSection => {
  const heads = [
    "",
    "start",
    "end",
    first === "US" ? "wind mph, from" : "wind m/s, from",
    first === "US" ? "temp °F" : "temp °C",
    "used",
    "left",
  ];
  const pens = heads.slice(1).map(() => penned);
  const loads = order.sprays.reduce((sum, { tank }) => sum + tank.count, 0);
  const each = loads + order.spreads.length <= mostRecordRows;
  const rows: SheetRow[] = [
    ...order.spreads.map((_, i) => ({ cells: [`Job ${i + 1}`, ...pens] })),
    ...order.sprays.flatMap((spray, i) => {
      const job = `Job ${order.spreads.length + i + 1}`;
      if (!each || spray.tank.count === 1) return [{ cells: [each ? job : `${job}, all loads`, ...pens] }];
      return spray.tank.loads.map(({ number }) => ({ cells: [`${job} load ${number}`, ...pens] }));
    }),
  ];
  return {
    id: "record",
    title: "RECORD: fill in the same day",
    blocks: [
      { kind: "table", heads, rows },
      { kind: "blanks", blanks: [blank("Remarks", undefined, 30), blank("Signed", undefined, 20)] },
    ],
  };
};

/** The products whose label rule on water the job leaves out, where it gives the rule of others. */
const namesFor = (orders: readonly { readonly watering: Watering }[]): string =>
  orders.some(({ watering }) => watering.rules.length > 0)
    ? `${[...new Set(orders.flatMap(({ watering }) => watering.notStated))].join("; ")}: `
    : "";

const afterTexts = (order: WorkOrder, first: FirstUnits): readonly string[] =>
  order.cautions
    .filter(({ place }) => place === "after")
    .map(({ code, text }) =>
      code === "caution/watering-in"
        ? `${namesFor(order.spreads)}${text}`
        : code === "caution/rain-free"
          ? `${namesFor(order.sprays)}${text}`
          : inWords(text, first),
    );

const afterSection = (order: WorkOrder, first: FirstUnits): SheetSection => ({
  id: "after",
  title: "AFTERWARD",
  blocks: [
    { kind: "list", mark: "[ ]", items: afterTexts(order, first) },
    {
      kind: "blanks",
      blanks: [
        blank("Keep off until (label)", undefined, 10),
        blank("Emergency no.", undefined, 10),
        blank(inWords("Poison center", first), undefined, 10),
        blank("Eyewash, spill kit", undefined, 10),
      ],
    },
  ],
});

/** When each treatment comes round again, where the job states an interval. */
const nextSection = ({ repeats }: WorkOrder, first: FirstUnits): readonly SheetSection[] => {
  const known = repeats.filter(
    ({ calendar, degreeDaysAfter }) => calendar !== null || degreeDaysAfter !== null,
  );
  return known.length === 0
    ? []
    : [
        {
          id: "next",
          title: "NEXT APPLICATION, by the intervals that the job states",
          blocks: [
            { kind: "list", mark: "-", items: known.map((repeat) => nextText(repeat, first === "metric")) },
          ],
        },
      ];
};

/** What only the records of one country ask for: of no use on a sheet in metric units. */
const unitedStates = "caution/restricted-use-record";

const backSection = (order: WorkOrder, first: FirstUnits): SheetSection => {
  const here = {
    ...order,
    cautions: order.cautions.filter(({ code }) => first === "US" || code !== unitedStates),
  };
  const items = [...textsOf(here, "back", first), ...textsOf(here, "step", first)];
  return { id: "back", title: "CAUTIONS FOR THIS JOB", blocks: [{ kind: "list", mark: "-", items }] };
};

/** The copy for the shed: what a crew does, in the order in which it does it. */
export const shedSheet = (order: WorkOrder): WorkOrderSheet => {
  const first = firstUnits(order.units);
  const both = order.units === "both";
  const { name: site } = order.site;
  const { name, certificate } = order.applicator;
  return {
    type: "work-order-sheet",
    version: 1,
    copy: "shed",
    units: order.units,
    title: order.title,
    site,
    date: order.date,
    day: dayText(order.date, first === "metric"),
    head: [
      blank("Applicator", name, 20),
      blank("Certificate no.", certificate, 12),
      blank("Supervisor, phone", undefined, 24),
    ],
    front: [
      stopSection(order, first),
      ...order.spreads.map((spread, i) =>
        withBuffers(spreadSection(spread, i + 1, order.site, first, both), order.buffers, first),
      ),
      ...order.sprays.map((spray, i) =>
        withBuffers(
          spraySection(spray, order.spreads.length + i + 1, order.site, first, order.cautions),
          order.buffers,
          first,
        ),
      ),
      storeSection(order.spreads, order.sprays, site, first, both),
      afterSection(order, first),
      recordSection(order, first),
    ],
    back: [
      ...order.sprays.flatMap((spray, i) => jarSection(spray, order.spreads.length + i + 1, first)),
      ...nextSection(order, first),
      backSection(order, first),
    ],
  };
};
