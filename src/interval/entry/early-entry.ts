import { allOf, expectFields, expectFlag, expectNumber } from "../../quantity/index.js";

/**
 * What the rule on short entries before the end of the interval speaks against: more than 1 hour in 24,
 * the first 4 hours after the application, hand labor. An empty list does not authorize entry: the label's
 * protective equipment and its inhalation criteria are not looked at. Like `interimRestrictedEntryHours` it is
 * for farms, nurseries and sod farms.
 *
 * @param input.hoursSinceEnd - since the end of the application, zero or more
 * @param input.minutesInDay - how long the person would be there within any 24 hours
 * @param input.handLabor - whether it is work with the hands on treated plants or soil
 * @throws RatewrightError `range`, `not-finite`, `type`
 * Source: US EPA, 40 CFR 170.603; read in the edition before the revision of 2015, where it is 170.112 (c).
 *
 * @example
 * ```ts
 * import { earlyEntryObjections } from "ratewright";
 * earlyEntryObjections({ hoursSinceEnd: 3, minutesInDay: 45, handLabor: false });
 * // => ["within 4 hours of the end of the application"]
 * ```
 */
export const earlyEntryObjections = (input: {
  readonly hoursSinceEnd: number;
  readonly minutesInDay: number;
  readonly handLabor: boolean;
}): readonly string[] => {
  const { hoursSinceEnd, minutesInDay, handLabor } = expectFields(input, [
    "hoursSinceEnd",
    "minutesInDay",
    "handLabor",
  ]);
  const read = allOf({
    hours: () => expectNumber(hoursSinceEnd, "hoursSinceEnd", { min: 0 }),
    minutes: () => expectNumber(minutesInDay, "minutesInDay", { min: 0, max: 1440 }),
    handLabor: () => expectFlag(handLabor, "handLabor"),
  });
  return [
    ...(read.hours < 4 ? ["within 4 hours of the end of the application"] : []),
    ...(read.minutes > 60 ? ["more than 1 hour in 24"] : []),
    ...(read.handLabor ? ["hand labor"] : []),
  ];
};
