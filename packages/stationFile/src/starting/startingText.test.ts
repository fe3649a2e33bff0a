import { starters } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { readStation } from "../readStation";
import { startingText } from "./startingText";

describe("a station file to begin with", () => {
  it.each(starters.flatMap((s) => [1e6, 7.1e6, 50e6, 500e6].map((f) => [s.name, f / 1e6, s, f] as const)))(
    "%s at %d MHz reads without a problem and takes nothing of the antenna for granted",
    (_, _megahertz, starter, frequency) => {
      const { problems, station, normalised } = readStation(startingText(starter, frequency), {
        fileName: "mine.yaml",
        readFile: () => null,
      });
      expect(problems).toEqual([]);
      // Where zero lies is nobody's doubt.
      const ofAntenna = station!.assumptions.filter((a) => /^antennas/.test(a.place) && a.place !== "antennas.0.at");
      expect(ofAntenna).toEqual([]);
      expect(station!.antennas).toEqual([starter.at(frequency)]);
      expect(readStation(normalised, { fileName: "mine.yaml", readFile: () => null }).problems).toEqual([]);
    },
  );
});
