import { describe, expect, it } from "vitest";
import { warmSays } from "../../words/warm";
import { loadsName } from "./antennaHeat";

describe("what warms with the wires", () => {
  it("is named from a twentieth of their heat on, most first", () => {
    const choke = { name: "chokes", watts: 3 };
    const coils = { name: "coils", watts: 5 };
    expect(warmSays(10, [])).toBe("wires");
    expect(warmSays(10, [choke, coils])).toBe("wires, coils and chokes");
    expect(warmSays(100, [choke, { ...coils, watts: 5.1 }])).toBe("wires and coils");
  });

  it("calls loads of one kind by their name", () => {
    expect(loadsName([{ kind: "resistor", on: "far end" }])).toBe("resistor");
    expect(loadsName([{ kind: "coil", on: "both legs" }])).toBe("coils");
    expect(
      loadsName([
        { kind: "coil", on: "mast" },
        { kind: "resistor", on: "mast" },
      ]),
    ).toBe("loads");
  });
});
