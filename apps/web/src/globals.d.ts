/** Version of the program, put in by the build from package.json. */
declare const __FEEDPATH_VERSION__: string;
