import {
  type CivilDate,
  civilDate,
  compareDates,
  type DailyTemperatures,
  dailyTemperatures,
} from "../../calendar/index.js";
import { civilDateAt } from "../../ledger/house.js";
import { type ReadLimit, readFacts, readLimits } from "../../limits/house.js";
import type { ApplicationFacts } from "../../limits/index.js";
import {
  allOf,
  type Checks,
  expectFields,
  expectOneOf,
  expectRecord,
  expectText,
  fail,
  frozen,
  plainCopy,
  shown,
  toldAt,
  unitSystem,
  unreadable,
} from "../../quantity/index.js";
import type { Job, JobApplicator, SheetUnits } from "./job.js";
import { checkAllEdges } from "./read-edges.js";
import { type ReadLogEntry, readBefore } from "./read-log.js";
import {
  type ReadSprayer,
  type ReadSpreader,
  readSprayer,
  readSpreader,
  shortText,
} from "./read-machines.js";
import { type ReadProduct, readProducts } from "./read-products.js";
import { type ReadSite, readSite } from "./read-site.js";
import { readTreatments } from "./read-treatments.js";
import { type ReadWater, readWater } from "./read-water.js";
import type { ReadTreatment } from "./treatments.js";

/** A job, read and checked. */
export interface ReadJob {
  readonly title: string;
  readonly date: CivilDate;
  readonly site: ReadSite;
  readonly products: ReadonlyMap<string, ReadProduct>;
  readonly treatments: readonly ReadTreatment[];
  readonly sprayer?: ReadSprayer;
  readonly log: readonly ReadLogEntry[];
  readonly limits: readonly ReadLimit[];
  readonly facts: ApplicationFacts;
  readonly temperatures?: DailyTemperatures;
  readonly units: SheetUnits;
  readonly applicator: JobApplicator;
  readonly spreader: ReadSpreader;
  readonly water?: ReadWater;
}

/** A work order or a ledger in the place of the job: each of its fields would be told as one that a job does not have. */
const expectNoOther = ({ type, products, treatments }: Partial<Job>, problems: Checks): void => {
  const said: unknown = type;
  if (typeof said !== "string" || said === "job" || products !== undefined || treatments !== undefined)
    return;
  const expected = '"job": the job itself, and nothing that was made of it';
  problems.add({ code: "type", path: "type", got: shown(said), expected });
  problems.done();
};

const jobFields = [
  "type",
  "version",
  "title",
  "date",
  "site",
  "products",
  "treatments",
  "sprayer",
  "log",
  "ledger",
  "limits",
  "facts",
  "temperatures",
  "units",
  "applicator",
  "spreader",
  "water",
] as const satisfies readonly (keyof Job)[];

const sheetUnits: readonly SheetUnits[] = frozen(["US customary", "metric", "both"]);

const readApplicator = (input: unknown): JobApplicator => {
  const given = expectFields(
    input,
    ["name", "certificate"],
    "applicator",
    "the applicator's name, and the certificate number",
  );
  const text = (field: "name" | "certificate"): string | undefined =>
    given[field] === undefined ? undefined : shortText(given[field], `applicator.${field}`);
  const { name, certificate } = allOf({ name: () => text("name"), certificate: () => text("certificate") });
  return { ...(name !== undefined && { name }), ...(certificate !== undefined && { certificate }) };
};

/** The units that a job is written in: those of its first rate or target, or else of its site. */
const unitsOfJob = (treatments: readonly ReadTreatment[], site: ReadSite | undefined): SheetUnits => {
  const written = treatments.flatMap((treatment) =>
    treatment.method === "spray"
      ? treatment.mix.map(({ rate }) => rate.unit)
      : ["target" in treatment.wanted ? treatment.wanted.target.unit : treatment.wanted.rate.unit],
  );
  const systems = [...written, ...(site === undefined ? [] : [site.area.net.unit])].map(unitSystem);
  return systems.find((system) => system === "US" || system === "metric") === "metric"
    ? "metric"
    : "US customary";
};

