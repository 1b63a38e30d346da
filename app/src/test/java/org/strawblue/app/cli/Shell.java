package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.strawblue.app.report.Screen;

/** A command run in process, and what it left. */
record Shell(int code, String out, String err) {

    static Shell run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLines.run(new PrintWriter(out), new PrintWriter(err), Screen.plain(80), args);
        return new Shell(code, out.toString(), err.toString());
    }
}
