import { type Citation, frozen } from "../../quantity/index.js";
import { iowaTable } from "./iowa-table.js";
import { oregonSikoraTable } from "./oregon-sikora-table.js";
import { pennStateTurfTable } from "./penn-state-turf-table.js";

/** How a lime requirement is found, by name. */
export type LimeMethod =
  | "Mehlich buffer, North Carolina"
  | "Mehlich buffer, Pennsylvania turf"
  | "Mehlich buffer, Pennsylvania fields"
  | "Sikora buffer, Oregon"
  | "buffer pH, Iowa"
  | "exchangeable acidity"
  | "base saturation"
  | "pH buffering";

/**
 * By what a rate is turned into an amount of the lime at hand: its calcium carbonate equivalent alone, what is left
 * of that after fineness and moisture, or the weight that its label sets equal to a ton of standard lime.
 */
export type LimeMeasure = "CCE" | "effective" | "standard lime";

/** What a method rests on. */
export interface LimeMethodFacts {
  /** Inches of soil that the rate is for; `null` where the source states none, or the caller does. */
  readonly depthInches: number | null;
  readonly measure: LimeMeasure;
  /** What it takes. */
  readonly takes: string;
  /** The target pH that it knows. */
  readonly targets: string;
  readonly source: Citation | "common practice, no source";
}

const northCarolina: Citation = /* @__PURE__ */ frozen({
  title: "Lime requirement factors table",
  publisher: "North Carolina Department of Agriculture and Consumer Services, Agronomic Division",
  where: "footnote",
  url: "http://www.ncagr.gov/agronomi/bufftab1.htm",
});
const pennsylvaniaFields: Citation = /* @__PURE__ */ frozen({
  title: "The Agronomy Guide, part 1, section 2: limestone recommendation",
  publisher: "Pennsylvania State University",
  url: "http://agguide.agronomy.psu.edu/cm/sec2/sec24e1.cfm",
});
const chain: Citation = /* @__PURE__ */ frozen({
  title: "Lime requirement, quoting Brady and Weil 2008",
  publisher: "journal text",
});

/** The methods of `limeRequirement`, with depth, measure, targets and source. */
export const limeMethods: Readonly<Record<LimeMethod, LimeMethodFacts>> = /* @__PURE__ */ frozen({
  "Mehlich buffer, North Carolina": {
    depthInches: null,
    measure: "standard lime",
    takes: "soil pH, target pH, buffer pH or acidity in meq/100 cm3, residual credit",
    targets: "above the soil pH, up to 6.6",
    source: northCarolina,
  },
  "Mehlich buffer, Pennsylvania turf": {
    depthInches: null,
    measure: "CCE",
    takes: "soil pH, target pH, exchangeable acidity in meq/100 g",
    targets: "7.0, 6.5 or 6.0",
    source: pennStateTurfTable.source,
  },
  "Mehlich buffer, Pennsylvania fields": {
    depthInches: 7,
    measure: "CCE",
    takes: "soil pH, target pH, exchangeable acidity in meq/100 g",
    targets: "7.0 or 6.5",
    source: pennsylvaniaFields,
  },
  "Sikora buffer, Oregon": {
    depthInches: 6,
    measure: "effective",
    takes: "soil pH, target pH, Sikora buffer pH",
    targets: "5.6, 6.0, 6.4, 6.8 or 7.2",
    source: oregonSikoraTable.source,
  },
  "buffer pH, Iowa": {
    depthInches: 6,
    measure: "effective",
    takes: "soil pH, target pH, buffer pH",
    targets: "6.5 or 6.9",
    source: iowaTable.source,
  },
  "exchangeable acidity": {
    depthInches: null,
    measure: "effective",
    takes: "exchangeable acidity in meq/100 g, layer, percent of it to neutralize",
    targets: "none: it neutralizes acidity",
    source: chain,
  },
  "base saturation": {
    depthInches: null,
    measure: "effective",
    takes: "exchange capacity, base saturation, target base saturation, layer",
    targets: "none: a base saturation",
    source: chain,
  },
  "pH buffering": {
    depthInches: null,
    measure: "effective",
    takes: "soil pH, target pH, charge that a unit of pH takes in meq/100 g, layer",
    targets: "above the soil pH, up to 7",
    source: "common practice, no source",
  },
});
