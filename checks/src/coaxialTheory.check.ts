import { checkTopic } from "./testing/checkTopic";
import { coaxialTheory } from "./topics/coaxialTheory";

checkTopic(coaxialTheory);
