import { type CivilDate, type DailyTemperatures, dailyTemperatures } from "../../calendar/index.js";
import { civilDateAt } from "../../ledger/house.js";
import { type ReadLimit, readFacts, readLimits } from "../../limits/house.js";
import type { ApplicationFacts } from "../../limits/index.js";
import {
  type Checks,
  checks,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  expectText,
  fail,
  type Quantity,
  quantityOf,
  unreadable,
} from "../../quantity/index.js";
import { expectWaterTest, type MeasuringIncrement, mixingOrders, type WaterTest } from "../../tank/index.js";
import type { Job, JobSprayer } from "./job.js";
import { type ReadLogEntry, readLog } from "./read-log.js";
import { type ReadProduct, readProducts } from "./read-products.js";
import { type ReadSite, readSite } from "./read-site.js";
import { type ReadTreatment, readTreatments } from "./read-treatments.js";

/** The sprayer of a job, read and checked. */
export interface ReadSprayer {
  readonly tank: Quantity<"volume", "spray">;
  readonly output: Quantity<"volume/area", "spray">;
  readonly minimumLoad?: Quantity<"volume", "spray">;
  readonly split: "full then partial" | "even";
  readonly increments?: { readonly dry?: MeasuringIncrement; readonly liquid?: MeasuringIncrement };
  readonly mixingOrder: NonNullable<JobSprayer["mixingOrder"]>;
  readonly residualVolume?: Quantity<"volume", "spray">;
  readonly plumbingVolume?: Quantity<"volume", "spray">;
  readonly water?: WaterTest;
  readonly timeToEmpty?: Quantity<"time", "none">;
}

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
}

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
  "limits",
  "facts",
  "temperatures",
] as const satisfies readonly (keyof Job)[];

const sprayerFields = [
  "tank",
  "output",
  "minimumLoad",
  "split",
  "increments",
  "mixingOrder",
  "residualVolume",
  "plumbingVolume",
  "water",
  "timeToEmpty",
] as const satisfies readonly (keyof JobSprayer)[];

/** A volume that is stated without a substance, or as spray. */
const sprayVolume = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative" = "positive",
): Quantity<"volume", "spray"> => {
  const { value, unit, of } = expectRecord(input, path, "a volume") as {
    value?: number;
    unit?: string;
    of?: string;
  };
  if (of !== undefined && of !== "none" && of !== "spray")
    fail("substance/mismatch", `${path}.of`, of, "a volume of spray");
  return expectQuantity({ value, unit, of: "spray" }, { dimension: "volume", of: "spray", bound }, path);
};

/** What the scale and the jug can read: a unit and a step, for each. */
const expectReadable = (input: unknown, path: string): void => {
  const record = expectFields(input, ["dry", "liquid"], path, "what scale and jug can read");
  const door = checks();
  for (const form of ["dry", "liquid"] as const) {
    const step = record[form];
    if (step === undefined) continue;
    door.run(() => {
      const at = `${path}.${form}`;
      const fields = expectFields(step, ["unit", "step"], at, "a unit and a step");
      expectNumber(fields.step, `${at}.step`, { above: 0 });
      const unit = expectText(fields.unit, `${at}.unit`, "a unit");
      const { dimension } = quantityOf(1, unit, "none", `${at}.unit`);
      const wanted = form === "dry" ? "mass" : "volume";
      if (dimension !== wanted) fail("unit/mismatch", `${at}.unit`, unit, `a unit of ${wanted}`);
    });
  }
  door.done();
};

