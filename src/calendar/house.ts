// What the floors above use of this room, and the world does not.

export { clockMeant } from "./clock-time.js";
export { declinationOn, sunsetAt } from "./sun-angle.js";
