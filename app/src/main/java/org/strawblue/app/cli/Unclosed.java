package org.strawblue.app.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/** Lets others write to the standard output and close what they wrote, and keeps the output itself open. */
final class Unclosed extends FilterWriter {

    Unclosed(Writer out) {
        super(out);
    }

    @Override
    public void close() throws IOException {
        flush();
    }
}
