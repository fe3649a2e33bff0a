/** The little of WebAssembly that is used here: part of every host, but of no platform whose types this package may know. */
declare namespace WebAssembly {
  class Module {
    constructor(bytes: Uint8Array);
  }
  class Memory {
    constructor(size: { readonly initial: number });
    readonly buffer: ArrayBuffer;
    /** By pages of 65,536 bytes; throws RangeError when there is no more. */
    grow(pages: number): number;
  }
  class Instance {
    constructor(module: Module, imports: object);
    readonly exports: unknown;
  }
}
