/** Rules of thumb for lengths, each beside the computed value. */
import type { RuleOfThumb } from "../../answer/answer";
import { plainNumber, significantNumber } from "../../quantity/format";
import { metres3, type TrimFacts } from "../../words/trim";
import type { LengthRule } from "../../words/trimIdea";
import type { Trimmed } from "./trimmed";

/** Common practice, no source: metres times megahertz by shape. */
const practice: Readonly<Partial<Record<Trimmed["kind"], { readonly constant: number; readonly says: string }>>> = {
  dipole: { constant: 143, says: "half-wave dipole: 143 over MHz" },
  "inverted vee": { constant: 143, says: "half-wave dipole: 143 over MHz" },
  "off-centre dipole": { constant: 143, says: "half-wave dipole: 143 over MHz" },
  "folded dipole": { constant: 143, says: "half-wave dipole: 143 over MHz" },
  beam: { constant: 143, says: "half-wave dipole: 143 over MHz" },
  vertical: { constant: 71.5, says: "quarter-wave vertical: 71.5 over MHz" },
  loop: { constant: 306, says: "full-wave loop: 306 over MHz" },
};

/** A piece further than this share from the rule is another antenna: loaded, or several half waves long. */
const kinship = 0.15;

export function lengthRule(f: TrimFacts, trimmed: Trimmed): LengthRule | null {
  const found = practice[trimmed.kind];
  const length = found && found.constant / (f.frequency / 1e6);
  if (!found || !length || f.target === null || Math.abs(length / f.target - 1) > kinship) return null;
  return { rule: `The rule “${found.says}”`, length };
}

export function trimRules(f: TrimFacts, trimmed: Trimmed): RuleOfThumb[] {
  const rules: RuleOfThumb[] = [];
  const rule = lengthRule(f, trimmed);
  const source = "common practice, no source";
  if (rule && f.target !== null) {
    rules.push({
      rule: `length in metres of a ${practice[trimmed.kind]!.says}`,
      ruleValue: metres3(rule.length),
      computed: metres3(f.target),
      holds:
        "for bare wire of usual thickness about half a wave up; insulation, height, sloping legs and the line shift it",
      source,
    });
  }
  if (f.kilohertzPerCentimetre !== null && f.target !== null) {
    const widest = Math.max(...f.ends.map((e) => e.share));
    const byRule = f.frequency / f.target / widest / 1e5;
    rules.push({
      rule: "the frequency goes with one over the length",
      ruleValue: `${significantNumber(byRule, 3)} kHz per cm`,
      computed: `${significantNumber(f.kilohertzPerCentimetre, 3)} kHz per cm at ${f.ends[0]!.place}`,
      holds: "where nothing but the length decides: no loads, other elements, radials or line that shift the dip",
      source,
    });
  }
  if (f.measured?.change != null && f.measured.change !== 0) {
    const byRule = f.present * (f.measured.dip / f.frequency - 1);
    const percent = (x: number) => `${plainNumber(100 * x, 1)} cm in all`;
    rules.push({
      rule: "change of length by one over the frequency, from what was measured",
      ruleValue: percent(byRule),
      computed: percent(f.measured.change),
      holds: "close to the wanted frequency, where the line does not shift the dip",
      source,
    });
  }
  return rules;
}
