import { findQuestion, type Question, questions, type Station } from "@feedpath/engine";
import { nearestWord } from "@feedpath/station-file";
import { wrongCommand } from "../tell/commandProblem";

/** The question with this id; a slip of the fingers is answered with the nearest id. */
export function chosenQuestion(id: string): Question {
  const question = findQuestion(id);
  if (question) return question;
  const ids = questions.map((one) => one.id);
  throw wrongCommand({
    place: "question",
    found: id,
    expected: `one of ${ids.join(", ")}`,
    message: `There is no question "${id}". The questions are ${ids.join(", ")}; see: feedpath questions`,
    nearest: nearestWord(id, ids),
  });
}

/** Holds `--band` to the bands of the file. */
export function checkBand(station: Station, band: string): void {
  const names = station.bands.map(({ name }) => name);
  if (names.includes(band)) return;
  const named = names.filter((name) => name !== "");
  const has =
    named.length > 0 ? `Its bands are ${named.join(", ")}.` : "It has one band without a name: leave --band out.";
  throw wrongCommand({
    place: "--band",
    found: band,
    expected: named.join(", "),
    message: `The station has no band "${band}". ${has}`,
    nearest: nearestWord(band, named),
  });
}
