// Cases that are worked by hand, each with what has to come of it. They run as tests, and are held against every number of
// the source that is changed by one part in ten thousand.
import { orderFaults } from "./explain/order-cases.js";
import { gradeFaults } from "./grade/edges.js";
import { learnerFaults } from "./grade/learner-faults.js";
import { figureFaults } from "./problems/figure-cases.js";
import { poseFaults } from "./problems/pose-cases.js";

/** Some cases, and what is wrong with them. */
export interface Cases {
  readonly name: string;
  readonly faults: () => readonly string[];
}

export const teachCases: readonly Cases[] = [
  { name: "the edges of a grade", faults: gradeFaults },
  { name: "what learners write", faults: learnerFaults },
  { name: "how figures are printed", faults: figureFaults },
  { name: "how a problem is chosen", faults: poseFaults },
  { name: "how a work order is explained", faults: orderFaults },
];
