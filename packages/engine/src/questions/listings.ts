/** The questions this version answers, in the order in which they are listed everywhere; without what answers them. */
import { bandListing } from "./band/listing";
import { bounceListing } from "./bounce/listing";
import { buildListing } from "./build/listing";
import type { QuestionListing } from "./common/question";
import { heightListing } from "./height/listing";
import { limitsListing } from "./limits/listing";
import { lineListing } from "./line/listing";
import { listenListing } from "./listen/listing";
import { nearbyListing } from "./nearby/listing";
import { outsideListing } from "./outside/listing";
import { radialsListing } from "./radials/listing";
import { skyListing } from "./sky/listing";
import { trimListing } from "./trim/listing";
import { wattsListing } from "./watts/listing";
import { whyListing } from "./why/listing";

export const questionListings: readonly QuestionListing[] = [
  wattsListing,
  bandListing,
  heightListing,
  trimListing,
  lineListing,
  skyListing,
  outsideListing,
  radialsListing,
  nearbyListing,
  limitsListing,
  listenListing,
  buildListing,
  whyListing,
  bounceListing,
];
