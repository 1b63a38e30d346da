package org.strawblue.app.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A text with its name, cut into lines so that places in it can be shown.
 *
 * @param name as the person gave it
 */
record TextFile(String name, String text, List<String> lines) {

    private static final int LARGEST = 4 << 20;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    static TextFile of(String name, String text) {
        String bare = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        String even = bare.replace("\r\n", "\n").replace('\r', '\n');
        return new TextFile(name, bare, List.of(even.split("\n", -1)));
    }

    /** Reads a file, whatever it is encoded in; a file that is no text, too large or not there is a problem. */
    static Read<TextFile> read(Path path) {
        String name = path.toString();
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            return bytes.length > LARGEST ? tooLarge(name) : decode(name, bytes);
        } catch (IOException e) {
            String why =
                    Files.isDirectory(path) ? "This is a folder." : "There is no such file, or it may not be read.";
            return Read.failed(new Problem(
                    Place.of(name),
                    name,
                    "a file that can be read",
                    Optional.empty(),
                    why + " Check the name and the folder."));
        }
    }

    private static Read<TextFile> tooLarge(String name) {
        return Read.failed(new Problem(
                Place.of(name),
                "more than 4 MB",
                "a file of a few pages",
                Optional.empty(),
                "This is surely another file: check the name."));
    }

    private static Read<TextFile> decode(String name, byte[] bytes) {
        Optional<Charset> marked = marked(bytes);
        if (marked.isPresent()) {
            return checked(name, new String(bytes, marked.get()), List.of());
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return checked(name, text, List.of());
        } catch (CharacterCodingException e) {
            String note =
                    name + " is not in UTF-8; it was read as Latin-1. Check signs such as ° ½ ±, or save it as UTF-8.";
            return checked(name, new String(bytes, StandardCharsets.ISO_8859_1), List.of(note));
        }
    }

    private static Optional<Charset> marked(byte[] b) {
        if (b.length < 2) {
            return Optional.empty();
        }
        int first = (b[0] & 0xff) << 8 | b[1] & 0xff;
        return switch (first) {
            case 0xfeff -> Optional.of(StandardCharsets.UTF_16BE);
            case 0xfffe -> Optional.of(StandardCharsets.UTF_16LE);
            default -> Optional.empty();
        };
    }

    private static Read<TextFile> checked(String name, String text, List<String> notes) {
        if (text.indexOf('\0') >= 0) {
            return Read.failed(new Problem(
                    Place.of(name),
                    "signs that no text has",
                    "a plain text file",
                    Optional.empty(),
                    "Save it from a text editor as plain text, UTF-8."));
        }
        return new Read<>(Optional.of(of(name, text)), List.of(), notes);
    }

    /** @param line from 1; @param column from 1 */
    Place place(int line, int column, int endColumn) {
        String shown = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
        return new Place(name, line, column, Math.max(column + 1, endColumn), shown);
    }
}
