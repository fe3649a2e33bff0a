/** What the moment method here cannot hold, said before any memory is taken. */
import type { Soil, Structure } from "./structure";
export const mostUnknowns = 1500;
export function validateStructure(_structure: Structure, _soil: Soil, _frequency: number): string[] {
  return [];
}
