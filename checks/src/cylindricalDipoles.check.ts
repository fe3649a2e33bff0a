import { checkTopic } from "./testing/checkTopic";
import { cylindricalDipoles } from "./topics/cylindricalDipoles";

checkTopic(cylindricalDipoles);
