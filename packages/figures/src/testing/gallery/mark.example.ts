import { mark } from "../../kit/mark";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [{ builder: "mark", name: "mark", draw: () => mark(28) }];
