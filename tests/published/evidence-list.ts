// Says how many of the eligible published examples are covered: by room, and for the whole.
import { coverage } from "./coverage.js";
import { eligible } from "./eligible.js";

const line = (name: string, entries: readonly string[]): void => {
  const { covered, leftOut, open } = coverage(entries);
  const figure = (n: number): string => String(n).padStart(5);
  console.log(
    `${name.padEnd(10)}${figure(entries.length)} eligible,${figure(covered.length)} covered,${figure(leftOut.length)} left out with a reason,${figure(open.length)} open`,
  );
};

for (const [room, entries] of Object.entries(eligible)) line(room, entries);
const whole = [...new Set(Object.values(eligible).flat())];
console.log();
line("whole", whole);

const { leftOut, open } = coverage(whole);
console.log("\nleft out:");
for (const { entry, reason } of leftOut) console.log(`  ${entry}: ${reason}`);
console.log("\nopen, by room:");
for (const [room, entries] of Object.entries(eligible)) {
  const rest = coverage(entries).open;
  if (rest.length > 0) console.log(`  ${room}: ${rest.join(" ")}`);
}
console.log(`\n${open.length} of ${whole.length} open`);
