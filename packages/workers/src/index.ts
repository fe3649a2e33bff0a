/** Solving on several threads, the same in Node and in the page. */
export { type AnswerMemory, type Asked, createAnswerMemory } from "./answerMemory";
export { type AheadPlace, solveAhead } from "./solveAhead";
export { createSolverPool, type SolverPool, type SolverWorker, serveSolves } from "./solverPool";
