package dev.calotte.svg.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/** The look and the script of the page, and the policy that lets these two in and nothing else. */
final class Inlined {

    private static final List<String> STYLES = List.of("book.css", "tables.css", "view.css", "print.css");
    private static final List<String> SCRIPTS = List.of("scene.js", "drawing.js", "view.js", "ticks.js", "book.js");

    private Inlined() {}

    static String style() throws IOException {
        return joined(STYLES);
    }

    static String script() throws IOException {
        return "(() => {\n'use strict';\n" + joined(SCRIPTS) + "})();\n";
    }

    /** After Content Security Policy Level 3 (W3C): a script or style in the page is told by its hash. */
    static String policy() throws IOException {
        return "default-src 'none'; script-src " + hash(script()) + "; style-src " + hash(style())
                + "; img-src data:; base-uri 'none'; form-action 'none'";
    }

    private static String joined(List<String> files) throws IOException {
        StringBuilder all = new StringBuilder();
        for (String file : files) {
            all.append(read(file));
        }
        return all.toString();
    }

    /** Readers of HTML see line feeds only, so the hash must be of these, whatever a checkout made of the files. */
    private static String read(String file) throws IOException {
        try (InputStream in = Inlined.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
        }
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException wrong) {
            throw new IllegalStateException("every Java has SHA-256", wrong);
        }
    }
}
