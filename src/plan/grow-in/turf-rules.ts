import { addDays, type CivilDate, compareDates } from "../../calendar/index.js";
import { earliestBySeedingIntervals } from "../../interval/index.js";
import { inUnit } from "../../ledger/house.js";
import { plainWord } from "../../limits/house.js";
import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { counted } from "../../quantity/house.js";
import { expectQuantity, type FactSource, type Finding } from "../../quantity/index.js";
import type { LabelOnTurf, TreatmentUse, TurfState } from "./turf-types.js";

/** A treatment before the turf that it is meant for. */
export interface TreatmentOnTurf {
  readonly date: CivilDate;
  readonly use: TreatmentUse;
  /** The active ingredient, or the use where it is not stated: what a sentence is about. */
  readonly what: string;
  readonly label: LabelOnTurf | undefined;
  readonly turf: TurfState;
}

/** What a rule finds; the source is common practice where none stands here. */
export interface TurfFinding {
  readonly code: string;
  readonly severity: Finding["severity"];
  readonly text: string;
  readonly params: Finding["params"];
  readonly source?: FactSource;
}

/** What a rule says of a treatment: what it compared, what it could not compare, and what it found. */
export interface TurfAnswer {
  readonly checked?: string;
  readonly notChecked?: string;
  readonly found?: TurfFinding | undefined;
}

/** One question to a treatment; the answer is empty where the question is not one for it. */
type TurfRule = (treatment: TreatmentOnTurf) => TurfAnswer;

const isHerbicide = (use: TreatmentUse): boolean =>
  use === "pre-emergent herbicide" || use === "post-emergent herbicide";

/** Whether it acts on plants: a herbicide or a growth regulator. */
const actsOnPlants = (use: TreatmentUse): boolean => isHerbicide(use) || use === "growth regulator";

/** The source of what a label that names new turf allows for; none, which is common practice, where it does not. */
const newTurfSource = (label: LabelOnTurf | undefined): { readonly source?: FactSource } =>
  label?.namesNewTurf === true ? { source: label.source } : {};

const onNewTurf = ({ use, what, label, turf }: TreatmentOnTurf): TurfFinding | undefined => {
  const from = turf.from ?? "seed or runners";
  const named = label?.namesNewTurf === true;
  if (use === "pre-emergent herbicide")
    return {
      code: "pre-emergent-stops-rooting",
      severity: named ? "note" : "warning",
      text: `${what}: a pre-emergent stops seed, stolons and plugs from rooting; this turf is being established from ${from}.${named ? " The label names use on new turf." : ""}`,
      params: { from, named: named ? 1 : 0 },
      ...newTurfSource(label),
    };
  if (use === "growth regulator")
    return {
      code: "regulator-not-established",
      severity: named ? "note" : "warning",
      text: `${what}: a growth regulator slows fill-in of turf that is not yet established.`,
      params: { from },
      ...newTurfSource(label),
    };
  return label?.minimumMowings === undefined && label?.minimumDaysAfterSeeding === undefined
    ? {
        code: "herbicide-on-young-turf",
        severity: named ? "note" : "caution",
        text: `${what}: rates that established turf tolerates can injure young turf; the label says how old it must be.`,
        params: { from },
      }
    : undefined;
};

const establishment: TurfRule = (treatment) => {
  if (!actsOnPlants(treatment.use)) return {};
  const { established } = treatment.turf;
  if (established === undefined) return { notChecked: "whether the turf is established." };
  return {
    checked: "whether the turf is established",
    found: established ? undefined : onNewTurf(treatment),
  };
};

const mowings: TurfRule = ({ what, label, turf }) => {
  const minimum = label?.minimumMowings;
  if (label === undefined || minimum === undefined) return {};
  if (turf.mowings === undefined)
    return { notChecked: `the number of mowings; the label requires ${minimum}.` };
  return {
    checked: "mowings against the label",
    found:
      turf.mowings < minimum
        ? {
            code: "too-few-mowings",
            severity: "warning",
            text: `${what}: ${counted(turf.mowings, "mowing")}; the label requires ${minimum}.`,
            params: { mowings: turf.mowings, minimum },
            source: label.source,
          }
        : undefined,
  };
};

const daysSinceSeeding: TurfRule = ({ date, what, label, turf: { since } }) => {
  const minimum = label?.minimumDaysAfterSeeding;
  if (label === undefined || minimum === undefined) return {};
  if (since === undefined) return { notChecked: `the days since seeding; the label requires ${minimum}.` };
  if (compareDates(date, since) < 0)
    return { notChecked: `the days since seeding, because the seeding on ${since} is yet to come.` };
  const earliest = addDays(since, minimum);
  return {
    checked: "days since seeding against the label",
    found:
      compareDates(date, earliest) < 0
        ? {
            code: "too-soon-after-seeding",
            severity: "warning",
            text: `${what}: ${date} is before ${earliest}, ${counted(minimum, "day")} after seeding on ${since}.`,
            params: { since, earliest, minimum },
            source: label.source,
          }
        : undefined,
  };
};

