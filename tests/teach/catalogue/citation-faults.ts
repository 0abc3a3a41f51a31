import type { Citation } from "../../../src/index.js";

/** What a citation leaves out, so that nobody could find the work. */
export const citationFaults = ({ title, publisher, url, where }: Citation): readonly string[] => [
  ...(title.length > 5 ? [] : [`title "${title}"`]),
  ...((publisher ?? "").length > 2 ? [] : [`publisher "${publisher}" of "${title}"`]),
  ...(url === undefined || /^https?:\/\/[^ ]+\.[^ ]+$/.test(url) ? [] : [`address "${url}" of "${title}"`]),
  ...(where === undefined || where.length > 2 ? [] : [`place "${where}" in "${title}"`]),
];
