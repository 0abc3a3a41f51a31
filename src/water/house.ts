// What the floors above use of this room, and the world does not.
export { readRule as readWateringInRule } from "./watering-in/watering-in-rule.js";
