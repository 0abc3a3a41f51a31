import {
  type AcidPartner,
  acidEquivalentOf,
  acidShare,
  activeInProduct,
  activeOfAcid,
  asApplied,
  formulaWeight,
  type HerbicideAcid,
  productForActive,
  quantity,
} from "../../src/index.js";
import { to } from "./answer.js";
import type { PublishedCheck, Source } from "./check.js";

const read = "read" as const;
const label = (title: string, publisher: string, where: string): Source => ({ title, publisher, where });
const montana = (where: string): Source => ({
  title: "Calibration of sprayers (MT 2000-14)",
  publisher: "Montana State University Extension",
  year: 2000,
  where,
});

/** Percent of the salt as percent of acid: the content of a label times the share. */
const asAcid = (percent: number, acid: HerbicideAcid, partner: AcidPartner): number =>
  quantity(percent, "% w/w", "ai/product").times(acidShare(acid, partner)).in("% w/w");

const salt24D = (
  entry: string,
  percent: number,
  acid: number,
  where: string,
  publisher: string,
): PublishedCheck => ({
  entry,
  formulas: ["acidShare"],
  source: label("Ingredient statement of a 2,4-D amine", publisher, where),
  reached: read,
  given: `${percent} % of the dimethylamine salt`,
  answers: [to("% acid", acid, 0.1)],
  compute: () => [asAcid(percent, "2,4-D", "dimethylammonium")],
});

/** An acid, its printed molar mass, and those of its salts and esters; all to 0.1. */
const masses: readonly {
  readonly acid: HerbicideAcid;
  readonly formula: Readonly<Record<string, number>>;
  readonly of: number;
  readonly with: readonly (readonly [AcidPartner, number])[];
}[] = [
  {
    acid: "dicamba",
    formula: { C: 8, H: 6, Cl: 2, O: 3 },
    of: 221,
    with: [
      ["dimethylammonium", 266.1],
      ["diolamine", 326.2],
      ["potassium", 259.1],
      ["sodium", 243],
    ],
  },
  {
    acid: "MCPA",
    formula: { C: 9, H: 9, Cl: 1, O: 3 },
    of: 200.6,
    with: [
      ["butotyl", 300.8],
      ["dimethylammonium", 245.7],
      ["2-ethylhexyl", 312.8],
      ["potassium", 238.7],
      ["sodium", 222.6],
    ],
  },
];
const handbook = (entry: string, i: 0 | 1, url: string): PublishedCheck => {
  const { acid, formula, of, with: salts } = masses[i] as (typeof masses)[number];
  return {
    entry,
    formulas: ["formulaWeight", "acidShare", "activeOfAcid"],
    source: {
      title: `${acid}, entry of a pesticide handbook (copy)`,
      publisher: "pesticide handbook",
      where: "molar masses of the acid and of its salts and esters",
      url,
    },
    reached: read,
    given: `a mole of ${acid} by its formula, and as its salts and esters`,
    answers: [
      to("g/mol, acid", of, 0.1),
      ...salts.map(([partner, mass]) => to(`g/mol, ${partner}`, mass, 0.1)),
    ],
    compute: () => {
      const mole = formulaWeight(formula);
      const of = (partner: AcidPartner) =>
        activeOfAcid(quantity(mole, "g", "ae"), acidShare(acid, partner)).in("g");
      return [mole, ...salts.map(([partner]) => of(partner))];
    },
    note: "A mole of acid stands in a mole of salt: the mass of the acid over the share is that of the salt.",
  };
};

