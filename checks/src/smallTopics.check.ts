import { checkTopic } from "./testing/checkTopic";
import { breakdownAndPower } from "./topics/breakdownAndPower";
import { bandsMetersCoils, practice } from "./topics/smallTopics";

checkTopic(bandsMetersCoils);
checkTopic(breakdownAndPower);
checkTopic(practice);
