import { describe, expect, it } from "vitest";
import { between, exactly, within } from "../quantity/quantity";
import { antennaOf, copper, levelDipole, linePart, pathOf, plainStation } from "../testing/plainStation";
import { layersAt } from "./soilAtFrequency";
import { movedStation, uncertainInputs } from "./uncertainInputs";

const soil = (tied?: string) => ({
  kind: "soil" as const,
  name: "",
  permittivity: { ...between(3, 30), ...(tied ? { tied } : {}) },
  conductivity: { ...between(1e-4, 1e-2), ...(tied ? { tied } : {}) },
});

describe("uncertain inputs", () => {
  it("finds nothing in a station that is exactly known", () => {
    expect(uncertainInputs(plainStation())).toEqual([]);
  });

  it("names each by what it is and whose", () => {
    const sleeve = {
      ...copper(2e-3),
      insulation: { material: "PVC", wall: exactly(8e-4), permittivity: between(3, 4.5) },
    };
    const station = plainStation({
      path: pathOf([{ ...linePart("line 1", 28), length: within(28, 1) }]),
      antennas: [antennaOf({ ...levelDipole(20, 12), height: within(12, 0.5), wire: sleeve } as never)],
      ground: soil(),
    });
    expect(uncertainInputs(station).map((i) => i.name)).toEqual([
      "length of line 1",
      "height of the dipole",
      "permittivity of the insulation",
      "permittivity of the soil",
      "conductivity of the soil",
    ]);
  });

  it("names layers of the soil, and counts tied points by frequency as one", () => {
    const point = (frequency: number, low: number, high: number) => ({
      frequency,
      quantity: { ...between(low, high), tied: "permittivity of layer 2" },
    });
    const ground = {
      kind: "layers" as const,
      layers: [
        { permittivity: between(3, 5), conductivity: exactly(1e-3), thickness: between(1, 3) },
        {
          permittivity: { kind: "points" as const, points: [point(3e6, 20, 25), point(30e6, 10, 15)] },
          conductivity: exactly(5e-3),
          thickness: null,
        },
      ],
    };
    const station = plainStation({ ground });
    const inputs = uncertainInputs(station);
    expect(inputs.map((i) => i.name)).toEqual([
      "permittivity of layer 1 of the soil",
      "thickness of layer 1 of the soil",
      "the permittivity of layer 2",
    ]);
    const moved = movedStation(station, inputs[2]!, "low").ground;
    expect(layersAt(moved, 3e6)[1]!.relativePermittivity).toBe(20);
    expect(layersAt(moved, 30e6)[1]!.relativePermittivity).toBe(10);
  });

  it("counts the temperature of a line: it moves its loss", () => {
    const warm = { ...linePart("line 1", 28), temperature: between(263, 323) };
    expect(uncertainInputs(plainStation({ path: pathOf([warm]) })).map((i) => i.name)).toEqual([
      "temperature of line 1",
    ]);
  });

  it("moves tied quantities as one", () => {
    const station = plainStation({ ground: soil("soil") });
    const [input, ...others] = uncertainInputs(station);
    expect(others).toEqual([]);
    expect(input!.name).toBe("the soil");
    const moved = movedStation(station, input!, "high");
    if (moved.ground.kind !== "soil") throw new Error("still a soil");
    expect(moved.ground.permittivity.value).toBe(30);
    expect(moved.ground.conductivity.value).toBe(1e-2);
    expect(uncertainInputs(moved)).toEqual([]);
    expect(moved.antennas).toBe(station.antennas);
  });

  it("passes over what changes no result: a choke's impedance, heat limits", () => {
    const choke = {
      kind: "choke" as const,
      name: "choke",
      note: "",
      state: "in line" as const,
      heatLimit: between(5, 20),
      length: null,
      resistance: { kind: "constant" as const, quantity: between(1e3, 5e3) },
      reactance: null,
    };
    expect(uncertainInputs(plainStation({ path: pathOf([choke]) }))).toEqual([]);
  });
});
