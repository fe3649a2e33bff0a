import { checkTopic } from "./testing/checkTopic";
import { sommerfeld } from "./topics/sommerfeld";

checkTopic(sommerfeld);
