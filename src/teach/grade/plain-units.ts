import type { QuizProblem } from "../topics/quiz-problem.js";

/** Words of the trade for which the library asks back, since they have more than one meaning; a problem has only one. */
export const plainUnits = (text: string, { units, answer }: QuizProblem): string => {
  let unit = text
    .replace(/\b(?:tonnes?|metric tons?)\b/i, "t")
    .replace(/\b(?:US|U\.S\.|short) tons?\b|\btons?\b/i, (ton) =>
      units === "US" || ton.includes(" ") ? "US ton" : "t",
    )
    .replace(/^T$/, answer.unit === "US ton" ? "US ton" : "T")
    .replace(/^cbm$/i, "m3")
    .replace(/^(?:gdd|dd|degree[- ]days?|growing degree[- ]days?)$/i, answer.unit)
    .replace(/^°?([FC]) ?(?:degree[- ]days?|days?|d)$/i, "°$1 d")
    .replace(/\ba (?=\d|thousand)/i, "per ")
    .replace(/\b(?:per )?thousand (?=sq|ft)/i, (all) => (/^per/i.test(all) ? "per 1,000 " : "1,000 "))
    .replace(/\b(?:to the|to an|an?|each|every) (?=acre|hectare|gallon|minute|hour|day|pound|bag)/i, "per ")
    .replace(/ ?(?:\/|\bper |\beach )(?:nozzle|tip)s?$/i, "")
    .replace(/\bsecs?\b\.?/i, "s")
    .replace(/\(?\bno unit\b\)?/i, "")
    .replace(/\bkph\b/i, "km/h")
    .replace(/\b(?:miles an hour|miles per hour)\b/i, "mph");
  if (answer.unit.endsWith("1000 ft2"))
    unit = unit.replace(/\s*(?:\/|per )\s*(?:M|K|1,?000)$/, " per 1,000 sq ft");
  if (answer.unit === "psi")
    unit = unit.replace(
      /^(?:#|lbs?\.?|pounds?)(?: of pressure| ?(?:\/|per ) ?(?:in2|sq(?:uare|\.)? in(?:ch)?))?$/i,
      "psi",
    );
  // sand is told in yards, and cubic ones are meant
  if (answer.unit === "yd3") unit = unit.replace(/^(?:yards?|yds?)\.?$/i, "cu yd");
  // what is counted is named or not: 37 grubs per sq ft
  if (answer.unit.startsWith("count/"))
    unit = unit.replace(/^(?:[a-z]+ ?)?(?=\/|\bper\b|$)/i, (all) => (/^per$/i.test(all) ? all : ""));
  return unit.trim();
};

/** A thousand square feet as the trade writes it; an M or a K there is no potassium. */
export const thousands = (text: string, { answer }: QuizProblem): string =>
  answer.unit.endsWith("1000 ft2") ? text.replace(/(\/|\bper )\s*(?:M|K)\s*$/, "$1 1000") : text;
