/** The program's two voices. Standard output carries what was asked for, standard error what is said about it. */
export interface Terminal {
  /** The caller wants JSON: standard output then carries exactly one document. */
  readonly json: boolean;
  readonly quiet: boolean;
  readonly print: (text: string) => void;
  readonly printJson: (document: unknown) => void;
  /** A remark for people; nothing when quiet. */
  readonly remark: (text: string) => void;
  /** Something that must be read, quiet or not. */
  readonly warn: (text: string) => void;
}

const withEnd = (text: string): string => (text.endsWith("\n") ? text : `${text}\n`);

export interface Voices {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

const ownStreams: Voices = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
};

/** `--json` and `--quiet` are looked up before the command is parsed, so that even a mistyped command answers as asked. */
export function openTerminal(args: readonly string[], { out, err }: Voices = ownStreams): Terminal {
  const json = args.includes("--json");
  const quiet = args.includes("--quiet");
  let documents = 0;
  const warn = (text: string): void => {
    err(withEnd(text));
  };
  return {
    json,
    quiet,
    print: (text) => {
      out(withEnd(text));
    },
    printJson: (document) => {
      // A second document would break the reader of the first (an interrupt may come while the answer is written).
      if (documents++ === 0) out(`${JSON.stringify(document, null, 2)}\n`);
    },
    remark: (text) => {
      if (!quiet) warn(text);
    },
    warn,
  };
}

/** A reader that has seen enough (`| head`) closes the pipe; that is no error of ours, and nobody is left to tell. */
export function endQuietlyWhenNobodyReads(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "EPIPE") process.exit();
      throw error;
    });
  }
}
