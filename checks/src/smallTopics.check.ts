import { checkTopic } from "./testing/checkTopic";
import { bandsMetersCoils, breakdownAndPower, practice } from "./topics/smallTopics";

checkTopic(bandsMetersCoils);
checkTopic(breakdownAndPower);
checkTopic(practice);
