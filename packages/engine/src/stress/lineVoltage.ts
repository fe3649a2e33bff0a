/** What voltage a line stands between its conductors: as published, where air in it begins to glow, where its insulation breaks. */
import { outerRadius } from "../conductors/roundConductor";
import { cableDielectric } from "../dielectrics/materials";
import { radiusRatio } from "../lines/coaxialLine";
import type { CoaxialLine, LineEntry, RoundConductor } from "../lines/lineModel";
import type { Quantity } from "../quantity/quantity";
import { coronaOnsetField, gapBreakdown, peekDensity } from "./airBreakdown";
import type { AirState } from "./standardAir";
import { buildOf } from "./thermalLine";
import type { VoltageLimit } from "./voltageLimit";
import { wireLimits } from "./wireVoltage";

export type { VoltageLimit } from "./voltageLimit";

/** Field at the strands over that at a smooth wire of the same effective radius: low, usual, high (from memory; Peek's 0.83 to 0.87 is 1.15 to 1.2). */
const strandRaise = { low: 1.15, value: 1.3, high: 1.46 } as const;
/** m of air between a conductor and the solid round it: usual, thinner, thicker (our assumption). */
const film = { low: 100e-6, value: 50e-6, high: 20e-6 } as const;
/** Share of bulk breakdown by a short test: an old line stands half of it, a good one more (common practice, no source). */
const bulkShare = { low: 0.5, value: 1, high: 1.5 } as const;

/** All limits that can be told of a line in air of this state; none where its build is not known and no rating is published. */
export function lineVoltageLimits(line: LineEntry, air: AirState): VoltageLimit[] {
  const build = buildOf(line);
  const built = build === null ? [] : build.kind === "coaxial" ? coaxialLimits(build, air) : wireLimits(build, air);
  const { voltage } = line.ratings ?? {};
  return voltage ? [ratingOf(voltage), ...built] : built;
}

/** The one that counts: a published rating where there is one, else where air begins to glow, else breakdown. */
export const decidingLimit = (limits: readonly VoltageLimit[]): VoltageLimit | null =>
  limits.find((one) => one.kind === "rating") ?? [...limits].sort((a, b) => a.peak - b.peak)[0] ?? null;

const ratingOf = ({ value, low, high }: Quantity): VoltageLimit => ({
  kind: "rating",
  peak: Math.SQRT2 * value,
  low: Math.SQRT2 * low,
  high: Math.SQRT2 * high,
  says: "its published working voltage",
  source: "the line's sheet (see its sources)",
});

/** V at the conductors for 1 V/m at the inner one's surface. */
const reach = (build: CoaxialLine): number =>
  outerRadius(build.inner) * build.inner.effectiveRadiusRatio * Math.log(radiusRatio(build));

const raiseOf = (conductor: RoundConductor) =>
  conductor.form === "stranded" ? strandRaise : ({ low: 1, value: 1, high: 1 } as const);

function coaxialLimits(build: CoaxialLine, air: AirState): VoltageLimit[] {
  const volts = reach(build);
  const raise = raiseOf(build.inner);
  const known = cableDielectric(build.dielectric.name);
  const limits: VoltageLimit[] = [];
  if (/^air/i.test(build.dielectric.name)) {
    const field = coronaOnsetField(outerRadius(build.inner), peekDensity(air), "coaxial");
    return [
      {
        kind: "glow",
        peak: (volts * field) / raise.value,
        low: (0.8 * volts * field) / raise.high,
        high: (volts * field) / raise.low,
        says: "the air round its inner conductor begins to glow",
        source: "Peek's law for coaxial cylinders (from memory); at radio frequency up to a fifth lower",
      },
    ];
  }
  const inFilm = (thickness: number, share: number): number =>
    (volts * gapBreakdown(thickness, air)) / thickness / build.dielectric.permittivity / share;
  limits.push({
    kind: "glow",
    peak: inFilm(film.value, 1),
    low: inFilm(film.low, 1),
    high: inFilm(film.high, 1),
    says: "a film of air between its inner conductor and its insulation begins to glow",
    source:
      "Paschen's law in a film of 0.05 mm, 0.02 to 0.1 mm (our assumption), where the field is εr times that of the insulation",
  });
  if (known)
    limits.push({
      kind: "breakdown",
      peak: (bulkShare.value * volts * known.breakdown) / raise.value,
      low: (bulkShare.low * volts * known.breakdown) / raise.high,
      high: (bulkShare.high * volts * known.breakdown) / raise.low,
      says: "its insulation breaks down in a short test",
      source: known.breakdownSource,
    });
  return limits;
}
