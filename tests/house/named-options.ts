// Every named option that stands for a disagreement of sources, for docs/disagreements.md.
import type * as library from "../../src/index.js";

/** An option of a function, and what is taken where it is left out. */
export interface NamedOption {
  readonly asks: string;
  readonly call: keyof typeof library;
  readonly option: string;
  readonly standard: string;
  /** The table whose rows are the choices, or the choices themselves. */
  readonly choices: keyof typeof library | readonly string[];
}

const none = "none: it has to be named";

/** All of them, in the order of the page. */
export const namedOptions: readonly NamedOption[] = [
  {
    asks: "In what order do the products go in?",
    call: "loadingOrder",
    option: "mixingOrder",
    standard: "`consensus`",
    choices: "mixingOrders",
  },
  {
    asks: "How is an empty container rinsed?",
    call: "containerRinse",
    option: "rule",
    standard: "`US federal label text`",
    choices: "rinseRules",
  },
  {
    asks: "Is this water hard?",
    call: "hardnessClass",
    option: "scheme",
    standard: none,
    choices: "hardnessSchemes",
  },
  {
    asks: "What does a code on a label mean?",
    call: "formulationOf",
    option: "scheme",
    standard: "none where the lists part",
    choices: "labelAbbreviations",
  },
  {
    asks: "Is 1:20 one part in 20 or one and 20?",
    call: "dilutionAmounts",
    option: "reading",
    standard: none,
    choices: ["1 in x", "1 plus x"],
  },
  {
    asks: "Is this a slow-release fertilizer?",
    call: "releaseClass",
    option: "scheme",
    standard: none,
    choices: "releaseSchemes",
  },
  {
    asks: "How likely is this source to burn?",
    call: "burnRisk",
    option: "scheme",
    standard: "the list that the index is from, else `Oregon State University`",
    choices: "burnSchemes",
  },
  {
    asks: "How much acid does a fertilizer leave?",
    call: "potentialAcidity",
    option: "convention",
    standard: none,
    choices: ["half nitrogen credit", "full nitrification"],
  },
  {
    asks: "Which product comes first when several nutrients are short?",
    call: "productRates",
    option: "order",
    standard: "`exact where possible`",
    choices: ["exact where possible", "phosphorus, potassium, nitrogen", "as given"],
  },
  {
    asks: "How much lime does a buffer pH ask for?",
    call: "limeRequirement",
    option: "method",
    standard: none,
    choices: "limeMethods",
  },
  {
    asks: "How good is this lime?",
    call: "limeQuality",
    option: "scheme",
    standard: none,
    choices: "finenessSchemes",
  },
  {
    asks: "How acid is a soil by its buffer pH?",
    call: "acidityFromBuffer",
    option: "buffer",
    standard: none,
    choices: "acidityBuffers",
  },
  {
    asks: "What does the soil of an acre weigh?",
    call: "soilMass",
    option: "assumed",
    standard: "none: depth and bulk density, or one of these",
    choices: "assumedSoils",
  },
  {
    asks: "Is this soil test low?",
    call: "soilTestReading",
    option: "guideline",
    standard: none,
    choices: "soilGuidelines",
  },
  {
    asks: "How much water has to leach?",
    call: "leachingRequirement",
    option: "method",
    standard: none,
    choices: ["average root zone", "drainage water"],
  },
  {
    asks: "How far apart are the passes, by the throw?",
    call: "swathFromThrow",
    option: "rule",
    standard: none,
    choices: "throwRules",
  },
  {
    asks: "How uneven may a spread pattern be?",
    call: "uniformityLimit",
    option: "id",
    standard: none,
    choices: "uniformityLimits",
  },
  {
    asks: "What is the effective swath of a pattern?",
    call: "effectiveSwath",
    option: "rule",
    standard: none,
    choices: ["half of peak", "half of center mean", "half of center pan"],
  },
  {
    asks: "Deviation by n or by n - 1?",
    call: "standardDeviation",
    option: "divisor",
    standard: none,
    choices: ["n", "n-1"],
  },
  {
    asks: "Mean of the times, or of the speeds?",
    call: "groundSpeed",
    option: "average",
    standard: "`times`",
    choices: ["times", "speeds"],
  },
  {
    asks: "What does turf use beside the reference grass?",
    call: "turfCoefficient",
    option: "list",
    standard: none,
    choices: ["California, by month", "California, year", "Arizona", "New Mexico", "FAO-56"],
  },
  {
    asks: "How much of the rain counts?",
    call: "effectiveRain",
    option: "method",
    standard: none,
    choices: ["Texas, day", "fixed share", "USDA-SCS, month", "FAO, month"],
  },
  {
    asks: "How much longer for an uneven zone?",
    call: "runTimeMultiplier",
    option: "method",
    standard: none,
    choices: ["none", "distribution uniformity", "lower half from lower quarter", "scheduling coefficient"],
  },
  {
    asks: "When is heat a danger?",
    call: "heatIndex",
    option: "table",
    standard: "`from 103 and 125 °F`, which warns sooner",
    choices: "heatTables",
  },
  {
    asks: "When does the weather favor Pythium?",
    call: "pythiumOutlook",
    option: "criteria",
    standard: "`Pennsylvania, 1983`",
    choices: "pythiumCriteria",
  },
  {
    asks: "How large is a containment?",
    call: "containment",
    option: "rule",
    standard: "none: a rule, or a margin of your own",
    choices: "containmentRules",
  },
  {
    asks: "How big is a bushel of sprigs?",
    call: "sprigsFor",
    option: "bushel",
    standard: "none: the supplier's",
    choices: "sprigBushels",
  },
  {
    asks: "The area of a green from its radii?",
    call: "averageRadiusArea",
    option: "rule",
    standard: "`mean radius`",
    choices: ["mean radius", "mean square"],
  },
  {
    asks: "The area from offsets?",
    call: "offsetArea",
    option: "rule",
    standard: "`trapezoidal`",
    choices: ["trapezoidal", "simpson", "average ordinate"],
  },
  {
    asks: "The volume of a pond from contours?",
    call: "contourVolume",
    option: "rule",
    standard: none,
    choices: ["average end area", "prismoidal", "cone frustum"],
  },
  {
    asks: "Growth potential in °C or °F?",
    call: "growthPotential",
    option: "constants",
    standard: "`°C`",
    choices: ["°C", "°F"],
  },
  {
    asks: "When is the sun up?",
    call: "dayLength",
    option: "method",
    standard: "`NOAA`",
    choices: ["NOAA", "FAO-56"],
  },
];
