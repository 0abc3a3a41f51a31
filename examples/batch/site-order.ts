/**
 * One site of the file: its cells in, the figures of its work order out, or every cell that cannot be read. It knows no
 * file, thread or engine, so each way of running the file calls this very function.
 */
import {
  amountFor,
  fertilizer,
  packagesFor,
  productRate,
  RatewrightError,
  readQuantity,
  tankLoads,
  toldBy,
} from "ratewright";

/** The columns of the file, named as the library names what they hold, so that a problem names its column. */
export const columns = [
  "site",
  "area",
  "analysis",
  "target",
  "package",
  "applicationVolume",
  "capacity",
  "rate",
] as const;

/** The figures of a site, in the units that the crew of these grounds reads. */
export const figures = [
  "feed, lb",
  "bags",
  "left over, lb",
  "spray, gal",
  "loads",
  "product, fl oz",
] as const;

/** What is wrong with a cell. */
export interface Refusal {
  /** The column, or nothing where the row itself is wrong. */
  readonly path: string;
  readonly reason: string;
}

/** The cells of a row that was computed, or what is wrong with it. */
export type SiteResult =
  | { readonly cells: readonly string[]; readonly refusals?: undefined }
  | { readonly cells?: undefined; readonly refusals: readonly Refusal[] };

const refusal = ({ path = "", got, expected }: RatewrightError["problems"][number]): Refusal => ({
  path: path.replace(/^fertilizer\./, ""),
  reason: `${got === undefined ? "" : `got ${got}; `}expected ${expected}`,
});

/** What `run` gives, or what it cannot read. */
const attempt = <T>(run: () => T): { readonly value?: T; readonly problems: RatewrightError["problems"] } => {
  try {
    return { value: run(), problems: [] };
  } catch (error) {
    if (error instanceof RatewrightError) return { problems: error.problems };
    throw error;
  }
};

/** To hundredths: whole numbers of them are added for the totals, which then depend on no order. */
const written = (value: number): string => value.toFixed(2);

/** The figures of a site by its cells, in the order of {@link columns}. */
export const siteOrder = (cells: readonly string[]): SiteResult => {
  if (cells.length !== columns.length) {
    return { refusals: [{ path: "", reason: `got ${cells.length} cells; expected ${columns.length}` }] };
  }
  const [site, ...texts] = cells as [string, ...string[]];
  const [areaText, analysis, targetText, packageText, volumeText, capacityText, rateText] = texts;
  const bound = "positive";
  const area = readQuantity(areaText, { dimension: "area", of: "none", path: "area", bound });
  const target = readQuantity(targetText, { dimension: "mass/area", of: "N", path: "target", bound });
  const bag = readQuantity(packageText, { dimension: "mass", of: "none", path: "package", bound });
  const volume = readQuantity(volumeText, {
    dimension: "volume/area",
    of: "spray",
    path: "applicationVolume",
    bound,
  });
  const capacity = readQuantity(capacityText, { dimension: "volume", of: "spray", path: "capacity", bound });
  const rate = readQuantity(rateText, { dimension: "volume/area", of: "product", path: "rate", bound });
  const feed = attempt(() => fertilizer({ id: "feed", analysis: analysis ?? "" }));
  const unread = [area, feed, target, bag, volume, capacity, rate].flatMap(({ problems }) => problems);
  const named = site.trim() === "" ? [{ path: "site", reason: "expected a name" }] : [];
  if (
    !area.value ||
    !target.value ||
    !bag.value ||
    !volume.value ||
    !capacity.value ||
    !rate.value ||
    !feed.value ||
    named.length > 0
  ) {
    return { refusals: [...named, ...unread.map(refusal)] };
  }
  const given = { area: area.value, applicationVolume: volume.value, capacity: capacity.value };
  const [bought, product] = [{ ...feed.value, package: bag.value }, rate.value];
  // What is wrong with the analysis is told by its column.
  const need = attempt(() =>
    toldBy({ "product.analysis": "analysis" }, () => productRate(target.value, bought)).times(given.area),
  );
  const loads = attempt(() => tankLoads(given));
  const amount = attempt(() => amountFor({ rate: product, form: "liquid", area: given.area }));
  if (!need.value || !loads.value || !amount.value) {
    return { refusals: [need, loads, amount].flatMap(({ problems }) => problems.map(refusal)) };
  }
  const packages = packagesFor(need.value, bought);
  return {
    cells: [
      site,
      written(need.value.in("lb")),
      String(packages.count),
      written(packages.leftOver.in("lb")),
      written(loads.value.volume.in("gal")),
      String(loads.value.count),
      written(amount.value.in("fl oz")),
    ],
  };
};
