/** A count with its noun: `1 day`, `2 days`. */
export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
