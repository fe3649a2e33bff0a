import { checkTopic } from "./testing/checkTopic";
import { linesAndMatching } from "./topics/linesAndMatching";

checkTopic(linesAndMatching);
