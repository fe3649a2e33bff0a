/** The numbers of `build`: the line at one frequency by each route there is, and where its one mode ends. */
import { outerConductorImpedance } from "../../conductors/outerConductor";
import { type AttenuationParts, attenuationParts } from "../../lines/attenuationParts";
import {
  decibelsPerNeper,
  type LineConstants,
  type LineOptions,
  lineConstants,
  lineImmittance,
} from "../../lines/lineConstants";
import type { BuiltLine, LineModel } from "../../lines/lineModel";
import { type CutOff, coaxialCutOff } from "../../lines/te11";
import { lineVoltageLimits, type VoltageLimit } from "../../stress/lineVoltage";
import { standardAir } from "../../stress/standardAir";
import { type MeasuredVelocity, measuredVelocity } from "./dip";
import { pairsEnd } from "./geometry";
import { pairSends, type ShieldLeak, shieldLeak } from "./leaks";
import type { ChosenLine } from "./parameters";
import { type SheetRoute, sheetRoute } from "./sheet";

export interface BuildInput {
  readonly chosen: ChosenLine;
  /** Hz, K, m, W. */
  readonly frequency: number;
  readonly temperature: number;
  readonly length: number;
  readonly power: number;
  /** dB/m over that of a new line, as the file says; in the sums over the length only, since its frequency is not known. */
  readonly excess: number;
  /** m above sea level. */
  readonly altitude: number;
  /** Hz, measured; null: nothing was. */
  readonly dip: number | null;
}

/** One way to the line's constants, at the frequency asked. */
export interface Route {
  readonly model: LineModel;
  readonly constants: LineConstants;
  readonly parts: AttenuationParts;
}

export interface BuildResult {
  readonly input: BuildInput;
  /** The route that decides: the data sheet's where there is one. */
  readonly main: Route;
  readonly sheet: SheetRoute | null;
  /** By dimensions and materials; null where they are not known. */
  readonly build: (Route & { readonly model: BuiltLine }) | null;
  readonly cutOff: CutOff | null;
  readonly direct: DirectResistance | null;
  /** What its voltage limits are besides a published rating: where air in it glows, where insulation breaks. */
  readonly voltages: readonly VoltageLimit[];
  readonly leak: ShieldLeak | null;
  readonly measured: MeasuredVelocity | null;
  /** K: the most the insulation bears for long; null where it is not known. */
  readonly greatestTemperature: number | null;
  /** Share of the power carried that an open pair sends off its ends; null for a line that is none. */
  readonly sends: number | null;
  /** Hz, ends of what is shown. */
  readonly from: number;
  readonly to: number;
}

export interface DirectResistance {
  /** Ohm/m, both conductors together. */
  readonly loop: number;
  readonly from: "sheet" | "build";
}

export const decibelsPerMetre = (nepers: number): number => nepers * decibelsPerNeper;
/** dB/100 m of Np/m. */
export const per100m = (nepers: number): number => 100 * decibelsPerMetre(nepers);

export const optionsOf = ({ temperature }: BuildInput): LineOptions => ({ temperature });

/** `model` in place of the entry's own: with an input moved. */
export function routeOf(model: LineModel, input: BuildInput): Route {
  const options = optionsOf(input);
  return {
    model,
    constants: lineConstants(model, input.frequency, options),
    parts: attenuationParts(model, input.frequency, options),
  };
}

/** The build that an entry gives apart from its model, or that is its model. */
const builtOf = ({ entry }: ChosenLine): BuiltLine | null =>
  entry.build ?? (entry.model.kind === "data sheet" ? null : entry.model);

/** Cut-off of the first higher mode; null for anything but a coaxial line whose build is known. */
export function cutOffOf(chosen: ChosenLine): CutOff | null {
  const built = builtOf(chosen);
  return built?.kind === "coaxial" ? coaxialCutOff(built) : null;
}

export function buildResult(input: BuildInput): BuildResult {
  const { entry } = input.chosen;
  const sheet = sheetRoute(entry);
  const built = builtOf(input.chosen);
  const main = routeOf(sheet?.line ?? entry.model, input);
  const route = built === null ? null : built === entry.model ? main : routeOf(built, input);
  const cutOff = cutOffOf(input.chosen);
  return {
    input,
    main,
    sheet,
    build: route === null || built === null ? null : { ...route, model: built },
    cutOff,
    direct: directResistance(sheet, built, input.temperature),
    voltages: lineVoltageLimits(entry, standardAir(input.altitude)).filter(({ kind }) => kind !== "rating"),
    measured: measuredOf(main.model, input),
    greatestTemperature: entry.ratings?.temperature?.value ?? borne(built),
    leak: shieldLeak(built, input.frequency, input.length),
    sends: pairSends(built, input.frequency, input.length),
    ...spanOf(sheet, built, cutOff, input.frequency),
  };
}

const measuredOf = (model: LineModel, { dip, length }: BuildInput): MeasuredVelocity | null =>
  dip === null ? null : measuredVelocity(dip, length, lineConstants(model, dip).velocityFactor);

function borne(built: BuiltLine | null): number | null {
  if (built === null) return null;
  const { greatestTemperature } = built.kind === "twisted pair" ? built.sleeve.dielectric : built.dielectric;
  return greatestTemperature ?? null;
}

/** An outer conductor taken as endlessly thick has no resistance at direct current: what is left is less than the truth, and not told. */
function directResistance(
  sheet: SheetRoute | null,
  built: BuiltLine | null,
  temperature: number,
): DirectResistance | null {
  const listed = sheet?.line.loopResistance?.value;
  if (listed !== undefined) return { loop: listed, from: "sheet" };
  if (built === null) return null;
  if (built.kind === "coaxial" && outerConductorImpedance(built.outer, 0).re === 0) return null;
  return { loop: lineImmittance(built, nearlyDirect, temperature).series.re, from: "build" };
}

/** Hz at which no cable shows any skin effect. */
const nearlyDirect = 1e-3;

function spanOf(
  sheet: SheetRoute | null,
  built: BuiltLine | null,
  cutOff: CutOff | null,
  frequency: number,
): { readonly from: number; readonly to: number } {
  const known = built !== null || sheet?.line.loopResistance !== undefined;
  const start = known ? 1e3 : (sheet?.fit.from ?? 1e6) / 10;
  const pair = built === null ? null : pairsEnd(built);
  const end = cutOff?.frequency ?? pair ?? sheet?.fit.to ?? 1e9;
  return { from: Math.min(start, frequency), to: Math.max(end, frequency) };
}
