/** What coaxial lines are made of, at 20 degrees Celsius, each value with its source and how well it is known. */
export { cableMetals } from "../conductors/metals";
export type { CableDielectric } from "../dielectrics/cableDielectric";
export { cableDielectric, cableDielectrics } from "../dielectrics/materials";