const readSprayer = (input: unknown): ReadSprayer => {
  const record = expectFields(input, sprayerFields, "sprayer", "a sprayer");
  const sprayer = record as unknown as JobSprayer;
  const door = checks();
  const tank = door.run(() => sprayVolume(sprayer.tank, "sprayer.tank"));
  const output = door.run(() =>
    expectQuantity(
      sprayer.output,
      { dimension: "volume/area", of: "spray", bound: "positive" },
      "sprayer.output",
    ),
  );
  const least =
    sprayer.minimumLoad === undefined
      ? undefined
      : door.run(() => sprayVolume(sprayer.minimumLoad, "sprayer.minimumLoad"));
  if (tank && least && least.compare(tank) > 0) {
    door.run(() => fail("conflict", "sprayer.minimumLoad", least, "at most what the tank holds"));
  }
  const split =
    sprayer.split === undefined
      ? "full then partial"
      : door.run(() => expectOneOf(sprayer.split, ["full then partial", "even"], "sprayer.split"));
  if (sprayer.increments !== undefined)
    door.run(() => expectReadable(sprayer.increments, "sprayer.increments"));
  if (sprayer.mixingOrder !== undefined && sprayer.mixingOrder !== "consensus")
    door.run(() =>
      expectOneOf(
        sprayer.mixingOrder,
        mixingOrders.map(({ id }) => id),
        "sprayer.mixingOrder",
      ),
    );
  const held = (["residualVolume", "plumbingVolume"] as const).map((name) =>
    sprayer[name] === undefined
      ? undefined
      : door.run(() => sprayVolume(sprayer[name], `sprayer.${name}`, "non-negative")),
  );
  const [dead, hose] = held;
  const kept = held.reduce((sum, volume) => sum + (volume?.in("L") ?? 0), 0);
  if (tank && kept >= tank.in("L")) {
    const path = dead !== undefined && dead.compare(tank) >= 0 ? "residualVolume" : "plumbingVolume";
    door.run(() => fail("conflict", `sprayer.${path}`, sprayer[path], "less than what the tank holds"));
  }
  if (sprayer.water !== undefined) door.run(() => expectWaterTest(sprayer.water, "sprayer.water"));
  const time =
    sprayer.timeToEmpty === undefined
      ? undefined
      : door.run(() =>
          expectQuantity(
            sprayer.timeToEmpty,
            { dimension: "time", of: "none", bound: "non-negative" },
            "sprayer.timeToEmpty",
          ),
        );
  door.done();
  return {
    tank: tank as Quantity<"volume", "spray">,
    output: output as Quantity<"volume/area", "spray">,
    split: split as ReadSprayer["split"],
    mixingOrder: sprayer.mixingOrder ?? "consensus",
    ...(least && { minimumLoad: least }),
    ...(sprayer.increments && { increments: sprayer.increments }),
    ...(dead && { residualVolume: dead }),
    ...(hose && { plumbingVolume: hose }),
    ...(sprayer.water && { water: sprayer.water }),
    ...(time && { timeToEmpty: time }),
  };
};

/**
 * Reads a job, whatever it is, and checks all of it; problems go to `door`, each with its path. Where there
 * are any, the job lacks what could not be read, and only its `treatments` and `sprayer` may be looked at.
 *
 * @throws RatewrightError where the input is no record of plain data
 */
export const readJob = (input: unknown, door: Checks): ReadJob => {
  const top = door.run(() => expectRecord(input, "job", "a job")) as Job | undefined;
  if (top === undefined) door.done();
  const job = top as Job;
  for (const problem of unreadable(job, "")) door.add(problem);
  door.done();
  door.run(() => expectFields(job, jobFields, "", "a job"));
  if (job.type !== "job")
    door.run(() => fail(job.type === undefined ? "missing" : "type", "type", job.type, '"job"'));
  if (job.version !== 1)
    door.run(() => fail(job.version === undefined ? "missing" : "type", "version", job.version, "1"));
  const title = door.run(() => expectText(job.title, "title", "a title"));
  const date = door.run(() => civilDateAt(job.date, "date"));
  const site = readSite(job.site, door);
  const products = readProducts(job.products, door);
  const stated: readonly unknown[] = Array.isArray(job.products) ? job.products : [];
  const named = {
    sound: products,
    ids: new Set(stated.map((product) => (product as { id?: unknown } | null)?.id)),
  };
  const treatments = readTreatments(job.treatments, site, named, door);
  const sprayer = job.sprayer === undefined ? undefined : door.run(() => readSprayer(job.sprayer));
  const sprayed = Array.isArray(job.treatments) && job.treatments.some((t) => t?.method === "spray");
  if (sprayed && job.sprayer === undefined) {
    door.run(() => fail("missing", "sprayer", undefined, "a sprayer, for a treatment is sprayed"));
  }
  const log = readLog(job.log, date, site, named, door);
  const limits = readLimits(job.limits, door);
  const facts = readFacts(job.facts, "facts", door);
  const temperatures =
    job.temperatures === undefined
      ? undefined
      : door.run(() => dailyTemperatures(job.temperatures as DailyTemperatures), "temperatures");
  return {
    title: title as string,
    date: date as CivilDate,
    site: site as ReadSite,
    products,
    treatments,
    log,
    limits,
    facts,
    ...(sprayer && { sprayer }),
    ...(temperatures && { temperatures }),
  };
};
