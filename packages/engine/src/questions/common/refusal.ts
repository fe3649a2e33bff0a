/** A question that cannot be answered for this station. */
import type { Refusal } from "../../answer/answer";
import type { Station } from "../../station/station";
import { asSentence, ended } from "../../words/phrases";

export function refusal(
  question: { readonly id: string; readonly asked: string },
  station: Station,
  why: string,
  wouldMakeItAnswerable: string,
): Refusal {
  return {
    schema: "feedpath-answer-1",
    question: question.id,
    asked: question.asked,
    station: station.title,
    refused: { why: asSentence(why), wouldMakeItAnswerable: ended(wouldMakeItAnswerable) },
  };
}

export const isRefusal = (thing: object): thing is Refusal => "refused" in thing;
