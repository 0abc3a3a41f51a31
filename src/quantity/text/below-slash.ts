import { unclearLot } from "./unit-segment.js";

/** Times of no fixed length. */
const period = /^(?:mo|mos|months?|yrs?|years?|seasons?)$/i;

const timeOfLimit = (name: string): string => {
  const per = /mo/i.test(name) ? "{ months: 1 }" : '"calendar year"';
  return `months and years have no fixed length: give the amount alone, and the time as the period of a limit, per: ${per}`;
};

/** A part of one below the slash: `lb/1.5 acre`, `lb per 1/2 acre`. Three decimals may be a thousand. */
const partBelow =
  /(?:\/|(?:^| )per )(?:\d*[.,](?!\d{3}(?:\D|$))\d|(?:\d+ )?\d+\/\d|(?:a )?(?:half|quarter|third)\b)/i;

/** What to write instead of what stands below the slash, where that has a form of its own; `unknown` is what is no unit. */
export const hintBelow = (unknown: string | undefined, text: string): string | undefined => {
  if (unknown !== undefined && period.test(unknown)) return timeOfLimit(unknown);
  if (unknown !== undefined && unclearLot.test(unknown))
    return "below the slash, an area as one number: /1200 m2, /1000 ft2";
  return partBelow.test(text)
    ? "below the slash, a whole number or none: 3 lb per 1.5 acres is 2 lb/acre"
    : undefined;
};
