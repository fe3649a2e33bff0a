/** How the numbers of `sky` came about. */
import type { RuleOfThumb, WorkingStep } from "../../answer/answer";
import { earthRadius } from "../../fields/firstHop";
import { speedOfLight } from "../../numerics/vacuum";
import { decibels, fixedNumber, metres, plainNumber, watts } from "../../quantity/format";
import { bearing, isUpright, kilometres, type SkyFacts, upwards } from "../../words/sky";
import type { Layers } from "./facts";
import type { SkyStudy } from "./study";

const toDegrees = (radians: number): number => (radians * 180) / Math.PI;

export function skyWorking(f: SkyFacts, study: SkyStudy, layers: Layers): WorkingStep[] {
  return [
    gainStep(f),
    sharesStep(f),
    directivityStep(f, study),
    lobesStep(study),
    polarisationStep(study),
    ...comparedSteps(f),
    ...(f.hops ? [hopStep(f, f.hops, layers)] : []),
  ];
}

const gainStep = (f: SkyFacts): WorkingStep => ({
  text: `From the currents on every wire and their reflection in the soil follows the field in each direction. Gain is what arrives far away against an antenna that sends the same power evenly to all sides (isotropic, 0 dBi); heat in wires and soil is in it. Strongest is ${upwards(f.strongest.elevation)} towards ${bearing(f.strongest.azimuth)}:`,
  formula: "G = \\frac{4 \\pi U}{P_{\\mathrm{in}}}",
  substituted: `G_{\\max} = ${fixedNumber(f.strongest.gain, 1)} \\; \\mathrm{dBi}, \\; G(${plainNumber(f.aim.elevation, 0)}^\\circ) = ${fixedNumber(f.aim.gain, 1)} \\; \\mathrm{dBi}`,
  source: "far field by reflection of plane waves (Fresnel); IEEE Std 145",
  explains: [
    "maximumGain",
    "elevationOfMaximum",
    "azimuthOfMaximum",
    "gainAtElevation",
    "gainStraightUp",
    "belowMaximum",
    "wattsAtAim",
    "isotropicPower",
  ],
});

const sharesStep = (f: SkyFacts): WorkingStep => ({
  text: `The radiated power was integrated by elevation: ${watts(f.below30)} leave below 30°, ${watts(Math.max(0, f.radiated - f.below30 - f.above60))} between, ${watts(f.above60)} above 60°. In directions within 3 dB of the strongest leave ${watts(f.nearMaximum)} (by cells of 5°, to about 2 %).`,
  source: "Gauss points in the sine of elevation, equal steps in azimuth",
  explains: ["radiatedBelow30", "radiatedAbove60", "radiatedNearMaximum", "radiatedPower"],
});

const directivityStep = (f: SkyFacts, study: SkyStudy): WorkingStep => ({
  text: `Directivity leaves the heat out: it compares with the power that really leaves. ${study.front === null ? "Strongest straight up, the pattern has no front." : "Front to back compares with the direction opposite, front to rear with the strongest of the rear half, both at the same elevation."}`,
  formula: "D = \\frac{4 \\pi U}{P_{\\mathrm{rad}}}",
  substituted: `D = ${fixedNumber(10 * Math.log10(study.directivity), 1)} \\; \\mathrm{dBi}, \\; \\frac{P_{\\mathrm{rad}}}{P_{\\mathrm{in}}} = ${fixedNumber(f.radiated / f.intoAntenna, 2)}`,
  source: "IEEE Std 145",
  explains: ["directivity", "averageGain", "frontToBack", "frontToRear", "beamWidthVertical", "beamWidthLevel"],
});

function lobesStep({ upright, level, aim }: SkyStudy): WorkingStep {
  const count = (list: SkyStudy["upright"], kind: "lobe" | "minimum"): string => {
    const found = list.filter((l) => l.kind === kind).length;
    const many = kind === "lobe" ? "lobes" : "minima";
    return `${found === 0 ? "no" : found} ${found === 1 ? kind : many}`;
  };
  const round =
    level.length === 0
      ? "All round the gain stays within 0.1 dB"
      : `All round there are ${count(level, "lobe")} and ${count(level, "minimum")}`;
  return {
    text: `Upwards through ${bearing(toDegrees(aim.azimuth))} the pattern has ${count(upright, "lobe")} and ${count(upright, "minimum")} between. ${round}, ${upwards(toDegrees(aim.elevation))}. Each was found by sampling finer than the antenna can make lobes, then by golden section to 0.01°; what rises less than 0.1 dB is no lobe.`,
    source: "our search",
    explains: [],
  };
}

