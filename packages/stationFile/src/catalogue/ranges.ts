/** What `unknown` stands for where a range is known. Each range names its source and how far it can be trusted. */
import { between, type Quantity } from "@feedpath/engine";

export interface KnownRange {
  readonly name: string;
  readonly quantity: Quantity;
  readonly source: string;
  readonly status: string;
}

export const chokeRange: KnownRange = {
  name: "common-mode resistance of a choke",
  quantity: between(100, 5000, "unknown"),
  source: "from a few turns of line in air to a stack of ferrite rings wound for the band",
  status: "common practice, no source",
};

export const footRange: KnownRange = {
  name: "resistance of a conductor's foot in the soil",
  quantity: between(20, 500, "unknown"),
  source: "from a mast on a large wet footing to a short post in dry ground",
  status: "common practice, no source",
};

export const earthRange: KnownRange = {
  name: "resistance of an earth electrode",
  quantity: between(5, 500, "unknown"),
  source: "from a ring or long strip in wet ground to one short rod in dry ground",
  status: "common practice, no source",
};
