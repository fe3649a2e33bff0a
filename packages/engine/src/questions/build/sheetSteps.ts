/** The data sheet's route: what its points were fitted to. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import type { SheetRoute } from "./sheet";
import type { BuildResult } from "./study";
import { unitTex } from "./typeset";

export function sheetSteps({ sheet, build, main, input }: BuildResult): WorkingStep[] {
  if (sheet === null) return [];
  const against = build === null ? null : 100 * (build.constants.gamma.re / main.constants.gamma.re - 1);
  return [
    fitStep(sheet),
    ...surfaceStep(sheet),
    ...impliedStep(sheet),
    ...(against === null
      ? []
      : [
          {
            text: `Two routes lead here: the fit of the sheet's points, which decides, and the build. At ${withPrefix(input.frequency, "Hz")} the build gives ${plainNumber(Math.abs(against), 1)} % ${against < 0 ? "less" : "more"} attenuation: what strands, braid and insulation of the real cable do that its dimensions do not tell.`,
            formula: "\\frac{\\alpha_{\\mathrm{build}}}{\\alpha_{\\mathrm{sheet}}} - 1",
            result: { value: against, unit: "%" },
            source: "both by the telegrapher's equations; a nominal sheet holds within 15 %",
            explains: ["attenuationByBuild", "buildAgainstSheet"],
          },
        ]),
  ];
}

function fitStep({ fit, points }: SheetRoute): WorkingStep {
  const { rootResistance, steadyResistance, lossTangent, worstDeviation } = fit;
  const steady = steadyResistance > 0 ? ` + ${significantNumber(1e3 * steadyResistance, 3)}` : "";
  return {
    text: `A line whose resistance grows with the root of frequency, over a part that stays, with insulation of one loss tangent, was fitted to the ${points.length === 1 ? "one point" : `${points.length} points`} of the sheet with its exact attenuation; none of the three may be negative. Farthest off is a point by ${significantNumber(100 * worstDeviation, 2)} %.`,
    formula: "R = R_1 \\sqrt{f} + R_0, \\quad G = \\omega C \\tan\\delta",
    substituted: `R = ${significantNumber(1e6 * rootResistance, 3)} \\sqrt{f/\\mathrm{MHz}}${steady} \\; ${unitTex("mΩ/m")}, \\quad \\tan\\delta = ${significantNumber(1e4 * lossTangent, 3)} \\times 10^{-4}`,
    source:
      "least relative squares without negative parts (Lawson and Hanson, Solving Least Squares Problems, 1974, chapter 23)",
    explains: ["fitDeviation", "fittedSteadyResistance", "fittedLossTangent"],
  };
}

function surfaceStep({ surfaceFactor }: SheetRoute): WorkingStep[] {
  if (surfaceFactor === null) return [];
  return [
    {
      text: "Smooth solid copper of this size and impedance would have a smaller resistance; strands, braid and plating make the rest:",
      formula:
        "\\frac{R_1}{R_{\\mathrm{smooth}}}, \\quad R_{\\mathrm{smooth}} = \\frac{1}{\\pi} \\sqrt{\\pi \\mu_0 / \\sigma} \\left(\\frac{1}{d} + \\frac{1}{D}\\right)",
      substituted: `\\frac{R_1}{R_{\\mathrm{smooth}}} = ${fixedNumber(surfaceFactor, 2)}`,
      source: "skin effect in the limit of small depth; copper of 58 MS/m, IEC 60028",
      explains: ["fittedSurfaceFactor"],
    },
  ];
}

function impliedStep({ impliedImpedance, facts }: SheetRoute): WorkingStep[] {
  const { capacitance, velocityFactor, impedance } = facts;
  if (impliedImpedance === null || capacitance === undefined || velocityFactor === undefined) return [];
  const perFoot = 1e12 * capacitance * 0.3048;
  return [
    {
      text: `Velocity factor and capacitance of the sheet imply an impedance of their own, beside the ${plainNumber(impedance ?? 0, 1)} Ω it states:`,
      formula: "Z_0 = \\frac{1}{v C} = \\frac{101670}{\\mathrm{VP\\%} \\; C_{\\mathrm{pF/ft}}}",
      substituted: `\\frac{101670}{${plainNumber(100 * velocityFactor, 1)} \\times ${plainNumber(perFoot, 2)}} = ${fixedNumber(impliedImpedance, 2)} \\; \\Omega`,
      source: "MIL-DTL-28830E, 4.7.10.2",
      explains: ["impliedImpedance"],
    },
  ];
}