function polarisationStep({ polarisation }: SkyStudy): WorkingStep {
  const says =
    polarisation === null
      ? "There is no field."
      : polarisation.sense === "linear"
        ? `In the strongest direction the wave is linear, its field ${plainNumber(toDegrees(polarisation.tilt), 0)}° against the horizon (0° is level, 90° upright).`
        : `In the strongest direction ${plainNumber(100 * polarisation.uprightShare, 0)} % of the power is in the upright component; the field turns to the ${polarisation.sense}, major over minor axis ${polarisation.axialRatio > 1000 ? "more than 1000" : plainNumber(polarisation.axialRatio, 1)}, tilt ${plainNumber(toDegrees(polarisation.tilt), 0)}°.`;
  return {
    text: `${says} After a reflection in the ionosphere the polarisation is another one.`,
    source: "Stokes parameters of the two field components; sense of turning by IEEE Std 145",
    explains: ["uprightShare", "polarisationTilt", "axialRatio"],
  };
}

function comparedSteps(f: SkyFacts): WorkingStep[] {
  const dipole = f.reference && {
    text: `The dipole it is held against is a lossless level half wave over the same soil, as high as the highest point of the antenna (${metres(f.reference.height)}), broadside to ${bearing(f.aim.azimuth)}: ${fixedNumber(f.reference.gain, 1)} dBi ${upwards(f.aim.elevation)}.`,
    source: "solved like the antenna itself",
    explains: ["dipoleGainAtElevation", "gainAgainstDipole", "strongerThanDipoleBelow"],
  };
  const soil = f.perfectGain !== null && {
    text: `Over a perfectly conducting plane the same antenna would reach ${fixedNumber(f.perfectGain, 1)} dBi there: the soil costs ${decibels(f.perfectGain - f.aim.gain)} at that angle, by its heat and by what it reflects far around the antenna.`,
    source: "the station solved again with a perfect plane for soil",
    explains: ["soilCostAtElevation"],
  };
  return [...(dipole ? [dipole] : []), ...(soil ? [soil] : [])];
}

const hopStep = (f: SkyFacts, hops: NonNullable<SkyFacts["hops"]>, layers: Layers): WorkingStep => ({
  text: `First hop over a round earth, the layer taken as a mirror at ${plainNumber(layers.e / 1000, 0)} km (E) and ${plainNumber(layers.f / 1000, 0)} km (F):`,
  formula: "d = 2 R \\left( \\arccos\\left( \\frac{R \\cos e}{R + h} \\right) - e \\right)",
  substituted: `R = ${plainNumber(earthRadius / 1000, 0)} \\; \\mathrm{km}, \\; e = ${plainNumber(f.aim.elevation, 0)}^\\circ, \\; d_E = ${kilometres(hops.e).replace(" km", "")} \\; \\mathrm{km}, \\; d_F = ${kilometres(hops.f).replace(" km", "")} \\; \\mathrm{km}`,
  source: "plane geometry; the same angles as in ITU-R P.533 (from memory)",
  explains: ["firstHopByE", "firstHopByF"],
});

export function skyRules(f: SkyFacts, frequency: number): RuleOfThumb[] {
  const rules: RuleOfThumb[] = [];
  const quarter = speedOfLight / frequency / 4;
  if (f.reference && f.overSoil) {
    rules.push({
      rule: "ground adds up to 6 dB to the 2.1 dBi of a level dipole",
      ruleValue: "8.1 dBi",
      computed: `${fixedNumber(f.reference.maximum, 1)} dBi for a dipole ${metres(f.reference.height)} high here`,
      holds: "over a perfect plane, in the strongest direction, without change of the feed point",
      source: "image theory; handbooks",
    });
  }
  if (f.reference && f.overSoil && !isUpright(f) && f.reference.height >= quarter) {
    rules.push({
      rule: "lowest lobe of a level wire: sine of the angle is a quarter wave over the height",
      ruleValue: `${plainNumber(toDegrees(Math.asin(quarter / f.reference.height)), 0)}°`,
      computed: `strongest ${upwards(f.strongest.elevation)}`,
      holds: "for level wires over a perfect plane, from a quarter wave up",
      source: "image theory; handbooks",
    });
  }
  return rules;
}
