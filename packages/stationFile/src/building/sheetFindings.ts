/** What a data sheet says that physics cannot give: a slip of units is told, anything else is listed. */
import { type DataSheetLine, examineDataSheet } from "@feedpath/engine";
import type { FileOwnLine } from "../schema/line";
import { fault, list } from "./build";
import type { LineSpot } from "./lineModels";

/** Losses that no line of any size has are a slip; findings about single points are the sheet's own, and stand in the list. */
export function examineSheet(spot: LineSpot, model: DataSheetLine, written: FileOwnLine): void {
  const points = model.loss.map(({ frequency, decibelsPerMetre }) => ({
    frequency,
    decibelsPerMetre: decibelsPerMetre.value,
  }));
  const findings = examineDataSheet(points, {
    impedance: model.impedance.value,
    velocityFactor: model.velocityFactor.value,
    capacitance: written.capacitance?.value,
    loopResistance: written["loop resistance"]?.value,
  });
  for (const { about, point, says, suggestion } of findings) {
    const message = suggestion === null ? says : `${says} ${suggestion}`;
    if (about === "loss" && point === null)
      spot.build.report([...spot.path, "loss"], "key", fault(message, "losses of a line, such as 4.6 dB/100 m"));
    else list(spot.build, `${spot.place}.model`, `${about} of ${spot.name}`, "taken as written", message);
  }
}
