/** The numbers every answer shares (docs/answer.md), worked out from one point. */
import { driveSolved } from "../../chain/driveSolved";
import type { WorkedPoint } from "../../chain/workedPoint";
import { gain } from "../../fields/gain";
import type { PowerAccount } from "../../fields/powerAccount";
import { swr } from "../../lines/reflection";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import { antennaFields } from "./antennaFields";

export interface StationNumbers {
  /** By name; null where it does not apply. */
  readonly numbers: Readonly<Record<string, number | null>>;
  readonly account: PowerAccount;
  readonly driven: DrivenAntenna;
  readonly strongest: { readonly elevation: number; readonly azimuth: number; readonly gain: number };
}

export const unitOf: Readonly<Record<string, string>> = {
  feedPointResistance: "ohm",
  feedPointReactance: "ohm",
  swrAtFeedPoint: "1",
  swrAtTransmitter: "1",
  powerFromTransmitter: "W",
  powerIntoAntenna: "W",
  matchedLineLoss: "dB",
  lineLoss: "dB",
  pathLoss: "dB",
  heatInPath: "W",
  heatInLines: "W",
  heatAddedByMismatch: "W",
  heatInWires: "W",
  heatInLoads: "W",
  heatInChokes: "W",
  heatInSoil: "W",
  radiatedPower: "W",
  powerBalanceResidue: "1",
  maximumGain: "dBi",
  stationGain: "dB",
  elevationOfMaximum: "deg",
  azimuthOfMaximum: "deg",
};

const toDegrees = (radians: number): number => (radians * 180) / Math.PI;
export const toDecibels = (ratio: number): number => 10 * Math.log10(ratio);

/** Everything at one point: power account and pattern included. Two feeds in use: feed point numbers are those of the first. */
export function stationNumbers(point: WorkedPoint): StationNumbers {
  const driven = driveSolved(point.antenna, point.portVoltages);
  if (driven === null) throw new Error("station numbers: fields need a solved antenna, this one is interpolated");
  const { account, strongest } = antennaFields(point.antenna, point.portVoltages, driven);
  const share = point.powerIntoAntenna / account.powerIn;
  const { chokes, capacitors, earths } = closingHeat(point, driven);
  const wires =
    (account.heatInWires +
      account.heatInLoads +
      account.heatInJoinedLines +
      account.heatInInsulation +
      chokes +
      capacitors) *
    share;
  const feed = point.joints.find((j) => j.name.startsWith("feed point"))!;
  const reference = point.ratedResistance;
  return {
    account,
    driven,
    strongest,
    numbers: {
      ...lineNumbers(point),
      feedPointResistance: feed.impedance.re,
      feedPointReactance: feed.impedance.im,
      swrAtFeedPoint: swr(feed.impedance, reference),
      swrAtTransmitter: point.swrAtTransmitter,
      powerFromTransmitter: point.powerFromTransmitter,
      powerIntoAntenna: point.powerIntoAntenna,
      heatInPath: point.heatInPath,
      heatInWires: wires,
      heatInLoads: (account.heatInLoads + capacitors) * share,
      heatInChokes: chokes * share,
      heatInSoil: (account.heatInSoil + earths) * share,
      radiatedPower: account.radiated * share,
      powerBalanceResidue: account.residue,
      maximumGain: toDecibels(strongest.gain),
      stationGain: toDecibels((strongest.gain * point.powerIntoAntenna) / point.powerFromTransmitter),
      elevationOfMaximum: toDegrees(strongest.elevation),
      azimuthOfMaximum: toDegrees(strongest.azimuth),
    },
  };
}

/** W in chokes on the outside of the line, in capacitors of small loops, and in earths beyond what their electrodes count as soil. */
function closingHeat(
  point: WorkedPoint,
  driven: DrivenAntenna,
): Readonly<Record<"chokes" | "capacitors" | "earths", number>> {
  const { closings } = point.antenna.build;
  const of = (kind: string): number =>
    driven.closingHeat.reduce((sum, heat, i) => sum + (closings[i]!.kind === kind ? heat : 0), 0);
  return { chokes: of("choke"), capacitors: of("capacitor"), earths: of("earth") };
}

/** Gain in dBi at an elevation and azimuth in degrees. */
export const gainAt = (driven: DrivenAntenna, elevation: number, azimuth: number): number =>
  toDecibels(gain(driven, (elevation * Math.PI) / 180, (azimuth * Math.PI) / 180));

/** Line figures; sums along the way in use, which is only meaningful while it does not branch. */
export function lineNumbers(point: WorkedPoint): Record<string, number | null> {
  const used = point.parts.filter((p) => p.edge.inUse);
  const lines = used.filter((p) => p.matchedLoss !== null);
  const branched = point.resolved.feedsInUse.length > 1;
  const heatInLines = lines.reduce((sum, p) => sum + p.heat, 0);
  const matchedHeat = lines.reduce((sum, p) => sum + p.powerIn * (1 - 10 ** (-(p.matchedLoss ?? 0) / 10)), 0);
  return {
    matchedLineLoss: branched ? null : lines.reduce((sum, p) => sum + (p.matchedLoss ?? 0), 0),
    lineLoss: branched ? null : lines.reduce((sum, p) => sum + p.loss, 0),
    pathLoss: toDecibels(point.powerFromTransmitter / point.powerIntoAntenna),
    heatInLines,
    heatAddedByMismatch: heatInLines - matchedHeat,
  };
}
