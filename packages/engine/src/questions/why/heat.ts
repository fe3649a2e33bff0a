/** Mean power that brings a matched line in still air to the temperature its insulation bears. */
import { attenuationParts } from "../../lines/attenuationParts";
import { type StudyInput, type StudyPoint, studiedLine } from "../../lines/study/studyPoint";
import { rootBetween } from "../../numerics/crossings";
import { bareWireLimit, type ThermalMaterial, thermalMaterial } from "../../stress/materials";
import { type AirState, standardAir } from "../../stress/standardAir";
import { heatIntoAir } from "../../stress/surfaceHeat";

export interface HeatPoint {
  /** W of mean power, matched. */
  readonly power: number;
  /** K of the outer conductor; that of the wires for a pair. */
  readonly surface: number;
  /** W/m that leave. */
  readonly heat: number;
}

/** Of a dark jacket, thin enough to be as warm as the outer conductor; of oxidised wire (our assumptions). */
const emissivity = { coaxial: 0.9, pair: 0.5 } as const;
/** K of the air. */
export const heatAir: AirState = { pressure: standardAir(0).pressure, temperature: 313.15 };

/** What the insulation of a study bears and conducts; null where it is not known. */
export const insulationHeat = (study: StudyInput): ThermalMaterial | null => thermalMaterial(study.dielectric.name);

/** K the study stops at: of the insulation, or of bare wire where nothing softens. */
export const hottest = (study: StudyInput): number => insulationHeat(study)?.greatestTemperature ?? bareWireLimit;

/**
 * Heat of the inner conductor and half that of the insulation pass the insulation, ln(D/d)/(2 pi k) K m/W; all of it leaves the
 * surface by free convection and radiation. Null where the insulation's conduction is not known, or where the frequency
 * lets nothing warm (no loss).
 */
export function heatPower(study: StudyInput, point: StudyPoint): HeatPoint | null {
  const limit = hottest(study);
  const line = studiedLine(study, point.innerSize, point.outerSize);
  const parts = attenuationParts(line, study.frequency, { temperature: limit });
  const total = parts.conductors + parts.dielectric;
  if (!(total > 0) || parts.inner === null) return null;
  const leaving = (diameter: number, temperature: number): number =>
    heatIntoAir({ diameter, emissivity: emissivity[study.shape], absorptivity: 0 }, temperature, heatAir);
  if (study.shape === "pair") {
    const heat = 2 * leaving(point.innerSize, limit);
    return { power: heat / (2 * total), surface: limit, heat };
  }
  const material = insulationHeat(study);
  if (material === null) return null;
  const across = Math.log(point.ratio) / (2 * Math.PI * material.conductivity);
  const share = (parts.inner + parts.dielectric / 2) / total;
  const surface = rootBetween(
    (t) => limit - t - across * share * leaving(point.outerSize, t),
    heatAir.temperature,
    limit,
    1e-9,
  );
  const heat = leaving(point.outerSize, surface);
  return { power: heat / (2 * total), surface, heat };
}

/** What of black radiation the surface gives off, in words. */
export const emissivitySays = ({ shape }: StudyInput): string =>
  `emissivity ${emissivity[shape]}, ${shape === "pair" ? "oxidised wire" : "a dark jacket too thin to count"} (our assumption)`;
