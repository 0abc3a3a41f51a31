// What the floors above use of this room, and the world does not.
export { readOrder } from "./paper/read-order.js";
