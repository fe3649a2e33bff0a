/** Cuts through the pattern as tables: what the section and the view from above draw. */
import type { Lobe, Table } from "../../answer/answer";
import { directionGrid } from "../../fields/directions";
import { gains as gainsIn } from "../../fields/gain";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import { toDecibels } from "./stationNumbers";

/** Gains below this are shown as this, dBi: a null has no bottom. */
const floor = -60;

const clipped = (dbi: number): number => Math.max(floor, Number.isNaN(dbi) ? floor : dbi);

/** Clipped, dBi; angles in degrees, azimuths fastest. */
function gainsAt(driven: DrivenAntenna, elevations: readonly number[], azimuths: readonly number[]): number[] {
  const radians = (degrees: readonly number[]) => degrees.map((d) => (d * Math.PI) / 180);
  return Array.from(gainsIn(driven, directionGrid(radians(elevations), radians(azimuths))), (g) =>
    clipped(toDecibels(g)),
  );
}

/** Vertical cut from the horizon at `azimuth` (deg) over the zenith to the horizon opposite, every degree, 0 to 180. */
export function elevationCut(driven: DrivenAntenna, azimuth: number, overSoil: boolean): Table {
  const elevations = Array.from({ length: 181 }, (_, i) => i);
  const [here, opposite] = [elevations.slice(0, 91), elevations.slice(91)];
  const gains = [
    ...gainsAt(driven, here, [azimuth]),
    ...gainsAt(
      driven,
      opposite.map((e) => 180 - e),
      [azimuth + 180],
    ),
  ];
  // Over a lossy half-space the sky wave along the surface vanishes exactly; the formula meets 0/0 there.
  if (overSoil) {
    gains[0] = floor;
    gains[180] = floor;
  }
  return {
    name: "elevationCut",
    axis: "elevation",
    columns: { elevation: { unit: "deg", values: elevations }, gain: { unit: "dBi", values: gains } },
  };
}

/** Horizontal cut at one elevation (deg), every 2 degrees, 0 to 360. */
export function azimuthCut(driven: DrivenAntenna, elevation: number): Table {
  const azimuths = Array.from({ length: 181 }, (_, i) => 2 * i);
  const gains = gainsAt(driven, [elevation], azimuths);
  return {
    name: "azimuthCut",
    axis: "azimuth",
    columns: { azimuth: { unit: "deg", values: azimuths }, gain: { unit: "dBi", values: gains } },
  };
}

/** Lobes of a vertical cut: its local maxima with their width within 3 dB. */
export function lobesOf(cut: Table, azimuth: number): Lobe[] {
  const gains = cut.columns.gain!.values as readonly number[];
  const lobes: Lobe[] = [];
  for (let i = 1; i < gains.length - 1; i++) {
    const g = gains[i]!;
    if (g < gains[i - 1]! || g <= gains[i + 1]! || g <= floor) continue;
    const over = i > 90;
    lobes.push({
      elevation: over ? 180 - i : i,
      azimuth: (azimuth + (over ? 180 : 0)) % 360,
      gain: g,
      width: widthAround(gains, i),
    });
  }
  return lobes.sort((a, b) => b.gain - a.gain);
}

function widthAround(gains: readonly number[], at: number): number | null {
  const limit = gains[at]! - 10 * Math.log10(2);
  let below = at;
  let above = at;
  while (below > 0 && gains[below]! > limit) below--;
  while (above < gains.length - 1 && gains[above]! > limit) above++;
  if (gains[below]! > limit || gains[above]! > limit) return null;
  /** From the sample outside to where the line to its neighbour inside meets the limit, degrees. */
  const inwards = (outside: number, inside: number): number =>
    (limit - gains[outside]!) / (gains[inside]! - gains[outside]!);
  return above - inwards(above, above - 1) - (below + inwards(below, below + 1));
}
