import { describe, expect, it } from "vitest";
import { complex } from "../numerics/complex";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { extremes, halfPowerAngles, strongestOfCut } from "./cutExtremes";
import { farField } from "./farField";
import { earthRadius, firstHop } from "./firstHop";
import { directionInPlane, levelCut, type PatternCut, verticalCut } from "./patternCut";
import { averageGain, directivity, frontToBack, frontToRear } from "./patternMeasures";
import { polarisation } from "./polarisation";
import { powerAccount } from "./powerAccount";
import { radiatedBetween, shareNearMaximum, skyGains } from "./skyShares";
import { strongestDirection } from "./strongestDirection";

const degree = Math.PI / 180;

describe("polarisation", () => {
  const wave = (eTheta: [number, number], ePhi: [number, number]) =>
    polarisation({ eTheta: complex(...eTheta), ePhi: complex(...ePhi) })!;

  it("calls a field that turns clockwise along the wave right-handed (IEEE Std 145)", () => {
    // theta cos wt + phi sin wt turns from theta towards phi: theta x phi points along the wave, a right-handed screw.
    const right = wave([1, 0], [0, -1]);
    expect(right.sense).toBe("right");
    expect(right.axialRatio).toBeCloseTo(1, 12);
    expect(wave([1, 0], [0, 1]).sense).toBe("left");
  });

  it("gives tilt and axial ratio of ellipses made from their axes", () => {
    for (const [tilt, ratio] of [
      [20, 3],
      [110, 1.5],
      [165, 40],
    ] as const) {
      // Axes in (right, up) seen along the wave; right is against phi, up against theta; minor axis a quarter turn ahead.
      const [c, s] = [Math.cos(tilt * degree), Math.sin(tilt * degree)];
      const p = wave([-s, -c / ratio], [-c, s / ratio]);
      expect(p.tilt / degree).toBeCloseTo(tilt, 9);
      expect(p.axialRatio).toBeCloseTo(ratio, 9);
    }
  });

  it("finds level, upright and no field", () => {
    expect(wave([0, 0], [2, 1])).toMatchObject({ uprightShare: 0, tilt: 0, sense: "linear" });
    expect(wave([2, 1], [0, 0]).tilt).toBeCloseTo(Math.PI / 2, 12);
    expect(polarisation({ eTheta: complex(0), ePhi: complex(0) })).toBeNull();
  });
});

describe("extremes of a cut", () => {
  const cut: PatternCut = {
    gains: (angles) => angles.map((t) => Math.sin(3 * t) ** 2 * (1 + 0.2 * Math.cos(t))),
    from: 0,
    to: Math.PI,
    closed: false,
    step: degree,
  };

  it("finds the nulls of sin 3t between the ends, and a lobe between each two", () => {
    const nulls = extremes(cut).filter((e) => e.kind === "minimum");
    expect(nulls.map((e) => e.angle / degree).map((a) => Math.round(a * 50) / 50)).toEqual([60, 120]);
    expect(extremes(cut).filter((e) => e.kind === "lobe")).toHaveLength(3);
  });

  it("goes round without losing or doubling the extremes at the seam", () => {
    const round: PatternCut = {
      ...cut,
      gains: (angles: Float64Array) => angles.map((t) => 1 + Math.cos(2 * t)),
      to: 2 * Math.PI,
      closed: true,
    };
    const found = extremes(round);
    expect(found.map((e) => e.kind).sort()).toEqual(["lobe", "lobe", "minimum", "minimum"]);
    const width = halfPowerAngles(round, { angle: 0, gain: 2 })!;
    // cos^2 t is a half at 45 degrees.
    expect((width.to - width.from) / degree).toBeCloseTo(90, 2);
  });

  it("sees no lobes in a level cut, nor in ripples below 0.1 dB", () => {
    expect(extremes({ ...cut, gains: (angles) => angles.map(() => 1) })).toEqual([]);
    const ripple = {
      ...cut,
      gains: (angles: Float64Array) => angles.map((t) => 1 + 0.005 * Math.cos(20 * t)),
      to: 2 * Math.PI,
      closed: true,
    };
    expect(extremes(ripple).length).toBeLessThan(3);
    expect(halfPowerAngles(ripple, { angle: 0, gain: 1.005 })).toBeNull();
  });
});

