/** Rules of thumb beside the computed value. */
import type { RuleOfThumb } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import { lossByStandingWave } from "../../lines/alongLine";
import { swrOfReflection, voltageReflection } from "../../lines/reflection";
import { complex, magnitude } from "../../numerics/complex";
import { decibels } from "../../quantity/format";
import type { Worked } from "../common/worked";

export function wattsRules(worked: Worked): RuleOfThumb[] {
  const { point } = worked;
  const used = point.parts.filter((p) => p.edge.inUse && p.edge.part?.kind === "line");
  const [line] = [...used].sort((a, b) => b.heat - a.heat);
  if (line?.edge.part?.kind !== "line" || line.matchedLoss === null) return [];
  const { z0 } = constantsOf(line.edge.part, worked.frequency);
  const load = point.joints.find((j) => j.name === line.to);
  if (!load) return [];
  const rho = magnitude(voltageReflection(load.impedance, complex(z0.re)));
  if (!(rho < 1)) return [];
  return [
    {
      rule: `handbook curve of loss against SWR, for ${line.edge.name}`,
      ruleValue: decibels(lossByStandingWave(line.matchedLoss, swrOfReflection(rho))),
      computed: decibels(line.loss),
      holds: "while the line's own impedance is nearly real and its loss small",
      source: "handbooks; derivation elementary",
    },
    {
      rule: "“what SWR sends back is lost”",
      ruleValue: decibels(-10 * Math.log10(1 - rho * rho)),
      computed: decibels(line.loss - line.matchedLoss),
      holds: "never: it is sent out again; computed is what the mismatch adds in this line",
      source: "common practice, no source",
    },
  ];
}
