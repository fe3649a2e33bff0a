import { describe, expect, it } from "vitest";
import { questionIn } from "./questionIn";

describe("the question in a link", () => {
  it("is read from behind the hash, and none where there is none", () => {
    expect(questionIn("#band")).toBe("band");
    expect(questionIn("#b%61nd")).toBe("band");
    expect(questionIn("")).toBe("");
  });

  it("is none where the link was cut in the middle of a character", () => {
    expect(questionIn("#%E0%A4%A")).toBe("");
  });
});
