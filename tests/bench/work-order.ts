// What a work order and its texts cost, from the job of examples/park-visit, in milliseconds of processor time.
import { readFileSync } from "node:fs";
import { workOrder, workOrderSheet, workOrderText } from "../../src/plan/index.js";

const job = JSON.parse(
  readFileSync(new URL("../../examples/park-visit/job.json", import.meta.url), "utf8"),
) as Parameters<typeof workOrder>[0];
const order = workOrder(job);

const cases: readonly { readonly name: string; readonly work: () => unknown; readonly atMost?: number }[] = [
  { name: "the job out of its JSON, by itself", work: () => JSON.parse(JSON.stringify(job)) },
  { name: "workOrder", work: () => workOrder(job), atMost: 1 },
  { name: "workOrderText", work: () => workOrderText(order), atMost: 1 },
  { name: "workOrderSheet", work: () => workOrderSheet(order), atMost: 1 },
];

const perRound = 40;
const best = cases.map(() => Number.POSITIVE_INFINITY);
for (let round = -3; round < 12; round++) {
  cases.forEach(({ work }, at) => {
    const start = process.cpuUsage();
    for (let i = 0; i < perRound; i++) work();
    const { user, system } = process.cpuUsage(start);
    if (round >= 0) best[at] = Math.min(best[at] as number, (user + system) / 1000 / perRound);
  });
}
console.log(`best of 12 rounds of ${perRound}; ms of processor time each`);
cases.forEach(({ name, atMost }, at) => {
  const spent = best[at] as number;
  const aim = atMost === undefined ? "" : ` | aimed at ${atMost}: ${spent <= atMost ? "met" : "missed"}`;
  console.log(`${spent.toFixed(2).padStart(7)}  ${name}${aim}`);
});