/** Examples of acids, salts and active ingredient that were read after the first collection. */
export const spraySaltChecks: readonly PublishedCheck[] = [
  salt24D("spray-131", 46.5, 38.6, "3.74 lb/gal; copy of the label", "US label of a 2,4-D amine"),
  salt24D("spray-132", 46.8, 38.9, "3.8 lb/gal; copy of the label", "US label of a 2,4-D amine"),
  {
    entry: "spray-133",
    formulas: ["acidShare"],
    source: label(
      "Ingredient statement of a 2,4-D amine of two salts",
      "US label",
      "3.8 lb acid equivalent per gallon or 38.6 %",
    ),
    reached: read,
    given: "33.2 % of the dimethylamine salt and 16.3 % of the diethanolamine salt",
    answers: [to("% acid", 38.6, 0.1)],
    compute: () => [asAcid(33.2, "2,4-D", "dimethylammonium") + asAcid(16.3, "2,4-D", "diolamine")],
  },
  {
    entry: "spray-134",
    formulas: ["acidShare"],
    source: label(
      "Ingredient statement of a triclopyr ester, 4 lb/gal",
      "US label for forests, rights-of-way and turf",
      "61.6 % of the butoxyethyl ester, 44.3 % acid equivalent",
    ),
    reached: read,
    given: "61.6 % of the butoxyethyl ester",
    answers: [to("% acid", 44.3, 0.1)],
    compute: () => [asAcid(61.6, "triclopyr", "butotyl")],
  },
  {
    entry: "spray-180",
    formulas: ["acidShare"],
    source: {
      title: "Label of clopyralid with flumetsulam, water dispersible granule, 2018",
      publisher: "US EPA, pesticide product labels",
      year: 2018,
      where: "ingredient statement; copy of the label",
    },
    reached: read,
    given: "60.0 % of the potassium salt of clopyralid",
    answers: [to("% acid", 50, 1)],
    compute: () => [asAcid(60, "clopyralid", "potassium")],
  },
  {
    entry: "spray-181",
    formulas: ["acidShare"],
    source: label(
      "Ingredient statement of a 2,4-D ester, 5.5 lb/gal",
      "US label",
      "88.4 % of the 2-ethylhexyl ester, 59.2 % acid equivalent; copy of the label",
    ),
    reached: read,
    given: "88.4 % of the 2-ethylhexyl ester",
    answers: [
      to("% acid", 59.2, 0.1, { wrong: { right: 58.6, why: "221.04 / 333.25 of the ester is acid" } }),
    ],
    compute: () => [asAcid(88.4, "2,4-D", "2-ethylhexyl")],
  },
  handbook("spray-135", 0, "http://9ele.com/pesticides_cn/Dicamba.html"),
  handbook("spray-136", 1, "http://9ele.com/pesticides_cn/MCPA-Na.html"),
  {
    entry: "spray-137",
    formulas: ["acidShare", "activeOfAcid", "acidEquivalentOf"],
    source: {
      title: "Dicamba-isopropylammonium: acid equivalent loading",
      publisher: "chemical supplier, with molar masses of PubChem and NPIC",
      url: "https://www.benchchem.com/product/b12762785",
    },
    reached: read,
    given: "0.5 lb ae/acre of dicamba as two salts",
    answers: [
      to("g acid in a g of isopropylammonium", 0.789, 0.001),
      to("g acid in a g of dimethylammonium", 0.831, 0.001),
      to("lb of isopropylammonium/acre", 0.634, 0.001),
      to("lb of dimethylammonium/acre", 0.602, 0.001),
      to("lb ae/acre, back", 0.5, 0.001),
    ],
    compute: () => {
      const shares = (["isopropylammonium", "dimethylammonium"] as const).map((partner) =>
        acidShare("dicamba", partner),
      );
      const salts = shares.map((share) => activeOfAcid(quantity(0.5, "lb/acre", "ae"), share).in("lb/acre"));
      const back = acidEquivalentOf(quantity(0.634, "lb/acre", "ai"), shares[0] as (typeof shares)[number]);
      return [...shares.map((share) => share.in("g/g")), ...salts, back.in("lb/acre")];
    },
  },
  {
    entry: "spray-138",
    formulas: ["acidShare", "activeOfAcid"],
    source: {
      title: "Clopyralid-olamine",
      publisher: "PubChem, in a chemical supplier's page",
      where: "molecular weight",
      url: "https://www.benchchem.com/product/b1580446",
    },
    reached: read,
    given: "clopyralid of 192.00 as its olamine: what a mole of it weighs",
    answers: [to("g/mol", 253.08, 0.01)],
    compute: () => [
      activeOfAcid(
        quantity(formulaWeight({ C: 6, H: 3, Cl: 2, N: 1, O: 2 }), "g", "ae"),
        acidShare("clopyralid", "olamine"),
      ).in("g"),
    ],
    note: "The mass of the acid is not on the page: it is taken from its formula.",
  },
  {
    entry: "spray-139",
    formulas: ["formulaWeight"],
    source: {
      title: "Quinclorac; 4-(2,4-dichlorophenoxy)butyric acid; aminopyralid",
      publisher: "German, French and English encyclopedia entries",
      where: "molar mass",
      url: "https://de.m.wikipedia.org/wiki/Quinclorac",
    },
    reached: read,
    given: "the formulas C10H5Cl2NO2, C10H10Cl2O3 and C6H4Cl2N2O2",
    answers: [
      to("g/mol, quinclorac", 242.06, 0.01),
      to("g/mol, 2,4-DB (printed 249.091 ± 0.014)", 249.09, 0.03),
      to("g/mol, aminopyralid", 207.01, 0.01),
    ],
    compute: () => [
      formulaWeight({ C: 10, H: 5, Cl: 2, N: 1, O: 2 }),
      formulaWeight({ C: 10, H: 10, Cl: 2, O: 3 }),
      formulaWeight({ C: 6, H: 4, Cl: 2, N: 2, O: 2 }),
    ],
  },
  {
    entry: "spray-140",
    formulas: ["activeInProduct"],
    source: {
      title: "Pesticide formulations (text of an extension fact sheet on a maker's page)",
      publisher: "pesticide education text, US",
      where: "how to read a label: 80 % SP",
    },
    reached: read,
    given: "a bag of 10 lb of an 80 % soluble powder",
    answers: [to("lb ai", 8, 1), to("lb inert", 2, 1)],
    compute: () => {
      const active = activeInProduct({
        product: quantity(10, "lb", "product"),
        content: quantity(80, "% w/w", "ai/product"),
      }).in("lb");
      return [active, 10 - active];
    },
  },
  {
    entry: "spray-141",
    formulas: ["productForActive", "activeInProduct"],
    source: {
      title: "Pesticides in the Military, subcourse MD0173",
      publisher: "US Army Medical Department Center and School",
      where: "page 43, example of dust",
      url: "http://armymedical.tpub.com/MD0173/Pounds-of-Toxicant-per-Acre-and-Pounds-of-Diluted-Dust-Per-Acre-Computation-Pesticides-in-the-Military-43.htm",
    },
    reached: read,
    given: "10 lb of toxicant per acre in dust of 5 %, and back by the printed formula",
    answers: [to("lb dust/acre", 200, 1), to("lb toxicant/acre", 10, 1)],
    compute: () => {
      const content = quantity(5, "% w/w", "ai/product");
      const dust = productForActive({ active: quantity(10, "lb/acre", "ai"), content });
      return [dust.in("lb/acre"), activeInProduct({ product: dust, content }).in("lb/acre")];
    },
  },
  {
    entry: "spray-142",
    formulas: ["productForActive"],
    source: montana("examples 7a and 7b"),
    reached: read,
    given: "3 lb ai/acre from 8 lb/gal; 0.5 lb ai/acre from 2 lb/gal on 7.5 acres",
    answers: [
      to("gal/acre", 0.375, 0.001),
      to("qt/acre", 1.5, 0.1),
      to("pt/acre", 3, 1),
      to("gal/acre, 7b", 0.25, 0.01),
      to("qt a tank", 7.5, 0.1),
    ],
    compute: () => {
      const product = (active: number, content: number) =>
        productForActive({
          active: quantity(active, "lb/acre", "ai"),
          content: quantity(content, "lb/gal", "ai/product"),
        });
      const first = product(3, 8);
      const second = product(0.5, 2);
      return [
        first.in("gal/acre"),
        first.in("qt/acre"),
        first.in("pt/acre"),
        second.in("gal/acre"),
        second.times(quantity(7.5, "acre")).in("qt"),
      ];
    },
  },
  {
    entry: "spray-143",
    formulas: ["productForActive"],
    source: {
      title: "How to calculate herbicide rates and calibrate herbicide applicators",
      publisher: "University of Minnesota Extension",
      where: "powder",
      url: "https://extension.umn.edu/herbicides/how-calculate-herbicide-rates-and-calibrate-herbicide-applicators",
    },
    reached: read,
    given: "3 lb ai/acre of an 80 % powder",
    answers: [to("lb/acre", 3.75, 0.01)],
    compute: () => [
      productForActive({
        active: quantity(3, "lb/acre", "ai"),
        content: quantity(80, "% w/w", "ai/product"),
      }).in("lb/acre"),
    ],
  },
  {
    entry: "spray-144",
    formulas: ["asApplied"],
    source: {
      title: "Agrochemical and Pesticide Safety (handbook extract)",
      publisher: "handbook",
      where: "p. 128, examples 4 and 5, read backward",
      url: "http://what-when-how.com/Tutorial/topic-166581h5j/Agrochemical-and-Pesticide-Safety-128.html",
    },
    reached: read,
    given: "10.5 lb used on 3.5 acres, 3 lb/acre planned; 2.5 lb of an 80 % powder used on an acre",
    answers: [
      to("lb/acre", 3, 0.1),
      to("% off the plan", 0, 1),
      to("lb/acre of the powder", 2.5, 0.1),
      to("lb ai/acre", 2, 0.1),
    ],
    compute: () => {
      const first = asApplied({
        used: quantity(10.5, "lb", "product"),
        area: quantity(3.5, "acre"),
        planned: quantity(3, "lb/acre", "product"),
      });
      const powder = asApplied({
        used: quantity(2.5, "lb", "product"),
        area: quantity(1, "acre"),
        active: quantity(80, "% w/w", "ai/product"),
      });
      return [
        first.rate.in("lb/acre"),
        first.deviation?.in("%") ?? Number.NaN,
        powder.rate.in("lb/acre"),
        powder.active?.in("lb/acre") ?? Number.NaN,
      ];
    },
  },
];
