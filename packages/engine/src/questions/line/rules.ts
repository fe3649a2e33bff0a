/** Rules of thumb beside the computed value. */
import type { RuleOfThumb } from "../../answer/answer";
import { lossByStandingWave } from "../../lines/alongLine";
import { decibels, plainNumber, swrText } from "../../quantity/format";
import type { LineFacts } from "../../words/lineFacts";
import { doubled } from "./alternativeTables";
import type { Findings } from "./findings";
import { worstOf } from "./study";

export function lineRules(f: LineFacts, { study, lengths, worked }: Findings): RuleOfThumb[] {
  const row = study.present.rows[worstOf(study.present)]!;
  const rules: RuleOfThumb[] = [];
  if (Number.isFinite(row.swrOnLine))
    rules.push({
      rule: `handbook curve of loss against SWR, for ${f.present.name}`,
      ruleValue: decibels(lossByStandingWave(row.matched, row.swrOnLine)),
      computed: decibels(row.matched + row.added),
      holds: "while the line's own impedance is nearly real and its loss small",
      source: "handbooks; derivation elementary",
    });
  if (lengths && f.byLength)
    rules.push({
      rule: `“a 75 Ω line on ${plainNumber(worked.point.ratedResistance, 0)} Ω gives 1.5”`,
      ruleValue: "1.5",
      computed: `${swrText(lengths.rangeOnRated.low)} to ${swrText(lengths.rangeOnRated.high)} at the set, by length`,
      holds: "on a line of 75 Ω itself, with 50 Ω at its end; the set sees it only by chance",
      source: "common practice, no source",
    });
  const other = f.proposal ?? f.best;
  rules.push({
    rule: "twice the power is half an S-unit",
    ruleValue: decibels(doubled),
    computed: other ? `${decibels(other.gained)} by ${other.name}` : "no other line",
    holds: "always; it does nothing for receiving",
    source: "definition; one S-unit is 6 dB: IARU Region 1 Technical Recommendation R.1 (from memory)",
  });
  return rules;
}
