/** The pool for what takes nearly all the time of a question: solves of antennas. */
import { type PortableSolution, type SolveRequest, solvePortable } from "@feedpath/engine";
import { createPool, type Pool, type PoolOptions } from "./pool";
import { warmUp } from "./warmUp";
import { type Port, serve, type WorkerLike } from "./worker";

/**
 * Several requests at once: what goes through a worker's door in one message goes there once, a station that many of them
 * share as much as the mesh that many solutions share.
 */
export type Requests = readonly SolveRequest[];
export type Solutions = readonly PortableSolution[];

export type SolverPool = Pool<Requests, Solutions>;
export type SolverWorker = WorkerLike<Requests, Solutions>;

export const createSolverPool = (options: PoolOptions<Requests, Solutions>): SolverPool => createPool(options);

export const solveAll = (requests: Requests): Solutions => requests.map(solvePortable);

/** The worker's side. The host has chosen the same kernels there as here: their name is part of what is compared. */
export const serveSolves = (port: Port<Requests, Solutions>): void => serve(port, solveAll, warmUp);
