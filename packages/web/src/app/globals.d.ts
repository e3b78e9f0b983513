/** The program and its version, put in when the page is built. */
declare const __PROGRAM__: string;