/** The next seeding from a day on; turf of plugs or sod is not sown. */
const nextSeeding = ({ date, turf }: TreatmentOnTurf): CivilDate | undefined => {
  const { seedingOn, since, from = "seed" } = turf;
  const sown = since !== undefined && from === "seed" && compareDates(since, date) > 0 ? [since] : [];
  const stated = seedingOn !== undefined && compareDates(seedingOn, date) >= 0 ? [seedingOn] : [];
  return [...sown, ...stated].sort(compareDates)[0];
};

const daysToSeeding: TurfRule = (treatment) => {
  const { date, use, what, label } = treatment;
  const minimum = label?.minimumDaysToSeeding;
  const seedingOn = nextSeeding(treatment);
  if (seedingOn === undefined)
    return minimum === undefined || treatment.turf.seedingOn !== undefined
      ? {}
      : { notChecked: `the days to a seeding; the label requires ${minimum}.` };
  if (label === undefined || minimum === undefined) {
    if (!actsOnPlants(use)) return {};
    return {
      notChecked: `the days from the application to seeding on ${seedingOn}, because the label's figure is not stated.`,
      found:
        use === "pre-emergent herbicide"
          ? {
              code: "pre-emergent-before-seeding",
              severity: label?.namesNewTurf === true ? "note" : "caution",
              text: `${what}: a pre-emergent works for weeks to months and stops seed sown on ${seedingOn}.`,
              params: { seedingOn },
            }
          : undefined,
    };
  }
  const { earliestByStatedRules: earliest } = earliestBySeedingIntervals({
    rules: [{ from: "spray", to: "seeding", minimumDays: minimum, about: what, source: label.source }],
    happened: [{ event: "spray", date }],
    next: "seeding",
  });
  return {
    checked: "days to the seeding against the label",
    found:
      earliest !== null && compareDates(seedingOn, earliest) < 0
        ? {
            code: "too-soon-before-seeding",
            severity: "warning",
            text: `${what}: seeding on ${seedingOn} is before ${earliest}, ${counted(minimum, "day")} after this application.`,
            params: { seedingOn, earliest, minimum },
            source: label.source,
          }
        : undefined,
  };
};

/** A name by its words, with a space around each. */
const words = (name: string): string =>
  ` ${plainWord(name)
    .split(/[\s,;/&+]+/)
    .join(" ")} `;

const species: TurfRule = ({ use, what, label, turf }) => {
  if (label === undefined || (label.species === undefined && label.notSpecies === undefined))
    return actsOnPlants(use)
      ? { notChecked: "the turf species, because the species on the label are not stated." }
      : {};
  if (turf.species === undefined) return { notChecked: "the species of the turf against the label." };
  const here = plainWord(turf.species);
  // A label that rules out bentgrass rules out creeping bentgrass, and a mixture with it.
  const ruledOut = label.notSpecies?.find((one) => words(here).includes(words(one)));
  const named = label.species?.some((one) => plainWord(one) === here);
  const said =
    ruledOut === undefined
      ? "does not name"
      : `rules out ${plainWord(ruledOut) === here ? "" : `${ruledOut}, and this turf is `}`.trimEnd();
  return {
    checked: "the species against the label",
    found:
      ruledOut !== undefined || named === false
        ? {
            code: "species-not-on-label",
            severity: "warning",
            text: `${what}: the label ${said} ${turf.species}.`,
            params: { species: turf.species },
            source: label.source,
          }
        : undefined,
  };
};

const temperature: TurfRule = ({ what, label, turf: { maximumTemperature } }) => {
  const most = label?.maximumTemperature;
  if (label === undefined || most === undefined) return {};
  if (maximumTemperature === undefined)
    return { notChecked: "the temperature of the day against the label." };
  const path = "turf.maximumTemperature";
  const value = inUnit(expectQuantity(maximumTemperature, { dimension: "temperature" }, path), most.unit);
  return {
    checked: "the temperature against the label",
    found: exceeds(value, most.value)
      ? {
          code: "too-hot",
          severity: "warning",
          text: `${what}: ${roundedApart(value, most.value)(value)} ${most.unit} is expected; the label maximum is ${most.value} ${most.unit}.`,
          params: { temperature: value, maximum: most.value, unit: most.unit },
          source: label.source,
        }
      : undefined,
  };
};

const stress: TurfRule = ({ use, what, turf }) => {
  if (!actsOnPlants(use) && use !== "fertilizer") return {};
  if (turf.stress === undefined) return { notChecked: "heat and drought stress of the turf." };
  return {
    checked: "heat and drought stress",
    found:
      turf.stress.length > 0
        ? {
            code: "stress",
            severity: "caution",
            text: `${what}: turf under ${turf.stress.join(" and ")} stress is injured more easily and takes up less.`,
            params: { stress: turf.stress },
          }
        : undefined,
  };
};

/** Everything that is asked of a treatment, in the order in which it is told. */
export const turfRules: readonly TurfRule[] = [
  establishment,
  mowings,
  daysSinceSeeding,
  daysToSeeding,
  species,
  temperature,
  stress,
];