const endsBeforeVisit = (treatments: readonly ReadTreatment[], date: CivilDate, problems: Checks): void => {
  for (const { end, path } of treatments)
    if (end !== undefined && compareDates(civilDate(end.slice(0, 10)), date) < 0)
      problems.run(() =>
        fail("conflict", `${path}.end`, end, `a time on or after the day of the visit, ${date}`),
      );
};

/** A job that a server did not take apart is still text. */
const jobRecord = (input: unknown): unknown =>
  expectRecord(
    plainCopy(input),
    "job",
    typeof input === "string" ? "a job as a record, which JSON.parse makes of a text" : "a job",
  );

/**
 * Reads a job, whatever it is, and checks all of it; what is wrong goes to `problems`, each with its path. Where there
 * are any, the job lacks what could not be read, and only its `treatments` and `sprayer` may be looked at.
 *
 * @throws RatewrightError where the input is no record of plain data
 */
export const readJob = (input: unknown, problems: Checks): ReadJob => {
  const top = problems.run(() => jobRecord(input)) as Job | undefined;
  if (top === undefined) problems.done();
  const job = top as Job;
  for (const problem of unreadable(job, "")) problems.add({ ...problem, path: problem.path || "job" });
  problems.done();
  expectNoOther(job, problems);
  problems.run(() => expectFields(job, jobFields, "", "a job"));
  if (job.type !== "job") problems.run(() => fail("type", "type", job.type, '"job"'));
  if (job.version !== 1) problems.run(() => fail("type", "version", job.version, "1"));
  const title = problems.run(() => expectText(job.title, "title", "a title"));
  const date = problems.run(() => civilDateAt(job.date, "date"));
  const site = readSite(job.site, problems);
  const products = readProducts(job.products, problems);
  const stated: readonly unknown[] = Array.isArray(job.products) ? job.products : [];
  const named = {
    sound: products,
    ids: new Set(stated.map((product) => (product as { id?: unknown } | null)?.id)),
  };
  const treatments = readTreatments(job.treatments, site, named, problems);
  const water = readWater(job.water, site, problems);
  if (date !== undefined) endsBeforeVisit(treatments, date, problems);
  const sprayer = job.sprayer === undefined ? undefined : problems.run(() => readSprayer(job.sprayer));
  const sprayed = Array.isArray(job.treatments) && job.treatments.some((t) => t?.method === "spray");
  if (sprayed && job.sprayer === undefined) {
    problems.run(() => fail("missing", "sprayer", undefined, "a sprayer, because a treatment is sprayed"));
  }
  const log = readBefore(job, { visit: date, site, named, products, treatments }, problems);
  const limits = readLimits(job.limits, problems);
  const facts = readFacts(job.facts, "facts", problems);
  checkAllEdges(facts, treatments, site, problems);
  const temperatures =
    job.temperatures === undefined
      ? undefined
      : problems.run(() =>
          toldAt("temperatures", "series", () => dailyTemperatures(job.temperatures as DailyTemperatures)),
        );
  const machine = job.spreader === undefined ? {} : (problems.run(() => readSpreader(job.spreader)) ?? {});
  const units =
    job.units === undefined ? undefined : problems.run(() => expectOneOf(job.units, sheetUnits, "units"));
  const applicator =
    job.applicator === undefined ? {} : (problems.run(() => readApplicator(job.applicator)) ?? {});
  return {
    units: units ?? unitsOfJob(treatments, site),
    applicator,
    spreader: machine,
    title: title as string,
    date: date as CivilDate,
    site: site as ReadSite,
    products,
    treatments,
    log,
    limits,
    facts,
    ...(water && { water }),
    ...(sprayer && { sprayer }),
    ...(temperatures && { temperatures }),
  };
};
