import { layersAt, type Station } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";
import { writeStation } from "./writing/writeStation";

const read = (ground: string) =>
  readStation(
    `feedpath: 1
station: soil
frequency: 7 MHz
transmitter: { power: 1 W }
path: []
antenna: { dipole: { length: 20 m, height: 10 m, wire: 2 mm copper } }
ground: ${ground}
`,
    { fileName: "soil.yaml" },
  );

function stationOver(ground: string): Station {
  const { station, problems } = read(ground);
  if (!station) throw new Error(problems.map((p) => p.message).join(" "));
  return station;
}

const measured = "{ permittivity: { 3 MHz: 20, 12 MHz: 14 ± 2 }, conductivity: 4 mS/m }";

describe("soil by frequency", () => {
  it("is read between its points on logarithmic scales", () => {
    const { ground } = stationOver(measured);
    // Half way in the logarithm of frequency: the geometric mean.
    const [layer, ...below] = layersAt(ground, 6e6);
    expect(below).toEqual([]);
    expect(layer!.relativePermittivity).toBeCloseTo(Math.sqrt(20 * 14), 10);
    expect(layer!.conductivity).toBe(4e-3);
    expect(layersAt(ground, 50e6)[0]!.relativePermittivity).toBe(14);
  });

  it("ties the uncertain points of one value together, and only those", () => {
    const { ground } = stationOver(measured);
    if (ground.kind !== "layers") throw new Error("values by frequency make a layer");
    const { permittivity, conductivity } = ground.layers[0]!;
    if (!("kind" in permittivity) || "kind" in conductivity) throw new Error("points, and one value");
    expect(permittivity.points.map((p) => p.quantity.tied)).toEqual([undefined, "permittivity of the soil"]);
    expect(conductivity.tied).toBeUndefined();
  });

  it.each([
    measured,
    "sea water",
    "fresh water",
    "wet ground",
    "{ layers: [{ permittivity: { 3 MHz: 20, 12 MHz: 14 }, conductivity: 6 mS/m, thickness: 1 m }, { permittivity: 8, conductivity: 1 mS/m }] }",
    "{ layers: [{ permittivity: 8, conductivity: 1 mS/m }] }",
  ])("is written so that it reads back the same: %s", (ground) => {
    const station = stationOver(ground);
    const again = readStation(writeStation(station), { fileName: "soil.yaml" }).station;
    expect(again?.ground).toEqual(station.ground);
  });

  it("tells what is wrong with points", () => {
    const messages = (ground: string) =>
      read(ground)
        .problems.map((p) => p.message)
        .join(" ");
    expect(messages("{ permittivity: { 3 MHz: 0.5 }, conductivity: 1 mS/m }")).toMatch(/0\.5/);
    const layer = "{ permittivity: 8, conductivity: 1 mS/m, thickness: 1 m }";
    expect(messages(`{ layers: [${Array(51).fill(layer).join(", ")}] }`)).toMatch(/50/);
    expect(messages("{ permittivity: {}, conductivity: 1 mS/m }")).toMatch(/At least one frequency/);
    expect(messages("{ permittivity: { 3 mm: 5 }, conductivity: 1 mS/m }")).toMatch(/3 mm/);
  });

  it("of water follows its relaxation", () => {
    // Rec. ITU-R P.527-4 at 20 degrees: sea water 71.67 and 4.798 S/m at 10 MHz (ledger); loss of pure water at 1 GHz
    // 4.3944, that is 0.2445 S/m, with the 3 mS/m of P.527-3.
    const sea = layersAt(stationOver("sea water").ground, 1e7)[0]!;
    expect(sea.relativePermittivity).toBeCloseTo(71.6727, 3);
    expect(sea.conductivity).toBeCloseTo(4.7979, 3);
    expect(layersAt(stationOver("fresh water").ground, 1e9)[0]!.conductivity).toBeCloseTo(0.2475, 3);
  });
});
