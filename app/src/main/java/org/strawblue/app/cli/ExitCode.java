package org.strawblue.app.cli;

/** What the program tells the shell. */
final class ExitCode {

    static final int FINE = 0;
    /** The job or question was understood and refused, or a check failed. */
    static final int REFUSED = 1;
    /** The command or a file could not be understood; nothing was written. */
    static final int BAD_INPUT = 2;
    /** A fault of the program. */
    static final int FAULT = 70;
    /** A file could not be read or written. */
    static final int NO_FILE = 74;

    private ExitCode() {}
}
