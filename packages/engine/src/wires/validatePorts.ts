/** Gaps and contacts with the soil that are nowhere. */
import { distanceBetween, wireEnd, wireLength } from "./geometry";
import { sameplace } from "./junctions";
import type { Point, SeriesGap, Soil, SoilContact, Structure } from "./structure";

/** An electrode lies on the soil: contacts higher than this (m) are none. */
const highestContact = 0.1;

export function portProblems(structure: Structure, soil: Soil): string[] {
  return [
    ...(structure.gaps ?? []).flatMap((gap) => gapProblem(structure, gap)),
    ...(structure.contacts ?? []).flatMap((contact) => contactProblem(structure, soil, contact)),
  ];
}

/** Number of wire ends at a place. */
const endsAt = ({ wires }: Structure, at: Point): number =>
  wires.flatMap((w) => ([0, 1] as const).filter((end) => distanceBetween(wireEnd(w, end), at) <= sameplace)).length;

function gapProblem(structure: Structure, gap: SeriesGap): string[] {
  const name = `the gap "${gap.name}"`;
  const wire = structure.wires[gap.wire];
  if (!wire) return [`${name} sits on wire number ${gap.wire}, which does not exist`];
  const length = wireLength(wire);
  if (!(gap.distance >= 0 && gap.distance <= length))
    return [`${name} sits ${gap.distance} m along wire "${wire.name}", which is ${length} m long`];
  const end = gap.distance < sameplace ? wire.from : length - gap.distance < sameplace ? wire.to : null;
  const free =
    end &&
    endsAt(structure, end) < 2 &&
    !(structure.contacts ?? []).some((c) => distanceBetween(c.at, end) <= sameplace);
  return free ? [`${name} opens a free end of wire "${wire.name}": nothing lies beyond it`] : [];
}

function contactProblem(structure: Structure, soil: Soil, contact: SoilContact): string[] {
  const name = `the contact "${contact.name}"`;
  if (soil.kind === "free space") return [`${name}: there is no soil in free space`];
  if (endsAt(structure, contact.at) === 0) return [`${name}: no wire ends there`];
  const height = contact.at[2];
  if (soil.kind === "perfect") return Math.abs(height) <= sameplace ? [] : [`${name} must lie on the perfect plane`];
  if (!(height > 0 && height <= highestContact))
    return [`${name} lies ${height} m up: expected on the soil, more than 0 and at most ${highestContact} m`];
  return contact.reach > 0 ? [] : [`${name}: the reach of its electrode must be more than 0`];
}
