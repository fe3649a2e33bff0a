/** What stands in every answer about a whole station; a question adds its own words, tables and figures. */
import type { Answer, Provenance, ScalarValue, Uncertainty, Value } from "../../answer/answer";
import { magnitude } from "../../numerics/complex";
import { isRealSoil } from "../../wires/structure";
import { powerCautions } from "../../words/cautions";
import { inputSays } from "../../words/inputs";
import { assumptionsOfModel, notCoveredOf, shortfallSays } from "../../words/limits";
import { antennaHeatSays } from "./antennaHeat";
import { ranked } from "./bounds";
import { drawingOf, lineIsPlacedByUs } from "./drawingOf";
import { shortfall, strongestGainError } from "./feedError";
import { jointsOf, partsOf } from "./partsAndJoints";
import { azimuthCut, elevationCut, lobesOf } from "./patternTables";
import { provenanceOf } from "./provenanceOf";
import type { Context } from "./question";
import { impedanceValues, valuesOf } from "./values";
import type { Worked } from "./worked";

export type FrameFields =
  | "schema"
  | "question"
  | "asked"
  | "station"
  | "band"
  | "frequency"
  | "values"
  | "joints"
  | "parts"
  | "tables"
  | "lobes"
  | "assumptions"
  | "uncertainties"
  | "cautions"
  | "notCovered"
  | "drawing"
  | "provenance";

/** `judged` names the result that the uncertainties are ranked by, with the least effect that is told; `methods` the question's own. */
export function frameOf(
  question: { readonly id: string; readonly asked: string },
  worked: Worked,
  context: Context,
  judged: { readonly name: string; readonly least: number },
  methods: Provenance["methods"] = [],
): Pick<Answer, FrameFields> {
  const { station, band, point, result, numbers, bounds } = worked;
  const soil = point.antenna.soil;
  const cutAzimuth = cutAzimuthOf(worked);
  const cut = elevationCut(result.driven, cutAzimuth, isRealSoil(soil));
  const feedVoltage = Math.max(
    ...point.joints.filter((j) => j.name.startsWith("feed point")).map((j) => magnitude(j.voltage)),
  );
  return {
    schema: "feedpath-answer-1",
    question: question.id,
    asked: question.asked,
    station: station.title,
    band: band.name,
    frequency: worked.frequency,
    values: named({ ...impedanceValues(point), ...valuesOf(numbers, bounds, point) }, antennaHeatSays(worked)),
    joints: jointsOf(point),
    parts: partsOf(point),
    tables: [cut, azimuthCut(result.driven, numbers.elevationOfMaximum ?? 0)],
    lobes: lobesOf(cut, cutAzimuth),
    assumptions: [...station.assumptions, ...assumptionsOfModel(station, point, lineIsPlacedByUs(point))],
    uncertainties: uncertaintiesOf(worked, judged),
    cautions: [
      ...point.resolved.cautions,
      ...powerCautions({
        feedVoltage,
        watts: point.powerFromTransmitter,
        people: station.people.length,
        overSoil: soil.kind !== "free space",
      }),
    ],
    notCovered: [
      ...shortfallSays(shortfall(point, numbers.powerBalanceResidue ?? null, strongestGainError(point, result))),
      ...notCoveredOf(point, bounds.skipped),
    ],
    drawing: drawingOf(station, point, cutAzimuth),
    provenance: provenanceOf(context, { point, result }, methods),
  };
}

/** Says what warms with the wires where that is more than they. */
const named = (values: Record<string, Value>, warm: string): Record<string, Value> =>
  warm === "wires" || !values.heatInWires
    ? values
    : { ...values, heatInWires: { ...(values.heatInWires as ScalarValue), says: warm } };

/** The section's plane: the wanted direction, else where the antenna is strongest. */
function cutAzimuthOf(worked: Worked): number {
  const wanted = worked.station.wanted.direction;
  const azimuth = wanted === null ? (worked.numbers.azimuthOfMaximum ?? 0) : (wanted * 180) / Math.PI;
  return ((Math.round(azimuth) % 360) + 360) % 360;
}

function uncertaintiesOf(worked: Worked, judged: { readonly name: string; readonly least: number }): Uncertainty[] {
  return ranked(worked.bounds, judged.name, judged.least).map((effect) => ({
    input: effect.input.name,
    place: effect.input.place,
    says: inputSays(effect.input),
    atLow: effect.atLow[judged.name] ?? 0,
    atHigh: effect.atHigh[judged.name] ?? 0,
  }));
}
