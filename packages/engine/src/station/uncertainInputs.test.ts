import { describe, expect, it } from "vitest";
import { between, exactly, within } from "../quantity/quantity";
import { antennaOf, copper, levelDipole, linePart, pathOf, plainStation } from "../testing/plainStation";
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
