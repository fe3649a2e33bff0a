/** An answer of `build`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Column } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const frequencies = Array.from({ length: 43 }, (_, i) => 10 ** (-3 + i / 6));
const column = (unit: string, of: (f: number) => number | null): Column => ({ unit, values: frequencies.map(of) });
const listed = [10, 50, 100, 400, 1000];

/** `both`: sheet and build; else the build alone. */
export function exampleBuild(both = true): Answer {
  const base = exampleAnswer();
  const rise = (f: number): number => Math.sqrt(1 + 0.002 / f);
  return {
    ...base,
    question: "build",
    asked: "What are the constants of this line?",
    headline: "An invented line.",
    frequency: 7.1e6,
    parameters: { line: "invented line", designation: "invented line" },
    uncertainties: [],
    values: {
      attenuation: { value: 1.9, unit: "dB/100 m" },
      characteristicResistance: { value: 51, unit: "ohm" },
      attenuationInConductors: { value: 1.7, unit: "dB/100 m" },
      attenuationInDielectric: { value: 0.1, unit: "dB/100 m" },
      impedanceByRule: { value: 46, unit: "ohm", says: "138 lg(D/d)/√εr" },
      cutOff: { value: 12, unit: "GHz" },
    },
    joints: [],
    parts: [],
    tables: [
      {
        name: "lineConstants",
        axis: "frequency",
        columns: {
          frequency: column("MHz", (f) => f),
          characteristicResistance: column("ohm", (f) => (both && f < 1 ? null : 51 * rise(f))),
          characteristicReactance: column("ohm", (f) => (both && f < 1 ? null : -51 * (rise(f) - 1))),
          velocityFactor: column("1", (f) => 0.66 / rise(f)),
          attenuation: column("dB/100 m", (f) => (both && f < 1 ? null : 0.7 * Math.sqrt(f) + 0.005 * f)),
          attenuationByRoot: column("dB/100 m", (f) => 0.71 * Math.sqrt(f)),
          ...(both && {
            attenuationByBuild: column("dB/100 m", (f) => 0.55 * Math.sqrt(f + 0.001) + 0.004 * f),
            characteristicResistanceByBuild: column("ohm", (f) => 48 * rise(f)),
            characteristicReactanceByBuild: column("ohm", (f) => -48 * (rise(f) - 1)),
          }),
          attenuationInInner: column("dB/100 m", (f) => 0.4 * Math.sqrt(f + 0.001)),
          attenuationInOuter: column("dB/100 m", (f) => 0.15 * Math.sqrt(f + 0.001)),
          attenuationInDielectric: column("dB/100 m", (f) => 0.004 * f),
        },
      },
      ...(both
        ? [
            {
              name: "sheetPoints",
              axis: "frequency",
              columns: {
                frequency: { unit: "MHz", values: listed },
                listedAttenuation: { unit: "dB/100 m", values: listed.map((f) => 0.71 * Math.sqrt(f) + 0.005 * f) },
              },
            },
          ]
        : []),
    ],
    drawing: null,
  };
}
