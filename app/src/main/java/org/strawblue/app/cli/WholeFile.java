package org.strawblue.app.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Leaves a file whole or not at all: it is written under another name beside its place and then moved there. */
final class WholeFile {

    private WholeFile() {}

    static void write(Path path, byte[] bytes) throws IOException {
        Path whole = path.toAbsolutePath();
        Path folder = whole.getParent();
        File part = File.createTempFile(".strawblue", ".part", folder == null ? null : folder.toFile());
        // gone too where the program is stopped half-way
        part.deleteOnExit();
        try {
            Files.write(part.toPath(), bytes);
            Files.move(part.toPath(), whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part.toPath());
        }
    }
}
