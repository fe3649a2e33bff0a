/** Coaxial line theory: optima, skin effect, solid, tubular and clad wires, lines from dimensions and from R, L, G, C. */
import {
  type CoaxialLine,
  coaxialCutOff,
  conductorLoss,
  type Dielectric,
  decibelsPerNeper,
  fromImmittance,
  impedanceOfPair,
  impedanceOfRatio,
  lineConstants,
  type Metal,
  matchedLoss,
  meansOf,
  ratioOfGreatestPower,
  ratioOfGreatestVoltage,
  ratioOfImpedance,
  ratioOfLeastLoss,
  type StudyInput,
  skinDepth,
  solidWireImpedance,
  strandedConductor,
  studyPoint,
  surfaceResistance,
  te11Root,
} from "@feedpath/engine";
import { input, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";
import { cladWire, copper, omegaOf, solidWire, tube } from "./roundWires";

const permittivityOf = (row: PublishedRow): number => Number(/eps(\d+\.\d+)/.exec(row.id)?.[1] ?? 1);

const study = (outerSize: number, breakdown: number): StudyInput => ({
  dielectric: { name: "vacuum", permittivity: 1, lossTangent: 0 },
  breakdown,
  inner: copper,
  outer: copper,
  shape: "coaxial",
  held: { by: "size", size: outerSize },
  frequency: 1e8,
});

/** Smooth, solid inside, of one metal; radii in m. */
const smooth = (inner: number, outer: number, metal: Metal, dielectric: Dielectric): CoaxialLine => ({
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [{ metal, outerRadius: inner }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  outer: { innerRadius: outer, wall: Number.POSITIVE_INFINITY, metal, resistanceFactor: 1 },
  dielectric,
});

function coaxialLine(row: PublishedRow) {
  const metal = { name: "metal", conductivity: input(row, "sigma"), permeability: 1 };
  const [inner, outer] = [input(row, "d_mm") / 2e3, input(row, "D_mm") / 2e3];
  const dielectric = {
    name: "polyethylene",
    permittivity: input(row, "eps_r"),
    lossTangent: input(row, "tan_delta"),
  };
  const constants = lineConstants(smooth(inner, outer, metal, dielectric), input(row, "f_Hz"));
  return {
    Z0: constants.z0,
    alpha_dB_per_100m: matchedLoss(constants, 100),
    beta_rad_per_m: constants.gamma.im,
    VF: constants.velocityFactor,
  };
}

function cutOffRoot(row: PublishedRow) {
  const ratio = input(row, "D/d");
  const root = te11Root(ratio);
  const over = (root * (1 + ratio)) / 2;
  return { "kc*d/2": root, "kc*(d+D)/4": over, "fc_exact/fc_approx": over };
}

function cutOffOfSize(row: PublishedRow) {
  const [inner, outer] = [input(row, "d_mm") / 2e3, input(row, "D_mm") / 2e3];
  const dielectric = { name: "insulation", permittivity: input(row, "eps_r"), lossTangent: 0 };
  const { frequency, usualEstimate } = coaxialCutOff(smooth(inner, outer, copper, dielectric));
  return { exact_GHz: frequency / 1e9, approx_GHz: usualEstimate / 1e9 };
}

/** Strands of 1 mm in a wide tube: the effective radius for the field over the radius of all. */
const strandFactors = () =>
  Object.fromEntries(
    [7, 12, 19, 37].map((count) => [String(count), strandedConductor(count, 1e-3, copper).effectiveRadiusRatio]),
  );

function lineOfConstants(row: PublishedRow) {
  const w = 2 * Math.PI * input(row, "f_Hz");
  const constants = fromImmittance(
    {
      series: { re: input(row, "R_ohm/m"), im: w * input(row, "L_H/m") },
      shunt: { re: input(row, "G_S/m"), im: w * input(row, "C_F/m") },
      notes: [],
    },
    input(row, "f_Hz"),
    0,
  );
  return {
    Z0: constants.z0,
    alpha_Np_per_m: matchedLoss(constants, 1) / decibelsPerNeper,
    beta_rad_per_m: constants.gamma.im,
  };
}

function attenuationRatio(row: PublishedRow) {
  const ratio = ratioOfImpedance(input(row, "Z0"), permittivityOf(row));
  return { "": conductorLoss(ratio, 1) / conductorLoss(ratioOfLeastLoss(1), 1) };
}

function shareOfGreatest(row: PublishedRow, what: "peakPower" | "peakVoltage") {
  const ratio = what === "peakPower" ? ratioOfGreatestPower : ratioOfGreatestVoltage;
  const best = studyPoint(study(0.01, 3e6), impedanceOfRatio(ratio, 1));
  return { "": studyPoint(study(0.01, 3e6), input(row, "Z0"))[what] / best[what] };
}

function peakPower(row: PublishedRow) {
  const point = studyPoint(study(input(row, "D_mm") / 1e3, input(row, "E_peak_V/m")), input(row, "Z0"));
  return { P_W: point.peakPower, V_peak_V: point.peakVoltage };
}

function unequalMetals(row: PublishedRow) {
  const ratio = ratioOfLeastLoss(input(row, "r = Rs_outer/Rs_inner"));
  return {
    "D/d": ratio,
    Z0_air_ohm: impedanceOfRatio(ratio, 1),
    "Z0_eps2.25_ohm": impedanceOfRatio(ratio, 2.25),
  };
}

export const coaxialTheory: Topic = {
  name: "coaxialTheory",
  title: "Coaxial line theory and skin effect",
  evaluators: [
    { rows: /^const\.coax\.k_ln$/, compute: () => ({ "": impedanceOfRatio(Math.E, 1) }) },
    { rows: /^const\.coax\.k_log10$/, compute: () => ({ "": impedanceOfRatio(10, 1) }) },
    // The constants of CODATA 2018 differ from the old exact ones in the tenth figure: both rows within their tolerance.
    { rows: /^const\.eta0\./, compute: () => ({ "": 2 * Math.PI * impedanceOfRatio(Math.E, 1) }) },
    { rows: /^const\.pair\.k_acosh$/, compute: () => ({ "": impedanceOfPair(Math.cosh(1), 1) }) },
    { rows: /^const\.pair\.k_log10$/, compute: () => ({ "": 2 * impedanceOfRatio(10, 1) }) },
    { rows: /^const\.30_exact$/, compute: () => ({ "": impedanceOfRatio(ratioOfGreatestPower, 1) }) },
    { rows: /^coax\.compromise\.arith$/, compute: () => ({ "": meansOf(30, 77).arithmetic }) },
    { rows: /^coax\.compromise\.geom$/, compute: () => ({ "": meansOf(30, 77).geometric }) },
    { rows: /^coax\.te11\.\d/, compute: cutOffRoot },
    { rows: /^coax\.te11\.f\./, compute: cutOffOfSize },
    { rows: /^coax\.t\.strand$/, compute: strandFactors },
    {
      rows: /^coax\.t\.strand\.check$/,
      compute: () => ({
        Z0_solid_formula: impedanceOfRatio(7.24 / 2.26, 2.26),
        Z0_with_strand_factor: impedanceOfRatio(7.24 / (0.939 * 2.26), 2.26),
      }),
    },
    { rows: /^coax\.opt\.attenuation\.ratio$/, compute: () => ({ "": ratioOfLeastLoss(1) }) },
    {
      rows: /^coax\.opt\.attenuation\.z0\./,
      compute: (row) => ({ "": impedanceOfRatio(ratioOfLeastLoss(1), permittivityOf(row)) }),
    },
    { rows: /^coax\.opt\.voltage\.ratio$/, compute: () => ({ "": ratioOfGreatestVoltage }) },
    { rows: /^coax\.opt\.voltage\.z0\./, compute: () => ({ "": impedanceOfRatio(ratioOfGreatestVoltage, 1) }) },
    { rows: /^coax\.opt\.power\.ratio$/, compute: () => ({ "": ratioOfGreatestPower }) },
    { rows: /^coax\.opt\.power\.z0\./, compute: () => ({ "": impedanceOfRatio(ratioOfGreatestPower, 1) }) },
    { rows: /^coax\.opt\.unequal\./, compute: unequalMetals },
    { rows: /^coax\.att_ratio\./, compute: attenuationRatio },
    { rows: /^coax\.power_ratio\./, compute: (row) => shareOfGreatest(row, "peakPower") },
    { rows: /^coax\.voltage_ratio\./, compute: (row) => shareOfGreatest(row, "peakVoltage") },
    { rows: /^coax\.peakpower\./, compute: peakPower },
    {
      rows: /^coax\.t\.opt\.att$/,
      compute: () => ({
        "D/d": ratioOfLeastLoss(1),
        Z0_air: impedanceOfRatio(ratioOfLeastLoss(1), 1),
        "Z0_eps2.25": impedanceOfRatio(ratioOfLeastLoss(1), 2.25),
      }),
    },
    {
      rows: /^coax\.t\.opt\.flat$/,
      compute: () => ({ "": conductorLoss(ratioOfImpedance(50, 1), 1) / conductorLoss(ratioOfLeastLoss(1), 1) }),
    },
    {
      rows: /^coax\.t\.opt\.volt$/,
      compute: () => ({ "D/d": ratioOfGreatestVoltage, Z0_air: impedanceOfRatio(ratioOfGreatestVoltage, 1) }),
    },
    {
      rows: /^coax\.t\.opt\.pow$/,
      compute: () => ({ "D/d": ratioOfGreatestPower, Z0_air: impedanceOfRatio(ratioOfGreatestPower, 1) }),
    },
    { rows: /^coax\.t\.dielectric$/, compute: () => ({ "": impedanceOfRatio(ratioOfLeastLoss(1), 2.25) }) },
    {
      rows: /^skin\./,
      compute: (row) => ({
        delta_um: 1e6 * skinDepth(input(row, "sigma_S/m"), 1, omegaOf(row)),
        Rs_mohm_per_square: 1e3 * surfaceResistance(input(row, "sigma_S/m"), 1, omegaOf(row)),
      }),
    },
    { rows: /^wire\.solid\./, compute: solidWire },
    {
      rows: /^wire\.cu\./,
      compute: (row) => {
        const z = solidWireImpedance(input(row, "d_mm") / 2e3, input(row, "sigma"), 1, omegaOf(row));
        return { R_ohm_per_m: z.re, Xint_ohm_per_m: z.im };
      },
    },
    { rows: /^wire\.tube\./, compute: tube },
    { rows: /^wire\.ccs\./, compute: cladWire },
    { rows: /^line\.rlgc\./, compute: lineOfConstants },
    { rows: /^coax\.line\./, compute: coaxialLine },
  ],
};
