import { describe, expect, it } from "vitest";
import { exactly } from "../quantity/quantity";
import type { Path } from "../station/path";
import { linePart, pathOf, plainLine, plainStation } from "../testing/plainStation";
import { resolveStation } from "./resolve";

const resolve = (path: Path, set: Record<string, string> = {}, frequency = 7.1e6) => {
  const station = plainStation({ path });
  return resolveStation(station, { ...station.bands[0]!, set }, frequency);
};

const relay: Path = {
  parts: [linePart("mast line", 38)],
  end: {
    kind: "switch",
    name: "relay",
    idle: "shorted",
    now: "a",
    loss: exactly(0.05),
    isolation: null,
    positions: { a: pathOf([linePart("arm a", 2)], "one"), b: pathOf([linePart("arm b", 3)], "two") },
  },
};

describe("resolving a station for a band", () => {
  it("names joints as the station file does", () => {
    const { joints } = resolve(pathOf([linePart("line 1", 5), linePart("line 2", 5)]));
    expect(joints.map((j) => j.name)).toEqual(["transmitter", "after line 1", "feed point"]);
  });

  it("throws the switch the band sets and leaves the other side idle", () => {
    const inUse = (set: Record<string, string>) => resolve(relay, set);
    expect(inUse({}).feedsInUse).toEqual(["one"]);
    const other = inUse({ relay: "b" });
    expect(other.feedsInUse).toEqual(["two"]);
    expect(other.edges.filter((e) => !e.inUse).map((e) => e.name)).toEqual(["arm a"]);
    expect(other.joints.filter((j) => j.idle === "shorted")).toHaveLength(1);
  });

  it("leaves a bypassed part out and says so", () => {
    const { edges, notes } = resolve(pathOf([{ ...linePart("line 1", 5), state: "bypassed" }, linePart("line 2", 5)]));
    expect(edges.map((e) => e.name)).toEqual(["line 2"]);
    expect(notes).toContain("line 1 is bypassed");
  });

  it("sends each band through the splitter's branch that passes it", () => {
    const splitter: Path = {
      parts: [],
      end: {
        kind: "band splitter",
        name: "box",
        loss: exactly(0.2),
        branches: { low: pathOf([], "one"), high: pathOf([], "two") },
        passes: { low: { from: 1.8e6, to: 30e6 }, high: { from: 140e6, to: 150e6 } },
      },
    };
    expect(resolve(splitter).feedsInUse).toEqual(["one"]);
    expect(resolve(splitter, {}, 145e6).feedsInUse).toEqual(["two"]);
    expect(resolve(splitter, {}, 60e6).feedsInUse).toEqual([]);
  });

  it("warns of a pair line on a coaxial joint and follows the sides", () => {
    const pair = linePart("pair", 10, {
      ...plainLine(450),
      model: {
        ...plainLine(450).model,
        kind: "data sheet",
        side: "balanced",
        impedance: exactly(450),
        velocityFactor: exactly(0.9),
        loss: [],
      },
    });
    const balun = {
      kind: "balun" as const,
      name: "balun",
      note: "",
      state: "in line" as const,
      form: "current" as const,
      transmitterSide: exactly(50),
      antennaSide: exactly(50),
      choking: null,
      loss: exactly(0),
      heatLimit: null,
    };
    expect(resolve(pathOf([pair])).cautions).toHaveLength(1);
    const right = resolve(pathOf([balun, pair]));
    expect(right.cautions).toEqual([]);
    expect(right.joints.map((j) => j.side)).toEqual(["coaxial", "balanced", "balanced"]);
  });
});
