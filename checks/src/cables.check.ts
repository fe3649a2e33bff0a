import { checkTopic } from "./testing/checkTopic";
import { cables } from "./topics/cables";

checkTopic(cables);
