import { type Caution, type Citation, frozen } from "../quantity/index.js";

/** A caution of mixing and loading, and when it applies. */
export interface TankCaution extends Caution {
  /** What it is about: the whole job, the filling, or the products that go in. */
  readonly when: "always" | "fill" | "concentrate" | "dry" | "water-soluble packet";
}

const missouriDot: Citation = /* @__PURE__ */ frozen({
  title: "Engineering Policy Guide 821.12, Mixing and Handling Guidelines",
  publisher: "Missouri Department of Transportation",
  where: "item C",
});

const navy: Citation = /* @__PURE__ */ frozen({
  title: "MO-314, ch. 9-2, Mixing Procedures",
  publisher: "US Navy, NAVFAC",
});

const ontario: Citation = /* @__PURE__ */ frozen({
  title: "Water Soluble Packages",
  publisher: "Ontario Pesticide Education Program",
  year: 2017,
});

/** Cautions of mixing and loading. The label comes first and wins over all of them. */
export const tankCautions: readonly TankCaution[] = /* @__PURE__ */ frozen([
  {
    code: "caution/label-first",
    when: "always",
    text: "Read the label of every product first. It is the law and overrides this order, these rates and these amounts. Local codes and licensed practice override every computed figure.",
    source: "common practice, no source",
  },
  {
    code: "caution/protective-equipment",
    when: "concentrate",
    text: "Pouring concentrate is the most exposed moment of the job: wear what each label requires for mixers and loaders, at least gloves and eye protection, and open and pour below eye level.",
    source: "common practice, no source",
  },
  {
    code: "caution/dry-powder",
    when: "dry",
    text: "Pour powders and granules slowly, low and out of the wind; do not breathe the dust. Measure dry products by weight, not volume: density varies.",
    source: {
      title: "Vegetable Management Guide, dilution tables (2 to 6 tablespoons to the ounce)",
      publisher: "New England Extension",
    },
  },
  {
    code: "caution/backflow",
    when: "fill",
    text: "Keep an air gap above the tank or a backflow preventer in the fill line, so that spray cannot run back into the water supply. Never let the fill hose touch the mix.",
    source: missouriDot,
  },
  {
    code: "caution/stay-at-fill",
    when: "fill",
    text: "Never leave a tank that is being filled. Fill away from wells, drains and water bodies, where a spill can be contained.",
    source: "common practice, no source",
  },
  {
    code: "caution/empty-tank",
    when: "fill",
    text: "Never pour concentrate or dry product into an empty tank: water goes first.",
    source: navy,
  },
  {
    code: "caution/closed-tank",
    when: "fill",
    text: "Keep the lid shut while the tank agitates, open it away from your face, and never lean or climb into a tank: fumes gather there.",
    source: "common practice, no source",
  },
  {
    code: "caution/container-rinse",
    when: "fill",
    text: "Rinse containers as soon as they are empty, with the same protection as for pouring; the rinse water goes into the tank before it is full.",
    source: {
      title: "50 Ways Farmers Can Protect Their Groundwater, no. 30, Rinse Chemical Containers Thoroughly",
      publisher: "University of Illinois",
      url: "http://www.thisland.illinois.edu/50ways/50ways_30.html",
    },
  },
  {
    code: "caution/water-soluble-packet",
    when: "water-soluble packet",
    text: "Put packets in whole and unopened, with dry gloves; never cut or puncture them. Remove the basket strainer; keep the water jet off the packets, stop agitation before opening the lid, and see that they are fully dissolved before the next product.",
    source: ontario,
  },
  {
    code: "caution/pollinators",
    when: "always",
    text: "Bees and other pollinators feed on clover, dandelion and other weeds in flower. Before an insecticide, mow off the flowers; where the label says not to mow before treatment, mow afterward. Do not let spray drift onto anything in bloom, and do not put clippings of treated turf where the label says they must not go. The label says when bees may not be exposed at all.",
    source: {
      title:
        "Pollinator Protection in Turfgrass (after Best Management Practices for Turf Care and Pollinator Conservation)",
      publisher: "University of Illinois Extension",
      year: 2017,
      where:
        "issue 17: mow the flower heads of weeds before treatment, or after it where the label bars mowing first",
      url: "http://hyg.ipm.illinois.edu/article.php?id=955",
    },
  },
  {
    code: "caution/no-food-containers",
    when: "always",
    text: "Never measure with, pour into or store in anything used for food or drink. Keep products in their own labeled containers.",
    source: "common practice, no source",
  },
  {
    code: "caution/emergency",
    when: "always",
    text: "If anyone is splashed, swallows product or has trouble breathing, follow the first-aid part of the label at once, call the emergency number or a poison control center, and have the label at hand. Keep water, soap and spill material at the mixing place.",
    source: "common practice, no source",
  },
]);
