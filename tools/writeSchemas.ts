// Writes the JSON Schema of the station file from its definition: node tools/run.mjs tools/writeSchemas.ts
import { writeFileSync } from "node:fs";
import { stationSchema } from "@feedpath/station-file";

const file = new URL("../packages/stationFile/station-file.schema.json", import.meta.url);
writeFileSync(file, `${JSON.stringify(stationSchema(), null, 2)}\n`);
