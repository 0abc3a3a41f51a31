import type { CivilDate } from "../../calendar/index.js";
import type { Analysis } from "../../nutrient/index.js";
import type { Stated } from "../stated.js";

/** The weather at the time of an application, as far as it is known. */
export interface LedgerWeather {
  readonly wind?: Stated;
  /** From where the wind blew: `"SW"`, or degrees. */
  readonly windFrom?: string;
  readonly temperature?: Stated;
  /** Relative humidity, in `%`. */
  readonly humidity?: Stated;
  readonly sky?: string;
}

/**
 * One application in a ledger. Plain JSON. Only `id` and `date` are needed; what is left out is not known,
 * and `missingForRecord` says what a record-keeping scheme would ask for.
 */
export interface LedgerEntry {
  /** A name that no other entry of the ledger has. */
  readonly id: string;
  readonly date: CivilDate;
  /** Time of day, with its offset where it is known: `07:30` or `07:30-05:00`. */
  readonly start?: string;
  readonly end?: string;
  /** The parts of the site that were treated; all of it where it is left out. */
  readonly parts?: readonly string[];
  /** The area that was treated, in all. */
  readonly area?: Stated;
  /** The id of the product. */
  readonly product?: string;
  readonly productName?: string;
  readonly form?: "dry" | "liquid";
  /** The grade of a fertilizer, such as `"24-0-11"`. */
  readonly analysis?: string | Analysis;
  /** Percent of PRODUCT, of `N:slow/product`. */
  readonly slowNitrogen?: Stated;
  readonly density?: Stated;
  /** What the product holds beside nutrients: `4 lb/gal` of `ai:prodiamine/product`, or `65 % w/w` of it. */
  readonly contents?: readonly Stated[];
  /** Product in all, by weight or by volume. */
  readonly amount?: Stated;
  /** Product per area, where no amount in all is known. */
  readonly rate?: Stated;
  /** Nutrients or active ingredients per area, where they are known as such. */
  readonly supplies?: readonly Stated[];
  /** Which treatment of the plan it was. */
  readonly treatment?: string;
  /** What it was used against, or for. */
  readonly target?: string;
  readonly method?: string;
  /** The crop or the kind of turf, as records ask for it. */
  readonly site?: string;
  /** Where that is: an address, a field number, coordinates. */
  readonly location?: string;
  readonly registrationNumber?: string;
  readonly activeIngredient?: string;
  readonly restrictedUse?: boolean;
  readonly lot?: string;
  readonly applicator?: string;
  readonly certificate?: string;
  readonly carrierVolume?: Stated;
  /** Hours that the label asks people to stay out. */
  readonly reEntryHours?: number;
  readonly weather?: LedgerWeather;
  readonly note?: string;
  /** The id of the entry that this one replaces. The replaced entry stays in the ledger and no longer counts. */
  readonly corrects?: string;
  /** With `corrects`: the replaced entry never happened, and nothing takes its place. */
  readonly voids?: boolean;
}

/** A season's applications, in the order in which they were written down. Entries are only ever added. */
export interface Ledger {
  readonly type: "ledger";
  readonly version: 1;
  readonly entries: readonly LedgerEntry[];
}
