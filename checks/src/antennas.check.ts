import { checkTopic } from "./testing/checkTopic";
import { antennas } from "./topics/antennas";

checkTopic(antennas);
