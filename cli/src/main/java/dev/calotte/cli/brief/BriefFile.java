package dev.calotte.cli.brief;

import dev.calotte.cli.folder.Sha256;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Gets the text out of a file, or says why it is none. */
final class BriefFile {

    static final int MOST_BYTES = 256 * 1024;

    private static final String BYTE_ORDER_MARK = "\ufeff";
    private static final String SAVE = "Save the brief as plain text in UTF-8.";

    private BriefFile() {}

    /** The text of a file without a byte order mark, and the SHA-256 of all its bytes. */
    record Content(String text, String sha256) {}

    static Content read(Path path) {
        String name = Seen.printable(path.toString());
        byte[] bytes = bytes(path, name);
        if (bytes.length > MOST_BYTES) {
            throw new CalotteException(
                    Code.FILE,
                    name,
                    "the file is larger than " + MOST_BYTES / 1024 + " KiB.",
                    "Check that it is a brief; no dome needs that much.");
        }
        return new Content(checked(name, decoded(name, bytes)), Sha256.of(bytes));
    }

    /** The same text without a byte order mark, if it holds nothing but characters that a text file holds. */
    static String checked(String name, String text) {
        String content = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        int at = 0;
        while (at < content.length()) {
            int c = content.codePointAt(at);
            if (!isText(c)) {
                throw unreadable(
                        name + ":" + lineAt(content, at),
                        "the file holds the character " + c + ", which no text has; it is perhaps not a text at all.");
            }
            at += Character.charCount(c);
        }
        return content;
    }

    private static boolean isText(int c) {
        boolean space = c == '\t' || c == '\n' || c == '\r';
        boolean half = Character.getType(c) == Character.SURROGATE;
        return space || !(Character.isISOControl(c) || half || c == 0xfeff || (c & 0xfffe) == 0xfffe);
    }

    private static byte[] bytes(Path path, String name) {
        if (!Files.isRegularFile(path)) {
            boolean there = Files.exists(path);
            throw new CalotteException(
                    Code.FILE,
                    name,
                    there ? "this is not a file." : "there is no such file.",
                    "Give the name of a brief.");
        }
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            throw new CalotteException(
                    Code.FILE, name, "the file cannot be read.", "Check that you are allowed to read it.");
        }
    }

    private static String decoded(String name, byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        var decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            throw unreadable(name + ":" + lineAt(text, text.length()), "the file is not UTF-8.");
        }
        return text;
    }

    private static CalotteException unreadable(String where, String what) {
        return new CalotteException(Code.UNREADABLE, where, what, SAVE);
    }

    private static long lineAt(String text, int at) {
        return 1 + text.substring(0, at).chars().filter(c -> c == '\n').count();
    }
}
