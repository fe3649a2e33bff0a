import { checkTopic } from "./testing/checkTopic";
import { breakdownAndPower } from "./topics/breakdownAndPower";
import { radioNoise } from "./topics/radioNoise";
import { bandsMetersCoils, practice } from "./topics/smallTopics";

checkTopic(bandsMetersCoils);
checkTopic(breakdownAndPower);
checkTopic(practice);
checkTopic(radioNoise);
