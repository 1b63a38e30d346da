package org.strawblue.app.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.strawblue.app.report.Screen;

/** Starts the command line. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        Screen screen = Screen.detect(System.getenv(), Boolean.getBoolean("strawblue.terminal"));
        int code = CommandLines.run(out, err, screen, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** UTF-8 whatever the locale says: a degree sign must not become a question mark in a pipe. */
    private static PrintWriter writer(FileDescriptor descriptor) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
    }
}
