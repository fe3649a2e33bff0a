/** The build's route: from dimensions and materials to resistance, inductance, conductance and capacitance. */
import type { WorkingStep } from "../../answer/answer";
import { skinDepth } from "../../conductors/solidWire";
import { radiusRatio } from "../../lines/coaxialLine";
import type { BuiltLine, CoaxialLine, ParallelWireLine } from "../../lines/lineModel";
import { spacingRatio } from "../../lines/parallelWireLine";
import { fixedNumber, significantNumber, withPrefix } from "../../quantity/format";
import { geometryOf } from "./geometry";
import { type BuildResult, decibelsPerMetre, type Route } from "./study";
import { typeset } from "./typeset";

function geometryStep(model: BuiltLine): WorkingStep[] {
  if (model.kind === "coaxial") return [coaxialStep(model)];
  return model.kind === "parallel-wire" && model.insulation === undefined ? [pairStep(model)] : [];
}

const per100m = (nepers: number): string => significantNumber(100 * decibelsPerMetre(nepers), 3);

export function buildSteps({ build, input }: BuildResult): WorkingStep[] {
  if (build === null) return [];
  const { model } = build;
  return [...geometryStep(model), skinStep(model, input.frequency), splitStep(build)];
}

function coaxialStep(line: CoaxialLine): WorkingStep {
  const [ratio, caliper] = [radiusRatio(line), geometryOf(line).ratio];
  const strands =
    line.inner.effectiveRadiusRatio === 1
      ? ""
      : ` Strands count for ${significantNumber(line.inner.effectiveRadiusRatio, 3)} of their outer diameter (D/d is ${fixedNumber(caliper, 3)} by the caliper).`;
  return {
    text: `By its build: ${line.dielectric.name} of permittivity ${significantNumber(line.dielectric.permittivity, 4)}, ${withPrefix(2 * line.outer.innerRadius, "m", 3)} across inside the outer conductor; x is D over the effective d.${strands}`,
    formula:
      "Z_\\infty = \\frac{59.96}{\\sqrt{\\varepsilon_r}} \\ln x, \\quad L_\\infty = \\frac{\\mu_0}{2\\pi} \\ln x, \\quad C = \\frac{2\\pi \\varepsilon_0 \\varepsilon_r}{\\ln x}",
    substituted: `x = ${fixedNumber(ratio, 3)}: \\; Z_\\infty = ${fixedNumber((59.9584916 * Math.log(ratio)) / Math.sqrt(line.dielectric.permittivity), 2)} \\; \\Omega`,
    source:
      "elementary; strands: field round the outer circle of them; cable handbooks have the same within 0.002 (from memory)",
    explains: ["characteristicResistanceByBuild", "velocityFactorByBuild"],
  };
}

function pairStep(line: ParallelWireLine): WorkingStep {
  const ratio = spacingRatio(line);
  return {
    text: `By its build: two wires ${withPrefix(line.spacing.value, "m", 3)} apart between centres, in ${line.dielectric.name} of effective permittivity ${significantNumber(line.dielectric.permittivity, 4)}:`,
    formula: "Z_\\infty = \\frac{\\eta_0}{\\pi \\sqrt{\\varepsilon_r}} \\mathrm{arcosh} \\frac{D}{d}",
    substituted: `\\frac{D}{d} = ${significantNumber(ratio, 4)}: \\; Z_\\infty = ${fixedNumber((119.9169832 * Math.acosh(ratio)) / Math.sqrt(line.dielectric.permittivity), 1)} \\; \\Omega`,
    source: "two line charges and their images, exact",
    explains: ["characteristicResistanceByBuild", "velocityFactorByBuild"],
  };
}

function skinStep(line: BuiltLine, frequency: number): WorkingStep {
  const metal = geometryOf(line).wire.layers.at(-1)!.metal;
  const depth = skinDepth(metal.conductivity, metal.permeability, 2 * Math.PI * frequency);
  return {
    text: `At ${withPrefix(frequency, "Hz")} current in ${metal.name} reaches one skin depth deep, ${withPrefix(depth, "m", 3)}; the exact impedance of each conductor, layer by layer, goes into R and L.`,
    formula: "\\delta = \\sqrt{\\frac{2}{\\omega \\mu \\sigma}}",
    substituted: `\\delta = ${typeset(depth, "m")}`,
    source: "Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532",
    explains: ["attenuationInConductors"],
  };
}

function splitStep({ parts, constants }: Route): WorkingStep {
  const named = [
    ...(parts.inner === null || parts.outer === null || parts.outer === 0
      ? [`${per100m(parts.conductors)} \\; (\\mathrm{conductors})`]
      : [`${per100m(parts.inner)} \\; (\\mathrm{inner})`, `${per100m(parts.outer)} \\; (\\mathrm{outer})`]),
    `${per100m(parts.dielectric)} \\; (\\mathrm{insulation})`,
  ];
  return {
    text: "What a wave leaves in each, over what it carries, splits the attenuation exactly:",
    formula: "\\alpha = \\frac{R}{2 \\mathrm{Re} \\, Z_0} + \\frac{G |Z_0|^2}{2 \\mathrm{Re} \\, Z_0}",
    substituted: `${named.join(" + ")} = ${per100m(constants.gamma.re)} \\; \\mathrm{dB/100\\,m}`,
    source: "power of a forward wave on a matched line; exact at every frequency",
    explains: [
      ...["attenuationInConductors", "attenuationInInner", "attenuationInOuter"],
      ...["attenuationInDielectric", "attenuationByBuild"],
    ],
  };
}
