/** The JSON Schema of the station file, made from the same definition that reads it. */
import * as z from "zod";
import { stationFile } from "./station";

/** JSON Schema (draft 2020-12) of the station file, for editors that complete and check YAML. */
export function stationSchema(): object {
  const schema = z.toJSONSchema(stationFile, {
    io: "input",
    unrepresentable: "any",
    reused: "ref",
    override: ({ jsonSchema }) => {
      // Entries told apart by their kind key: exactly one fits, so an editor may say which.
      if (jsonSchema.type === "object" && jsonSchema.additionalProperties === undefined)
        jsonSchema.additionalProperties = false;
    },
  });
  return {
    ...schema,
    title: "Feedpath station file, version 1",
    description: "One station from the transmitter to the sky. Every number has its unit; order is wiring.",
  };
}
