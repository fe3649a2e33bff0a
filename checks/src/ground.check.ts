import { checkTopic } from "./testing/checkTopic";
import { ground } from "./topics/ground";

checkTopic(ground);
