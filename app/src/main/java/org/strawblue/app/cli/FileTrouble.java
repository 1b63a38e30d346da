package org.strawblue.app.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file that could not be read or written, in words for the person who named it. */
final class FileTrouble extends RuntimeException {

    private static final long serialVersionUID = 1;

    FileTrouble(Path file, IOException cause) {
        super(file + ": " + words(cause), cause);
    }

    private static String words(IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (cause instanceof AccessDeniedException) {
            return "not allowed to use it";
        }
        if (cause instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return String.valueOf(cause.getMessage());
    }
}
