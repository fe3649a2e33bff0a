import { checkTopic } from "./testing/checkTopic";
import { parallelWire } from "./topics/parallelWire";

checkTopic(parallelWire);