/** 10 m legs of lossless 2 mm wire, east and west, fed in the middle. */
const dipole = (height: number, legs: number): Structure => ({
  wires: [-legs, legs].map((x) => ({
    name: `leg ${x}`,
    from: [0, 0, height],
    to: [x, 0, height],
    radius: 1e-3,
    conductivity: Number.POSITIVE_INFINITY,
    permeability: 1,
    insulation: null,
  })),
  feeds: [{ name: "feed", at: [0, 0, height], from: [0], into: [1] }],
  loads: [],
});
const drive = (structure: Structure, soil: Soil, frequency: number) =>
  driveAntenna(solveAntenna(structure, soil, frequency), [complex(1)]);

describe("a short dipole in free space", () => {
  const driven = drive(dipole(0, 0.5), { kind: "free space" }, 1e6);
  const strongest = strongestDirection(driven);
  const { radiated } = powerAccount(driven);

  it("has directivity 1.5, average gain 1 and half-power width 90 degrees (IEEE Std 145; Balanis, 4.2)", () => {
    expect(directivity(driven, strongest, radiated)).toBeCloseTo(1.5, 3);
    expect(averageGain(driven, radiated)).toBeCloseTo(1, 3);
    const cut = levelCut(driven, 0);
    const width = halfPowerAngles(cut, strongestOfCut(cut))!;
    expect((width.to - width.from) / degree).toBeCloseTo(90, 1);
    expect(frontToBack(driven, { ...strongest, elevation: 0, azimuth: 0 })).toBeCloseTo(1, 6);
  });

  it("has its nulls along the wire, and the same gain all round in the plane across it", () => {
    const nulls = extremes(levelCut(driven, 0)).filter((e) => e.kind === "minimum");
    expect(nulls.map((e) => Math.round(e.angle / degree))).toEqual([90, 270]);
    expect(extremes(verticalCut(driven, 0))).toEqual([]);
  });
});

describe("a half-wave dipole over soil", () => {
  const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 };
  const driven = drive(dipole(12, 10), soil, 7.1e6);
  const strongest = strongestDirection(driven);

  it("parts its radiated power by elevation without remainder", () => {
    const parts = [0, 30, 60].map((e) => radiatedBetween(driven, e * degree, (e + 30) * degree));
    const sum = parts.reduce((a, b) => a + b, 0);
    expect(sum / powerAccount(driven).radiated).toBeCloseTo(1, 6);
  });

  it("finds the strongest direction and its lobes in the cut through it", () => {
    const lobes = extremes(verticalCut(driven, strongest.azimuth)).filter((e) => e.kind === "lobe");
    const top = Math.max(...lobes.map((l) => l.gain));
    expect(10 * Math.log10(top / strongest.gain)).toBeCloseTo(0, 2);
    const at = directionInPlane(lobes[0]!.angle, strongest.azimuth);
    expect(polarisation(farField(driven, at.elevation, at.azimuth))!.uprightShare).toBeLessThan(1e-6);
  });

  it("has shares near the maximum that a finer table confirms, and less of them nearer", () => {
    const share = (step: number, most: number) => shareNearMaximum(skyGains(driven, step), most);
    expect(Math.abs(share(5, strongest.gain) - share(1, strongest.gain))).toBeLessThan(0.02);
    expect(share(5, 1.8 * strongest.gain)).toBeLessThan(share(5, strongest.gain));
  });

  it("has a rear half no weaker than straight back", () => {
    const low = { ...strongestOfCut(levelCut(driven, 20 * degree)), elevation: 20 * degree };
    const front = { elevation: low.elevation, azimuth: low.angle, gain: low.gain };
    expect(frontToRear(driven, front)).toBeLessThanOrEqual(frontToBack(driven, front) + 1e-9);
  });
});

describe("first hop", () => {
  it("inverts the elevation that ITU-R P.533 gives for a hop (its equation for the elevation angle, from memory)", () => {
    for (const height of [110e3, 300e3]) {
      for (const elevation of [2, 10, 35, 80]) {
        const half = firstHop(elevation * degree, height) / (2 * earthRadius);
        const back = Math.atan(1 / Math.tan(half) - earthRadius / (earthRadius + height) / Math.sin(half));
        expect(back / degree).toBeCloseTo(elevation, 9);
      }
    }
  });

  it("reaches about 4000 km by F and 2000 km by E at the lowest angles (common practice, no source), nothing straight up", () => {
    // Known to one figure: half a thousand kilometres to either side.
    expect(Math.round(firstHop(0, 300e3) / 1e6)).toBe(4);
    expect(Math.round(firstHop(3 * degree, 110e3) / 1e6)).toBe(2);
    expect(firstHop(Math.PI / 2, 300e3)).toBeCloseTo(0, 6);
    expect(() => firstHop(-0.1, 300e3)).toThrow(RangeError);
  });
});
