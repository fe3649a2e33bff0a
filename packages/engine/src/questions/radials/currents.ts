/** The current that each radial carries away from where they meet. */
import { magnitude } from "../../numerics/complex";
import { type DrivenAntenna, elementCurrent } from "../../wires/driveAntenna";

export interface RadialCurrent {
  /** Degrees clockwise from north. */
  readonly azimuth: number;
  /** m */
  readonly length: number;
  /** A rms where they meet. */
  readonly current: number;
  /** Of the sum of the magnitudes. */
  readonly share: number;
  /** A rms along it, at `distance` m from where they meet. */
  readonly along: readonly { readonly distance: number; readonly current: number }[];
}

/** Radials of the antenna whose feed lies above or at this place (m) are found by their common start near by. */
const nearFoot = 0.5;

/** Currents in the radials around the foot of a feed, in the order of the file's sector; empty without radials. */
export function radialCurrents(driven: DrivenAntenna, feedName: string): RadialCurrent[] {
  const { structure, mesh } = driven.solution.model;
  const feed = structure.feeds.find((f) => f.name === feedName) ?? structure.feeds[0]!;
  const found = structure.wires.flatMap((wire, index) => {
    const near = Math.hypot(wire.from[0] - feed.at[0], wire.from[1] - feed.at[1]) <= nearFoot;
    return near && /^radial \d+$/.test(wire.name) ? [{ wire, index }] : [];
  });
  const raw = found.map(({ wire, index }) => {
    const [x, y, z] = [0, 1, 2].map((c) => wire.to[c]! - wire.from[c]!) as [number, number, number];
    const first = mesh.firstElement[index]!;
    const along = [{ distance: 0, current: magnitude(elementCurrent(driven, first, 0)) }];
    let distance = 0;
    for (let e = first; e < mesh.firstElement[index + 1]!; e++) {
      distance += mesh.elements.length[e]!;
      along.push({ distance, current: magnitude(elementCurrent(driven, e, 1)) });
    }
    const azimuth = ((Math.atan2(x, y) * 180) / Math.PI + 360) % 360;
    return { azimuth: Math.round(azimuth * 1e6) / 1e6, length: Math.hypot(x, y, z), along };
  });
  const sum = raw.reduce((total, r) => total + r.along[0]!.current, 0);
  return raw.map((r) => ({ ...r, current: r.along[0]!.current, share: sum > 0 ? r.along[0]!.current / sum : 0 }));
}

/** Largest over smallest current; 1 where all are alike, null without radials. */
export function spreadOf(currents: readonly RadialCurrent[]): number | null {
  if (currents.length === 0) return null;
  const all = currents.map((c) => c.current);
  return Math.max(...all) / Math.min(...all);
}
