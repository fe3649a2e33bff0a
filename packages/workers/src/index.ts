/** Solving on several threads, the same in Node and in the page. */
export { type AnswerMemory, createAnswerMemory } from "./answerMemory";
export { type AheadPlace, solveAhead } from "./solveAhead";
export { createSolverPool, type SolverPool, type SolverWorker, serveSolves } from "./solverPool";
