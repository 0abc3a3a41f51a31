/** Exported functions without a worked example, as `room/name`, and why. */
export const withoutExample: Readonly<Record<string, string>> = {};
