import { type FewestVisitsFound, fewestVisits } from "../../../src/plan/fewest-visits/index.js";

/** What is asked for, of a season that is settled. */
export const found = async (...asked: Parameters<typeof fewestVisits>): Promise<FewestVisitsFound> => {
  const answer = await fewestVisits(...asked);
  if (answer.outcome !== "found") throw new Error(answer.findings[0]?.text);
  return answer;
};
