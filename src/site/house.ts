// What the floors above use of this room, and the world does not.
export { areaOf } from "./areas.js";
