import { describe, expect, it } from "vitest";
import { heatIn, lossNodes, storedIn, takeAt } from "./lossNodes";

describe("a node of lumped losses", () => {
  it("warms by what its resistors take, branch by branch, whatever drives it", () => {
    const ladder = {
      constant: 0.3,
      branches: [
        { strength: 2, pole: 1e6 },
        { strength: 0.7, pole: 4e7 },
      ],
    };
    const [timeStep, metres] = [1e-9, 0.5];
    const nodes = lossNodes(ladder, metres, 1, timeStep);
    const registers = [0, 0];
    let heat = 0;
    for (let step = 0; step < 4000; step++) {
      const drive = Math.sin(0.05 * step) + Math.cos(0.017 * step * step);
      // The bilinear rule written out: answer = direct u - share x; a branch's resistor takes answer^2/strength.
      heat += 0.3 * metres * drive * drive;
      ladder.branches.forEach(({ strength, pole }, k) => {
        const rate = 2 / timeStep;
        const answer = ((strength * metres * rate) / (rate + pole)) * drive - (pole / (rate + pole)) * registers[k]!;
        registers[k]! += 2 * answer;
        heat += (answer * answer) / (strength * metres);
      });
      takeAt(nodes, 0, drive);
    }
    expect(storedIn(nodes, timeStep)).toBeGreaterThan(0);
    expect(heatIn(nodes, timeStep) / (heat * timeStep)).toBeCloseTo(1, 10);
  });
});
