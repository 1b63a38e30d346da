package org.strawblue.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Leaves a file whole or not at all: it is written under another name beside its place and then moved there. */
final class WholeFile {

    private WholeFile() {}

    static void write(Path path, byte[] bytes) throws IOException {
        Path whole = path.toAbsolutePath();
        // of this process alone; a name by chance would start up the whole of Java's security
        Path part = whole.resolveSibling(
                "." + whole.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        // gone too where the program is stopped half-way
        part.toFile().deleteOnExit();
        try {
            Files.write(part, bytes);
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
